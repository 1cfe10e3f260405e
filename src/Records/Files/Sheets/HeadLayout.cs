using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Sets the head of a page: title, what sheet it is, plan number, and the double rule under it.</summary>
internal static class HeadLayout
{
    public const double LeadSize = 13;
    public const double LeadLine = 17;
    private const double TitleMost = 29;
    private const double TitleLeast = 16;

    /// <summary>Size of the title: as large as its line allows.</summary>
    public static double TitleSize(SheetPage page, string folio)
    {
        var room = Paper.Inner - CornerWidth(page, folio) - Paper.ColumnGap;
        var natural = SheetFonts.Width(page.Title, Face.Number, 1) + (page.TitleNote.Length > 0 ? SheetFonts.Width(" " + page.TitleNote, Face.Word, 0.65) : 0);
        return Math.Clamp(Math.Floor(room / natural), TitleLeast, TitleMost);
    }

    public static Laid Lay(SheetPage page, string folio)
    {
        var corner = CornerWidth(page, folio);
        var room = Paper.Inner - corner - Paper.ColumnGap;
        var size = TitleSize(page, folio);
        var title = TextSetter.Lay(TextSetter.Lines([new Stretch(page.Title, Face.Number)], room, size), room, size, size * 1.1);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.AddRange(title.Marks);
        if (page.TitleNote.Length > 0 && title.Marks[^1] is Mark.Words last)
            marks.Add(new Mark.Words(page.TitleNote, last.X + SheetFonts.Width(last.Text + " ", Face.Number, size), last.Y, Face.Word, size * 0.65));
        var lead = TextSetter.Lay([new Run(page.Lead, Bold: true)], room, LeadSize, LeadLine);
        marks.AddRange(lead.Marks.Select(m => m.Moved(0, title.Height + 2)));
        var right = CornerLines(page, folio).Select(l => TextSetter.Lay([l], corner, setting: Setting.Right));
        var stack = Laid.Stack(right, 0);
        marks.AddRange(stack.Marks.Select(m => m.Moved(Paper.Inner - corner, 2)));
        var height = Math.Max(title.Height + 2 + lead.Height, stack.Height + 2) + 4;
        marks.Add(new Mark.Rule(0, height, Paper.Inner, height, 1.5));
        marks.Add(new Mark.Rule(0, height + 3, Paper.Inner, height + 3, 1.5));
        return new Laid(height + 5, marks.ToImmutable());
    }

    /// <summary>The widest folio a sheet can have.</summary>
    public static string Widest(SheetPage page) => Template.Fill(page.Folio, ("page", "99"), ("pages", "99"));

    public static IEnumerable<Run> CornerLines(SheetPage page, string folio)
    {
        yield return new Run(page.Kind, Bold: true);
        foreach (var line in page.Corner) yield return new Run(line);
        if (folio.Length > 0) yield return new Run(folio, Bold: true);
    }

    // Alike on all pages of a sheet: a folio keeps room for two figures, so that the title does not change its size.
    private static double CornerWidth(SheetPage page, string folio)
    {
        var widest = folio.Length == 0 ? folio : Widest(page);
        return Math.Min(Paper.Inner * 0.42, CornerLines(page, widest).Max(l => TextSetter.Width([l], Paper.Body)) + 1);
    }
}
