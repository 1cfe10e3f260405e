using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Draws fitted sheets as PDF, fonts inside.</summary>
internal static class PdfSheet
{
    public static byte[] Write(FittedSheet sheet, DateTimeOffset made)
    {
        using var document = new PdfDocument();
        document.Info.Title = sheet.Page.Kind + ": " + sheet.Page.Title;
        document.Info.Author = sheet.Page.Corner[0];
        document.Info.Creator = "Watersown";
        document.Info.CreationDate = made.UtcDateTime;
        document.Language = Words.In(sheet.Page.Language).Common.Tag;
        for (var i = 0; i < sheet.Pages.Length; i++) Draw(document, sheet, i);
        using var bytes = new MemoryStream();
        document.Save(bytes, closeStream: false);
        return bytes.ToArray();
    }

    private static void Draw(PdfDocument document, FittedSheet sheet, int index)
    {
        var page = document.AddPage();
        page.Width = XUnitPt.FromPoint(Paper.Width);
        page.Height = XUnitPt.FromPoint(Paper.Height);
        using var paper = XGraphics.FromPdfPage(page);
        var body = Laid.Stack([HeadLayout.Lay(sheet.Page, sheet.Folio(index)), BlockLayout.LayAll(sheet.Pages[index], Paper.Inner)], Paper.Gap);
        foreach (var mark in body.Marks) PdfMarks.Draw(paper, mark.Moved(Paper.Margin, Paper.Margin));
        if (sheet.GoesOn(index) is { Length: > 0 } words)
        {
            var foot = TextSetter.Lay([new Run(words, Bold: true)], Paper.Inner, setting: Setting.Right);
            foreach (var mark in foot.Marks) PdfMarks.Draw(paper, mark.Moved(Paper.Margin, Paper.Height - Paper.Margin - Paper.BodyLine));
        }
    }
}
