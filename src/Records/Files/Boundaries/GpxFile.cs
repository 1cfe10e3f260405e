using System.Globalization;
using System.Xml;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Records.Files.Boundaries;

/// <summary>
/// GPX: tracks and routes that come back to where they began, as driven around a field. Always in degrees on WGS 84.
/// </summary>
internal sealed class GpxFile
{
    // A driver stops a machine's length or two short of where he began. Common practice, no source.
    private static readonly Length gapMost = Length.FromFeet(150);

    private readonly Drawing drawing;
    private readonly Stack<string> open = new();
    private readonly List<ImmutableArray<GeoPoint>> rings = [];
    private readonly ImmutableArray<GeoPoint>.Builder points = ImmutableArray.CreateBuilder<GeoPoint>();
    private string name = string.Empty;
    private int number;

    private GpxFile(string file) => drawing = new Drawing(file);

    public static Outcome<DrawnLayer> Read(string file, ReadOnlyMemory<byte> bytes)
    {
        var gpx = new GpxFile(file);
        if (SafeXml.Walk(file, bytes, gpx.Start, gpx.Text, gpx.End, () => gpx.drawing.IsFull) is { } problem) return Outcome<DrawnLayer>.Refuse(problem);
        return gpx.drawing.Finish(Grid.Degrees, "closed track or route");
    }

    private void Text(string value)
    {
        if (open.Count > 1 && open.Peek() == "name" && open.ElementAt(1) is "trk" or "rte") name = MapText.Short(value);
    }

    private void Start(XmlReader reader)
    {
        open.Push(reader.LocalName);
        switch (reader.LocalName)
        {
            case "trk" or "rte":
                number++;
                name = string.Empty;
                rings.Clear();
                points.Clear();
                break;
            case "trkpt" or "rtept":
                if (drawing.CountPoints(1)) points.Add(new GeoPoint(Degrees(reader.GetAttribute("lat")), Degrees(reader.GetAttribute("lon"))));
                break;
            case "wpt":
                drawing.Skip();
                break;
            default:
                break;
        }
    }

    private void End()
    {
        switch (open.Pop())
        {
            case "trkseg":
                Close();
                break;
            case "trk":
                Finish("track");
                break;
            case "rte":
                Close();
                Finish("route");
                break;
            default:
                break;
        }
    }

    private void Close()
    {
        if (points.Count > 0) rings.Add(points.ToImmutable());
        points.Clear();
    }

    private void Finish(string what)
    {
        if (rings.Count == 0) return;
        var where = MapText.Where(drawing.File, what, number, name);
        ImmutableArray<Problem> gaps = [.. rings.Select(r => Gap(r, where)).OfType<Problem>()];
        drawing.Add(gaps);
        if (gaps.IsEmpty)
            drawing.AddCounted(new DrawnFeature(where, name, [], [.. rings.Select(r => new BoundaryPart(Closed(r), []))]));
        rings.Clear();
    }

    private static Problem? Gap(ImmutableArray<GeoPoint> ring, string where)
    {
        if (ring.Any(p => !(Math.Abs(p.Latitude) <= 90 && double.IsFinite(p.Longitude)))) return null; // said corner by corner later
        var gap = GeodesicArea.Between(ring[0], ring[^1]).Distance;
        return gap <= gapMost
            ? null
            : MapFileProblems.OpenTrack.At(where, ("value", Say.Number(gap.Feet) + " ft"), ("limit", Say.Number(gapMost.Feet) + " ft"));
    }

    private static ImmutableArray<GeoPoint> Closed(ImmutableArray<GeoPoint> ring) => ring[^1] == ring[0] ? ring : ring.Add(ring[0]);

    private static double Degrees(string? text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : double.NaN;
}
