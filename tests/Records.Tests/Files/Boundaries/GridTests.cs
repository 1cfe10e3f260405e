namespace Watersown.Records.Files.Boundaries;

public sealed class GridTests
{
    private const string Nad83 = """GEOGCS["GCS_North_American_1983",DATUM["D_North_American_1983",SPHEROID["GRS_1980",6378137.0,298.257222101]],PRIMEM["Greenwich",0.0],UNIT["Degree",0.0174532925199433]]""";
    private const string Conic = """PARAMETER["False_Easting",0],PARAMETER["False_Northing",0],PARAMETER["Central_Meridian",-122],PARAMETER["Latitude_Of_Origin",37],""";

    private static string Code(string text) => Assert.Single(Grid.FromText(text, "fields.prj").Problems).Kind.Code;

    [Theory]
    [InlineData("MAP-017", "")]
    [InlineData("MAP-017", "EPSG:4326")]
    [InlineData("MAP-017", "PROJCS[\"breaks off inside quotes")]
    [InlineData("MAP-017", "PROJCS[\"a\",GEOGCS[]]")]
    [InlineData("MAP-018", """VERTCS["NAVD_1988",VDATUM["North_American_Vertical_Datum_1988"],PARAMETER["Vertical_Shift",0.0],PARAMETER["Direction",1.0],UNIT["Meter",1.0]]""")]
    [InlineData("MAP-019", """LOCAL_CS["my own paper",UNIT["metre",1]]""")]
    [InlineData("MAP-019", """PROJCRS["NAD83 / UTM zone 10N",BASEGEOGCRS["NAD83"]]""")]
    [InlineData("MAP-019", """GEOGCS["GCS_North_American_1927",DATUM["D_North_American_1927",SPHEROID["Clarke_1866",6378206.4,294.9786982]],PRIMEM["Greenwich",0.0],UNIT["Degree",0.0174532925199433]]""")]
    [InlineData("MAP-019", """GEOGCS["NTF (Paris)",DATUM["WGS_1984",SPHEROID["WGS_1984",6378137,298.257223563]],PRIMEM["Paris",2.33722917],UNIT["grad",0.01570796]]""")]
    [InlineData("MAP-019", """GEOGCS["x",DATUM["WGS_1984",SPHEROID["WGS_1984",1,298]],PRIMEM["Greenwich",0],UNIT["Degree",0.0174532925199433]]""")]
    public void What_cannot_be_used_is_refused_and_said(string code, string text) => Assert.Equal(code, Code(text));

    [Fact]
    public void A_projection_that_was_not_checked_or_lacks_a_number_is_refused_rather_than_guessed()
    {
        Assert.Equal("MAP-019", Code($"PROJCS[\"a\",{Nad83},PROJECTION[\"Robinson\"],{Conic}UNIT[\"Meter\",1]]"));
        Assert.Equal("MAP-019", Code($"PROJCS[\"one parallel\",{Nad83},PROJECTION[\"Lambert_Conformal_Conic\"],{Conic}PARAMETER[\"Standard_Parallel_1\",38],PARAMETER[\"Scale_Factor\",0.9999],UNIT[\"Meter\",1]]"));
        Assert.Equal("MAP-019", Code($"PROJCS[\"no unit\",{Nad83},PROJECTION[\"Albers\"],{Conic}PARAMETER[\"Standard_Parallel_1\",34],PARAMETER[\"Standard_Parallel_2\",40.5]]"));
        Assert.True(Grid.FromText($"PROJCS[\"b\",{Nad83},PROJECTION[\"Albers\"],{Conic}PARAMETER[\"Standard_Parallel_1\",34],PARAMETER[\"Standard_Parallel_2\",40.5],UNIT[\"Meter\",1]]", "x").HasValue);
    }

    // How one family of programs writes heights along: the two systems one after the other, or in one.
    [Theory]
    [InlineData(""",VERTCS["NAVD_1988",VDATUM["x"]]""", "")]
    [InlineData("]", "COMPD_CS[\"with heights\",")]
    public void Heights_beside_a_grid_do_no_harm(string after, string before) =>
        Assert.Equal(39, Grid.FromText(before + Nad83 + after, "x").Value.ToEarth(-122, 39)!.Value.Latitude);

    [Fact]
    public void A_point_the_grid_cannot_show_is_nowhere()
    {
        var utm = KnownGrids.Find("EPSG:26910", "x").Value;
        Assert.Null(utm.ToEarth(1e9, 1e9));
        Assert.Null(utm.ToEarth(1e300, 4e6));
        Assert.NotNull(utm.ToEarth(585_000, 4_320_000));
    }

    [Theory]
    [InlineData("EPSG:99999")]
    [InlineData("urn:ogc:def:crs:EPSG::")]
    [InlineData("my grid")]
    public void A_code_that_is_not_known_is_refused(string name) =>
        Assert.Equal("MAP-019", Assert.Single(KnownGrids.Find(name, "x").Problems).Kind.Code);
}
