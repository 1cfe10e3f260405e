using Watersown.Hydraulics;
using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>What runs through a gate under water, and over a levee.</summary>
internal static class OpeningReckonings
{
    public static Reckoning Gate => new(
        "drowned-gate",
        "How much water runs through a gate or box that stands under water on both sides?",
        [
            new("width_ft", KeyKind.Number, "ft", "width of the opening") { Least = 0, AboveLeast = true, Most = 100 },
            new("height_ft", KeyKind.Number, "ft", "height of the opening") { Least = 0, AboveLeast = true, Most = 20 },
            new("difference_ft", KeyKind.Number, "ft", "level above less level below") { Least = 0, Most = 20 },
        ],
        [
            new("cfs", KeyKind.Number, "cfs", "flow through it"),
            new("gpm", KeyKind.Number, "gpm", "the same"),
        ],
        Sources.WaterMeasurementManual.At("ch. 9"),
        "width_ft=2 height_ft=1 difference_ft=0.5",
        WorkGate)
    {
        Limits = "Only while the whole opening is under water on both sides; where the lower side is free, box-flow tells it. Sharp edges, clear of the floor and the sides.",
    };

    public static Reckoning Levee => new(
        "levee-overtop",
        "Water runs over a levee or a wide board: how much?",
        [
            new("length_ft", KeyKind.Number, "ft", "along the top that water runs over") { Least = 0, AboveLeast = true, Most = 5000 },
            new("head_in", KeyKind.Number, "in", "water above the top, a step back from it where it is level") { Least = 0, Most = 120 },
        ],
        [
            new("cfs_least", KeyKind.Number, "cfs", "at the least"),
            new("cfs_most", KeyKind.Number, "cfs", "at the most"),
            new("acft_day", KeyKind.Number, "ac-ft/day", "at the most, in a day"),
        ],
        Sources.Bos1989,
        "length_ft=40 head_in=1",
        WorkLevee)
    { Limits = "A flat top several heads wide with the water below well under it. Earth scours: what runs over cuts a gap, and then levee-breach tells it." };

    private static Outcome<Reckoned> WorkGate(ReckoningInput given)
    {
        var opening = Area.FromSquareFeet(given.Number("width_ft") * given.Number("height_ft"));
        var difference = WaterDepth.FromFeet(given.Number("difference_ft"));
        var flow = Openings.Submerged(opening, difference);
        var working = Working.Empty
            .Given("w", "width of the opening", given.Number("width_ft"), "ft", "typed")
            .Given("h", "height of the opening", given.Number("height_ft"), "ft", "typed")
            .Given("Δh", "level above less level below", difference.Feet, "ft", "typed")
            .Step("A", "the opening", opening.SquareFeet, "sq ft", "w h", Sources.Arithmetic)
            .Step("Q", "flow through it", flow.CubicFeetPerSecond, "cfs", "0.61 A √(2 × 32.174 Δh)", Sources.WaterMeasurementManual.At("ch. 9, eq. 9-1"))
            .Step("G", "the same", flow.GallonsPerMinute, "gpm", "448.831 Q", Sources.Definition);
        // Half of an error in the difference comes into the flow.
        ImmutableArray<string> cautions = difference < WaterDepth.FromFeet(0.2)
            ? ["Under 0.2 ft of difference a hundredth of a foot misread is 2.5 % of the flow and more."]
            : [];
        return Outcome<Reckoned>.Of(new Reckoned([("cfs", flow.CubicFeetPerSecond), ("gpm", flow.GallonsPerMinute)], working) { Cautions = cautions });
    }

    private static Outcome<Reckoned> WorkLevee(ReckoningInput given)
    {
        var head = WaterDepth.FromInches(given.Number("head_in"));
        var most = Openings.FlatTop(head, Length.FromFeet(given.Number("length_ft")));
        var least = most * Openings.FlatTopLeast.Share;
        var working = Working.Empty
            .Given("L", "along the top", given.Number("length_ft"), "ft", "typed")
            .Given("H", "water above the top", head.Feet, "ft", "typed, in / 12")
            .Step("Q", "at the most", most.CubicFeetPerSecond, "cfs", "(2/3) √(2 × 32.174 / 3) L H^1.5", Sources.Bos1989)
            .Step("q", "at the least", least.CubicFeetPerSecond, "cfs", "0.85 Q", Sources.Bos1989)
            .Step("V", "at the most, in a day", most.AcreFeetPerDay, "ac-ft/day", "1.983471 Q", Sources.Definition);
        return Outcome<Reckoned>.Of(new Reckoned([("cfs_least", least.CubicFeetPerSecond), ("cfs_most", most.CubicFeetPerSecond), ("acft_day", most.AcreFeetPerDay)], working)
        { Cautions = ["Stop it first: running water cuts earth within the hour."] });
    }
}
