using Watersown.Seed;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Texts to the seed warehouse: soak calls, deliveries, drains to hold, seed not to be hauled.</summary>
internal static class WarehouseTexts
{
    public static IEnumerable<string> Of(SeasonPlan plan, DateOnly day, Telling tell)
    {
        var jobs = SeedSheets.All(plan);
        var (from, until) = TextTimes.OfDay(plan, day);
        return
        [
            .. Soaks(jobs.Where(j => j is { Soaking: false, CallBy: { } by } && by >= from && by < until), tell),
            .. Deliveries(plan, jobs.Where(j => j.AtStrip is { } at && at >= from && at < until.AddDays(1)), tell),
            .. Holds(jobs.Where(j => !j.Drained && j.InSoak < until && j.Drain >= from), tell),
            .. Lost(plan, tell),
        ];
    }

    private static IEnumerable<string> Soaks(IEnumerable<SeedJob> jobs, Telling tell)
    {
        var words = tell.Words.Text;
        foreach (var group in jobs.GroupBy(j => (j.InSoak, Sow: tell.Day(j.AtStrip ?? j.Drain))))
        {
            var head = Template.Fill(words.SoakHead, ("when", tell.TextMoment(group.Key.InSoak)), ("day", tell.TextDay(group.Key.Sow)));
            var items = group.Select(j => Template.Fill(words.SoakItem, ("field", string.Join('/', j.Fields)), ("weight", Telling.Count(tell.Whole(j.Dry))), ("unit", tell.MassUnit), ("seed", Seed(j))).TrimEnd());
            foreach (var text in ShortText.Spread(head, items, " + ", words.SoakTail)) yield return text;
        }
    }

    private static IEnumerable<string> Deliveries(SeasonPlan plan, IEnumerable<SeedJob> jobs, Telling tell)
    {
        var words = tell.Words.Text;
        var strip = ShortText.Cut(plan.State.Farm.Strips.FirstOrDefault()?.Name ?? tell.Words.Seed.TheStrip, 40);
        foreach (var group in jobs.GroupBy(j => tell.Day(j.AtStrip!.Value)))
        {
            var head = Template.Fill(words.DeliverHead, ("strip", strip), ("day", tell.TextDay(group.Key)));
            var items = group.OrderBy(j => j.AtStrip).Select(j => Template.Fill(words.DeliverItem,
                ("time", tell.Clock(j.AtStrip!.Value)), ("batch", j.Batch ?? words.NewSeed), ("fields", string.Join('/', j.Fields))));
            foreach (var text in ShortText.Spread(head, items, ", ", ".")) yield return text;
        }
    }

    private static ImmutableArray<string> Holds(IEnumerable<SeedJob> jobs, Telling tell) =>
        ShortText.Spread(tell.Words.Text.HoldHead, jobs.Select(j => j.Batch ?? string.Join('/', j.Fields)), ", ", tell.Words.Text.HoldTail);

    private static ImmutableArray<string> Lost(SeasonPlan plan, Telling tell) =>
        ShortText.Spread(tell.Words.Text.LostHead, plan.LostBatches, ", ", tell.Words.Text.LostTail);

    private static string Seed(SeedJob job) => string.Join(' ', new[] { job.Lot ?? job.Variety, job.Batch }.Where(w => w is not null));
}

/// <summary>Which moments belong to the texts of a day.</summary>
internal static class TextTimes
{
    /// <summary>From the first moment of the day, or now, until noon of the next: what is due at dawn is said the day before.</summary>
    public static (DateTimeOffset From, DateTimeOffset Until) OfDay(SeasonPlan plan, DateOnly day)
    {
        var from = FarmTime.Midnight(plan.State, day);
        return (from, from.AddHours(36));
    }
}
