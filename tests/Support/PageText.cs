using System.Text;
using Watersown.Wording;

namespace Watersown;

/// <summary>A sheet as plain text, for approved outputs and for comparing what the back ends say.</summary>
internal static class PageText
{
    /// <summary>Everything the sheet says, block by block.</summary>
    /// <param name="page">The sheet.</param>
    /// <param name="arrangement">Which of its arrangements.</param>
    public static string Of(SheetPage page, int arrangement = 0)
    {
        var text = new StringBuilder();
        text.Append("# ").Append(page.Title).Append(page.TitleNote.Length > 0 ? " · " + page.TitleNote : string.Empty).Append('\n');
        text.Append(page.Kind).Append(" | ").AppendJoin(" | ", page.Corner).Append('\n');
        text.Append(page.Lead).Append("\n\n");
        foreach (var block in page.Arrangements[arrangement]) Append(text, block);
        return text.ToString();
    }

    /// <summary>Every word and number of the sheet, apart; a table counts once however it is folded.</summary>
    public static ImmutableArray<string> Words(SheetPage page, int arrangement) => [.. Of(page, arrangement).Split([' ', '\n', '|'], StringSplitOptions.RemoveEmptyEntries)];

    public static string Said(IEnumerable<Run> runs) => string.Concat(runs.Select(r => r.Text));

    private static void Append(StringBuilder text, Block block)
    {
        switch (block)
        {
            case Block.Banner banner: text.Append("[[ ").Append(Said(banner.Runs)).Append(" ]]\n"); break;
            case Block.Alarm alarm: text.Append("!!! ").Append(alarm.Shout).Append('\n').AppendJoin('\n', alarm.Lines.Select(l => "!!! " + l)).Append('\n'); break;
            case Block.Heading heading: text.Append("\n## ").Append(heading.Text).Append('\n'); break;
            case Block.Paragraph paragraph: text.Append(Said(paragraph.Runs)).Append('\n'); break;
            case Block.Figures figures: text.AppendJoin(" | ", figures.Items.Select(f => (f.Heavy ? "[" : string.Empty) + f.Number + " " + Said(f.Caption) + (f.Heavy ? "]" : string.Empty))).Append('\n'); break;
            case Block.Facts facts: foreach (var row in facts.Rows) text.Append(row.Name).Append(" | ").Append(row.Value).Append(" | ").Append(row.Note).Append('\n'); break;
            case Block.Grid grid:
                text.AppendJoin(" | ", grid.Columns.Select(c => c.Head)).Append('\n');
                foreach (var row in grid.Rows) text.AppendJoin(" | ", row.Select(c => c.IsBox ? "[ ]" : Said(c.Runs))).Append('\n');
                break;
            case Block.Picture picture: text.Append("(( ").Append(picture.Draw(200, 250).Title).Append(": ").Append(picture.Draw(200, 250).Description).Append(" ))\n"); break;
            case Block.Side side:
                foreach (var part in side.Left.Concat(side.Right)) Append(text, part);
                break;
            case Block.Ticks ticks: text.AppendJoin("  ", ticks.Items.Select(t => (t.HasBox ? "[ ] " : string.Empty) + t.Text + (t.Line > 0 ? " ____" : string.Empty) + (t.After.Length > 0 ? " " + t.After : string.Empty))).Append('\n'); break;
            default: throw new System.Diagnostics.UnreachableException();
        }
    }
}
