using System.Globalization;
using System.Xml;
using Watersown.Flight.Handout;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Documents.Handout;

/// <summary>
/// A handout as GPX 1.1: hazards and strips as waypoints, passes and lines of hazards as routes (what is planned), edges and
/// what was flown as tracks (what is there).
/// </summary>
public static class GpxHandout
{
    public const string Namespace = "http://www.topografix.com/GPX/1/1";

    public static ReadOnlyMemory<byte> Write(FarmHandout handout, Language language)
    {
        var speech = new HandoutSpeech(handout, Wording.Words.In(language).Handout);
        return HandoutXml.Write(xml =>
        {
            xml.WriteStartElement("gpx", Namespace);
            xml.WriteAttributeString("version", "1.1");
            xml.WriteAttributeString("creator", "Watersown");
            xml.Element("metadata", [], () =>
            {
                xml.Text("name", speech.Title);
                xml.Text("desc", speech.Cautions);
                xml.Text("time", HandoutXml.Moment(handout.Made));
            });
            Points(xml, handout, speech);
            Routes(xml, handout, speech);
            Tracks(xml, handout, speech);
            xml.WriteEndElement();
        });
    }

    private static void Points(XmlWriter xml, FarmHandout handout, HandoutSpeech speech)
    {
        foreach (var hazard in handout.Hazards.Where(h => h.Points.Length == 1))
            Point(xml, "wpt", hazard.Points[0], () => Named(xml, hazard.Name, speech.About(hazard), Farms.Words.Hazards.Of(hazard.Kind)));
        foreach (var strip in handout.Strips) Point(xml, "wpt", strip.At!.Value, () => Named(xml, strip.Name, string.Empty, "strip"));
    }

    private static void Routes(XmlWriter xml, FarmHandout handout, HandoutSpeech speech)
    {
        foreach (var hazard in handout.Hazards.Where(h => h.Points.Length > 1))
            Route(hazard.Name, speech.About(hazard), Farms.Words.Hazards.Of(hazard.Kind), number: null, hazard.Points);
        foreach (var field in handout.Fields)
        {
            foreach (var pass in field.Passes)
            {
                foreach (var span in pass.Open) Route(speech.Name(field, pass), string.Empty, "pass", pass.Number, [span.From, span.To]);
            }
        }

        void Route(string name, string about, string type, int? number, ImmutableArray<GeoPoint> points) => xml.Element("rte", [], () =>
        {
            xml.Text("name", name);
            xml.Text("desc", about);
            xml.Text("number", number?.ToString(CultureInfo.InvariantCulture));
            xml.Text("type", type);
            foreach (var at in points) Point(xml, "rtept", at);
        });
    }

    private static void Tracks(XmlWriter xml, FarmHandout handout, HandoutSpeech speech)
    {
        foreach (var field in handout.Fields)
        {
            Track(HandoutSpeech.Name(field), speech.About(field), "field", field.Land.Parts.SelectMany(p => HandoutRings.Closed(p)), ring =>
            {
                foreach (var at in ring) Point(xml, "trkpt", at);
            });
            foreach (var run in field.Flown)
            {
                Track(speech.Name(field, run), speech.About(run), "flown", [run.Fixes], fixes =>
                {
                    foreach (var fix in fixes) Point(xml, "trkpt", fix.At, () => xml.Text("time", fix.Time is { } time ? HandoutXml.Moment(time) : null));
                });
            }
        }

        void Track<T>(string name, string about, string type, IEnumerable<T> segments, Action<T> body) => xml.Element("trk", [], () =>
        {
            Named(xml, name, about, type);
            foreach (var segment in segments) xml.Element("trkseg", [], () => body(segment));
        });
    }

    private static void Named(XmlWriter xml, string name, string about, string type)
    {
        xml.Text("name", name);
        xml.Text("desc", about);
        xml.Text("type", type);
    }

    private static void Point(XmlWriter xml, string element, GeoPoint at, Action? body = null) =>
        xml.Element(element, [("lat", HandoutXml.Degrees(at.Latitude)), ("lon", HandoutXml.Degrees(at.Longitude))], body);
}
