using System.Globalization;
using Watersown.Reckon;
using Watersown.Water.Flood;
using static Watersown.Wording.Say;

namespace Watersown.Water;

/// <summary>When the checks of a field are full, and how far what is badly known moves that.</summary>
internal static class FillChecksReckoning
{
    private const double LongestDays = 60;

    public static Reckoning Reckoning => new(
        "fill-checks",
        "When are the checks of this field full, and how sure is that?",
        [
            new("checks", KeyKind.WholeNumber, string.Empty, "checks of one size, one below the other") { Least = 1, Most = 60 },
            new("check_ac", KeyKind.Number, "ac", "land of each") { Least = 1, Most = 200 },
            new("take_up_ft", KeyKind.Number, "ft", "water that the soil drinks as it gets wet") { Least = 0, Most = 3 },
            new("depth_in", KeyKind.Number, "in", "depth that the boards are set for") { Least = 0.5, Most = 24 },
            new("hold_loss_in_day", KeyKind.Number, "in/day", "lost from covered land to the air and the ground") { Least = 0, Most = 5 },
            new("supply_cfs", KeyKind.Number, "cfs", "steady supply into the head check") { Least = 0, AboveLeast = true, Most = 200 },
            new("box_ft", KeyKind.Number, "ft", "width of the opening between two checks, all boxes of a levee together") { Least = 1, Most = 20 },
            new("drop_ft", KeyKind.Number, "ft", "how much lower each check lies") { Least = 0, Most = 5 },
            new("supply_off_pct", KeyKind.Number, "%", "how far the supply may be off, either way") { Least = 0, Most = 90 },
            new("loss_off_pct", KeyKind.Number, "%", "how far the loss may be off") { Least = 0, Most = 90 },
            new("take_up_off_pct", KeyKind.Number, "%", "how far the take-up may be off") { Least = 0, Most = 90 },
        ],
        [
            new("full_h", KeyKind.Numbers, "h", "when each check is full, as told") { NullMeans = "not all of them ever are" },
            new("early_h", KeyKind.Number, "h", "one in ten futures has all full sooner") { NullMeans = "never" },
            new("middle_h", KeyKind.Number, "h", "half of them are full by then") { NullMeans = "never" },
            new("late_h", KeyKind.Number, "h", "one in ten is full later") { NullMeans = "never" },
            new("never_pct", KeyKind.Number, "%", "futures in which it is never all full"),
        ],
        Sources.WaterBalance,
        "checks=6 check_ac=19.67 take_up_ft=0.43 depth_in=2 hold_loss_in_day=0.32 supply_cfs=14 box_ft=4 drop_ft=0.2 supply_off_pct=5 loss_off_pct=20 take_up_off_pct=10",
        Work)
    { Limits = "Checks of one size with level ground, sharp boards set for the depth, all dry at the start, steady supply and loss, 60 days at most. A box is read to about 5 %." };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var network = Network(given);
        var doubt = new FloodDoubt(Off(given, "supply_off_pct"), Off(given, "loss_off_pct"), Off(given, "take_up_off_pct"));
        var span = Span(given);
        var told = Flooding.Run(network, span, new FloodOptions { Telling = TimeSpan.Zero });
        var spread = FloodSpread.Of(network, doubt, span);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("full_h", told.AllFull is null ? Datum.None : Datum.ListOf(told.Checks.Select(c => c.Full!.Value.TotalHours))),
                ("early_h", Datum.Of(spread.Early?.TotalHours)),
                ("middle_h", Datum.Of(spread.Middle?.TotalHours)),
                ("late_h", Datum.Of(spread.Late?.TotalHours)),
                ("never_pct", spread.Never.Percent),
            ],
            Show(given, told, spread))
        { Cautions = [.. Cautions(given, told, spread)] });
    }

    private static FloodNetwork Network(ReckoningInput given)
    {
        var (count, depth) = (given.Whole("checks"), WaterDepth.FromInches(given.Number("depth_in")));
        return new FloodNetwork
        {
            Checks = [.. Enumerable.Range(0, count).Select(i => new FloodCheck("ck " + (i + 1).ToString(CultureInfo.InvariantCulture), Area.FromAcres(given.Number("check_ac")), WaterDepth.FromFeet(given.Number("take_up_ft")), depth)
            {
                Ground = WaterDepth.FromFeet(-i * given.Number("drop_ft")),
                Percolation = DepthRate.FromInchesPerDay(given.Number("hold_loss_in_day")),
            })],
            Boxes = [.. Enumerable.Range(0, count - 1).Select(i => new FloodBox("box", i, i + 1, Length.FromFeet(given.Number("box_ft")), depth))],
            Inlets = [new FloodInlet("supply", 0, [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicFeetPerSecond(given.Number("supply_cfs")))])],
        };
    }

    // Four times what the closed form says, to leave room for what stands over boards and for the unlucky futures.
    private static TimeSpan Span(ReckoningInput given)
    {
        var fill = WaterDepth.FromFeet(given.Number("take_up_ft")) + WaterDepth.FromInches(given.Number("depth_in"));
        var job = new FloodJob(Area.FromAcres(given.Number("check_ac") * given.Number("checks")), Area.Zero, fill, DepthRate.FromInchesPerDay(given.Number("hold_loss_in_day")));
        var closed = Ponding.FillTime(job, FlowRate.FromCubicFeetPerSecond(given.Number("supply_cfs")));
        return TimeSpan.FromDays(closed is { TotalDays: < LongestDays / 4 } time ? Math.Max(1, time.TotalDays * 4) : LongestDays);
    }

    private static Fraction Off(ReckoningInput given, string key) => Fraction.FromPercent(given.Number(key));

    private static Working Show(ReckoningInput given, FloodRun told, FloodSpread spread) => Working.Empty
        .Given("n", "checks", given.Number("checks"), string.Empty, "typed")
        .Given("A", "land of each", given.Number("check_ac"), "ac", "typed")
        .Given("S", "drunk by the soil as it gets wet", given.Number("take_up_ft"), "ft", "typed")
        .Given("d", "depth the boards are set for", given.Number("depth_in"), "in", "typed")
        .Given("e", "loss from covered land", given.Number("hold_loss_in_day"), "in/day", "typed")
        .Given("Q", "steady supply", given.Number("supply_cfs"), "cfs", "typed")
        .Given("L", "width of each box", given.Number("box_ft"), "ft", "typed")
        .Given("z", "drop from check to check", given.Number("drop_ft"), "ft", "typed")
        .Step("t", "all full, as told", Datum.Of(told.AllFull?.TotalHours), "h", "A d(held)/dt = what comes − 3.33 (L − 0.2 H) H^1.5, drowned from below − e × covered, of every check", Sources.WaterMeasurementManual.At("eq. 7-4, Francis 1883"))
        .Given("uQ", "the supply may be off by", given.Number("supply_off_pct"), "%", "typed")
        .Given("ue", "the loss by", given.Number("loss_off_pct"), "%", "typed")
        .Given("uS", "the take-up by", given.Number("take_up_off_pct"), "%", "typed")
        .Step("t1", "one in ten futures sooner", Datum.Of(spread.Early?.TotalHours), "h", "the same in 64 futures: Q, e and S each at the middles of four equal parts of its range; the tenth of them", Sources.WaterBalance)
        .Step("t5", "half of them by then", Datum.Of(spread.Middle?.TotalHours), "h", "the half of them", Sources.Arithmetic)
        .Step("t9", "one in ten later", Datum.Of(spread.Late?.TotalHours), "h", "nine tenths of them", Sources.Arithmetic)
        .Step("p", "never all full", spread.Never.Percent, "%", "those that are not full when the run ends / 64", Sources.Arithmetic);

    private static IEnumerable<string> Cautions(ReckoningInput given, FloodRun told, FloodSpread spread)
    {
        if (told.AllFull is null)
            yield return told.Checks.Count(c => c.Full is not null) is var full and > 0 ? "Only " + Number(full) + " checks are ever full: what is wet drinks all that comes." : "Not even the head check is ever full.";
        else if (spread.Never > Fraction.Zero)
            yield return "In " + Figure(spread.Never.Percent) + " % of the futures it is never full: hardly more comes than holding takes.";
        var deepest = told.Checks.Max(c => c.Deepest.Inches);
        if (deepest > 2 * given.Number("depth_in"))
            yield return "Water stands up to " + Number(deepest, 1) + " in deep behind the boards while it runs: wider boxes, or boards set lower, keep it down.";
    }
}
