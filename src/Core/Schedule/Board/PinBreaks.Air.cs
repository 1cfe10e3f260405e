using Watersown.Flight;
using Watersown.Weather;

namespace Watersown.Schedule.Board;

/// <summary>Seed and air of a sowing that is put to another time.</summary>
public static partial class PinBreaks
{
    private static IEnumerable<PinBreak> Seed(SeasonState state, PlanTask task, DateTimeOffset start)
    {
        var rules = state.SoakRules;
        if (state.Batches.FirstOrDefault(b => b.Code == task.Batch) is not { } batch)
        {
            var fit = SowingBoard.NextSoak(state, rules) + rules.SoakLeast + rules.Drain;
            if (fit > start) yield return Missing(PinBreakKind.SeedYoung, fit, start, "soaked next, and drained", "soak place");
            yield break;
        }

        var ready = batch.Drained is { } off ? off + rules.Drain : Later(batch.InSoak + rules.SoakLeast, state.Now)!.Value + rules.Drain;
        if (ready > start) yield return Missing(PinBreakKind.SeedYoung, ready, start, "fit to sow", "batch " + batch.Code) with { Others = [batch.Code] };
        var lastDrained = batch.InSoak + rules.SoakLost + rules.Drain;
        var last = Sheets.SeedTimes.UseBy(state, batch) ?? (lastDrained + DrainedSeed.Usable(state, FarmTime.Day(state, lastDrained)));
        if (last >= start) yield break;
        yield return new PinBreak(PinBreakKind.SeedOld)
        {
            At = last,
            By = start - last,
            Others = [batch.Code],
            Working = Working.Empty.Given("U", "use by", Datum.Moment(last), string.Empty, "batch " + batch.Code, batch.InSoak).Given("S", "pinned for", Datum.Moment(start), string.Empty, "pin")
                .Step("L", "past use by", (start - last).TotalHours, "h", "S − U", Watersown.Sources.Arithmetic),
        };
    }

    private static IEnumerable<PinBreak> Air(SeasonPlan plan, SeasonState state, PlanTask task, DateTimeOffset start)
    {
        var plane = state.Aeroplanes.FirstOrDefault(a => a.Name == task.Resource) ?? new Aeroplane(task.Resource);
        var end = start + (task.End - task.Start);
        if (Hours(state, plane, start, end) is { } hours) yield return hours;
        if (Blown(state, plane, start, end) is { } wind) yield return new PinBreak(PinBreakKind.Wind) { Wind = wind };
        var others = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && t.Resource == task.Resource && t.Field != task.Field && t.Start < end && t.End > start).ToImmutableArray();
        if (others.IsEmpty) yield break;
        yield return new PinBreak(PinBreakKind.Plane)
        {
            Others = [.. others.Select(t => t.Field).Distinct(StringComparer.Ordinal)],
            By = others.Aggregate(TimeSpan.Zero, (sum, t) => sum + ((t.End < end ? t.End : end) - (t.Start > start ? t.Start : start))),
        };
    }

    /// <summary>Light first; where it is light, the hours of the aeroplane that are nearest.</summary>
    private static PinBreak? Hours(SeasonState state, Aeroplane plane, DateTimeOffset start, DateTimeOffset end)
    {
        var day = FarmTime.Day(state, start);
        var (dawn, dusk) = FlyingWindows.Daylight(state, day);
        if (Outside(start, end, dawn, dusk) is { Ticks: > 0 } dark) return new PinBreak(PinBreakKind.Dark) { At = dawn, Until = dusk, By = dark };
        var slots = FlyingWindows.Slots(state, plane, day);
        if (slots.IsEmpty) return new PinBreak(PinBreakKind.NoSlot);
        var nearest = slots.MinBy(s => Outside(start, end, s.From, s.Until));
        return Outside(start, end, nearest.From, nearest.Until) is { Ticks: > 0 } over ? new PinBreak(PinBreakKind.Slot) { At = nearest.From, Until = nearest.Until, By = over } : null;
    }

    /// <summary>How much of a span lies outside another.</summary>
    private static TimeSpan Outside(DateTimeOffset start, DateTimeOffset end, DateTimeOffset from, DateTimeOffset until)
    {
        if (end <= from || start >= until) return end - start;
        return (from > start ? from - start : TimeSpan.Zero) + (end > until ? end - until : TimeSpan.Zero);
    }

    /// <summary>The strongest wind told for a span that is over the pilot's limits.</summary>
    private static Wind? Blown(SeasonState state, Aeroplane plane, DateTimeOffset start, DateTimeOffset end) =>
        FlyingWindows.Told(state, start, end).Where(w => FlyingWindows.TooWindy(w, plane)).MaxBy(w => w.Sustained);
}
