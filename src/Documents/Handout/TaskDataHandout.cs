using System.Globalization;
using System.Xml;
using Watersown.Flight.Handout;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Documents.Handout;

/// <summary>
/// A handout as the task data of ISO 11783-10, version 4: each field a partfield with its edge, its passes as lines from A to
/// B, hazards as obstacles, and the sowing of each as a task with the rate of soaked seed as its set point. What was flown is a
/// time log.
/// </summary>
public static class TaskDataHandout
{
    /// <summary>Set point of mass per area, mg/m².</summary>
    private const string SetPointMass = "0006";

    private const string Seed = "PDT1";

    /// <summary>Texts of the standard hold so many characters.</summary>
    private const int LongestText = 32;

    /// <summary>The files, by their names inside the folder TASKDATA.</summary>
    public static ImmutableArray<(string Name, ReadOnlyMemory<byte> Bytes)> Write(FarmHandout handout, Language language)
    {
        var speech = new HandoutSpeech(handout, Wording.Words.In(language).Handout);
        var logs = TaskLogs.Of(handout);
        var task = HandoutXml.Write(xml =>
        {
            xml.WriteComment(" " + speech.Cautions.Replace("--", "-", StringComparison.Ordinal) + " ");
            xml.Element("ISO11783_TaskData",
            [
                ("VersionMajor", "4"), ("VersionMinor", "3"), ("ManagementSoftwareManufacturer", "Watersown"), ("ManagementSoftwareVersion", "1"),
                ("DataTransferOrigin", "1"), ("lang", language == Language.Spanish ? "es" : "en"),
            ], () => Body(xml, handout, speech, logs));
        });
        return [("TASKDATA.XML", task), .. logs.Files];
    }

    private static void Body(XmlWriter xml, FarmHandout handout, HandoutSpeech speech, TaskLogs logs)
    {
        xml.Element("CTR", [("A", "CTR1"), ("B", Short(handout.Farm))]);
        logs.Device(xml);
        xml.Element("FRM", [("A", "FRM1"), ("B", Short(handout.Farm)), ("I", "CTR1")]);
        var passes = 0;
        for (var i = 0; i < handout.Fields.Length; i++)
        {
            var (field, number) = (handout.Fields[i], Number(i + 1));
            xml.Element("PFD", [("A", "PFD" + number), ("B", Short(field.Field.Code)), ("C", Short(field.Field.Name)), ("D", Number(field.Drawn.SquareMeters)), ("E", "CTR1"), ("F", "FRM1")], () =>
            {
                foreach (var part in field.Land.Parts) Polygon(xml, part);
                foreach (var hazard in handout.Hazards.Where(h => h.Points.Length > 1)) Line(xml, "9", Short(hazard.Name), width: null, hazard.Points.Select(p => (p, "5")));
                foreach (var hazard in handout.Hazards.Where(h => h.Points.Length == 1)) Point(xml, "5", hazard.Points[0], Short(hazard.Name));
                foreach (var strip in handout.Strips) Point(xml, "11", strip.At!.Value, Short(strip.Name));
                if (!field.Passes.IsEmpty) Patterns(xml, field, number, speech, ref passes);
            });
        }

        xml.Element("PDT", [("A", Seed), ("B", Short(speech.Words.SoakedSeed)), ("F", "1")]);
        for (var i = 0; i < handout.Fields.Length; i++) Task(xml, handout.Fields[i], i, speech, logs);
    }

    private static void Patterns(XmlWriter xml, FieldHandout field, string number, HandoutSpeech speech, ref int passes)
    {
        var from = passes;
        passes += field.Passes.Length;
        xml.Element("GGP", [("A", "GGP" + number), ("B", Short(speech.Words.Passes))], () =>
        {
            for (var i = 0; i < field.Passes.Length; i++)
            {
                var pass = field.Passes[i];
                if (pass.Open.IsEmpty) continue;
                // One line from end to end; the edge tells where the gate opens. Neither repeated to the sides nor carried on beyond its ends.
                xml.Element("GPN",
                [
                    ("A", "GPN" + Number(from + i + 1)), ("B", Short(speech.Name(field, pass))), ("C", "1"), ("E", "4"), ("F", "4"),
                    ("G", HandoutXml.Degrees(Math.Round(pass.Heading.Degrees, 6))),
                ], () => Line(xml, "5", Short(speech.Name(field, pass)), field.Swath, [(pass.Open[0].From, "6"), (pass.Open[^1].To, "7")]));
            }
        });
    }

    private static void Task(XmlWriter xml, FieldHandout field, int index, HandoutSpeech speech, TaskLogs logs)
    {
        var number = Number(index + 1);
        var done = !field.Flown.IsEmpty;
        xml.Element("TSK",
        [
            ("A", "TSK" + number), ("B", Short(Template.Fill(speech.Words.SowTask, ("code", field.Field.Code), ("name", field.Field.Name)))), ("C", "CTR1"), ("D", "FRM1"), ("E", "PFD" + number),
            ("G", done ? "4" : "1"), ("H", field.Soaked is null ? null : "1"),
        ], () =>
        {
            if (field.Soaked is { } soaked)
            {
                xml.Element("TZN", [("A", "1"), ("B", Short(speech.About(field)))], () =>
                    xml.Element("PDV", [("A", SetPointMass), ("B", Number(soaked.KilogramsPerSquareMeter * 1e6)), ("C", Seed)]));
            }

            logs.Times(xml, index);
            xml.Element("PAN", [("A", Seed)]);
            logs.Logs(xml, index);
            if (!field.Passes.IsEmpty) xml.Element("GAN", [("A", "GGP" + number)]);
        });
    }

    private static void Polygon(XmlWriter xml, BoundaryPart part) => xml.Element("PLN", [("A", "1")], () =>
    {
        var rings = HandoutRings.Closed(part);
        for (var i = 0; i < rings.Length; i++) Line(xml, i == 0 ? "1" : "2", string.Empty, width: null, rings[i].Select(p => (p, "2")));
    });

    private static void Line(XmlWriter xml, string type, string name, Length? width, IEnumerable<(GeoPoint At, string Type)> points) =>
        xml.Element("LSG", [("A", type), ("B", name), ("C", width is { } wide ? Number(wide.Meters * 1000) : null)], () =>
        {
            foreach (var (at, kind) in points) Point(xml, kind, at, string.Empty);
        });

    private static void Point(XmlWriter xml, string type, GeoPoint at, string name) =>
        xml.Element("PNT", [("A", type), ("B", name), ("C", HandoutXml.Degrees(at.Latitude)), ("D", HandoutXml.Degrees(at.Longitude))]);

    private static string Number(double number) => Math.Round(number).ToString("0", CultureInfo.InvariantCulture);

    // Cut between characters, never inside one.
    private static string Short(string text) => new StringInfo(text) is var info && info.LengthInTextElements <= LongestText && text.Length <= LongestText
        ? text
        : string.Concat(Elements(text).TakeWhile((_, i) => i < LongestText)) is var cut && cut.Length <= LongestText ? cut : cut[..LongestText];

    private static IEnumerable<string> Elements(string text)
    {
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext()) yield return elements.GetTextElement();
    }
}
