using Watersown.Schedule;

namespace Watersown.Season.Troubles;

/// <summary>Saturday 25 July: three cold nights are forecast, and the intermediate fields R1 to R3 head in two weeks.</summary>
public sealed class ColdNightRaiseTests
{
    private static readonly DateTimeOffset Saturday = new(2026, 7, 25, 5, 0, 0, TimeSpan.FromHours(-7));

    // By hand: all of SP-1 flooded, 779 ac of heavy clay losing 0.30 + 0.06 in and 52 ac of clay losing 0.30 + 0.10 in a day:
    // (779 × 0.36 + 52 × 0.40) / 12 / 1.983471 = 12.656 cfs; 14 − 12.656 = 1.344; 180.417 / (1.344 × 1.983471) = 67.7 days.
    [Fact]
    public void Deep_water_cannot_be_had_in_three_days()
    {
        var raise = ColdNightRaises.Of(July(), Wish());
        Assert.Equal(180.417, raise.Raise.Volume.AcreFeet, 0.001);
        Assert.Equal(12.656, raise.Holds.CubicFeetPerSecond, 0.001);
        Assert.Equal(67.7, raise.Raise.Time!.Value.TotalDays, 0.1);
        Assert.False(raise.Raise.InTime);
        // 28 July less 67.7 days: the evening of 21 May.
        Assert.Equal(new DateOnly(2026, 5, 21), DateOnly.FromDateTime(raise.StartBy!.Value.DateTime));
        Assert.True(raise.Order > raise.Source.Cap);
        Assert.Empty(raise.DepthUntold);
    }

    // 1.344 cfs for 3 days are 7.997 ac-ft: on 121 ac 0.793 in.
    [Fact]
    public void What_there_is_raises_the_smallest_field_most()
    {
        var parts = ColdNightRaises.Of(July(), Wish()).Raise.Parts;
        Assert.Equal(["Tulehead", "Pumphouse", "Big Elbow"], parts.Select(p => p.Land.Name));
        Assert.Equal(0.793, parts[0].Rise.Inches, 0.001);
    }

    [Fact]
    public void A_pump_that_is_down_raises_nothing_and_an_unread_field_is_said()
    {
        var state = July();
        var down = state with
        {
            Farm = state.Farm with { Sources = [.. state.Farm.Sources.Select(s => s.Code == "SP-1" ? s with { Down = true } : s)] },
            Fields = [.. state.Fields.Select(f => f.Code == "R2" ? f with { Depth = null } : f)],
        };
        var raise = ColdNightRaises.Of(down, Wish());
        Assert.Null(raise.Raise.Time);
        Assert.Null(raise.StartBy);
        Assert.Equal(["Big Elbow"], raise.DepthUntold);
    }

    [Fact]
    public void Every_flooded_field_of_the_source_is_raised_where_none_is_named() =>
        Assert.Equal(7, ColdNightRaises.Of(July(), Wish() with { Fields = [] }).Raise.Parts.Length);

    private static RaiseWish Wish() => new("SP-1", Saturday.AddDays(3)) { Fields = ["R1", "R2", "R3"] };

    private static SeasonState July()
    {
        var state = PlannedMorning.State();
        return state with
        {
            Now = Saturday,
            Evaporation = DepthRate.FromInchesPerDay(0.30),
            Fields = [.. state.Fields.Select(f => f with { Stage = FieldStage.Sown, SownAt = f.SownAt ?? Saturday.AddDays(-60), Depth = WaterDepth.FromInches(3) })],
        };
    }
}
