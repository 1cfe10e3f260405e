using System.Text;
using Watersown.Documents.Seasons;
using Watersown.Records.Files.Season;
using Watersown.Records.Files.Sheets;
using Watersown.Season;
using Watersown.Season.Boards;
using Watersown.Season.FieldRecords;
using Watersown.Wording;

namespace Watersown.Records.Season;

/// <summary>Step: write a season's records into a folder: a page a field, tables for other programs, one workbook.</summary>
public static class WriteSeason
{
    /// <summary>Puts together and writes; the folder holds this season and nothing else afterwards.</summary>
    /// <param name="book">The season.</param>
    /// <param name="folder">Empty, new, or written into before.</param>
    /// <param name="language">Of the pages; the tables are the same in every language.</param>
    /// <returns>The files by their names.</returns>
    public static Outcome<ImmutableArray<string>> Run(SeasonBook book, string folder, Language language)
    {
        if (SheetFolder.Fault(folder) is { } fault) return Outcome<ImmutableArray<string>>.Refuse(fault);
        var tables = SeasonTables.All(book);
        var plan = PlanInForce.Of(book, null);
        ImmutableArray<(string Name, ReadOnlyMemory<byte> Bytes)> files =
        [
            .. tables.Select(t => (t.Name + ".csv", (ReadOnlyMemory<byte>)new UTF8Encoding(encoderShouldEmitUTF8Identifier: true).GetPreamble().Concat(Encoding.UTF8.GetBytes(t.ToCsv())).ToArray())),
            ("season.xlsx", SeasonWorkbook.Write(tables)),
            .. FieldRecord.All(book).Select(r => RecordPage.Of(plan, book, r, language)).Select(p => (p.Key + ".pdf", (ReadOnlyMemory<byte>)PdfSheet.Write(Fitter.Fit(p), book.Now))),
        ];
        SheetFolder.Replace(folder, files);
        return Outcome<ImmutableArray<string>>.Of([.. files.Select(f => f.Name)]);
    }
}
