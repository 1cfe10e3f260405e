using System.Globalization;
using System.Text;
using Watersown.Documents.Farms;
using Watersown.Schedule.Lists;
using Watersown.Wording;

namespace Watersown.Cli;

/// <summary>What a pasted list was understood as, what it adds up to, and the only questions left.</summary>
internal static class ListText
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static string Understood(ImportedList imported, string? written)
    {
        var text = new StringBuilder();
        var list = imported.List;
        foreach (var column in list.Columns.Where(c => c.Meaning is not null))
            text.Append(Plain, $"{Heading(column)} was taken as {ListColumn(column)}.\n");
        text.Append(Plain, $"\n{list.Fields.Length} {FarmText.Plural(list.Fields.Length, "field")} · {FarmText.Acres(list.Fields.Select(f => f.Net))} ac net\n");
        text.Append(FarmText.SeedLine(list.Fields.Select(f => f.Dry), imported.State.WetFactor));
        text.Append(written is null ? "Nothing was written; --out farm.json writes the farm document.\n" : $"Written to {written}.\n");
        if (!imported.Open.IsEmpty) Ask(text, imported);
        return text.ToString();
    }

    /// <summary>One line a field, to be ticked on paper or answered in the document.</summary>
    private static void Ask(StringBuilder text, ImportedList imported)
    {
        text.Append("\nStill open: is it sown? full? is its seed soaking? Tick what is so; what stays blank is none of the three.\n\n");
        var open = imported.Open.Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        text.Append(TextTable.Write(
            ["Code", "Field", ">ac", ">lb dry", "sown?", "full?", "soaking?"],
            imported.State.Farm.Fields.Zip(imported.State.Fields)
                .Where(p => open.Contains(p.First.Name))
                .Select(p => (ImmutableArray<string>)[p.First.Code, p.First.Name, FarmText.Acres([p.First.Net]), Say.Number((p.Second.Rate * p.First.Net).Pounds), "[ ]", "[ ]", "[ ]"])));
    }

    private static string Heading(UnderstoodColumn column) =>
        column.Heading.Length > 0 ? string.Create(Plain, $"'{column.Heading}'") : string.Create(Plain, $"Column {column.Index + 1}");

    private static string ListColumn(UnderstoodColumn column) => ListWords.Called(column.Meaning!.Value);
}
