using Watersown.Land;

namespace Watersown.Records.Files.Boundaries;

/// <summary>Real fields written by another program on other grids and in other formats come back with the same acres.</summary>
public sealed class RealFieldsReference
{
    private static readonly ImmutableArray<MapBoundary> Original = MapFile.Open(PathOf("us_ca_crop_mapping_2023.geojson")).Value;

    private static string PathOf(string file) => ReferenceFile.PathOf("fields", file);

    // The department's own acres, worked on its own grid from corners finer than the 7 decimals kept here.
    [Fact]
    public void A_hundred_real_fields_are_read_with_the_acres_their_department_gives()
    {
        Assert.Equal(100, Original.Length);
        foreach (var field in Original)
        {
            var told = double.Parse(field["ACRES"], System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(1, GeodesicArea.Of(field.Edge).Acres / told, told < 5 ? 0.002 : 0.001);
        }
    }

    [Theory]
    [InlineData("crops_2226.zip", 100)]
    [InlineData("large_26910.zip", 8)]
    [InlineData("large.kml", 8)]
    [InlineData("large.kmz", 8)]
    public void They_come_back_from_other_formats_and_grids_with_the_same_acres(string file, int count)
    {
        var read = MapFile.Open(PathOf(file));
        Assert.Empty(read.Problems.Where(p => p.Kind.Weight == ProblemWeight.Refuse));
        Assert.Equal(count, read.Value.Length);
        foreach (var field in read.Value)
        {
            var original = Original.Single(o => o["id"] == (field["id"].Length > 0 ? field["id"] : field.Name));
            Assert.Equal(1, GeodesicArea.Of(field.Edge) / GeodesicArea.Of(original.Edge), 1e-6);
            Assert.Equal(original["MAIN_CROP"], field["MAIN_CROP"]);
        }
    }

    [Fact]
    public void A_loose_shapefile_is_read_with_the_files_beside_it()
    {
        var folder = Directory.CreateTempSubdirectory("watersown");
        try
        {
            foreach (var (name, bytes) in SomeZip.Open(PathOf("large_26910.zip"))) File.WriteAllBytes(Path.Combine(folder.FullName, name), bytes);
            var read = MapFile.Open(Path.Combine(folder.FullName, "utm.shp"));
            Assert.Empty(read.Problems);
            Assert.Equal(8, read.Value.Length);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
