using System.Text.Json;
using Watersown.Documents.Land;
using Watersown.Land;
using Watersown.Season;
using Watersown.Season.Ground;
using Watersown.Wording;

namespace Watersown.Records.Land;

public sealed class MapSceneTests
{
    private static readonly SeasonBook Book = SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty, PlannedMorning.Now);

    [Fact]
    public void The_scene_has_every_field_with_a_place_and_says_which_edges_nobody_drew()
    {
        using var scene = JsonDocument.Parse(Scene(Book.State.Farm));
        var features = scene.RootElement.GetProperty("features").EnumerateArray().ToList();
        var fields = features.Where(f => f.GetProperty("properties").GetProperty("kind").GetString() == "field").ToList();
        Assert.Equal(Book.State.Farm.Fields.Count(f => GroundOutline.Of(f) is not null), fields.Count);
        foreach (var field in fields)
        {
            var facts = field.GetProperty("properties");
            var drawn = Book.State.Farm.Field(facts.GetProperty("code").GetString()!).Boundary is not null;
            Assert.Equal(drawn, facts.GetProperty("drawn").GetBoolean());
            Assert.Equal("full", facts.GetProperty("look").GetString());
            Assert.Contains(field.GetProperty("geometry").GetProperty("type").GetString(), new[] { "Polygon", "MultiPolygon" });
        }

        Assert.Contains(features, f => f.GetProperty("properties").GetProperty("kind").GetString() == "strip");
    }

    [Fact]
    public void A_name_with_marks_in_it_stays_a_name()
    {
        var farm = Book.State.Farm;
        farm = farm with { Strips = [farm.Strips[0] with { Name = "</script>\"'\u2028" }] };
        using var scene = JsonDocument.Parse(Scene(farm));
        var strip = scene.RootElement.GetProperty("features").EnumerateArray().Single(f => f.GetProperty("properties").GetProperty("kind").GetString() == "strip");
        Assert.Equal("</script>\"'\u2028", strip.GetProperty("properties").GetProperty("name").GetString());
    }

    [Fact]
    public void No_address_is_told_to_the_map_unless_the_farm_has_set_one()
    {
        using var without = JsonDocument.Parse(MapScene.Options(Words.Spanish, metric: true, tiles: null));
        Assert.False(without.RootElement.TryGetProperty("tiles", out _));
        Assert.DoesNotContain("http", without.RootElement.GetRawText(), StringComparison.Ordinal);
        using var with = JsonDocument.Parse(MapScene.Options(Words.English, metric: false, "https://tiles.example.org/{z}/{x}/{y}.png"));
        Assert.Equal("https://tiles.example.org/{z}/{x}/{y}.png", with.RootElement.GetProperty("tiles").GetProperty("url").GetString());
        Assert.False(with.RootElement.GetProperty("metric").GetBoolean());
    }

    [Fact]
    public void Corners_go_to_the_map_and_places_come_back()
    {
        Assert.Equal("[{\"lat\":39.0152,\"lon\":-122.005}]", MapScene.Corners([new GeoPoint(39.0152, -122.005)]));
        Assert.Equal(new GeoPoint(39.0152, -122.005), MapScene.Place("39.0152 -122.005"));
        Assert.Null(MapScene.Place("39.0152"));
        Assert.Null(MapScene.Place("north west"));
    }

    private static string Scene(Farm farm) => MapScene.Write(farm, [.. LandBoard.Of(Book).Select(r => new SceneField(r, "full", "full"))], Words.English.Map);
}
