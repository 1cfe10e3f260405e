using CsCheck;
using Watersown.Reckon;

namespace Watersown.Harvest;

public sealed class GrainMoistureTests
{
    // International Rice Research Institute, Rice Knowledge Bank, moisture content: 1,000 kg at 25 % are 872 kg at 14 %.
    [Fact]
    public void A_ton_at_a_quarter_moisture_is_872_kilograms_at_fourteen_percent() =>
        Assert.Equal(872, GrainMoisture.WeightAt(Mass.FromKilograms(1000), Fraction.FromPercent(25), Fraction.FromPercent(14)).Kilograms, 0.5);

    // Derived: 95 × 86 / 80 = 102.1 and back; 1,000 × 75 / 86.
    [Theory]
    [InlineData(102.125, 20, 14, 95)]
    [InlineData(95, 14, 20, 102.125)]
    [InlineData(1000, 25, 14, 872.093)]
    public void Dry_matter_stays_the_same(double green, double from, double to, double expected) =>
        Assert.Equal(expected, Ask.For("grain-weight", ("green_cwt", green), ("moisture_pct", from), ("to_moisture_pct", to)).Number("cwt"), 0.001);

    [Fact]
    public void There_and_back_is_the_same_grain() => Gen.Select(Gen.Double[0, 1e6], Gen.Double[0, 60], Gen.Double[0, 60]).Sample((cwt, from, to) =>
    {
        var grain = Mass.FromHundredweights(cwt);
        var there = GrainMoisture.WeightAt(grain, Fraction.FromPercent(from), Fraction.FromPercent(to));
        var back = GrainMoisture.WeightAt(there, Fraction.FromPercent(to), Fraction.FromPercent(from));
        Assert.Equal(grain.Kilograms, back.Kilograms, 1e-9 * (1 + grain.Kilograms));
        if (from >= to) Assert.True(there <= grain * (1 + 1e-12));
        else Assert.True(there >= grain * (1 - 1e-12));
    });

    [Fact]
    public void Every_fault_is_told_at_once() =>
        Ask.For("grain-weight", ("green_cwt", -1), ("moisture_pct", 100), ("to_moisture_pct", "dry")).Refuses(
            (ReckonProblems.TooSmall, "green_cwt"), (ReckonProblems.TooLarge, "moisture_pct"), (ReckonProblems.WrongSort, "to_moisture_pct"));

    [Fact]
    public void Adding_water_that_is_not_there_is_said() =>
        Assert.Contains(Ask.For("grain-weight", ("green_cwt", 10), ("moisture_pct", 11), ("to_moisture_pct", 14)).Value.Cautions, c => c.Contains("not there", StringComparison.Ordinal));

    [Fact]
    public void Grain_of_nothing_but_water_never_reaches_the_formula() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GrainMoisture.WeightAt(Mass.FromKilograms(1), Fraction.FromPercent(20), Fraction.One));
}
