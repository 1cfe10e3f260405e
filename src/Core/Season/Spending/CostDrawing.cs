using Watersown.Costs;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season.Spending;

/// <summary>Draws planned beside spent, a pair of bars for each category.</summary>
public static class CostDrawing
{
    private const double Row = 30;
    private const double Left = 132;

    /// <summary>All of the farm together, an acre.</summary>
    /// <param name="costs">By field.</param>
    /// <param name="tell">Language and units.</param>
    /// <param name="width">Of the drawing.</param>
    public static Drawing Of(ImmutableArray<FieldCost> costs, Telling tell, [PlainNumber("points of paper")] double width)
    {
        var acres = costs.Sum(c => c.Land.Acres);
        var lines = costs.SelectMany(c => c.Lines).GroupBy(l => l.Category).OrderBy(g => g.Key)
            .Select(g => (Category: g.Key, Planned: (double)g.Sum(l => l.Planned.Amount) / acres, Spent: (double)g.Sum(l => l.Spent.Amount) / acres)).ToList();
        var most = Math.Max(1, lines.Max(l => Math.Max(l.Planned, l.Spent)));
        var items = ImmutableArray.CreateBuilder<DrawingItem>();
        foreach (var (line, row) in lines.Select((l, i) => (l, i)))
        {
            var top = Row * row;
            items.Add(new DrawingItem.Label(CostNames.Of(line.Category, tell.Words.Cost), new PaperPoint(Left - 6, top + 18), 12) { Setting = Setting.Right });
            Bar(items, top + 4, line.Planned, most, width, Ink.Pale);
            Bar(items, top + 15, line.Spent, most, width, Ink.Black);
        }

        items.Add(new DrawingItem.Path([[new(Left, 0), new(Left, Row * lines.Count)]]) { Stroke = 1 });
        return new Drawing(tell.Words.Cost.ByCategory, tell.Words.Cost.Said) { Width = width, Height = (Row * lines.Count) + 2, Items = items.ToImmutable() };
    }

    private static void Bar(ImmutableArray<DrawingItem>.Builder items, double top, double value, double most, double width, Ink ink)
    {
        var length = Math.Max(0, value) / most * (width - Left - 52);
        if (length > 0) items.Add(new DrawingItem.Path([[new(Left, top), new(Left + length, top), new(Left + length, top + 9), new(Left, top + 9)]]) { Closed = true, Fill = ink, Stroke = 1 });
        if (value is not 0) items.Add(new DrawingItem.Label("$" + Say.Number(value), new PaperPoint(Left + length + 4, top + 9), 11));
    }
}
