using CsCheck;

namespace Watersown.Quantities;

/// <summary>Second opinion: UnitsNet, whose own precision is about one part in a million.</summary>
public sealed class PressureTests
{
    [Fact]
    public void Every_unit_agrees_with_a_second_opinion() => Gen.Double[1, 200_000].Sample(pascals =>
    {
        var (ours, theirs) = (Pressure.FromPascals(pascals), UnitsNet.Pressure.FromPascals(pascals));
        Assert.Equal(theirs.Hectopascals, ours.Hectopascals, theirs.Hectopascals * 2e-6);
        Assert.Equal(theirs.Kilopascals, ours.Kilopascals, theirs.Kilopascals * 2e-6);
        Assert.Equal(theirs.PoundsForcePerSquareInch, ours.PoundsPerSquareInch, theirs.PoundsForcePerSquareInch * 2e-6);
        Assert.Equal(pascals, Pressure.FromHectopascals(ours.Hectopascals).Pascals, pascals * 1e-12);
        Assert.Equal(pascals, Pressure.FromKilopascals(ours.Kilopascals).Pascals, pascals * 1e-12);
        Assert.Equal(pascals, Pressure.FromPoundsPerSquareInch(ours.PoundsPerSquareInch).Pascals, pascals * 1e-12);
    });
}
