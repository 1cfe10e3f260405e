using System.Globalization;
using System.Text;
using System.Xml;
using Watersown.Flight.Flown;

namespace Watersown.Documents.Tracks;

/// <summary>
/// Reads a track out of XML as it streams by: no document type, nothing fetched from anywhere, a limit on depth, and long texts in
/// pieces. What came before a break in the file is kept.
/// </summary>
internal abstract class XmlTrack(Action<Fix> take, string file)
{
    protected const int LongestText = 4096;

    private const int MostDepth = 64;

    private static readonly XmlReaderSettings settings = new()
    {
        Async = true,
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        MaxCharactersFromEntities = 1024,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        IgnoreWhitespace = true,
    };

    private readonly Stack<string> open = new();
    private readonly StringBuilder text = new();
    private readonly char[] piece = new char[8192];

    public DropTally Drops { get; } = new();

    public long Given { get; private set; }

    /// <summary>How the file broke off, where it did.</summary>
    public Problem? Broke { get; private set; }

    public bool TooLong { get; protected set; }

    protected string Parent => open.Count > 0 ? open.Peek() : string.Empty;

    public async Task ReadAsync(Stream stream, CancellationToken stop)
    {
        try
        {
            using var reader = XmlReader.Create(stream, settings);
            while (await reader.ReadAsync())
            {
                stop.ThrowIfCancellationRequested();
                if (reader.Depth > MostDepth)
                {
                    Broke = TrackProblems.TooDeep.At(file, ("value", Line(reader)), ("limit", MostDepth.ToString(CultureInfo.InvariantCulture)));
                    break;
                }

                await StepAsync(reader);
            }
        }
        catch (XmlException fault)
        {
            Broke = TrackProblems.Broken.At(file, ("value", string.Create(CultureInfo.InvariantCulture, $"line {fault.LineNumber}")), ("count", Wording.Say.Number(Given)));
        }
        catch (Exception fault) when (fault is DecoderFallbackException or ArgumentException or NotSupportedException or InvalidOperationException)
        {
            // An encoding that the first line names and nobody has.
            Broke = TrackProblems.Broken.At(file, ("value", "its encoding"), ("count", Wording.Say.Number(Given)));
        }

        End();
    }

    /// <summary>An element begins; its attributes can be asked.</summary>
    protected abstract void Starts(XmlReader reader);

    /// <summary>Text of the element that is open, in pieces where it is long.</summary>
    protected virtual void Says(string element, ReadOnlySpan<char> said)
    {
        if (text.Length + said.Length <= LongestText) text.Append(said);
    }

    /// <summary>An element ends, with its text where that is short.</summary>
    protected abstract void Ends(string element, string said);

    /// <summary>The file ends.</summary>
    protected virtual void End()
    {
    }

    protected void Give(Fix fix)
    {
        Given++;
        take(fix);
    }

    protected static double Figure(ReadOnlySpan<char> said) =>
        double.TryParse(said, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : double.NaN;

    private static string Line(XmlReader reader) => string.Create(CultureInfo.InvariantCulture, $"line {(reader as IXmlLineInfo)?.LineNumber}");

    private async Task StepAsync(XmlReader reader)
    {
        switch (reader.NodeType)
        {
            case XmlNodeType.Element:
                var (empty, name) = (reader.IsEmptyElement, reader.LocalName);
                text.Clear();
                Starts(reader);
                open.Push(name);
                if (empty) Close();
                break;
            case XmlNodeType.EndElement:
                Close();
                break;
            case XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace:
                for (int count; (count = await reader.ReadValueChunkAsync(piece, 0, piece.Length)) > 0;) Says(Parent, piece.AsSpan(0, count));
                break;
            default:
                break;
        }
    }

    private void Close()
    {
        var element = open.Pop();
        Ends(element, text.ToString());
        text.Clear();
    }
}
