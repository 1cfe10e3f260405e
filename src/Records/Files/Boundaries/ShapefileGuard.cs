using System.Buffers.Binary;
using System.Globalization;

namespace Watersown.Records.Files.Boundaries;

/// <summary>
/// Looks over the bytes of a .shp before the reading package gets them: what a record says about its own length, rings and corners must
/// fit the record. The package trusts those numbers.
/// </summary>
internal static class ShapefileGuard
{
    private const int HeaderBytes = 100;
    private static readonly int[] polygonTypes = [5, 15, 25];

    /// <summary>Corners of each record, or what is wrong with the file.</summary>
    /// <remarks>Layout: ESRI Shapefile Technical Description, 1998.</remarks>
    public static Outcome<ImmutableArray<int>> Check(string file, ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length < HeaderBytes || BinaryPrimitives.ReadInt32BigEndian(bytes) != 9994 || Int(bytes, 28) != 1000)
            return Bad(file, "its head is not that of a .shp file");
        var type = Int(bytes, 32);
        if (!polygonTypes.Contains(type)) return Outcome<ImmutableArray<int>>.Refuse(MapFileProblems.NotPolygons.At(file, ("value", Named(type))));
        if (2L * BinaryPrimitives.ReadInt32BigEndian(bytes[24..]) > bytes.Length) return Bad(file, "it is cut short");

        var corners = ImmutableArray.CreateBuilder<int>();
        long total = 0;
        for (var at = HeaderBytes; at < bytes.Length;)
        {
            var number = corners.Count + 1;
            if (bytes.Length - at < 8) return Bad(file, Record(number, "is cut short"));
            var length = 2L * BinaryPrimitives.ReadInt32BigEndian(bytes[(at + 4)..]);
            if (length < 4 || length > bytes.Length - at - 8) return Bad(file, Record(number, "is cut short"));
            if (Corners(bytes.Slice(at + 8, (int)length), type) is not { } count) return Bad(file, Record(number, "says more about itself than it holds"));
            total += count;
            if (corners.Count >= MapFileLimits.MaxFeatures) return Outcome<ImmutableArray<int>>.Refuse(MapFileProblems.TooManyFeatures.At(file, ("limit", Wording.Say.Number(MapFileLimits.MaxFeatures))));
            if (total > MapFileLimits.MaxPoints) return Outcome<ImmutableArray<int>>.Refuse(MapFileProblems.TooManyPoints.At(file, ("limit", Wording.Say.Number(MapFileLimits.MaxPoints))));
            corners.Add(count);
            at += 8 + (int)length;
        }

        return Outcome<ImmutableArray<int>>.Of(corners.ToImmutable());
    }

    // Type, box (32), rings, corners, where each ring starts, corners of 16 bytes each; heights and measures may follow.
    private static int? Corners(ReadOnlySpan<byte> record, int type)
    {
        var own = Int(record, 0);
        if (own == 0) return 0;
        if (own != type || record.Length < 44) return null;
        var (rings, corners) = (Int(record, 36), Int(record, 40));
        if (rings < 0 || corners < 0 || 44L + (4L * rings) + (16L * corners) > record.Length) return null;
        var last = -1;
        for (var i = 0; i < rings; i++)
        {
            var start = Int(record, 44 + (4 * i));
            if (start <= last || start >= corners || (i == 0 && start != 0)) return null;
            last = start;
        }

        return corners;
    }

    private static int Int(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadInt32LittleEndian(bytes[at..]);

    private static string Record(int number, string what) => string.Create(CultureInfo.InvariantCulture, $"record {number} {what}");

    private static string Named(int type) => type switch
    {
        1 or 11 or 21 or 8 or 18 or 28 => "points",
        3 or 13 or 23 => "lines",
        0 => "nothing",
        _ => "shapes of an unknown kind",
    };

    private static Outcome<ImmutableArray<int>> Bad(string file, string what) =>
        Outcome<ImmutableArray<int>>.Refuse(MapFileProblems.BadShapefile.At(file, ("value", what)));
}
