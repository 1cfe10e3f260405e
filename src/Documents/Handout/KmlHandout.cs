using System.Xml;
using Watersown.Flight.Handout;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Documents.Handout;

/// <summary>A handout as KML 2.2 (an OGC standard): a folder each for fields, passes, hazards, strips and what was flown.</summary>
public static class KmlHandout
{
    public const string Namespace = "http://www.opengis.net/kml/2.2";

    public static ReadOnlyMemory<byte> Write(FarmHandout handout, Language language)
    {
        var speech = new HandoutSpeech(handout, Wording.Words.In(language).Handout);
        return HandoutXml.Write(xml =>
        {
            xml.WriteStartElement("kml", Namespace);
            xml.Element("Document", [], () =>
            {
                xml.Text("name", speech.Title);
                xml.Text("description", speech.Cautions);
                Folder(xml, speech.Words.Fields, handout.Fields, field => Placemark(xml, HandoutSpeech.Name(field), speech.About(field), () => Land(xml, field.Land)));
                foreach (var field in handout.Fields)
                    Folder(xml, speech.Words.Passes + " " + field.Field.Code, field.Passes, pass => Placemark(xml, speech.Name(field, pass), string.Empty, () => Lines(xml, pass.Open.Select(s => (ImmutableArray<GeoPoint>)[s.From, s.To]))));
                foreach (var field in handout.Fields)
                    Folder(xml, speech.Words.Flown + " " + field.Field.Code, field.Flown, run => Placemark(xml, speech.Name(field, run), speech.About(run), () => Run(xml, run)));
                Folder(xml, speech.Words.Hazards, handout.Hazards, hazard => Placemark(xml, hazard.Name, speech.About(hazard), () => Place(xml, hazard.Points)));
                Folder(xml, speech.Words.Strips, handout.Strips, strip => Placemark(xml, strip.Name, string.Empty, () => Place(xml, [strip.At!.Value])));
            });
            xml.WriteEndElement();
        });
    }

    private static void Folder<T>(XmlWriter xml, string name, ImmutableArray<T> entries, Action<T> body)
    {
        if (entries.IsEmpty) return;
        xml.Element("Folder", [], () =>
        {
            xml.Text("name", name);
            foreach (var entry in entries) body(entry);
        });
    }

    private static void Placemark(XmlWriter xml, string name, string about, Action geometry) => xml.Element("Placemark", [], () =>
    {
        xml.Text("name", name);
        xml.Text("description", about);
        geometry();
    });

    private static void Run(XmlWriter xml, HandoutRun run)
    {
        if (run.Fixes[0].Time is { } from && run.Fixes[^1].Time is { } until)
        {
            xml.Element("TimeSpan", [], () =>
            {
                xml.Text("begin", HandoutXml.Moment(from));
                xml.Text("end", HandoutXml.Moment(until));
            });
        }

        Lines(xml, [[.. run.Fixes.Select(f => f.At)]]);
    }

    private static void Land(XmlWriter xml, Boundary land) => Several(xml, land.Parts, part => xml.Element("Polygon", [], () =>
    {
        var rings = HandoutRings.Closed(part);
        for (var i = 0; i < rings.Length; i++)
        {
            var ring = rings[i];
            xml.Element(i == 0 ? "outerBoundaryIs" : "innerBoundaryIs", [], () => xml.Element("LinearRing", [], () => xml.Text("coordinates", HandoutXml.Tuples(ring))));
        }
    }));

    private static void Lines(XmlWriter xml, IEnumerable<ImmutableArray<GeoPoint>> lines) =>
        Several(xml, [.. lines], line => xml.Element("LineString", [], () => xml.Text("coordinates", HandoutXml.Tuples(line))));

    private static void Place(XmlWriter xml, ImmutableArray<GeoPoint> points)
    {
        if (points.Length == 1) xml.Element("Point", [], () => xml.Text("coordinates", HandoutXml.Tuples(points)));
        else Lines(xml, [points]);
    }

    private static void Several<T>(XmlWriter xml, ImmutableArray<T> pieces, Action<T> write)
    {
        if (pieces.Length == 1)
        {
            write(pieces[0]);
            return;
        }

        xml.Element("MultiGeometry", [], () =>
        {
            foreach (var piece in pieces) write(piece);
        });
    }
}
