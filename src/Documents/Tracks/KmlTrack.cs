using System.Text;
using System.Xml;
using Watersown.Flight.Flown;

namespace Watersown.Documents.Tracks;

/// <summary>
/// KML: drawn lines, tracks with times (gx:Track: whens and coords in turn), and places with a time stamp. A gate may stand in a
/// placemark's data, or in an array beside a track.
/// </summary>
internal sealed class KmlTrack(Action<Fix> take, string file) : XmlTrack(take, file)
{
    private readonly LineParts line = new();
    private readonly StringBuilder corner = new();
    private string data = string.Empty;
    private bool point;
    private bool skip;

    protected override void Starts(XmlReader reader)
    {
        switch (reader.LocalName)
        {
            case "Placemark":
                line.Clear();
                (point, skip) = (false, false);
                break;
            case "LineString" or "Track":
                line.Begin();
                break;
            case "Point":
                point = true;
                break;
            case "Polygon":
                skip = true;
                break;
            case "Data" or "SimpleData" or "SimpleArrayData":
                data = reader.GetAttribute("name") ?? string.Empty;
                break;
            default:
                break;
        }
    }

    protected override void Says(string element, ReadOnlySpan<char> said)
    {
        if (element != "coordinates")
        {
            base.Says(element, said);
            return;
        }

        // Places of one long text come in pieces, cut anywhere.
        foreach (var letter in said)
        {
            if (!char.IsWhiteSpace(letter))
            {
                if (corner.Length < 200) corner.Append(letter);
            }
            else if (corner.Length > 0) Corner();
        }
    }

    protected override void Ends(string element, string said)
    {
        switch (element)
        {
            case "coordinates":
                if (corner.Length > 0) Corner();
                break;
            case "coord":
                Coord(said);
                break;
            case "when" when Parent == "Track":
                line.Tell(TrackColumn.Time, said, double.NaN);
                break;
            case "when" or "begin":
                line.Time = TrackTime.Moment(said);
                break;
            case "value" when Parent == "SimpleArrayData" && TrackWords.Of(data) is { Column: TrackColumn.Gate or TrackColumn.Speed } array:
                line.Tell(array.Column, said, Figure(said) * array.PerUnit);
                break;
            case "value" or "SimpleData":
                Data(said);
                break;
            case "Polygon":
                skip = false;
                break;
            case "Placemark":
                TooLong |= line.TooLong;
                line.Give(Give, apart: !point);
                break;
            default:
                break;
        }
    }

    private void Data(string said)
    {
        if (TrackWords.Of(data) is not { } meant) return;
        if (meant.Column == TrackColumn.Gate) line.Gate = TrackWords.Gate(said);
        else if (meant.Column == TrackColumn.Speed) line.Speed = Figure(said) * meant.PerUnit;
        else if (meant.Column == TrackColumn.Time && double.IsNaN(line.Time)) line.Time = TrackTime.Moment(said);
    }

    private void Corner()
    {
        var text = corner.ToString();
        corner.Clear();
        if (skip) return;
        Span<Range> parts = stackalloc Range[4];
        Place(text, parts[..text.AsSpan().Split(parts, ',')]);
    }

    private void Coord(string said)
    {
        Span<Range> parts = stackalloc Range[4];
        var text = said.AsSpan().Trim();
        Place(text, parts[..text.Split(parts, ' ', StringSplitOptions.RemoveEmptyEntries)]);
    }

    private void Place(ReadOnlySpan<char> text, ReadOnlySpan<Range> parts)
    {
        if (parts.Length is < 2 or > 3 || Figure(text[parts[0]]) is not (>= -1e6 and <= 1e6 and var longitude) || Figure(text[parts[1]]) is not (>= -1e6 and <= 1e6 and var latitude))
        {
            Drops.Add(DropReason.Unreadable, Given + 1);

            // Keeps the lists beside it in step.
            line.Place(double.NaN, double.NaN, double.NaN);
            return;
        }

        line.Place(latitude, longitude, parts.Length == 3 ? Figure(text[parts[2]]) : double.NaN);
    }
}
