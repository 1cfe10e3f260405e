using Watersown.Reckon;
using static Watersown.Wording.Say;

namespace Watersown.Water;

/// <summary>How long a flood takes while what is wet already must be held.</summary>
internal static class FillReckoning
{
    /// <summary>Supply within this much of what holding takes makes the finish hang on small errors.</summary>
    private const double CloseToStall = 1.1;

    /// <summary>Longer than the plain sum by this much is worth a word.</summary>
    private const double MuchLonger = 1.25;

    public static Reckoning Reckoning => new(
        "fill",
        "How long will this flood take, and can it ever finish?",
        [
            new("net_ac", KeyKind.Number, "ac", "land to be covered") { Least = 0, AboveLeast = true, Most = 100_000 },
            new("fill_depth_ft", KeyKind.Number, "ft", "water to wet the worked soil and stand over it") { Least = 0, AboveLeast = true, Most = 5 },
            new("hold_loss_in_day", KeyKind.Number, "in/day", "lost from covered land to the air and the ground") { Least = 0, Most = 5 },
            new("wet_ac", KeyKind.Number, "ac", "land already covered that the same supply must hold") { Least = 0, Most = 100_000 },
            new("supply_cfs", KeyKind.Number, "cfs", "steady supply") { Least = 0, Most = 10_000 },
        ],
        [
            new("days", KeyKind.Number, "days", "time until all of it is covered") { NullMeans = "never" },
            new("never", KeyKind.YesNo, string.Empty, "whether the supply can never do it"),
            new("stall_ac", KeyKind.Number, "ac", "covered land in all at which the flood stops") { NullMeans = "nowhere, as nothing is lost" },
            new("naive_days", KeyKind.Number, "days", "the plain sum, which forgets that covered land drinks") { NullMeans = "no supply" },
            new("volume_ac_ft", KeyKind.Number, "ac-ft", "water to fill the land to be covered"),
            new("hold_cfs_when_full", KeyKind.Number, "cfs", "flow to hold all of it once it is covered"),
        ],
        Sources.WaterBalance,
        "net_ac=118 fill_depth_ft=0.6 hold_loss_in_day=0.32 wet_ac=160 supply_cfs=14",
        Work)
    { Limits = "Supply, loss and depth stay the same throughout, and land is covered check by check to its depth. Use the farm's own loss: a stage reading over two days with the inlets shut." };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var job = new FloodJob(
            Area.FromAcres(given.Number("net_ac")),
            Area.FromAcres(given.Number("wet_ac")),
            WaterDepth.FromFeet(given.Number("fill_depth_ft")),
            DepthRate.FromInchesPerDay(given.Number("hold_loss_in_day")));
        var supply = FlowRate.FromCubicFeetPerSecond(given.Number("supply_cfs"));
        var answer = new Answer(
            job,
            supply,
            Ponding.FillTime(job, supply),
            supply > FlowRate.Zero ? Ponding.NaiveTime(job, supply) : null,
            job.Loss > DepthRate.Zero ? Ponding.StallArea(supply, job.Loss) : null,
            Ponding.HoldingFlow(job.Dry + job.Wet, job.Loss));
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("days", Datum.Of(answer.Time?.TotalDays)),
                ("never", answer.Time is null),
                ("stall_ac", Datum.Of(answer.Stall?.Acres)),
                ("naive_days", Datum.Of(answer.Naive?.TotalDays)),
                ("volume_ac_ft", (job.Dry * job.Fill).AcreFeet),
                ("hold_cfs_when_full", answer.Hold.CubicFeetPerSecond),
            ],
            Show(given, answer))
        { Cautions = [.. Cautions(answer)] });
    }

    private static Working Show(ReckoningInput given, Answer answer)
    {
        var lossless = answer.Stall is null;
        return Working.Empty
            .Given("A", "land to be covered", given.Number("net_ac"), "ac", "typed")
            .Given("A0", "land already covered", given.Number("wet_ac"), "ac", "typed")
            .Given("V", "fill depth", given.Number("fill_depth_ft"), "ft", "typed")
            .Given("e", "loss from covered land", given.Number("hold_loss_in_day"), "in/day", "typed")
            .Given("Q", "steady supply", given.Number("supply_cfs"), "cfs", "typed")
            .Step("S", "supply", answer.Supply.AcreFeetPerDay, "ac-ft/day", "1.983471 Q", Sources.Definition)
            .Step("m", "loss from covered land", answer.Job.Loss.FeetPerDay, "ft/day", "e / 12", Sources.Definition)
            .Step("A1", "land covered at the end", (answer.Job.Dry + answer.Job.Wet).Acres, "ac", "A0 + A", Sources.Arithmetic)
            .Step("W", "water to fill the land to be covered", (answer.Job.Dry * answer.Job.Fill).AcreFeet, "ac-ft", "A V", Sources.Arithmetic)
            .Step("H", "flow to hold all of it", answer.Hold.CubicFeetPerSecond, "cfs", "m A1 / 1.983471", Sources.WaterBalance)
            .Step("As", "covered land at which the flood stops", Datum.Of(answer.Stall?.Acres), "ac", lossless ? "none: nothing is lost" : "S / m", Sources.WaterBalance)
            .Step("t0", "the plain sum", Datum.Of(answer.Naive?.TotalDays), "days", "A V / S", Sources.Arithmetic)
            .Step("t", "time until all of it is covered", Datum.Of(answer.Time?.TotalDays), "days", Formula(answer), Sources.WaterBalance.At("V dA/dt = S − m A"));
    }

    private static string Formula(Answer answer) => (answer.Time, answer.Stall) switch
    {
        (null, _) => "never: S is not above m A1",
        (_, null) => "A V / S",
        _ => "(V / m) ln((S − m A0) / (S − m A1))",
    };

    private static IEnumerable<string> Cautions(Answer answer)
    {
        if (answer.Time is { } time)
        {
            if (answer.Naive is { } naive && time > naive * MuchLonger)
                yield return "Holding what is covered makes it " + Number((time - naive).TotalDays, 1) + " days longer than the plain sum.";
            if (answer.Hold > FlowRate.Zero && answer.Supply < answer.Hold * CloseToStall)
                yield return "Hardly more comes than holding takes: a small error in loss or supply moves the finish by days, or to never.";
        }
        else if (answer.Supply <= FlowRate.Zero)
        {
            yield return "No water comes.";
        }
        else if (answer.Stall is { } stall)
        {
            yield return stall <= answer.Job.Wet
                ? "Land already covered drinks all that comes: it can hold " + Figure(stall.Acres) + " ac, and " + Figure(answer.Job.Wet.Acres) + " ac are covered."
                : "The flood stops when " + Figure(stall.Acres) + " ac are covered, " + Figure((stall - answer.Job.Wet).Acres) + " ac of this job. It needs more than " + Figure(answer.Hold.CubicFeetPerSecond) + " cfs to finish.";
        }
    }

    private sealed record Answer(FloodJob Job, FlowRate Supply, TimeSpan? Time, TimeSpan? Naive, Area? Stall, FlowRate Hold);
}
