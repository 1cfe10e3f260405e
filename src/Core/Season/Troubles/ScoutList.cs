using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season.Troubles;

/// <summary>Why a field is to be looked at.</summary>
public enum ScoutReason
{
    /// <summary>A levee went out.</summary>
    Levee,

    /// <summary>Wind blew over seed that was still loose.</summary>
    Wind,

    /// <summary>More seed was left than can be explained.</summary>
    SeedLeft,

    /// <summary>A track shows bare places.</summary>
    Skipped,
}

/// <summary>One field to look at, with the reason.</summary>
/// <param name="Field">The field.</param>
/// <param name="Reason">Why.</param>
/// <param name="Due">On which day.</param>
public sealed record ScoutDue(Field Field, ScoutReason Reason, DateOnly Due)
{
    /// <summary>Checks to look at; all of them where none is named.</summary>
    public ImmutableArray<int> Checks { get; init; } = [];

    /// <summary>Direction of the runs along whose edges to look.</summary>
    public Bearing? Run { get; init; }

    /// <summary>Land that may have been missed.</summary>
    public Area? Missed { get; init; }

    /// <summary>Where to walk.</summary>
    public GeoPoint? Place { get; init; }

    /// <summary>The wind behind it.</summary>
    public Weather.Wind? Wind { get; init; }
}

/// <summary>What trouble has put on the list of fields to look at. It shrinks as somebody looks.</summary>
public static class ScoutList
{
    private const int MostPlaces = 5;

    /// <summary>Everything due by the end of tomorrow or later for a named reason, the soonest first; wind by its rank.</summary>
    public static ImmutableArray<ScoutDue> Of(SeasonBook book, SeasonPlan? plan)
    {
        var state = book.State;
        var today = FarmTime.Day(state, state.Now);
        var due = new List<ScoutDue>();
        foreach (var field in state.Farm.Fields)
        {
            due.AddRange(LeveeTroubles.Of(book, plan, field.Code).Where(l => l is { Scout: not null, Scouted: false })
                .Select(l => new ScoutDue(field, ScoutReason.Levee, today) { Checks = [.. new[] { l.Above, l.Below }.OfType<int>()] }));
        }

        due.AddRange(SettleRisks.Of(book).Where(r => r is { Index: > 0, Scouted: false }).Select(r => new ScoutDue(r.Field, ScoutReason.Wind, today) { Wind = r.Strongest }));
        foreach (var field in state.Farm.Fields)
        {
            if (SownChecks.Of(book, field.Code) is not { Answer.Verdict: not Flight.SownVerdict.AsMeant } check) continue;
            if (book.Field(field.Code).ScoutedAt is { } looked && FarmTime.Day(state, looked) >= check.Look) continue;
            due.Add(new ScoutDue(field, ScoutReason.SeedLeft, check.Look) { Run = check.Run, Missed = check.Answer.Verdict == Flight.SownVerdict.Light ? check.Answer.Missed : null });
        }

        foreach (var field in state.Farm.Fields) due.AddRange(Bare(book, field));
        return [.. due.OrderBy(d => d.Due)];
    }

    // Each bare place of the newest track, so many days after sowing; nobody walks to more than a few.
    private static IEnumerable<ScoutDue> Bare(SeasonBook book, Field field)
    {
        var told = book.Field(field.Code);
        if (told.Track is not { Mark: var mark, Look: var look }) return [];
        var sown = told.Sowings.IsEmpty ? mark.Happened : told.Sowings[^1].At;
        var on = FarmTime.Day(book.State, sown).AddDays(SownChecks.LookAfterDays);
        if (told.ScoutedAt is { } looked && FarmTime.Day(book.State, looked) >= on) return [];
        return look.Places.Take(MostPlaces).Select(p => new ScoutDue(field, ScoutReason.Skipped, on) { Place = p.At, Run = p.Run, Missed = p.Land });
    }
}
