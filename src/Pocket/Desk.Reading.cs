using System.Globalization;
using System.Text;
using Watersown.Documents.Farms;
using Watersown.Documents.Logbooks;
using Watersown.Documents.Plan;
using Watersown.Pocket.Keeping;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Season;

namespace Watersown.Pocket;

public sealed partial class Desk
{
    private string? farmText;
    private string? planText;
    private SeasonState? ground;
    private SeasonPlan? planAsMade;
    private Telling? telling;
    private TimeSpan skew;
    private string? name;
    private string? bookName;
    private int farmVersion;
    private int planNumber;
    private long upto;

    /// <summary>Marks as the device keeps them, refused ones too.</summary>
    private ImmutableDictionary<string, KeptMark> kept = ImmutableDictionary<string, KeptMark>.Empty;

    /// <summary>The same as read, once each.</summary>
    private readonly Dictionary<string, Mark> read = new(StringComparer.Ordinal);

    /// <summary>How far the device's marks have been read; below 0 before the first time.</summary>
    private long turn = -1;

    private Logbook log = Logbook.Empty;

    /// <summary>The marks that the logbook was last made of.</summary>
    private ImmutableDictionary<string, KeptMark>? logged;

    /// <summary>The farm document as last heard; none before one was.</summary>
    public string? FarmText => farmText;

    /// <summary>Its version; 0 before one was heard.</summary>
    public int FarmVersion => farmVersion;

    /// <summary>The time zone that this device lives by, as IANA names it.</summary>
    public string Zone => TimeZoneInfo.TryConvertWindowsIdToIanaId(clock.LocalTimeZone.Id, out var iana) ? iana : clock.LocalTimeZone.Id;

    /// <summary>A list that was pasted and is no farm yet.</summary>
    public Task<string?> DraftListAsync() => device.PaperAsync(Papers.List);

    /// <summary>Keeps a pasted list until it is a farm; with nothing it is let go.</summary>
    public Task KeepDraftListAsync(string? text) => device.KeepPapersAsync((Papers.List, text));

    /// <summary>Asks the host for everything anew, after the farm was saved there.</summary>
    public async Task FetchAnewAsync()
    {
        Line = await FetchAllAsync();
        Tell();
    }

    private async Task ReadPapersAsync()
    {
        var farm = await device.PaperAsync(Papers.Farm);
        var plan = await device.PaperAsync(Papers.Plan);
        (farmVersion, planNumber) = ((int)await NumberAsync(Papers.FarmVersion), (int)await NumberAsync(Papers.PlanNumber));
        upto = (long)await NumberAsync(Papers.Upto);
        skew = TimeSpan.FromSeconds(await NumberAsync(Papers.Skew));
        (name, Role) = (await device.PaperAsync(Papers.Name), await device.PaperAsync(Papers.Role));
        bookName = await device.PaperAsync(Papers.Book);
        Tiles = await device.PaperAsync(Papers.Tiles);
        HostHeard = await device.PaperAsync(Papers.Heard) is { } heard ? DateTimeOffset.Parse(heard, CultureInfo.InvariantCulture) : null;
        if (farm != farmText) Lay(farm);
        if (plan != planText || planAsMade is null) (planText, planAsMade) = (plan, null);
        await ReadTakenAsync();
    }

    private async Task<double> NumberAsync(string paper) =>
        double.TryParse(await device.PaperAsync(paper), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : 0;

    private void Lay(string? farm)
    {
        farmText = farm;
        planAsMade = null;
        if (farm is null) return;
        var state = FarmReading.Read(Encoding.UTF8.GetBytes(farm), new FarmContext(clock.GetUtcNow() + skew));
        FarmProblems = [.. state.Refusals];
        if (state.HasValue) ground = state.Value;
    }

    private async Task ReadMarksAsync()
    {
        var news = await device.MarksAsync(turn);
        turn = Math.Max(turn, news.Turn);
        if (news.Marks.IsEmpty) return;
        // Nothing is ever taken off the device, so that a mark kept while this was read is not lost from the page.
        kept = kept.SetItems(news.Marks.Select(m => KeyValuePair.Create(m.Id, m)));
        foreach (var mark in news.Marks) Take(mark);
    }

    private void Take(KeptMark mark)
    {
        if (read.ContainsKey(mark.Id)) return;
        var outcome = MarkReading.Read(Encoding.UTF8.GetBytes(mark.Text));
        if (outcome.HasValue) read[mark.Id] = outcome.Value;
    }

    /// <summary>Lays every mark that the host has or may get on the farm as heard, for this minute.</summary>
    private void Fold()
    {
        telling = null;
        if (ground is null) return;
        var shown = Settings.Units is { } units ? ground with { Farm = ground.Farm with { Units = units } } : ground;
        TakeLog();
        Book = SeasonFold.Fold(shown, log, Now);
        if (planAsMade is null)
        {
            planAsMade = ReadPlan(Book.State);
            ReadTaken(Book.State);
        }

        Plan = planAsMade is null ? null : planAsMade with { State = Book.State };
    }

    /// <summary>The logbook of every mark that the host has or may get; only what is new is laid to it.</summary>
    private void TakeLog()
    {
        if (ReferenceEquals(logged, kept)) return;
        logged = kept;
        var counted = kept.Values.Where(m => m.State is SendState.Unsent or SendState.Sent).Select(m => read.GetValueOrDefault(m.Id)).OfType<Mark>().ToList();
        // One that the host refused counts no more: the logbook is made anew.
        log = (counted.Count < log.Count ? Logbook.Empty : log).With(counted.Where(m => counted.Count < log.Count || !log.Has(m.Id)));
        if (log.Count != counted.Count) log = Logbook.Empty.With(counted);
    }

    private SeasonPlan? ReadPlan(SeasonState state)
    {
        if (planText is null) return null;
        var plan = PlanReading.Read(Encoding.UTF8.GetBytes(planText), state);
        return plan.HasValue ? plan.Value : null;
    }
}
