using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>How fast a check runs out through a gap in its levee.</summary>
internal static class BreachReckoning
{
    public static Reckoning Reckoning => new(
        "levee-breach",
        "A levee is out: how fast does the check above run out?",
        [
            new("check_ac", KeyKind.Number, "ac", "check above the gap") { Least = 0, AboveLeast = true, Most = 10_000 },
            new("width_ft", KeyKind.Number, "ft", "how wide the gap is; 6 where left out") { Least = 0.1, Most = 1000, Optional = true },
            new("head_in", KeyKind.Number, "in", "water over the floor of the gap; 3 where left out") { Least = 0.25, Most = 120, Optional = true },
        ],
        [
            new("cfs", KeyKind.Number, "cfs", "runs out at first"),
            new("half_h", KeyKind.Number, "h", "half gone if it went on so"),
            new("half_falling_h", KeyKind.Number, "h", "half gone with the head falling"),
        ],
        Sources.CommonPractice,
        "check_ac=25 width_ft=6 head_in=3",
        Work)
    { Limits = "A rough span: the gap scours wider, and water standing below it slows it. Nothing else comes into the check or leaves it." };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var gap = new BreachGap(
            given.NumberOrNone("width_ft") is { } width ? Length.FromFeet(width) : Breach.UsualWidth,
            given.NumberOrNone("head_in") is { } head ? WaterDepth.FromInches(head) : Breach.UsualHead);
        var check = Area.FromAcres(given.Number("check_ac"));
        var time = Breach.Of(gap, check);
        return Outcome<Reckoned>.Of(new Reckoned(
            [("cfs", time.Flow.CubicFeetPerSecond), ("half_h", time.HalfAtFirstRate.TotalHours), ("half_falling_h", time.HalfFalling.TotalHours)], Breach.Working(gap, check, time))
        { Cautions = ["Shut the inlet and look at the checks below first: they fill as this one empties."] });
    }
}
