using CsCheck;
using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season;

public sealed class MarkChecksTests
{
    private static readonly DateTimeOffset Six = PlannedMorning.At(8, 6);

    [Theory]
    [InlineData(10, false)]
    [InlineData(10.1, true)]
    public void What_has_not_happened_yet_is_refused_beyond_ten_minutes_of_unlike_clocks(double minutes, bool refused) =>
        Assert.Equal(refused ? [SeasonProblems.InFuture] : [], Kinds(Marks.At(1, Six.AddMinutes(minutes), new Noted("x", null))));

    [Theory]
    [InlineData(0, "")]
    [InlineData(14, "")]
    [InlineData(15, "LIMIT-005")]
    [InlineData(36, "LIMIT-005")]
    [InlineData(37, "LIMIT-003")]
    [InlineData(-1, "LIMIT-002")]
    public void Depths_are_warned_of_above_14_inches_and_refused_outside_0_to_36(double inches, string code) =>
        Assert.Equal(code, string.Join(",", Kinds(new DepthRead("R4", null, WaterDepth.FromInches(inches))).Select(k => k.Code)));

    [Fact]
    public void An_order_for_more_than_a_week_ago_is_refused() =>
        Assert.Equal([SeasonProblems.OrderOld], Kinds(new WaterOrdered("NT-1", Six.AddDays(-8), PlannedMorning.Cfs(6), OrderState.Running)));

    [Fact]
    public void An_order_above_the_cap_is_warned_of() =>
        Assert.Equal([LandProblems.RunningAboveCap], Kinds(new WaterOrdered("NT-1", Six, PlannedMorning.Cfs(21), OrderState.Asked)));

    [Fact]
    public void A_gust_below_the_wind_a_low_above_the_high_and_hours_reversed_are_told()
    {
        Assert.Equal([StateProblems.GustBelowWind], Kinds(new WindSeen(Speed.FromMilesPerHour(15), Speed.FromMilesPerHour(10))));
        Assert.Equal([StateProblems.LowAboveHigh], Kinds(new WarmthRead(new(2026, 5, 8), Temperature.FromFahrenheit(50), Temperature.FromFahrenheit(60))));
        Assert.Equal([StateProblems.HoursReversed], Kinds(new SlotGiven(new(2026, 5, 8), new(9, 0), new(7, 0))));
    }

    [Theory]
    [InlineData(137, "")]
    [InlineData(150, "SEASON-023")]
    [InlineData(500, "LIMIT-005,SEASON-023")]
    [InlineData(0, "LIMIT-001")]
    [InlineData(5001, "LIMIT-003,SEASON-023")]
    public void Acres_billed_beyond_the_field_are_asked_about_and_impossible_ones_refused(double acres, string codes) =>
        Assert.Equal(codes, string.Join(",", Kinds(new FlightBilled("S3") { Land = Area.FromAcres(acres) }).Select(k => k.Code).Order(StringComparer.Ordinal)));

    [Theory]
    [InlineData(50, 137, "")]
    [InlineData(20, 137, "LIMIT-004")]
    [InlineData(120, 137, "LIMIT-005")]
    [InlineData(501, 137, "LIMIT-003")]
    [InlineData(50, 3, "LIMIT-004")]
    [InlineData(50, 2001, "LIMIT-003")]
    public void A_track_of_no_likely_swath_or_field_is_told(double swath, double acres, string code) =>
        Assert.Equal(code, string.Join(",", Kinds(new TrackLooked("S3", Length.FromFeet(swath), Area.FromAcres(acres)) { Skip = Fraction.FromPercent(2), SkipError = Fraction.FromPercent(1), Overlap = Fraction.FromPercent(3), OffField = Fraction.FromPercent(4) }).Select(k => k.Code)));

    [Fact]
    public void A_field_a_source_and_a_check_that_the_farm_does_not_have_are_warned_of_never_refused()
    {
        Assert.Equal([SeasonProblems.UnknownField], Kinds(new CheckWater("N9", 1, WaterSeen.Wet)));
        Assert.Equal([SeasonProblems.UnknownSource], Kinds(new SourceSwitched("XX", true)));
        Assert.Equal([SeasonProblems.UnknownCheck], Kinds(new CheckWater("N3", 6, WaterSeen.Wet)));
        Assert.Empty(MarkChecks.Check(Marks.At(1, Six, new CheckWater("N9", 1, WaterSeen.Wet)), null, Six));
    }

    [Fact]
    public void Net_acres_above_gross_are_refused() => Assert.Equal([LandProblems.NetAboveGross], Kinds(new FieldCorrected("N3") { Net = Area.FromAcres(101) }));

    [Fact]
    public void Looking_at_any_mark_never_throws_and_needs_no_farm() =>
        AnyMark.Mark.Sample(m => { _ = MarkChecks.Check(m, PlannedMorning.State(), Six); _ = MarkChecks.Check(m, null, Six); });

    private static IEnumerable<ProblemKind> Kinds(MarkFact fact) => Kinds(Marks.At(1, Six, fact));

    private static IEnumerable<ProblemKind> Kinds(Mark mark) => MarkChecks.Check(mark, PlannedMorning.State(), Six).Select(p => p.Kind);
}
