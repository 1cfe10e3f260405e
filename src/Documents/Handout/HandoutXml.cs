using System.Globalization;
using System.Text;
using System.Xml;
using Watersown.Land;

namespace Watersown.Documents.Handout;

/// <summary>Writes XML the same way for every format: UTF-8, laid out, line feeds alone.</summary>
internal static class HandoutXml
{
    private static readonly XmlWriterSettings Settings = new() { Indent = true, NewLineChars = "\n", Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), CheckCharacters = true };

    public static ReadOnlyMemory<byte> Write(Action<XmlWriter> body)
    {
        using var stream = new MemoryStream();
        using (var xml = XmlWriter.Create(stream, Settings)) body(xml);
        return stream.ToArray();
    }

    /// <summary>An element with attributes, and what is in it.</summary>
    public static void Element(this XmlWriter xml, string name, ImmutableArray<(string Name, string? Text)> attributes, Action? body = null)
    {
        xml.WriteStartElement(name);
        foreach (var (key, text) in attributes)
        {
            if (text is { Length: > 0 }) xml.WriteAttributeString(key, Clean(text));
        }

        body?.Invoke();
        xml.WriteEndElement();
    }

    /// <summary>An element with a text; left out where there is none.</summary>
    public static void Text(this XmlWriter xml, string name, string? text)
    {
        if (text is { Length: > 0 }) xml.WriteElementString(name, Clean(text));
    }

    /// <summary>A degree to a tenth of a millimeter on the ground.</summary>
    public static string Degrees(double degrees) => degrees.ToString("0.#########", CultureInfo.InvariantCulture);

    /// <summary>A moment in universal time.</summary>
    public static string Moment(DateTimeOffset moment) => moment.ToUniversalTime().ToString("yyyy-MM-dd'T'HH:mm:ss.FFF'Z'", CultureInfo.InvariantCulture);

    /// <summary>Longitude before latitude, as KML has them.</summary>
    public static string Tuples(IEnumerable<GeoPoint> points) => string.Join(" ", points.Select(p => Degrees(p.Longitude) + "," + Degrees(p.Latitude)));

    // A name typed on a phone may hold what XML cannot: control characters and halves of characters.
    private static string Clean(string text)
    {
        var clean = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1])) clean.Append(text[i]).Append(text[++i]);
            else clean.Append(XmlConvert.IsXmlChar(text[i]) ? text[i] : ' ');
        }

        return clean.ToString();
    }
}
