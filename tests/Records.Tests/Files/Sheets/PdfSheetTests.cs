using System.Diagnostics;
using System.Text;
using UglyToad.PdfPig;

namespace Watersown.Records.Files.Sheets;

/// <summary>PDF files read back by another library, and by a command of the machine where it is there.</summary>
public sealed class PdfSheetTests
{
    [Theory]
    [InlineData("flight-2026-05-09-s2-en", "155", "194", "WET, set the gate to this", "12,865 lb dry", "16,081 lb wet", "E-1 lot 2", "2,681", "This field only.", "plan no. 14", "Unknown, not none.")]
    [InlineData("flight-2026-05-09-s2-es", "155", "MOJADO, a la compuerta", "12,865 lb en seco", "16,081 lb en mojado", "El piloto decide", "hélice", "sábado 9 de mayo 2026")]
    [InlineData("flight-2026-05-26-h6-1-en", "flight 1 of 2", "No map:", "9,680 lb dry")]
    [InlineData("seed-2026-05-08-en", "HOLD until we call", "17,700", "22,125", "lb dry", "lb wet, expected", "Never enter a bin of seed alone.")]
    [InlineData("water-2026-05-08-lucero-quintabar-es", "NO TIRAR AGUA / NO SPILL", "N1 Gander North", "4 de 6", "10.7 cfs", "FUGA", "Recorrido por fuente")]
    public void A_sheet_read_back_is_one_page_and_says_what_it_should(string key, params string[] said)
    {
        using var pdf = PdfDocument.Open(PdfSheet.Write(PrintedPages.Fitted(key), PlannedMorning.Now));
        Assert.Equal(1, pdf.NumberOfPages);
        var text = Flat(pdf);
        foreach (var words in said) Assert.Contains(words.Replace(" ", string.Empty, StringComparison.Ordinal), text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_word_of_every_sheet_is_in_its_pdf()
    {
        foreach (var page in PrintedPages.All.Where(p => p.Key.StartsWith("day-", StringComparison.Ordinal) || p.Key.Contains("s2", StringComparison.Ordinal) || p.Key.Contains("n6", StringComparison.Ordinal)))
        {
            var fitted = Fitter.Fit(page);
            using var pdf = PdfDocument.Open(PdfSheet.Write(fitted, PlannedMorning.Now));
            var text = Flat(pdf);
            var arranged = page with { Arrangements = [[.. PrintedPages.Blocks(fitted).Where(b => b is not Wording.Block.Picture)]] };
            foreach (var word in PageText.Words(arranged, 0).Where(w => w.Any(char.IsLetterOrDigit) && w is not "#" and not "##")) Assert.Contains(word.Trim('[', ']', '_'), text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Fonts_travel_inside_and_the_paper_is_letter()
    {
        using var pdf = PdfDocument.Open(PdfSheet.Write(PrintedPages.Fitted("flight-2026-05-09-s2-en"), PlannedMorning.Now));
        var page = pdf.GetPage(1);
        Assert.Equal((612, 792), (page.Width, page.Height));
        Assert.All(page.Letters.Select(l => l.FontName).Distinct(StringComparer.Ordinal), f => Assert.Contains("Liberation", f, StringComparison.Ordinal));
        Assert.All(page.Letters, l => Assert.InRange(l.BoundingBox.Right, 0, 612 - 20));
    }

    [Fact]
    public void Words_that_a_person_acts_on_are_twelve_points_or_more()
    {
        using var pdf = PdfDocument.Open(PdfSheet.Write(PrintedPages.Fitted("water-2026-05-08-lucero-quintabar-es"), PlannedMorning.Now));
        var letters = pdf.GetPage(1).Letters;
        Assert.True(letters.Count(l => l.PointSize >= 11.9) > letters.Count * 0.85);
        Assert.All(letters, l => Assert.True(l.PointSize >= 10.4, l.Value + " is " + l.PointSize));
    }

    [Fact]
    public void The_title_of_the_file_names_the_sheet_and_the_field()
    {
        using var pdf = PdfDocument.Open(PdfSheet.Write(PrintedPages.Fitted("flight-2026-05-09-s2-es"), PlannedMorning.Now));
        Assert.Equal("Hoja de vuelo: Crooked Box", pdf.Information.Title);
    }

    [Fact]
    public void Another_reader_of_the_machine_finds_the_same_words()
    {
        var file = Path.Combine(Path.GetTempPath(), "watersown-" + Path.GetRandomFileName() + ".pdf");
        File.WriteAllBytes(file, PdfSheet.Write(PrintedPages.Fitted("flight-2026-05-09-s2-es"), PlannedMorning.Now));
        try
        {
            using var reader = Process.Start(new ProcessStartInfo("pdftotext", ["-layout", file, "-"]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = Encoding.UTF8 });
            var text = reader!.StandardOutput.ReadToEnd();
            reader.WaitForExit();
            foreach (var words in new[] { "Crooked Box", "155", "194", "en seco", "MOJADO", "2,681", "pulg.", "ráfagas", "hélice" }) Assert.Contains(words, text, StringComparison.Ordinal);
            Assert.Equal(1, text.Count(c => c == '\f'));
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Assert.Skip("pdftotext is not on this machine.");
        }
        finally
        {
            File.Delete(file);
        }
    }

    // Without blanks: where a line breaks is the layout's business.
    private static string Flat(PdfDocument pdf) => string.Concat(pdf.GetPages().Select(p => p.Text)).Replace(" ", string.Empty, StringComparison.Ordinal);
}
