using System.Text;
using Watersown.Documents.Sheets;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Forms in which sheets are printed.</summary>
[Flags]
public enum SheetForms
{
    None = 0,

    /// <summary>Web pages, one file each.</summary>
    Html = 1,

    Pdf = 2,

    /// <summary>Text messages, as plain text and as JSON.</summary>
    Texts = 4,

    Calendar = 8,

    All = Html | Pdf | Texts | Calendar,
}

/// <summary>Makes the files of one printing in memory: nothing is written until all of them are there.</summary>
internal static class SheetFiles
{
    public const string Texts = "texts.txt";
    public const string TextsJson = "texts.json";
    public const string Calendar = "season.ics";

    /// <summary>Names and contents, in the order of the list.</summary>
    public static ImmutableArray<(string Name, ReadOnlyMemory<byte> Bytes)> Of(SeasonPlan plan, SheetSet set, SheetForms forms, Language calendarLanguage)
    {
        var files = ImmutableArray.CreateBuilder<(string, ReadOnlyMemory<byte>)>();
        if (forms.HasFlag(SheetForms.Html) || forms.HasFlag(SheetForms.Pdf))
        {
            foreach (var page in set.Pages)
            {
                var fitted = Fitter.Fit(page);
                if (forms.HasFlag(SheetForms.Html)) files.Add((page.Key + ".html", Utf8(HtmlSheet.Write(fitted))));
                if (forms.HasFlag(SheetForms.Pdf)) files.Add((page.Key + ".pdf", PdfSheet.Write(fitted, plan.MadeAt)));
            }
        }

        if (forms.HasFlag(SheetForms.Texts) && !set.Texts.IsEmpty)
        {
            files.Add((Texts, Utf8(TextsFile.Write(set))));
            files.Add((TextsJson, TextsDocument.Write(plan, set)));
        }

        if (forms.HasFlag(SheetForms.Calendar)) files.Add((Calendar, CalendarFile.Write(plan, calendarLanguage)));
        files.Add((IndexPage.Name, Utf8(IndexPage.Write(plan, set, [.. files.Select(f => f.Item1)]))));
        return files.ToImmutable();
    }

    private static byte[] Utf8(string text) => new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text);
}
