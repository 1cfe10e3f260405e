using Watersown.Hydraulics;
using Watersown.Reckon;
using static Watersown.Wording.Say;

namespace Watersown.Water;

/// <summary>What a box lets through.</summary>
internal static class BoxFlowReckoning
{
    private const string NotchWord = "v-notch-90";

    private static readonly Citation Francis = Sources.WaterMeasurementManual.At("eq. 7-4, Francis 1883");

    public static Reckoning Reckoning => new(
        "box-flow",
        "How much water runs through this box?",
        [
            new("kind", KeyKind.Text, string.Empty, "shape of the opening") { Choices = ["contracted", "suppressed", "cipolletti", NotchWord] },
            new("width_ft", KeyKind.Number, "ft", "width of the crest; a notch needs none") { Least = 0, AboveLeast = true, Most = 100, Optional = true },
            new("head_ft", KeyKind.Number, "ft", "water above the top of the boards, four heads upstream") { Least = 0, Most = 10 },
            new("downstream_head_ft", KeyKind.Number, "ft", "water above the top of the boards on the lower side; left out where it stands under them") { Least = 0, Most = 10, Optional = true },
        ],
        [
            new("cfs", KeyKind.Number, "cfs", "flow through the box"),
            new("gpm", KeyKind.Number, "gpm", "the same"),
        ],
        Sources.WaterMeasurementManual.At("ch. 7"),
        "kind=suppressed width_ft=4 head_ft=0.333",
        Work)
    {
        Limits = "Good to about 5 % on whole, level boards: head from 0.2 ft, up to a third of the width (contracted, cipolletti) or 1.25 ft (v-notch-90); water below at least 0.2 ft under the crest, or told as downstream_head_ft. Leaks between boards are not in it.",
        Demands = given => given.Has("width_ft") || given.TextOrNone("kind") is null or NotchWord
            ? []
            : [ReckonProblems.MissingKey.At("width_ft", ("meaning", "width of the crest"), ("meaning:es", "el ancho de la cresta"), ("unit", " (ft)"))],
    };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var kind = Kind(given.Text("kind"));
        var head = WaterDepth.FromFeet(given.Number("head_ft"));
        var crest = Length.FromFeet(given.NumberOrNone("width_ft") ?? 0);
        var below = WaterDepth.FromFeet(given.NumberOrNone("downstream_head_ft") ?? 0);
        ImmutableArray<Problem> problems = [.. Problems(given, kind)];
        if (!problems.IsEmpty) return Outcome<Reckoned>.Refuse(problems);

        var free = Weir.FreeFlow(kind, head, crest);
        var share = Weir.Drowning(kind, head, below);
        var flow = free * share;
        var (formula, source) = Formula(kind);
        var working = kind == WeirKind.VNotch90 ? Working.Empty : Working.Empty.Given("L", "width of the crest", given.Number("width_ft"), "ft", "typed");
        working = working
            .Given("H", "water above the crest", given.Number("head_ft"), "ft", "typed")
            .Step("Q1", "free flow", free.CubicFeetPerSecond, "cfs", formula, source);
        if (below > WaterDepth.Zero)
        {
            working = working
                .Given("H2", "water above the crest on the lower side", given.Number("downstream_head_ft"), "ft", "typed")
                .Step("r", "what is left of it, drowned", share, string.Empty, "(1 − (H2 / H)^" + Figure(Weir.Exponent(kind)) + ")^0.385", Sources.Villemonte1947);
        }

        working = working
            .Step("Q", "flow through the box", flow.CubicFeetPerSecond, "cfs", below > WaterDepth.Zero ? "Q1 r" : "Q1", Sources.Arithmetic)
            .Step("G", "the same", flow.GallonsPerMinute, "gpm", "448.831 Q", Sources.Definition);
        return Outcome<Reckoned>.Of(new Reckoned([("cfs", flow.CubicFeetPerSecond), ("gpm", flow.GallonsPerMinute)], working) { Cautions = [.. Cautions(kind, head, crest, below)] });
    }

    private static IEnumerable<Problem> Problems(ReckoningInput given, WeirKind kind)
    {
        var head = given.Number("head_ft");
        if (given.NumberOrNone("downstream_head_ft") is { } below and > 0 && below >= head)
            yield return WaterProblems.WaterBelowTooHigh.At("downstream_head_ft", ("value", Figure(below) + " ft"), ("limit", Figure(head) + " ft"));
        if (kind == WeirKind.Contracted && given.Number("width_ft") is var width && head >= 5 * width)
            yield return WaterProblems.HeadTooGreat.At("head_ft", ("value", Figure(head) + " ft"), ("width", Figure(width) + " ft"), ("limit", Figure(5 * width) + " ft"));
    }

    private static WeirKind Kind(string word) => word switch
    {
        "contracted" => WeirKind.Contracted,
        "suppressed" => WeirKind.Suppressed,
        "cipolletti" => WeirKind.Cipolletti,
        NotchWord => WeirKind.VNotch90,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static (string Formula, Citation Source) Formula(WeirKind kind) => kind switch
    {
        WeirKind.Contracted => ("3.33 (L − 0.2 H) H^1.5", Francis),
        WeirKind.Suppressed => ("3.33 L H^1.5", Francis),
        WeirKind.Cipolletti => ("3.367 L H^1.5", Sources.WaterMeasurementManual.At("eq. 7-7")),
        WeirKind.VNotch90 => ("(8/15) √(2 × 32.174) 0.578 (H + 0.0029)^2.5", Sources.WaterMeasurementManual.At("eq. 7-3, Kindsvater and Shen")),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static IEnumerable<string> Cautions(WeirKind kind, WaterDepth head, Length crest, WaterDepth below)
    {
        if (head < Weir.LeastHead)
            yield return "Under " + Figure(Weir.LeastHead.Feet) + " ft of head the water clings to the boards: the true flow may differ much.";
        if (kind is WeirKind.Contracted or WeirKind.Cipolletti && head.Meters > crest.Meters * Weir.MostHeadOverWidth)
            yield return "The head is more than a third of the width, beyond what the formula was measured for.";
        if (kind == WeirKind.VNotch90 && head > Weir.MostNotchHead)
            yield return "The head is above " + Figure(Weir.MostNotchHead.Feet) + " ft, beyond what the notch was measured for.";
        if (kind == WeirKind.VNotch90 && crest > Length.Zero)
            yield return "A notch has no width: width_ft was not used.";
        if (below > WaterDepth.Zero)
            yield return "A drowned box hangs on a small difference of two heads: read both with care.";
        yield return "The head is read four heads upstream, where the surface is level; leaks between boards come on top.";
    }
}
