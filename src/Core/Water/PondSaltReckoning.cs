using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>Salt in a pond that is held.</summary>
internal static class PondSaltReckoning
{
    // Nobody reads a fall of the surface so small: less counts as nothing.
    private const double LeastInchesPerDay = 1e-4;

    public static Reckoning Reckoning => new(
        "pond-salt",
        "The water is held: how salty does it grow?",
        [
            new("start_ds", KeyKind.Number, "dS/m", "salt of the pond at the start, as electrical conductivity") { Least = 0, Most = 60 },
            new("depth_in", KeyKind.Number, "in", "depth at the start") { Least = 0.25, Most = 36 },
            new("et_in_day", KeyKind.Number, "in/day", "lost to the air, which leaves the salt") { Least = 0, Most = 2 },
            new("perc_in_day", KeyKind.Number, "in/day", "lost into the ground, which takes salt along") { Least = 0, Most = 5 },
            new("to_in", KeyKind.Number, "in", "depth it goes down to with nothing let in") { Least = 0.1, Most = 36, Optional = true },
            new("inflow_ds", KeyKind.Number, "dS/m", "salt of the water that keeps it level") { Least = 0, Most = 60, Optional = true },
            new("days", KeyKind.Number, "days", "how long it is kept level") { Least = 0, Most = 400, Optional = true },
        ],
        [
            new("salt_ds", KeyKind.Number, "dS/m", "salt then"),
            new("days", KeyKind.Number, "days", "how long that takes") { NullMeans = "never, as nothing is lost" },
            new("end_ds", KeyKind.Number, "dS/m", "what it comes to in the end if kept so") { NullMeans = "without end, as nothing percolates; or it goes down" },
            new("over_threshold", KeyKind.YesNo, string.Empty, "above 1.9 dS/m, from where rice yields less as a season mean"),
        ],
        Sources.WaterBalance,
        "start_ds=0.6 depth_in=5 et_in_day=0.30 perc_in_day=0.05 inflow_ds=0.6 days=30",
        Work)
    {
        ExactlyOneOf = [new("what becomes of the water", [["to_in"], ["inflow_ds", "days"]])],
        Limits = "One mixed check. In a row of checks feed each with what leaves the one above: salt builds in the last. No rain, no outflow.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var start = given.Number("start_ds");
        WaterDepth depth = WaterDepth.FromInches(given.Number("depth_in"));
        DepthRate air = DepthRate.FromInchesPerDay(given.Number("et_in_day")), ground = DepthRate.FromInchesPerDay(given.Number("perc_in_day") < LeastInchesPerDay ? 0 : given.Number("perc_in_day"));
        var working = Working.Empty
            .Given("EC0", "salt at the start", start, "dS/m", "typed")
            .Given("h", "depth at the start", depth.Inches, "in", "typed")
            .Given("e", "lost to the air", air.InchesPerDay, "in/day", "typed")
            .Given("p", "lost into the ground", ground.InchesPerDay, "in/day", "typed");
        return given.NumberOrNone("to_in") is { } lower
            ? GoneDown(start, depth, WaterDepth.FromInches(lower), air, ground, working)
            : Outcome<Reckoned>.Of(KeptLevel(given, depth, air, ground, working));
    }

    private static Outcome<Reckoned> GoneDown(double start, WaterDepth from, WaterDepth to, DepthRate air, DepthRate ground, Working working)
    {
        if (to > from)
            return Outcome<Reckoned>.Refuse(ReckonProblems.TooLarge.At("to_in", ("value", Wording.Say.Figure(to.Inches) + " in"), ("limit", Wording.Say.Figure(from.Inches) + " in")));
        var loss = air + ground;
        double? days = loss > DepthRate.Zero ? (from - to).Meters / (loss.MetersPerSecond * 86400) : null;
        var salt = days is null ? start : PondSalt.Held(start, from, to, air, ground);
        return Outcome<Reckoned>.Of(new Reckoned(
            [("salt_ds", salt), ("days", Datum.Of(days)), ("end_ds", Datum.None), ("over_threshold", salt > PondSalt.Threshold)],
            working
                .Given("h1", "depth then", to.Inches, "in", "typed")
                .Step("t", "until then", Datum.Of(days), "days", days is null ? "never: nothing is lost" : "(h − h1) / (e + p)", Sources.WaterBalance)
                .Step("EC", "salt then", salt, "dS/m", "EC0 (h / h1)^(e / (e + p))", Sources.WaterBalance))
        { Cautions = Cautions });
    }

    private static Reckoned KeptLevel(ReckoningInput given, WaterDepth depth, DepthRate air, DepthRate ground, Working working)
    {
        double inflow = given.Number("inflow_ds"), days = given.Number("days");
        var salt = PondSalt.KeptLevel(given.Number("start_ds"), inflow, depth, air, ground, TimeSpan.FromDays(days));
        double? end = ground > DepthRate.Zero ? PondSalt.SteadyState(inflow, air, ground) : null;
        return new Reckoned(
            [("salt_ds", salt), ("days", days), ("end_ds", Datum.Of(end)), ("over_threshold", salt > PondSalt.Threshold)],
            working
                .Given("ECi", "salt of the water let in", inflow, "dS/m", "typed")
                .Given("t", "how long", days, "days", "typed")
                .Step("ECe", "what it comes to in the end", Datum.Of(end), "dS/m", end is null ? "without end: nothing percolates" : "ECi (e + p) / p", Sources.WaterBalance)
                .Step("EC", "salt then", salt, "dS/m", end is null ? "EC0 + ECi e t / h" : "ECe + (EC0 − ECe) exp(−p t / h)", Sources.WaterBalance))
        { Cautions = Cautions };
    }

    private static ImmutableArray<string> Cautions =>
    [
        "Rice is most tender as a seedling and from three leaves to panicle initiation. 1.9 dS/m is the mean over a season in field water; measure with a meter before water is let go or kept.",
    ];
}
