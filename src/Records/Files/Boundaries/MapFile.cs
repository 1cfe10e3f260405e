namespace Watersown.Records.Files.Boundaries;

/// <summary>
/// Opens a file of boundaries of any kind known here and gives what can be used of it: 38 boundaries and two problems, not a failure at
/// number 17. Nothing in the file is believed: its kind is told from its bytes, not its name.
/// </summary>
public static class MapFile
{
    /// <summary>Reads a file of this machine, and the files that belong beside a .shp.</summary>
    public static Outcome<ImmutableArray<MapBoundary>> Open(string path)
    {
        var file = FileText.Read(path, MapFileLimits.MaxBytes);
        if (!file.HasValue) return Outcome<ImmutableArray<MapBoundary>>.Refuse(file.Problems);
        return Read(Path.GetFileName(path), file.Value, extension => Sibling(path, extension));
    }

    /// <summary>Reads bytes that were handed in under a name.</summary>
    /// <param name="file">Its name, for problems.</param>
    /// <param name="bytes">All of it.</param>
    /// <param name="sibling">Gives the file of the same name with another ending, where there is one.</param>
    public static Outcome<ImmutableArray<MapBoundary>> Read(string file, ReadOnlyMemory<byte> bytes, Func<string, ReadOnlyMemory<byte>?>? sibling = null)
    {
        var start = bytes.Span;
        if (start.StartsWith("PK"u8)) return SafeZip.Look(file, bytes, zip => Unpack(file, zip));
        if (start is not [0, 0, 0x27, 0x0A, ..]) return Text(file, bytes);
        sibling ??= _ => null;
        return Placed(ShapefileFile.Read(new ShapefileParts(file, bytes) { Dbf = sibling(".dbf"), Prj = sibling(".prj"), Cpg = sibling(".cpg") }));
    }

    private static Outcome<ImmutableArray<MapBoundary>> Text(string file, ReadOnlyMemory<byte> bytes)
    {
        var start = bytes.Span[..Math.Min(bytes.Length, 4096)];
        var first = start.StartsWith("\uFEFF"u8) ? start[3..].TrimStart(" \t\r\n"u8) : start.TrimStart(" \t\r\n\0\xFE\xFF"u8);
        if (first.StartsWith("{"u8) || first.StartsWith("["u8)) return Placed(GeoJsonFile.Read(file, bytes));
        if (!first.StartsWith("<"u8)) return Refuse(MapFileProblems.UnknownKind.At(file));
        string? root = null;
        var fault = SafeXml.Walk(file, bytes, reader =>
        {
            root = reader.LocalName;
            return false;
        });
        return root switch
        {
            "kml" => Placed(KmlFile.Read(file, bytes)),
            "gpx" => Placed(GpxFile.Read(file, bytes)),
            _ => Refuse(fault ?? MapFileProblems.UnknownKind.At(file)),
        };
    }

    private static Outcome<ImmutableArray<MapBoundary>> Unpack(string file, SafeZip zip)
    {
        var shapes = zip.Ending(".shp");
        if (shapes.Length > 1) return Refuse(MapFileProblems.SeveralLayers.At(file, ("value", string.Join(", ", shapes.Take(5).Select(MapText.Short)))));
        if (shapes is [var shp]) return Placed(Shapefile(file, zip, shp));
        var texts = zip.Ending(".kml").Concat(zip.Ending(".geojson")).Concat(zip.Ending(".json")).Concat(zip.Ending(".gpx")).ToList();
        if (texts.Count == 0) return Refuse(MapFileProblems.UnknownKind.At(file));
        return Together([.. texts.Select(name => zip.Read(name).Then(bytes => Text(texts.Count == 1 ? file : file + ", " + MapText.Short(name), bytes)))]);
    }

    // A file with nothing drawn, such as one that only points to the others, is no problem among several.
    private static Outcome<ImmutableArray<MapBoundary>> Together(ImmutableArray<Outcome<ImmutableArray<MapBoundary>>> files)
    {
        if (files.Length == 1) return files[0];
        ImmutableArray<Problem> problems = [.. files.SelectMany(f => f.Problems)];
        ImmutableArray<MapBoundary> good = [.. files.Where(f => f.HasValue).SelectMany(f => f.Value)];
        return good.IsEmpty
            ? Outcome<ImmutableArray<MapBoundary>>.Refuse(problems)
            : Outcome<ImmutableArray<MapBoundary>>.Of(good, problems.Where(p => p.Kind != MapFileProblems.NothingDrawn));
    }

    private static Outcome<DrawnLayer> Shapefile(string file, SafeZip zip, string shp)
    {
        var problems = new List<Problem>();
        var stem = shp[..^4];
        var bytes = zip.Read(shp);
        if (!bytes.HasValue) return Outcome<DrawnLayer>.Refuse(bytes.Problems);
        var parts = new ShapefileParts(file, bytes.Value) { Dbf = Beside(".dbf"), Prj = Beside(".prj"), Cpg = Beside(".cpg") };
        return problems.Count > 0 ? Outcome<DrawnLayer>.Refuse(problems) : ShapefileFile.Read(parts);

        ReadOnlyMemory<byte>? Beside(string extension)
        {
            if (zip.Ending(extension).FirstOrDefault(n => string.Equals(n[..^4], stem, StringComparison.OrdinalIgnoreCase)) is not { } name) return null;
            var read = zip.Read(name);
            if (read.HasValue) return read.Value;
            problems.AddRange(read.Problems);
            return null;
        }
    }

    private static Outcome<ImmutableArray<MapBoundary>> Placed(Outcome<DrawnLayer> layer) => layer.Then(l => l.Place());

    private static Outcome<ImmutableArray<MapBoundary>> Refuse(Problem problem) => Outcome<ImmutableArray<MapBoundary>>.Refuse(problem);

    private static ReadOnlyMemory<byte>? Sibling(string path, string extension)
    {
        foreach (var name in new[] { Path.ChangeExtension(path, extension), Path.ChangeExtension(path, extension.ToUpperInvariant()) })
        {
            if (FileText.Read(name, MapFileLimits.MaxBytes) is { HasValue: true } read) return read.Value;
        }

        return null;
    }
}
