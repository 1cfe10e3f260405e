using System.Globalization;
using System.Text;
using System.Text.Unicode;
using NetTopologySuite.Geometries;
using NetTopologySuite.IO.Esri.Dbf;
using NetTopologySuite.IO.Esri.Shapefiles.Readers;
using NetTopologySuite.IO.Esri.Shp;
using Watersown.Land;

namespace Watersown.Records.Files.Boundaries;

/// <summary>The files of one shapefile, all but the first of which may be missing.</summary>
internal sealed record ShapefileParts(string File, ReadOnlyMemory<byte> Shp)
{
    public ReadOnlyMemory<byte>? Dbf { get; init; }

    public ReadOnlyMemory<byte>? Prj { get; init; }

    public ReadOnlyMemory<byte>? Cpg { get; init; }
}

/// <summary>A shapefile of areas: rings from the .shp, columns from the .dbf, the grid from the .prj.</summary>
internal static class ShapefileFile
{
    public static Outcome<DrawnLayer> Read(ShapefileParts parts)
    {
        var corners = ShapefileGuard.Check(parts.File, parts.Shp.Span);
        if (!corners.HasValue) return Outcome<DrawnLayer>.Refuse(corners.Problems);
        var shapes = Shapes(parts);
        if (shapes is null) return Outcome<DrawnLayer>.Refuse(MapFileProblems.BadShapefile.At(parts.File, ("value", "its records cannot be read")));

        var drawing = new Drawing(parts.File);
        var rows = Rows(parts, drawing);
        for (var i = 0; i < shapes.Count && !drawing.IsFull; i++)
        {
            if (i < rows.Count && rows[i].Deleted) continue;
            var columns = i < rows.Count ? rows[i].Columns : [];
            var name = MapBoundary.NameOf(columns);
            if (shapes[i].Length > 0) drawing.Add(new DrawnFeature(MapText.Where(parts.File, "record", i + 1, name), name, columns, shapes[i]));
        }

        var grid = GridOf(parts, shapes, drawing);
        return grid.HasValue ? drawing.Finish(grid.Value, "area") : Outcome<DrawnLayer>.Refuse(grid.Problems);
    }

    private static List<ImmutableArray<BoundaryPart>>? Shapes(ShapefileParts parts)
    {
        var found = new List<ImmutableArray<BoundaryPart>>();
        try
        {
            using var stream = new MemoryStream(parts.Shp.ToArray(), writable: false);
            // Rings as they are: what is wrong with them is said in our own words, with the place.
            using var reader = Shp.OpenRead(stream, new ShapefileReaderOptions { GeometryBuilderMode = GeometryBuilderMode.IgnoreInvalidShapes });
            while (reader.Read()) found.Add(reader.Geometry is MultiPolygon { IsEmpty: false } shape ? [.. shape.Geometries.Cast<Polygon>().Select(Part)] : []);
            return found;
        }
        catch (Exception fault) when (IsBroken(fault))
        {
            return null;
        }
    }

    private static BoundaryPart Part(Polygon polygon) => new(Ring(polygon.ExteriorRing), [.. polygon.InteriorRings.Select(Ring)]);

    private static ImmutableArray<GeoPoint> Ring(LineString ring) => [.. ring.Coordinates.Select(c => new GeoPoint(c.Y, c.X))];

    private static List<(bool Deleted, ImmutableArray<(string Column, string Text)> Columns)> Rows(ShapefileParts parts, Drawing drawing)
    {
        var rows = new List<(bool Deleted, ImmutableArray<(string Column, string Text)> Columns)>();
        if (parts.Dbf is not { } dbf)
        {
            drawing.Add(MapFileProblems.MissingSibling.At(parts.File, ("value", ".dbf")));
            return rows;
        }

        try
        {
            using var stream = new MemoryStream(dbf.ToArray(), writable: false);
            using var reader = new DbfReader(stream, EncodingOf(parts, dbf.Span));
            while (rows.Count < MapFileLimits.MaxFeatures && reader.Read(out var deleted))
            {
                rows.Add((deleted, [.. reader.Fields
                    .Take(MapFileLimits.MaxColumns)
                    .Select(f => (MapText.Short(f.Name), MapText.Short(Convert.ToString(f.Value, CultureInfo.InvariantCulture) ?? string.Empty)))]));
            }
        }
        catch (Exception fault) when (IsBroken(fault))
        {
            drawing.Add(MapFileProblems.BadNames.At(parts.File, ("value", string.Create(CultureInfo.InvariantCulture, $"row {rows.Count + 1} of the .dbf"))));
        }

        return rows;
    }

    // The .cpg says it; without one, text that is sound UTF-8 is UTF-8, and anything else the old Western set.
    private static Encoding EncodingOf(ShapefileParts parts, ReadOnlySpan<byte> dbf)
    {
        var said = parts.Cpg is { Length: <= 64 } cpg ? Encoding.ASCII.GetString(cpg.Span).Trim() : string.Empty;
        if (said.Contains("utf", StringComparison.OrdinalIgnoreCase) && said.Contains('8', StringComparison.Ordinal)) return Encoding.UTF8;
        return said.Length == 0 && Utf8.IsValid(dbf[Math.Min(32, dbf.Length)..]) ? Encoding.UTF8 : Encoding.Latin1;
    }

    private static Outcome<Grid> GridOf(ShapefileParts parts, List<ImmutableArray<BoundaryPart>> shapes, Drawing drawing)
    {
        if (parts.Prj is { } prj) return Grid.FromText(Encoding.UTF8.GetString(prj.Span[..Math.Min(prj.Length, 64 * 1024)]).Trim('\0', ' ', '\r', '\n'), parts.File);
        foreach (var corner in shapes.SelectMany(s => s).SelectMany(p => p.Outer))
        {
            if (Math.Abs(corner.Longitude) > 360 || Math.Abs(corner.Latitude) > 180)
                return Outcome<Grid>.Refuse(MapFileProblems.NoGrid.At(parts.File, ("value", corner.Longitude.ToString("R", CultureInfo.InvariantCulture))));
        }

        drawing.Add(MapFileProblems.AssumedDegrees.At(parts.File));
        return Outcome<Grid>.Of(Grid.Degrees);
    }

    // The package promises nothing about what it throws over bytes that are not what they say; nothing of ours runs inside it.
    private static bool IsBroken(Exception fault) => fault is not OutOfMemoryException;
}
