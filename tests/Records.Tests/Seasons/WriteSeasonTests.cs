using System.Data;
using ExcelDataReader;
using UglyToad.PdfPig;
using Watersown.Documents.Seasons;
using Watersown.Records.Season;
using Watersown.Season;
using Watersown.Wording;

namespace Watersown.Seasons;

public sealed class WriteSeasonTests : IDisposable
{
    private readonly string folder = Path.Combine(Path.GetTempPath(), "watersown-season-" + Guid.NewGuid().ToString("N"));

    [Fact]
    public void Another_reader_finds_in_the_workbook_what_the_tables_hold()
    {
        var book = Book();
        Assert.True(WriteSeason.Run(book, folder, Language.English).HasValue);
        using var stream = File.OpenRead(Path.Combine(folder, "season.xlsx"));
        using var reader = ExcelReaderFactory.CreateReader(stream);
        foreach (var table in SeasonTables.All(book))
        {
            Assert.Equal(table.Name, reader.Name);
            Assert.True(reader.Read());
            Assert.Equal(table.Columns, Enumerable.Range(0, reader.FieldCount).Select(i => reader.GetValue(i)?.ToString() ?? string.Empty));
            foreach (var row in table.Rows)
            {
                Assert.True(reader.Read());
                for (var i = 0; i < row.Length; i++)
                {
                    if (row[i] is double number) Assert.Equal(number, Convert.ToDouble(reader.GetValue(i), System.Globalization.CultureInfo.InvariantCulture), 1e-6 * (1 + Math.Abs(number)));
                    else if (row[i] is string { Length: > 0 } words) Assert.Equal(SeasonTable.Harmless(words), reader.GetValue(i)?.ToString());
                }
            }

            reader.NextResult();
        }
    }

    [Fact]
    public void What_people_typed_never_runs_in_a_spreadsheet_and_commas_and_quotes_survive()
    {
        var csv = SeasonTables.Marks(Book()).ToCsv();
        Assert.Contains("'=HYPERLINK", csv, StringComparison.Ordinal);
        Assert.DoesNotContain(",=HYPERLINK", csv, StringComparison.Ordinal);
        Assert.Contains("\"box 4, \"\"the crooked one\"\"\"", csv, StringComparison.Ordinal);
        Assert.All(csv.Split("\r\n")[..^1], line => Assert.NotEmpty(line));
    }

    [Fact]
    public void Every_field_has_one_page()
    {
        var book = Book();
        var files = WriteSeason.Run(book, folder, Language.Spanish).Value;
        var pages = files.Where(f => f.EndsWith(".pdf", StringComparison.Ordinal)).ToList();
        Assert.Equal(book.State.Farm.Fields.Length, pages.Count);
        foreach (var page in pages)
        {
            using var pdf = PdfDocument.Open(Path.Combine(folder, page));
            Assert.Equal(1, pdf.NumberOfPages);
        }

        Assert.Contains("FALTA", PdfText(pages[0]), StringComparison.Ordinal);
    }

    public void Dispose()
    {
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
    }

    private string PdfText(string name)
    {
        using var pdf = PdfDocument.Open(Path.Combine(folder, name));
        return pdf.GetPage(1).Text;
    }

    private static SeasonBook Book()
    {
        MarkFact[] facts =
        [
            new Noted("=HYPERLINK(\"http://example.invalid\")", "N3"), new Noted("box 4, \"the crooked one\"", "S2"), new FieldSown("N3") { Batch = "B-08", Dry = DrySeed.FromPounds(14_880) },
            new GrainTicketed("1", Mass.FromPounds(77_000), Mass.FromPounds(27_000), Fraction.FromPercent(20)) { Parts = [new("N3", Fraction.One)] },
            new CostPaid(Costs.CostCategory.Seed, Money.FromDollars(4910.4m)) { Invoice = "-77", Fields = ["N3"] },
        ];
        return SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(facts.Select((f, i) => Marks.At(i + 1, PlannedMorning.At(9, 5).AddHours(i), f))), PlannedMorning.At(20, 5));
    }
}
