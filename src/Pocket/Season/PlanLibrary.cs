using System.Globalization;
using System.Text;
using System.Text.Json;
using Watersown.Documents.Plan;
using Watersown.Pocket.Keeping;
using Watersown.Pocket.Sending;
using Watersown.Schedule;
using Watersown.Season;

namespace Watersown.Pocket.Season;

/// <summary>A plan on the list.</summary>
/// <param name="Number">The number that people are told.</param>
/// <param name="Made">When it was made.</param>
/// <param name="Who">By whom; none where only the logbook tells of it.</param>
/// <param name="Why">What made it necessary, as the host writes it.</param>
/// <param name="Here">The device keeps it whole.</param>
public sealed record PlanOnList(int Number, DateTimeOffset Made, string? Who, string? Why, bool Here);

/// <summary>
/// The plans that were given a number: the list as the host last told it with what the logbook tells, and those that the
/// device keeps whole. One that is not here is asked of the host and kept.
/// </summary>
public sealed class PlanLibrary(IDevice device, HostLine host, Desk desk)
{
    private readonly Dictionary<int, SeasonPlan> read = [];

    /// <summary>The newest first.</summary>
    public ImmutableArray<PlanOnList> List { get; private set; } = [];

    /// <summary>When the host last told the list, by the farm's clock; none where it never did.</summary>
    public DateTimeOffset? Heard { get; private set; }

    /// <summary>The list out of what the device keeps.</summary>
    public async Task OpenAsync()
    {
        var kept = KeptPlans.Read(await device.PaperAsync(Papers.KeptPlans)).Numbers;
        Heard = DateTimeOffset.TryParse(await device.PaperAsync(Papers.PlansHeard), CultureInfo.InvariantCulture, DateTimeStyles.None, out var heard) ? heard : null;
        var told = Read(await device.PaperAsync(Papers.Plans));
        // The logbook tells of every plan, too, with no signal and before the list was ever heard.
        var marked = (desk.Book?.Plans ?? []).Select(p => new PlanOnList(p.Number, p.MadeAt, null, p.Why, Here: false));
        ImmutableArray<PlanOnList> listed = [.. told.Concat(marked).DistinctBy(p => p.Number)];
        var whole = new List<PlanOnList>();
        foreach (var number in kept.Where(n => listed.All(p => p.Number != n)))
        {
            if (MadeAt(await device.PaperAsync(Papers.PlanOf(number))) is { } made) whole.Add(new PlanOnList(number, made, null, null, Here: true));
        }

        List = [.. listed.Concat(whole).Select(p => p with { Here = kept.Contains(p.Number) }).OrderByDescending(p => p.Number)];
    }

    /// <summary>The list as the host has it now; false where it did not answer, and the list stays as it was.</summary>
    public async Task<bool> AskAsync()
    {
        var answer = await host.AskAsync("api/plans");
        if (answer.State != LineState.Reached) return false;
        var text = Encoding.UTF8.GetString(answer.Body.Span);
        if (Read(text).IsEmpty) return false;
        await device.KeepPapersAsync((Papers.Plans, text), (Papers.PlansHeard, desk.Now.ToString("O", CultureInfo.InvariantCulture)));
        await OpenAsync();
        return true;
    }

    /// <summary>A plan as it was made, on the season as it was known then; none where it is neither here nor answered for.</summary>
    public async Task<SeasonPlan?> PlanAsync(PlanOnList plan)
    {
        if (read.TryGetValue(plan.Number, out var known)) return known;
        var text = await device.PaperAsync(Papers.PlanOf(plan.Number)) ?? await FetchAsync(plan.Number);
        if (text is null || desk.Book is not { } book) return null;
        var state = PlanLedger.KnownAt(book.Ground, book.Log, plan.Made).State;
        var outcome = PlanReading.Read(Encoding.UTF8.GetBytes(text), state);
        return outcome.HasValue ? read[plan.Number] = outcome.Value : null;
    }

    private async Task<string?> FetchAsync(int number)
    {
        var answer = await host.AskAsync("api/plans/" + number.ToString(CultureInfo.InvariantCulture));
        if (answer.State != LineState.Reached) return null;
        var text = Encoding.UTF8.GetString(answer.Body.Span);
        await device.KeepPapersAsync(KeptPlans.Read(await device.PaperAsync(Papers.KeptPlans)).With(number, text));
        await OpenAsync();
        return text;
    }

    private static DateTimeOffset? MadeAt(string? plan)
    {
        if (plan is null) return null;
        using var document = JsonDocument.Parse(plan);
        return document.RootElement.TryGetProperty("made_at", out var made) && made.TryGetDateTimeOffset(out var moment) ? moment : null;
    }

    // What is not a list of plans is none: a stranger's page, or an older host's.
    private static ImmutableArray<PlanOnList> Read(string? text)
    {
        if (text is null) return [];
        try
        {
            using var document = JsonDocument.Parse(text);
            return [.. document.RootElement.GetProperty("plans").EnumerateArray().Select(p => new PlanOnList(p.GetProperty("number").GetInt32(), p.GetProperty("made").GetDateTimeOffset(), p.GetProperty("who").GetString(), p.GetProperty("why").GetString(), Here: false))];
        }
        catch (Exception odd) when (odd is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return [];
        }
    }
}
