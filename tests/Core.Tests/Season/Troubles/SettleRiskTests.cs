using Watersown.Schedule;

namespace Watersown.Season.Troubles;

/// <summary>Wind came three hours after S1 was sown. Thursday morning, before anybody has looked.</summary>
public sealed class SettleRiskTests
{
    private static readonly DateTimeOffset Thursday = PlannedMorning.At(7, 5, 30);

    [Fact]
    public void The_field_sown_last_before_the_wind_is_looked_at_first()
    {
        var risks = SettleRisks.Of(Book());
        Assert.Equal("S1", risks[0].Field.Code);
        Assert.Equal(["N2", "R3", "S1"], risks.Select(r => r.Field.Code).Order(StringComparer.Ordinal));
        Assert.Equal(100, risks[0].Share.Percent, 9);
        Assert.Equal((22.0, 33.0), (Math.Round(risks[0].Strongest!.Sustained.MilesPerHour, 6), Math.Round(risks[0].Strongest!.Gust.MilesPerHour, 6)));
    }

    [Fact]
    public void Fetch_is_along_the_wind_and_deeper_and_longer_water_ranks_higher()
    {
        // A north wind over half a mile of field in 6 checks: 2,640 ft over the root of 6 = 1,078 ft.
        var s1 = SettleRisks.Of(Book())[0];
        Assert.Equal((1078, true, false), ((int)Math.Round(s1.Fetch!.Value.Feet, 0), s1.FetchGuessed, s1.DepthTold));
        var deeper = SettleRisks.Of(Book(new DepthRead("S1", null, WaterDepth.FromInches(4)))).Single(r => r.Field.Code == "S1");
        Assert.Equal(s1.Index * 2, deeper.Index, s1.Index * 1e-9);
    }

    [Fact]
    public void Drawn_checks_say_how_far_water_reaches()
    {
        var book = Book();
        var field = book.State.Farm.Field("S1");
        var edge = field.Boundary!;
        var drawn = field with { Basins = [.. field.Basins.Select(b => b with { Boundary = edge })] };
        Assert.Equal((2640, false), ((int)Math.Round(SettleRisks.FetchOf(drawn, Bearing.FromDegrees(0)).Fetch.Feet / 10) * 10, SettleRisks.FetchOf(drawn, Bearing.FromDegrees(0)).Guessed));
    }

    [Fact]
    public void Somebody_who_looked_takes_it_off_the_list_and_old_sowings_are_not_on_it()
    {
        Assert.Contains(ScoutList.Of(Book(), null), d => d is { Reason: ScoutReason.Wind, Field.Code: "S1" });
        var seen = Book(new Scouted("S1", "stand", "well"));
        Assert.True(SettleRisks.Of(seen).Single(r => r.Field.Code == "S1").Scouted);
        Assert.DoesNotContain(ScoutList.Of(seen, null), d => d is { Reason: ScoutReason.Wind, Field.Code: "S1" });
        Assert.Empty(SettleRisks.Of(SeasonFold.Fold(Ground(), Log(), PlannedMorning.At(12, 5))));
    }

    [Fact]
    public void No_wind_told_is_no_rank() => Assert.All(SettleRisks.Of(SeasonFold.Fold(Ground() with { Wind = [] }, Logbook.Empty, Thursday)), r => Assert.Equal(0, r.Index));

    private static SeasonState Ground() => PlannedMorning.State();

    private static SeasonBook Book(params MarkFact[] facts) => SeasonFold.Fold(Ground(), Log().With(facts.Select((f, i) => Marks.At(i + 50, Thursday, f))), Thursday);

    private static Logbook Log() => Logbook.Empty.With(
    [
        Wind(1, PlannedMorning.At(6, 6), 4, 6), Wind(2, PlannedMorning.At(6, 9, 40), 20, 31), Wind(3, PlannedMorning.At(6, 18), 22, 33), Wind(4, PlannedMorning.At(7, 5), 19, 28),
    ]);

    private static Mark Wind(int id, DateTimeOffset at, double steady, double gust) =>
        Marks.At(id, at, new WindSeen(Speed.FromMilesPerHour(steady), Speed.FromMilesPerHour(gust)) { From = Bearing.FromDegrees(0) });
}
