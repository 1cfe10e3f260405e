using System.Globalization;
using Watersown.Reckon;
using Watersown.Water.Filling;
using Watersown.Water.Flood;
using static Watersown.Wording.Say;

namespace Watersown.Water;

/// <summary>When each field of a source is full, what it holds already taken off first.</summary>
internal static class SourceFillReckoning
{
    private const string InTurn = "in-turn";

    // A whole farm's worth; more is a slip of the pen.
    private const int MostChecks = 60;

    public static Reckoning Reckoning => new(
        "source-fill",
        "When is each field of this source full, and which never?",
        [
            new("supply_cfs", KeyKind.Number, "cfs", "steady flow of the source") { Least = 0, Most = 1000 },
            new("held_cfs", KeyKind.Number, "cfs", "what other land on it takes that is full already") { Least = 0, Most = 1000, Optional = true },
            new("way", KeyKind.Text, string.Empty, "one field after another, or all at once by their dry land; one after another where not told") { Choices = [InTurn, "side-by-side"], Optional = true },
            new("fields", KeyKind.Rows, string.Empty, "fields to fill, the first to get water first; at most 60 checks in all")
            {
                Columns =
                [
                    new("field", KeyKind.Text, string.Empty, "what it is called"),
                    new("net_ac", KeyKind.Number, "ac", "all its land") { Least = 0, AboveLeast = true, Most = 100_000 },
                    new("wet_ac", KeyKind.Number, "ac", "of that, covered already") { Least = 0, Most = 100_000, Optional = true },
                    new("checks", KeyKind.WholeNumber, string.Empty, "checks of equal land, filled from the head") { Least = 1, Most = MostChecks, Optional = true },
                    new("fill_depth_ft", KeyKind.Number, "ft", "water to wet the worked soil and stand over it") { Least = 0, AboveLeast = true, Most = 10 },
                    new("hold_loss_in_day", KeyKind.Number, "in/day", "lost from covered land to the air and the ground") { Least = 0, Most = 5 },
                    new("gate_cfs", KeyKind.Number, "cfs", "the most that its gate passes") { Least = 0, AboveLeast = true, Most = 1000, Optional = true },
                ],
            },
        ],
        [
            new("days", KeyKind.Number, "days", "until all of them are full") { NullMeans = "never" },
            new("never", KeyKind.YesNo, string.Empty, "whether one of them never is"),
            new("short_cfs", KeyKind.Number, "cfs", "how much more must come than does") { NullMeans = "the supply is enough" },
            new("hold_cfs_now", KeyKind.Number, "cfs", "taken by all land that is wet now"),
            new("hold_cfs_when_full", KeyKind.Number, "cfs", "taken once all of it is full"),
            new("over_cfs_when_full", KeyKind.Number, "cfs", "over then: to be ordered down") { NullMeans = "never full" },
            new("fields", KeyKind.Rows, "days", "when each is full, and when each of its checks is: field, days, never, covered_ac, check_days"),
        ],
        Sources.WaterBalance,
        """supply_cfs=14 held_cfs=4.243 fields=[{"field":"N4","net_ac":118,"wet_ac":78.667,"checks":6,"fill_depth_ft":0.6,"hold_loss_in_day":0.32}]""",
        Work)
    { Limits = "Flow, losses and depths stay the same; boxes between checks pass all that comes. A narrow box holds water back, and the field is later." };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var rows = given.Each("fields");
        var problems = Faults(rows).ToImmutableArray();
        if (!problems.IsEmpty) return Outcome<Reckoned>.Refuse(problems);
        var grounds = rows.Select(Ground).ToImmutableArray();
        var (supply, held) = (FlowRate.FromCubicFeetPerSecond(given.Number("supply_cfs")), FlowRate.FromCubicFeetPerSecond(given.NumberOrNone("held_cfs") ?? 0));
        var way = (given.TextOrNone("way") ?? InTurn) == InTurn ? FillingWay.OneAfterAnother : FillingWay.SideBySide;
        var now = grounds.Aggregate(held, (sum, g) => sum + g.Holding);
        var full = grounds.Aggregate(held, (sum, g) => sum + g.HoldingFull);
        _ = new FillRun(grounds, held, [new FlowStep(TimeSpan.Zero, supply)], way).Run();
        var never = grounds.Any(g => !g.IsFull);
        TimeSpan? last = never ? null : grounds.Max(g => g.FullAt!.Value);
        FlowRate? missing = never && full >= supply ? full - supply : null;
        var names = rows.Select(r => r.Text("field")).ToImmutableArray();
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("days", Datum.Of(last?.TotalDays)), ("never", never), ("short_cfs", Datum.Of(missing?.CubicFeetPerSecond)),
                ("hold_cfs_now", now.CubicFeetPerSecond), ("hold_cfs_when_full", full.CubicFeetPerSecond), ("over_cfs_when_full", never ? Datum.None : (supply - full).CubicFeetPerSecond),
                ("fields", Datum.ListOf(grounds.Zip(names, Row))),
            ],
            Show(given, [.. grounds.Zip(names)], (now, full, last)))
        { Cautions = [.. Cautions(grounds, names, missing)] });
    }

    private static IEnumerable<Problem> Faults(ImmutableArray<ReckoningInput> rows)
    {
        for (var i = 0; i < rows.Length; i++)
        {
            if ((rows[i].NumberOrNone("wet_ac") ?? 0) <= rows[i].Number("net_ac")) continue;
            yield return ReckonProblems.Impossible.At("fields #" + (i + 1).ToString(CultureInfo.InvariantCulture) + " wet_ac",
                ("value", Figure(rows[i].Number("wet_ac")) + " ac wet"), ("limit", "the field has " + Figure(rows[i].Number("net_ac")) + " ac"), ("remedy", "Give the wet acres of this field alone."));
        }

        var checks = rows.Sum(r => r.Has("checks") ? r.Whole("checks") : 1);
        if (checks > MostChecks)
            yield return ReckonProblems.Impossible.At("fields", ("value", Number(checks) + " checks"), ("limit", "at most " + Number(MostChecks) + " are worked out at once"), ("remedy", "Ask for the fields of one source alone."));
    }

    private static FillGround Ground(ReckoningInput row)
    {
        var (net, checks) = (Area.FromAcres(row.Number("net_ac")), row.Has("checks") ? row.Whole("checks") : 1);
        var wet = Area.FromAcres(row.NumberOrNone("wet_ac") ?? 0);
        var job = new FloodJob(net - wet, wet, WaterDepth.FromFeet(row.Number("fill_depth_ft")), DepthRate.FromInchesPerDay(row.Number("hold_loss_in_day")));
        return new FillGround(job, [.. Enumerable.Repeat(net / checks, checks)], row.NumberOrNone("gate_cfs") is { } gate ? FlowRate.FromCubicFeetPerSecond(gate) : null);
    }

    private static Datum Row(FillGround ground, string name) => Datum.Row(
        ("field", name), ("days", Datum.Of(ground.FullAt?.TotalDays)), ("never", !ground.IsFull), ("covered_ac", ground.Covered.Acres),
        ("check_days", Datum.ListOf(Enumerable.Range(0, ground.Ends.Length).Select(i => i < ground.WetChecks ? (Datum)0.0 : Datum.Of(ground.Full(i)?.TotalDays)))));

    private static Working Show(ReckoningInput given, ImmutableArray<(FillGround Ground, string Name)> fields, (FlowRate Now, FlowRate Full, TimeSpan? Last) sums)
    {
        var working = Working.Empty.Given("Q", "steady flow", given.Number("supply_cfs"), "cfs", "typed").Given("Ho", "held besides", given.NumberOrNone("held_cfs") ?? 0, "cfs", "typed")
            .Step("H", "taken by all land that is wet now", sums.Now.CubicFeetPerSecond, "cfs", "Ho + Σ m A0", Sources.WaterBalance)
            .Step("H1", "taken once all of it is full", sums.Full.CubicFeetPerSecond, "cfs", "Ho + Σ m A", Sources.WaterBalance);
        foreach (var (ground, name) in fields)
        {
            working = working
                .Given("A(" + name + ")", "its land", ground.Ends[^1].Acres, "ac", "typed").Given("A0(" + name + ")", "of that wet already", ground.Job.Wet.Acres, "ac", "typed")
                .Given("V(" + name + ")", "fill depth", ground.Job.Fill.Feet, "ft", "typed").Given("m(" + name + ")", "loss", ground.Job.Loss.FeetPerDay, "ft/day", "typed")
                .Step("t(" + name + ")", "full after", Datum.Of(ground.FullAt?.TotalDays), "days", ground.IsFull ? "(V / m) ln((S − m A0) / (S − m A)) of every check, S what is left for it of 1.983471 Q" : "never: what is left for it is not above m A", Sources.WaterBalance);
        }

        return working.Step("t", "all of them full after", Datum.Of(sums.Last?.TotalDays), "days", sums.Last is null ? "never" : "the last t", Sources.Arithmetic);
    }

    private static IEnumerable<string> Cautions(ImmutableArray<FillGround> grounds, ImmutableArray<string> names, FlowRate? missing)
    {
        if (missing is { } more) yield return "Holding it all takes " + Figure(more.CubicFeetPerSecond) + " cfs more than comes.";
        foreach (var (ground, name) in grounds.Zip(names).Where(g => !g.First.IsFull))
            yield return name + " is never full: it stops near " + Figure(ground.Covered.Acres) + " of " + Figure(ground.Ends[^1].Acres) + " ac.";
    }
}
