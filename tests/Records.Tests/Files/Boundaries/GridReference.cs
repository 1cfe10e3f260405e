using System.Globalization;

namespace Watersown.Records.Files.Boundaries;

public sealed class GridReference
{
    private const double MetersADegree = 111_320;

    // PROJ 9.1.1, see tests/Reference/grids/SOURCE.md.
    [Fact]
    public void Every_grid_agrees_with_PROJ_to_a_millimeter_on_the_ground()
    {
        foreach (var grid in ReferenceFile.Rows("grids").GroupBy(r => r["grid"], StringComparer.Ordinal))
        {
            var files = Directory.GetFiles(Path.GetDirectoryName(ReferenceFile.PathOf("grids", "x"))!, grid.Key + ".*.prj").Order(StringComparer.Ordinal).ToList();
            Assert.Equal(grid.Key == "27700" ? 1 : 2, files.Count);
            foreach (var file in files) Compare(Grid.FromText(File.ReadAllText(file), file).Value, grid, grid.Key == "27700" ? 0.005 : 0.001);
        }
    }

    [Theory]
    [InlineData("26910", "EPSG:26910")]
    [InlineData("2226", "urn:ogc:def:crs:EPSG::2226")]
    [InlineData("3857", "http://www.opengis.net/def/crs/EPSG/0/3857")]
    [InlineData("3310", "EPSG:3310")]
    [InlineData("5070", "EPSG:5070")]
    [InlineData("32753", "EPSG:32753")]
    public void A_grid_known_by_its_code_is_the_same(string grid, string name) =>
        Compare(KnownGrids.Find(name, "file").Value,
            ReferenceFile.Rows("grids").Where(r => r["grid"] == grid), 0.001);

    private static void Compare(Grid grid, IEnumerable<IReadOnlyDictionary<string, string>> rows, double meters)
    {
        foreach (var row in rows)
        {
            var place = grid.ToEarth(Number(row["x"]), Number(row["y"]));
            Assert.NotNull(place);
            var north = (place.Value.Latitude - Number(row["latitude_deg"])) * MetersADegree;
            var east = (place.Value.Longitude - Number(row["longitude_deg"])) * MetersADegree * Math.Cos(place.Value.Latitude * Math.PI / 180);
            Assert.True(Math.Abs(north) < meters && Math.Abs(east) < meters, FormattableString.Invariant($"{row["grid"]} {row["x"]} {row["y"]}: {east} m east, {north} m north"));
        }
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
