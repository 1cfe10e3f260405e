using Watersown.Reckon;

namespace Watersown.Water;

public sealed class WindReckoningTests
{
    // 15 mph, a quarter mile, 4 in: pull 1.547, waves 44.93 mm by one law and 39.31 mm by another, all worked apart from the published laws.
    [Fact]
    public void A_windy_quarter_mile_shows_lean_waves_and_pull()
    {
        var answer = Blow(15, 1320, 4);
        Assert.Equal(1.547, answer.Number("pull"), 0.001);
        Assert.Equal("severe", answer.Text("band"));
        Assert.Equal(44.93 / 25.4, answer.Number("wave_in"), 0.001);
        Assert.Equal(39.31 / 25.4, answer.Number("wave_other_law_in"), 0.005);
        Assert.Equal(0, answer.Number("bare_ft"));
        Assert.Equal(Datum.None, answer.Answer("lowered_pull"));
    }

    // The table of pulls worked apart: 10 mph, 1,320 ft: 1.05 at 4 in, 1.19 at 2 in. Two inches go bare upwind at 15 mph and more.
    [Fact]
    public void Lower_boards_are_weighed_against_bare_soil_and_theory()
    {
        var light = Blow(10, 1320, 4, ("lower_to_in", 2));
        Assert.Equal((1.05, 1.19), (Math.Round(light.Number("pull"), 2), Math.Round(light.Number("lowered_pull"), 2)));
        Assert.Contains(light.Value.Cautions, c => c.Contains("growers saw it calmer", StringComparison.Ordinal));
        var strong = Blow(20, 1320, 4, ("lower_to_in", 2));
        Assert.Equal(0, strong.Number("bare_ft"));
        Assert.True(strong.Number("lowered_bare_ft") > 0);
        Assert.Contains("Lower boards lay more soil bare upwind.", strong.Value.Cautions, StringComparer.Ordinal);
        // There the height of waves is held by the depth, so theory too has lower water calmer: 2.00 and 1.64.
        Assert.Equal((2.00, 1.64), (Math.Round(strong.Number("pull"), 2), Math.Round(strong.Number("lowered_pull"), 2)));
    }

    [Fact]
    public void Heavier_seed_and_rougher_soil_hold_better()
    {
        var plain = Blow(15, 1320, 4).Number("pull");
        Assert.Equal(plain / 1.5, Blow(15, 1320, 4, ("shelter", 1.5)).Number("pull"), 1e-9);
        Assert.Equal(plain * Math.Pow(0.15 / 0.20, 4.0 / 7), Blow(15, 1320, 4, ("seed_heaviness", 1.20)).Number("pull"), 1e-9);
    }

    [Fact]
    public void A_calm_has_no_waves()
    {
        var answer = Blow(0, 1320, 4);
        Assert.Equal((0.0, "calm"), (answer.Number("pull"), answer.Text("band")));
        Assert.Equal(Datum.None, answer.Answer("moving_speed_mps"));
    }

    private static Outcome<Reckoned> Blow(double mph, double feet, double inches, params (string Key, Datum Value)[] more) =>
        Ask.For("wind-on-water", [("wind_mph", mph), ("fetch_ft", feet), ("depth_in", inches), .. more]);
}
