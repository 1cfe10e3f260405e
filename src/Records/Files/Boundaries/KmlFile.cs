using System.Globalization;
using System.Text;
using System.Xml;
using Watersown.Land;

namespace Watersown.Records.Files.Boundaries;

/// <summary>KML: the areas of each placemark, with its name and its own columns. Always in degrees on WGS 84.</summary>
internal sealed class KmlFile
{
    private readonly Drawing drawing;
    private readonly Stack<string> open = new();
    private readonly StringBuilder text = new();
    private readonly List<(string Column, string Text)> columns = [];
    private readonly List<BoundaryPart> parts = [];
    private ImmutableArray<GeoPoint>.Builder? ring;
    private string name = string.Empty;
    private string column = string.Empty;
    private int placemark;
    private int others;
    private string? fault;

    private KmlFile(string file) => drawing = new Drawing(file);

    public static Outcome<DrawnLayer> Read(string file, ReadOnlyMemory<byte> bytes)
    {
        var kml = new KmlFile(file);
        if (SafeXml.Walk(file, bytes, kml.Start, kml.Text, kml.End, () => kml.drawing.IsFull) is { } problem) return Outcome<DrawnLayer>.Refuse(problem);
        return kml.drawing.Finish(Grid.Degrees, "Polygon");
    }

    private void Text(string value)
    {
        if (InPlacemark && text.Length <= MapFileLimits.MaxBytes) text.Append(value);
    }

    private bool InPlacemark => open.Contains("Placemark", StringComparer.Ordinal);

    private void Start(XmlReader reader)
    {
        open.Push(reader.LocalName);
        text.Clear();
        switch (reader.LocalName)
        {
            case "Placemark":
                placemark++;
                (name, fault, others) = (string.Empty, null, 0);
                columns.Clear();
                parts.Clear();
                break;
            case "Data" or "SimpleData":
                column = reader.GetAttribute("name") ?? string.Empty;
                break;
            case "Polygon":
                parts.Add(new BoundaryPart([], []));
                break;
            case "Point" or "LineString" or "Model" or "Track":
                others++;
                break;
            case "coordinates":
                ring = ImmutableArray.CreateBuilder<GeoPoint>();
                break;
            default:
                break;
        }
    }

    private void End()
    {
        var element = open.Pop();
        var parent = open.Count > 0 ? open.Peek() : string.Empty;
        switch (element)
        {
            case "name" when parent == "Placemark":
                name = MapText.Short(text.ToString());
                break;
            case "value" or "SimpleData" when column.Length > 0 && columns.Count < MapFileLimits.MaxColumns:
                columns.Add((MapText.Short(column), MapText.Short(text.ToString())));
                column = string.Empty;
                break;
            case "coordinates":
                if (parent == "LinearRing" && parts.Count > 0) AddRing();
                ring = null;
                break;
            case "Placemark" when !InPlacemark:
                Finish();
                break;
            default:
                break;
        }

        text.Clear();
    }

    // Corners apart by blanks, numbers of a corner by commas: longitude, latitude, and a height of no use here.
    private void AddRing()
    {
        foreach (var corner in text.ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (!drawing.CountPoints(1)) return;
            var numbers = corner.Split(',');
            if (numbers.Length is < 2 or > 3 || Number(numbers[0]) is not { } longitude || Number(numbers[1]) is not { } latitude)
            {
                fault ??= MapText.Short(corner.Length <= 40 ? corner : corner[..40]);
                continue;
            }

            ring!.Add(new GeoPoint(latitude, longitude));
        }

        var drawn = ring!.ToImmutable();
        var part = parts[^1];
        parts[^1] = open.Contains("innerBoundaryIs", StringComparer.Ordinal) ? part with { Holes = part.Holes.Add(drawn) } : part with { Outer = drawn };
    }

    private void Finish()
    {
        if (parts.Count == 0)
        {
            if (others > 0) drawing.Skip();
            return;
        }

        var where = MapText.Where(drawing.File, "placemark", placemark, name);
        if (fault is not null) drawing.Add(BoundaryProblems.NotANumber.At(where, ("value", fault)));
        else drawing.AddCounted(new DrawnFeature(where, name.Length > 0 ? name : MapBoundary.NameOf(columns), [.. columns], [.. parts]));
    }

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;
}
