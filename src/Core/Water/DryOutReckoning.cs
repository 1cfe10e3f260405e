using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>How long a field stays covered once its water stops.</summary>
internal static class DryOutReckoning
{
    public static Reckoning Reckoning => new(
        "dry-out",
        "The water has stopped: how long until bare soil shows?",
        [
            new("depth_in", KeyKind.Number, "in", "mean depth now") { Least = 0, Most = 60 },
            new("high_spot_in", KeyKind.Number, "in", "how far the highest soil stands above the mean") { Least = 0, Most = 60 },
            new("loss_in_day", KeyKind.Number, "in/day", "lost to the air and the ground") { Least = 0, Most = 20 },
        ],
        [new("days_to_bare", KeyKind.Number, "days", "time until the first bare soil") { NullMeans = "never, as nothing is lost" }],
        Sources.WaterBalance,
        "depth_in=2.5 high_spot_in=1.2 loss_in_day=0.28",
        Work)
    { Limits = "No rain, no water coming, and the same loss every day. Laser-level ground has high spots about 1.2 in above its mean." };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var depth = WaterDepth.FromInches(given.Number("depth_in"));
        var highSpot = WaterDepth.FromInches(given.Number("high_spot_in"));
        var loss = DepthRate.FromInchesPerDay(given.Number("loss_in_day"));
        var time = DryOut.TimeToBare(depth, highSpot, loss);
        var working = Working.Empty
            .Given("d", "mean depth now", given.Number("depth_in"), "in", "typed")
            .Given("s", "highest soil above the mean", given.Number("high_spot_in"), "in", "typed")
            .Given("e", "loss", given.Number("loss_in_day"), "in/day", "typed")
            .Step("t", "time until the first bare soil", Datum.Of(time?.TotalDays), "days", Formula(time), Sources.WaterBalance);
        return Outcome<Reckoned>.Of(new Reckoned([("days_to_bare", Datum.Of(time?.TotalDays))], working) { Cautions = [.. Cautions(time)] });
    }

    private static string Formula(TimeSpan? time) => time switch
    {
        null => "never: nothing is lost",
        { Ticks: 0 } => "none: d is not above s",
        _ => "(d − s) / e",
    };

    private static IEnumerable<string> Cautions(TimeSpan? time)
    {
        if (time is null) yield return "With nothing lost it never dries out: measure the loss over two days with the inlets shut.";
        else if (time == TimeSpan.Zero) yield return "The highest soil is bare already.";
        yield return "Wind lays the upwind end of a large check bare much sooner than a falling surface does.";
    }
}
