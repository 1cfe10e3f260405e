using Watersown.Flight.Cover;

namespace Watersown.Flight.Deposit;

/// <summary>
/// Straight passes a swath apart against what their overlap is known to be: closed forms, and the two synthetic rows of trays whose
/// joined sums were integrated numerically.
/// </summary>
public sealed class DepositReference
{
    // Trapezoid with level part T = 12 m and slopes b = 6 m: CV² = S (T + 2b/3 + b q³/3) / c² − 1, c = T + b, q = 1 − (S − c)/b.
    [Theory]
    [InlineData(18, 0)]
    [InlineData(19, 7.84)]
    [InlineData(20, 15.57)]
    [InlineData(21, 23.07)]
    [InlineData(22, 30.24)]
    [InlineData(23, 36.94)]
    [InlineData(24, 43.03)]
    public void A_trapezoid_is_as_uneven_as_its_closed_form(double swath, double cv)
    {
        var deposit = Over(LateralShape.Supposed(Length.FromMeters(18)), swath, FlyingMode.OneWay);
        Assert.Equal(cv, deposit.Cv.Percent, 0.05);
        Assert.Equal(1, deposit.Mean, 1e-4);
    }

    // A symmetric triangle of half base a = 9 m moved 2 m sideways: one way as if it were not, back and forth far worse.
    [Theory]
    [InlineData(9, FlyingMode.OneWay, 0)]
    [InlineData(10, FlyingMode.OneWay, 2.94)]
    [InlineData(12, FlyingMode.OneWay, 14.34)]
    [InlineData(9, FlyingMode.BackAndForth, 37.28)]
    [InlineData(10, FlyingMode.BackAndForth, 41.05)]
    [InlineData(12, FlyingMode.BackAndForth, 44.15)]
    public void An_off_center_triangle_is_as_uneven_as_its_closed_form(double swath, FlyingMode mode, double cv)
    {
        var triangle = LateralShape.Of([SoakedSeed.FromKilograms(1)], Length.FromMeters(9), Length.FromMeters(2));
        Assert.Equal(cv, Over(triangle, swath, mode).Cv.Percent, 0.05);
    }

    // A skewed triangle, 6 m to the left and 12 m to the right: exact at S = 9 m are 1/(4√3) and √(3/32).
    [Theory]
    [InlineData(8, FlyingMode.OneWay, 9.80)]
    [InlineData(9, FlyingMode.OneWay, 14.434)]
    [InlineData(12, FlyingMode.OneWay, 19.25)]
    [InlineData(8, FlyingMode.BackAndForth, 22.33)]
    [InlineData(9, FlyingMode.BackAndForth, 30.619)]
    [InlineData(12, FlyingMode.BackAndForth, 43.03)]
    public void A_skewed_triangle_is_as_uneven_as_its_closed_form(double swath, FlyingMode mode, double cv)
    {
        var skewed = LateralShape.Of([.. new[] { 2.0, 1.0 }.Select(SoakedSeed.FromKilograms)], Length.FromMeters(6), Length.FromMeters(3));
        Assert.Equal(cv, Over(skewed, swath, mode).Cv.Percent, 0.05);
    }

    // Trays joined by straight lines, each swath integrated numerically.
    [Theory]
    [InlineData(1, 12, FlyingMode.OneWay, 1.68)]
    [InlineData(1, 13, FlyingMode.OneWay, 9.55)]
    [InlineData(1, 14, FlyingMode.BackAndForth, 18.15)]
    [InlineData(2, 12, FlyingMode.OneWay, 13.49)]
    [InlineData(2, 12, FlyingMode.BackAndForth, 10.80)]
    [InlineData(2, 13, FlyingMode.OneWay, 17.30)]
    [InlineData(2, 13, FlyingMode.BackAndForth, 16.65)]
    [InlineData(2, 14, FlyingMode.BackAndForth, 23.87)]
    public void Trays_are_as_uneven_as_their_joined_sum(int row, double swath, FlyingMode mode, double cv) =>
        Assert.Equal(cv, Over(SomeDeposit.Trays(row == 1 ? SomeDeposit.P1 : SomeDeposit.P2), swath, mode).Cv.Percent, 0.05);

    // Passes of the trapezoid of 18 m, 20 m apart.
    [Fact]
    public void So_much_of_the_field_is_near_the_rate_as_lies_between_the_slopes()
    {
        // The level part of 12 m lies at 20/18; a slope of 6 m falls to 0.85 after 6 (1 − 0.85 × 18/20) = 1.41 m, on either side.
        var deposit = Over(LateralShape.Supposed(Length.FromMeters(18)), 20, FlyingMode.OneWay);
        Assert.Equal((12 + (2 * 1.41)) / 20, deposit.Near.Share, 0.01);
        Assert.Equal(0, deposit.Thin.Share);
        Assert.Empty(deposit.Places);
    }

    // The field is a whole number of periods wide.
    private static FieldDeposit Over(LateralShape shape, double swath, FlyingMode mode) =>
        DepositMap.Of(SomeFlight.Rectangle(8 * swath, 100), SomeDeposit.Straight(swath, mode, 8 * swath), shape, new DepositOptions { Cell = Length.FromMeters(swath / 100) }).Value;
}
