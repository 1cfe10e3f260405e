using System.Collections.Concurrent;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Watersown.Records.Files.Sheets;

/// <summary>The three faces of every sheet.</summary>
internal enum Face
{
    Word,
    WordBold,

    /// <summary>Bookish, for numbers that matter and for headings.</summary>
    Number,
}

/// <summary>
/// The fonts that travel inside the program, so that a sheet prints alike on every machine, and how wide their letters are.
/// A web page names fonts of the same widths.
/// </summary>
internal sealed class SheetFonts : IFontResolver
{
    private const string Family = "Watersown ";

    private static readonly Lazy<XGraphics> Ruler = new(Measuring);

    private static readonly ConcurrentDictionary<(Face Face, char Letter), double> Widths = new();

    private static readonly ConcurrentDictionary<(Face Face, double Size), XFont> Fonts = new();

    private static readonly Lock Gate = new();

    private SheetFonts()
    {
    }

    /// <summary>The font of a face at a size.</summary>
    public static XFont Font(Face face, double size)
    {
        _ = Ruler.Value;
        return Fonts.GetOrAdd((face, size), key => new XFont(Family + key.Face, key.Size, XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode)));
    }

    /// <summary>Width of words, points.</summary>
    public static double Width(string text, Face face, double size)
    {
        var width = 0.0;
        foreach (var letter in text) width += Widths.GetOrAdd((face, letter), Measure);
        return width * size;
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        familyName.StartsWith(Family, StringComparison.Ordinal) ? new FontResolverInfo(familyName[Family.Length..]) : null;

    public byte[]? GetFont(string faceName)
    {
        var file = Enum.Parse<Face>(faceName) switch
        {
            Face.Word => "LiberationSans-Regular.ttf",
            Face.WordBold => "LiberationSans-Bold.ttf",
            Face.Number => "LiberationSerif-Bold.ttf",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        using var stream = typeof(SheetFonts).Assembly.GetManifestResourceStream("Watersown.Records.Files.Sheets.Fonts." + file)
            ?? throw new InvalidOperationException("The font " + file + " is not in the program.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static double Measure((Face Face, char Letter) key)
    {
        const double size = 1000;
        var font = Font(key.Face, size);
        lock (Gate) return Ruler.Value.MeasureString(key.Letter.ToString(), font).Width / size;
    }

    private static XGraphics Measuring()
    {
        GlobalFontSettings.FontResolver ??= new SheetFonts();
        return XGraphics.CreateMeasureContext(new XSize(Paper.Width, Paper.Height), XGraphicsUnit.Point, XPageDirection.Downwards);
    }
}
