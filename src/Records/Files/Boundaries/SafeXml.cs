using System.Text;
using System.Xml;

namespace Watersown.Records.Files.Boundaries;

/// <summary>
/// XML out of strange hands: no document type, nothing fetched from anywhere, no entity but the five of XML itself, a limit on how much
/// and how deep.
/// </summary>
internal static class SafeXml
{
    private static readonly XmlReaderSettings settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        MaxCharactersFromEntities = 1024,
        MaxCharactersInDocument = 2L * MapFileLimits.MaxBytes,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        CloseInput = true,
    };

    /// <summary>
    /// Walks element by element: an element that is closed at once both starts and ends. The same problems end it.
    /// </summary>
    /// <param name="file">The file, for its problems.</param>
    /// <param name="bytes">The document.</param>
    /// <param name="start">Gets the reader at each start.</param>
    /// <param name="text">Gets each piece of text.</param>
    /// <param name="end">Called at each end.</param>
    /// <param name="enough">True ends the walk.</param>
    public static Problem? Walk(string file, ReadOnlyMemory<byte> bytes, Action<XmlReader> start, Action<string> text, Action end, Func<bool> enough) => Walk(file, bytes, reader =>
    {
        switch (reader.NodeType)
        {
            case XmlNodeType.Element:
                var empty = reader.IsEmptyElement;
                start(reader);
                if (empty) end();
                break;
            case XmlNodeType.EndElement:
                end();
                break;
            default:
                text(reader.Value);
                break;
        }

        return !enough();
    });

    /// <summary>Walks the document from its first element; problems of the XML itself end the walk and are given back.</summary>
    /// <param name="file">The file, for its problems.</param>
    /// <param name="bytes">The document.</param>
    /// <param name="walk">Gets each start, text and end in turn; false ends the walk.</param>
    public static Problem? Walk(string file, ReadOnlyMemory<byte> bytes, Func<XmlReader, bool> walk)
    {
        try
        {
            using var reader = XmlReader.Create(new MemoryStream(bytes.ToArray(), writable: false), settings);
            while (reader.Read())
            {
                if (reader.Depth > MapFileLimits.MaxDepth) return MapFileProblems.TooDeep.At(file, ("limit", Wording.Say.Number(MapFileLimits.MaxDepth)));
                if (reader.NodeType is XmlNodeType.Element or XmlNodeType.EndElement or XmlNodeType.Text or XmlNodeType.CDATA && !walk(reader)) return null;
            }

            return null;
        }
        catch (XmlException fault)
        {
            var at = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"line {fault.LineNumber}, column {fault.LinePosition}");
            return MapFileProblems.NotXml.At(file, ("value", at));
        }
        catch (Exception fault) when (fault is DecoderFallbackException or ArgumentException or NotSupportedException or InvalidOperationException)
        {
            // An encoding that the first line names and nobody has.
            return MapFileProblems.NotXml.At(file, ("value", "its encoding is not known"));
        }
    }
}
