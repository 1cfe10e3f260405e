using Watersown.Flight.Hazards;
using Watersown.Land;

namespace Watersown.Records.Files.Obstacles;

/// <summary>
/// Lines of the FAA Digital Obstacle File, a public record: the whole published line of Branson, and the published figures of two
/// more laid in the same columns. What each letter stands for is that file's own description.
/// </summary>
public sealed class ObstacleLineReference
{
    private const string Branson = "08-025404 O US CO BRANSON          37 00 26.20N 103 51 59.90W TOWER              1 00256 06541 D 5 E N 2015ANM02292OE C 2015236 ";

    [Fact]
    public void The_published_line_of_a_tower_is_read_in_every_column()
    {
        var tower = Read(Branson);
        Assert.Equal(128, Branson.Length);
        Assert.Equal("08-025404", tower.Id);
        Assert.True(tower.Verified);
        Assert.Equal(("US", "CO", "BRANSON"), (tower.Country, tower.State, tower.City));
        Assert.Equal(37.007278, tower.At.Latitude, 1e-6);
        Assert.Equal(-103.866639, tower.At.Longitude, 1e-6);
        Assert.Equal(("TOWER", 1), (tower.Type, tower.Count));
        Assert.Equal(256, tower.Height.Feet, 1e-9);
        Assert.Equal(6541, tower.Top!.Value.Feet, 1e-9);
        Assert.Equal((HazardLight.MediumWhiteAndRed, HazardMarking.None), (tower.Light, tower.Marking));
        Assert.Equal(500, tower.Within!.Value.Feet, 1e-9);
        Assert.Equal(125, tower.HeightWithin!.Value.Feet, 1e-9);
        Assert.Equal(("2015ANM02292OE", ObstacleAction.Changed, new DateOnly(2015, 8, 24)), (tower.Study, tower.Action, tower.ActionDay!.Value));
    }

    // El Centro, a building whose top lies below the sea: 2025263 is 20 September 2025.
    [Fact]
    public void A_top_below_the_sea_keeps_its_sign()
    {
        var building = Read(Line(id: "06-310880 U US CA EL CENTRO       ", latitude: "32 49 30.90N", longitude: "115 40 17.60W", type: "BLDG", heights: "00027 -0017", action: "A 2025263"));
        Assert.Equal(32.825250, building.At.Latitude, 1e-6);
        Assert.Equal(-115.671556, building.At.Longitude, 1e-6);
        Assert.Equal(27, building.Height.Feet, 1e-9);
        Assert.Equal(-17, building.Top!.Value.Feet, 1e-9);
        Assert.False(building.Verified);
        Assert.Equal(new DateOnly(2025, 9, 20), building.ActionDay);
    }

    // 174 06 36.60E.
    [Fact]
    public void East_of_Greenwich_is_positive() =>
        Assert.Equal(174.110167, Read(Line(id: "02-292529 O US AK SHEMYA          ", latitude: "52 43 00.00N", longitude: "174 06 36.60E")).At.Longitude, 1e-6);

    [Fact]
    public void A_blank_height_above_the_sea_is_unknown_and_the_line_is_kept()
    {
        var pole = Read(Line(type: "POLE", heights: "00060      "));
        Assert.Null(pole.Top);
        Assert.Equal(60, pole.Height.Feet, 1e-9);
        Assert.Equal(HazardKind.Pole, pole.ToHazard(new DateOnly(2026, 4, 16)).Kind);
    }

    [Theory]
    [InlineData("XX 49 30.90N", "115 40 17.60W", "00027 00017", "bad latitude")]
    [InlineData("32 60 30.90N", "115 40 17.60W", "00027 00017", "bad latitude")]
    [InlineData("32 49 60.00N", "115 40 17.60W", "00027 00017", "bad latitude")]
    [InlineData("32 49 30.90W", "115 40 17.60W", "00027 00017", "bad latitude")]
    [InlineData("91 49 30.90N", "115 40 17.60W", "00027 00017", "bad latitude")]
    [InlineData("32 49 30.90N", "115 40 1 .60W", "00027 00017", "bad longitude")]
    [InlineData("32 49 30.90N", "181 40 17.60W", "00027 00017", "bad longitude")]
    [InlineData("32 49 30.90N", "115 40 17.60W", "0002O 00017", "bad height above the ground")]
    [InlineData("32 49 30.90N", "115 40 17.60W", "      00017", "bad height above the ground")]
    [InlineData("32 49 30.90N", "115 40 17.60W", "00027 0-017", "bad height above the sea")]
    public void A_line_with_a_bad_digit_is_left_out_not_guessed_at(string latitude, string longitude, string heights, string reason) =>
        Assert.Equal(reason, ObstacleLine.Read(Line(latitude: latitude, longitude: longitude, heights: heights)).Fault!.English);

    [Fact]
    public void Columns_that_must_be_blank_are_checked_and_the_trimmed_last_one_is_forgiven()
    {
        Assert.Equal("column 62 should be blank", ObstacleLine.Read(Branson[..61] + "x" + Branson[62..]).Fault!.English);
        Assert.Equal("126 columns, not 128", ObstacleLine.Read(Branson[..126]).Fault!.English);
        Assert.NotNull(ObstacleLine.Read(Branson.TrimEnd()).Obstacle);
    }

    [Theory]
    [InlineData("TOWER", HazardKind.Tower)]
    [InlineData("T-L TWR", HazardKind.Wire)]
    [InlineData("CATENARY", HazardKind.Wire)]
    [InlineData("UTILITY POLE", HazardKind.Pole)]
    [InlineData("WINDMILL", HazardKind.Tower)]
    [InlineData("BLDG", HazardKind.Other)]
    public void What_stands_there_is_drawn_as_what_it_is(string type, HazardKind kind) =>
        Assert.Equal(kind, Read(Line(type: type)).ToHazard(new DateOnly(2026, 4, 16)).Kind);

    internal static string Line(string id = "06-000001 O US CA SOMEWHERE       ", string latitude = "39 00 00.00N", string longitude = "122 00 00.00W", string type = "TOWER", string heights = "00200 00240", string action = "C 2026100") =>
        $"{id} {latitude} {longitude} {type,-18} 1 {heights} R 4 D N {string.Empty,-14} {action} ";

    private static Obstacle Read(string line)
    {
        var (obstacle, fault) = ObstacleLine.Read(line);
        Assert.Null(fault);
        return obstacle!;
    }
}
