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
    private int farmVersion;
    private int planNumber;
    private long upto;

    /// <summary>Marks as the device keeps them, refused ones too.</summary>
    private ImmutableDictionary<string, KeptMark> kept = ImmutableDictionary<string, KeptMark>.Empty;

    /// <summary>The same as read, once each.</summary>
    private Dictionary<string, Mark> read = new(StringComparer.Ordinal);

    private async Task ReadPapersAsync()
    {
        var farm = await device.PaperAsync(Papers.Farm);
        var plan = await device.PaperAsync(Papers.Plan);
        (farmVersion, planNumber) = ((int)await NumberAsync(Papers.FarmVersion), (int)await NumberAsync(Papers.PlanNumber));
        upto = (long)await NumberAsync(Papers.Upto);
        skew = TimeSpan.FromSeconds(await NumberAsync(Papers.Skew));
        (name, Role) = (await device.PaperAsync(Papers.Name), await device.PaperAsync(Papers.Role));
        HostHeard = await device.PaperAsync(Papers.Heard) is { } heard ? DateTimeOffset.Parse(heard, CultureInfo.InvariantCulture) : null;
        if (farm != farmText) Lay(farm);
        if (plan != planText || planAsMade is null) (planText, planAsMade) = (plan, null);
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
        var marks = await device.MarksAsync();
        // Nothing is ever taken off the device, so that a mark kept while this was read is not lost from the page.
        kept = kept.SetItems(marks.Select(m => KeyValuePair.Create(m.Id, m)));
        foreach (var mark in marks) Take(mark);
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
        var log = Logbook.Empty.With(kept.Values.Where(m => m.State is SendState.Unsent or SendState.Sent).Select(m => read.GetValueOrDefault(m.Id)).OfType<Mark>());
        Book = SeasonFold.Fold(shown, log, Now);
        planAsMade ??= ReadPlan(Book.State);
        Plan = planAsMade is null ? null : planAsMade with { State = Book.State };
    }

    private SeasonPlan? ReadPlan(SeasonState state)
    {
        if (planText is null) return null;
        var plan = PlanReading.Read(Encoding.UTF8.GetBytes(planText), state);
        return plan.HasValue ? plan.Value : null;
    }
}
