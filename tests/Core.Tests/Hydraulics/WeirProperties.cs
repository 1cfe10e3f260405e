using CsCheck;

namespace Watersown.Hydraulics;

public sealed class WeirProperties
{
    private static readonly Gen<WeirKind> Kinds = Gen.Int[0, 3].Select(i => (WeirKind)i);

    [Fact]
    public void More_head_never_means_less_flow() =>
        Gen.Select(Kinds, Gen.Double[0.5, 20], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((kind, width, a, b) =>
        {
            // Within two thirds of the width, beyond which a contracted crest is no longer one.
            double low = Math.Min(a, b) * width * 2 / 3, high = Math.Max(a, b) * width * 2 / 3;
            return Flow(kind, width, low) <= Flow(kind, width, high) * (1 + 1e-12);
        });

    [Fact]
    public void More_water_below_never_means_more_flow() =>
        Gen.Select(Kinds, Gen.Double[0.01, 5], Gen.Double[0, 0.999], Gen.Double[0, 0.999]).Sample((kind, head, a, b) =>
            Left(kind, head, Math.Max(a, b)) <= Left(kind, head, Math.Min(a, b)) && Left(kind, head, a) is > 0 and <= 1);

    [Fact]
    public void A_suppressed_crest_passes_the_flow_of_its_halves() =>
        Gen.Select(Gen.Double[0.5, 20], Gen.Double[0, 2]).Sample((width, head) =>
            Math.Abs(Flow(WeirKind.Suppressed, width, head) - (2 * Flow(WeirKind.Suppressed, width / 2, head))) < 1e-9);

    [Fact]
    public void Ends_that_draw_in_take_flow_away() =>
        Gen.Select(Gen.Double[0.5, 20], Gen.Double[0.01, 0.9]).Sample((width, share) =>
            Flow(WeirKind.Contracted, width, share * width) < Flow(WeirKind.Suppressed, width, share * width));

    [Fact]
    public void Without_head_nothing_runs() =>
        Kinds.Sample(kind => Flow(kind, 4, 0) == 0);

    [Fact]
    public void What_cannot_be_is_a_bug()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Flow(WeirKind.Suppressed, 4, -0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Flow(WeirKind.Suppressed, 0, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Flow(WeirKind.Contracted, 0.1, 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Left(WeirKind.Contracted, 0.5, 1));
    }

    [Fact]
    public void Water_under_the_crest_drowns_nothing() =>
        Assert.Equal(1, Weir.Drowning(WeirKind.Contracted, WaterDepth.FromFeet(0.5), WaterDepth.FromFeet(-0.2)));

    private static double Flow(WeirKind kind, double width, double head) =>
        Weir.FreeFlow(kind, WaterDepth.FromFeet(head), Length.FromFeet(width)).CubicFeetPerSecond;

    private static double Left(WeirKind kind, double head, double ratio) =>
        Weir.Drowning(kind, WaterDepth.FromFeet(head), WaterDepth.FromFeet(head * ratio));
}
