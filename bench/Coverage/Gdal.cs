using System.Reflection;
using System.Runtime.InteropServices;
using Watersown.Flight.Cover;
using Watersown.Shapes;

namespace Watersown.Bench;

/// <summary>GDAL's rasterizer, called in process on a raster in memory, adding one for every quadrilateral over the middle of a cell. What it holds is given back when the bench ends.</summary>
internal sealed unsafe partial class Gdal
{
    private const string Library = "gdal";
    private const int Bytes = 1;
    private const int Polygon = 3;
    private const int LinearRing = 101;
    private readonly CoverGrid grid;
    private readonly nint dataset;
    private readonly nint[] shapes;
    private readonly double[] ones;
    private readonly nint options;

    static Gdal() => NativeLibrary.SetDllImportResolver(Assembly.GetExecutingAssembly(), (name, _, _) => name == Library && Found() is { } there ? there : 0);

    public Gdal(CoverGrid grid, List<PlanePoint[]> quads)
    {
        this.grid = grid;
        GDALAllRegister();
        dataset = GDALCreate(GDALGetDriverByName("MEM"), "cover", grid.Columns, grid.Rows, 1, Bytes, 0);
        var cell = grid.Cell.Meters;
        double[] place = [grid.Corner.East, cell, 0, grid.Corner.North + (grid.Rows * cell), 0, -cell];
        fixed (double* first = place) _ = GDALSetGeoTransform(dataset, first);
        shapes = [.. quads.Select(Shape)];
        ones = [.. Enumerable.Repeat(1.0, shapes.Length)];
        options = CSLSetNameValue(0, "MERGE_ALG", "ADD");
    }

    public static bool IsThere => Found() is not null;

    public void Burn()
    {
        _ = GDALFillRaster(GDALGetRasterBand(dataset, 1), 0, 0);
        var band = 1;
        fixed (nint* shape = shapes)
        fixed (double* one = ones)
        {
            if (GDALRasterizeGeometries(dataset, 1, &band, shapes.Length, shape, 0, 0, one, options, 0, 0) != 0) throw new InvalidOperationException("GDAL would not rasterize.");
        }
    }

    /// <summary>Cells row by row, the northernmost first.</summary>
    public byte[] Cells()
    {
        var cells = new byte[grid.Columns * grid.Rows];
        fixed (byte* first = cells)
        {
            if (GDALRasterIO(GDALGetRasterBand(dataset, 1), 0, 0, 0, grid.Columns, grid.Rows, first, grid.Columns, grid.Rows, Bytes, 0, 0) != 0) throw new InvalidOperationException("GDAL would not read its raster.");
        }

        return cells;
    }

    private static nint Shape(PlanePoint[] quad)
    {
        var ring = OGR_G_CreateGeometry(LinearRing);
        foreach (var corner in quad.Append(quad[0])) OGR_G_AddPoint_2D(ring, corner.East, corner.North);
        var shape = OGR_G_CreateGeometry(Polygon);
        _ = OGR_G_AddGeometryDirectly(shape, ring);
        return shape;
    }

    private static nint? Found()
    {
        foreach (var name in (string[])["libgdal.so", "libgdal.so.32", "libgdal.so.36", "libgdal.so.34", "libgdal.so.28"])
        {
            if (NativeLibrary.TryLoad(name, out var there)) return there;
        }

        return null;
    }

    [LibraryImport(Library)]
    private static partial void GDALAllRegister();

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    private static partial nint GDALGetDriverByName(string name);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    private static partial nint GDALCreate(nint driver, string name, int columns, int rows, int bands, int type, nint options);

    [LibraryImport(Library)]
    private static partial int GDALSetGeoTransform(nint dataset, double* transform);

    [LibraryImport(Library)]
    private static partial nint GDALGetRasterBand(nint dataset, int band);

    [LibraryImport(Library)]
    private static partial int GDALFillRaster(nint band, double real, double imaginary);

    [LibraryImport(Library)]
    private static partial int GDALRasterizeGeometries(nint dataset, int bandCount, int* bands, int count, nint* shapes, nint transformer, nint argument, double* values, nint options, nint progress, nint told);

    [LibraryImport(Library)]
    private static partial int GDALRasterIO(nint band, int write, int left, int top, int columns, int rows, void* into, int intoColumns, int intoRows, int type, int pixelSpace, int lineSpace);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    private static partial nint CSLSetNameValue(nint list, string name, string value);

    [LibraryImport(Library)]
    private static partial nint OGR_G_CreateGeometry(int type);

    [LibraryImport(Library)]
    private static partial void OGR_G_AddPoint_2D(nint shape, double x, double y);

    [LibraryImport(Library)]
    private static partial int OGR_G_AddGeometryDirectly(nint shape, nint ring);
}
