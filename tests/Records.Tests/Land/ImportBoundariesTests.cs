using Watersown.Land;
using Watersown.Records.Files.Boundaries;
using Watersown.Wording;

namespace Watersown.Records.Land;

public sealed class ImportBoundariesTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("watersown");

    public void Dispose() => folder.Delete(recursive: true);

    private string Write(string name, string text)
    {
        var path = Path.Combine(folder.FullName, name);
        File.WriteAllText(path, text);
        return path;
    }

    private string SmallFarm() => Write("farm.json", """
        { "watersown_farm": 1, "name": "Small", "time_zone": "America/Los_Angeles", "now": "2026-05-08T04:50", "season_year": 2026,
          "fields": [
            { "code": "N4", "name": "Two Gates", "net_ac": 225, "gross_ac": 238, "rate_dry_lb_ac": 150, "stage": "rolled" },
            { "code": "H6", "name": "Widow's Eighty", "net_ac": 225, "gross_ac": 250, "rate_dry_lb_ac": 150, "stage": "rolled" },
            { "code": "S1", "name": "Wheelwright", "net_ac": 112, "rate_dry_lb_ac": 150, "stage": "rolled" } ] }
        """);

    private static string Square(string properties, int column)
    {
        var (west, east) = (FormattableString.Invariant($"{-122 + (0.02 * column)}"), FormattableString.Invariant($"{-121.99 + (0.02 * column)}"));
        return "{\"type\":\"Feature\",\"properties\":" + properties + ",\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[[[" + west + ",39],[" + east + ",39],[" + east + ",39.01],[" + west + ",39.01],[" + west + ",39]]]}}";
    }

    private string Map(params string[] properties) =>
        Write("map.geojson", "{\"type\":\"FeatureCollection\",\"features\":[" + string.Join(',', properties.Select(Square)) + "]}");

    private Outcome<ImportedBoundaries> Run(string map, MatchOptions? options = null) =>
        ImportBoundaries.Run(SmallFarm(), map, options ?? new MatchOptions(), TimeProvider.System);

    private static string[] Pairs(Outcome<ImportedBoundaries> run) => [.. run.Value.Matched.Pairs.Select(p => p.Field.Code)];

    [Fact]
    public void Boundaries_find_their_fields_by_code_and_by_name_whatever_their_capitals_blanks_and_marks()
    {
        var run = Run(Map("""{"CODE":" n4 "}""", """{"Name":"WIDOWS  EIGHTY"}""", """{"name":"Neighbor"}"""));
        Assert.Equal(["N4", "H6"], Pairs(run));
        Assert.Equal(["Neighbor"], run.Value.Matched.Unmatched.Select(b => b.Name));
        Assert.Equal(["S1"], run.Value.Matched.Without.Select(f => f.Code));
        Assert.NotNull(run.Value.State.Farm.Field("N4").Boundary);
        Assert.Null(run.Value.State.Farm.Field("S1").Boundary);
    }

    [Fact]
    public void The_document_read_again_has_the_boundaries_and_the_same_acres()
    {
        var run = Run(Map("""{"code":"N4"}"""));
        var path = Path.Combine(folder.FullName, "again.json");
        File.WriteAllBytes(path, run.Value.Document.ToArray());
        var again = OpenFarm.Run(path).Value.Farm.Field("N4");
        Assert.Equal(238, again.Gross!.Value.Acres, 1e-9);
        Assert.Equal(1, GeodesicArea.Of(run.Value.State.Farm.Field("N4").Boundary!) / GeodesicArea.Of(again.Boundary!), 1e-7);
    }

    [Fact]
    public void Only_the_code_or_only_the_name_is_looked_at_when_asked()
    {
        var map = Map("""{"code":"N4","name":"Wheelwright"}""");
        Assert.Equal(["N4"], Pairs(Run(map)));
        Assert.Equal(["N4"], Pairs(Run(map, new MatchOptions { By = MatchBy.Code })));
        Assert.Equal(["S1"], Pairs(Run(map, new MatchOptions { By = MatchBy.Name })));
        Assert.Equal(["N4"], Pairs(Run(Map("""{"FLD_NM":"N4"}"""), new MatchOptions { Column = "fld_nm" })));
    }

    [Fact]
    public void An_edge_more_than_three_percent_off_the_gross_acres_is_warned_of()
    {
        // 0.01 degrees by 0.01 degrees at 39 north: 237.6 ac, worked with GeographicLib 2.1.2 Planimeter.
        var run = Run(Map("""{"code":"N4"}""", """{"code":"H6"}"""));
        var warned = Assert.Single(run.Problems);
        Assert.StartsWith("MAP-028 · map.geojson, feature 2 'H6': it encloses 237.6 ac, −5.0 % off the gross 250 ac of field H6", Say.Problem(warned, Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_boundaries_for_one_field_are_a_problem_and_the_field_gets_neither()
    {
        var run = Run(Map("""{"code":"N4"}""", """{"name":"Two Gates"}""", """{"code":"S1"}"""));
        Assert.Equal(["S1"], Pairs(run));
        Assert.Equal("MAP-027", Assert.Single(run.Refusals).Kind.Code);
        Assert.Equal(["H6"], run.Value.Matched.Without.Select(f => f.Code));
    }

    [Theory]
    [InlineData("MAP-026", """{"name":"Somebody Else"}""", null)]
    [InlineData("MAP-029", """{"name":"Two Gates"}""", "plot")]
    [InlineData("LAND-108", null, null)]
    public void What_helps_no_field_is_refused(string code, string? properties, string? column)
    {
        var map = properties is null
            ? Write("bow.geojson", """{"type":"Polygon","coordinates":[[[-122,39],[-121.99,39.01],[-121.99,39],[-122,39.01],[-122,39]]]}""")
            : Map(properties);
        var run = Run(map, new MatchOptions { Column = column });
        Assert.True(run.IsRefused);
        Assert.Equal(code, Assert.Single(run.Problems).Kind.Code);
    }
}
