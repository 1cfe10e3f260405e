using Watersown.Harvest;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season.Harvests;

/// <summary>Draws a harvest: which field is cut when, and how one field's grain dries.</summary>
public static class HarvestDrawing
{
    private const double Type = 11;
    private const double Row = 20;
    private const double Left = 46;
    private const double Head = 20;

    /// <summary>Fields in the order they are cut, days across.</summary>
    public static Drawing Of(HarvestBoard board, HarvestPlan plan, Fraction risk, Telling tell, [PlainNumber("points of paper")] double width)
    {
        var first = plan.Days.IsEmpty ? default : plan.Days[0].Day;
        var last = plan.Days.IsEmpty ? default : plan.Days[^1].Day;
        var days = last.DayNumber - first.DayNumber + 1;
        var step = (width - Left - 4) / days;
        double X(double day) => Left + (step * day);
        ImmutableArray<string> order = [.. plan.Order.Where(c => plan.Of(c).Any())];
        var height = Head + (Row * order.Length) + 6;
        var items = ImmutableArray.CreateBuilder<DrawingItem>();
        var every = Math.Max(1, (int)Math.Ceiling(58 / step));
        for (var day = 0; day < days; day += every)
        {
            items.Add(new DrawingItem.Path([[new(X(day), Head - 4), new(X(day), height)]]) { Stroke = 0.6, Dashed = true });
            items.Add(new DrawingItem.Label(tell.ShortDay(first.AddDays(day)), new PaperPoint(X(day) + 2, Type), Type));
        }

        foreach (var (code, row) in order.Select((c, i) => (c, i)))
        {
            var top = Head + (Row * row);
            items.Add(new DrawingItem.Path([[new(0, top + Row), new(width, top + Row)]]) { Stroke = 0.4 });
            items.Add(new DrawingItem.Label(code, new PaperPoint(2, top + 14), 13) { Bold = true });
            var cuts = plan.Of(code).ToList();
            var most = cuts.Max(c => c.Cut.Land);
            foreach (var (day, cut) in cuts)
            {
                // As high as the land cut that day, so that a day shared by two fields looks like one.
                var tall = Math.Max(4, (Row - 5) * (cut.Land / most));
                var at = day.DayNumber - first.DayNumber;
                items.Add(new DrawingItem.Path([[new(X(at) + 0.5, top + Row - 2 - tall), new(X(at + 1) - 0.5, top + Row - 2 - tall), new(X(at + 1) - 0.5, top + Row - 2), new(X(at) + 0.5, top + Row - 2)]]) { Closed = true, Fill = Ink.Pale, Stroke = 1 });
            }

            if (board.Standing.FirstOrDefault(f => f.Code == code)?.Trend?.Reaches(risk) is not { } dry) continue;
            var when = (dry - new DateTimeOffset(first.Year, first.Month, first.Day, 0, 0, 0, dry.Offset)).TotalDays;
            if (when >= 0 && when <= days) items.Add(Mark(X(when), top + (Row / 2)));
        }

        return new Drawing(tell.Words.Harvest.OrderTitle, Template.Fill(tell.Words.Harvest.BoardSaid, ("moisture", Percent(risk)))) { Width = width, Height = height, Items = items.ToImmutable() };
    }

    /// <summary>One field's samples, the line through them and how far it may be off, with the range it is cut in.</summary>
    public static Drawing Trend(ImmutableArray<MoistureSample> samples, MoistureTrend trend, HarvestMeans means, DateTimeOffset now, Telling tell, [PlainNumber("points of paper")] double width, [PlainNumber("points of paper")] double height)
    {
        var from = samples.Min(s => s.At) < now.AddDays(-14) ? now.AddDays(-14) : samples.Min(s => s.At);
        var until = now.AddDays(10);
        ImmutableArray<MoistureSample> shown = [.. samples.Where(s => s.At >= from)];
        var high = Math.Max(means.CutFrom.Percent + 1, shown.Select(s => s.Moisture.Percent).DefaultIfEmpty().Max() + 1);
        var low = Math.Min(means.CutTo.Percent - 3, shown.Select(s => s.Moisture.Percent).DefaultIfEmpty(means.CutTo.Percent).Min() - 1);
        var foot = height - 18;
        double X(DateTimeOffset at) => Left + ((width - Left - 4) * Math.Clamp((at - from) / (until - from), 0, 1));
        double Y(Fraction moisture) => 6 + ((foot - 6) * Math.Clamp((high - moisture.Percent) / (high - low), 0, 1));
        var items = ImmutableArray.CreateBuilder<DrawingItem>();
        items.Add(new DrawingItem.Path([[new(Left, Y(means.CutFrom)), new(width - 4, Y(means.CutFrom)), new(width - 4, Y(means.CutTo)), new(Left, Y(means.CutTo))]]) { Closed = true, Fill = Ink.Pale, Stroke = 0 });
        foreach (var edge in new[] { means.CutFrom, means.CutTo })
        {
            items.Add(new DrawingItem.Label(Percent(edge), new PaperPoint(Left - 4, Y(edge) + 4), Type) { Setting = Setting.Right });
        }

        var line = Enumerable.Range(0, 11).Select(i => trend.Latest.At + ((until - trend.Latest.At) * (i / 10.0))).ToArray();
        items.Add(new DrawingItem.Path([[.. line.Select(t => new PaperPoint(X(t), Y(trend.On(t))))]]) { Stroke = 2 });
        items.Add(new DrawingItem.Path([[.. line.Select(t => new PaperPoint(X(t), Y(trend.Between(t).Wet)))]]) { Stroke = 1, Dashed = true });
        items.Add(new DrawingItem.Path([[.. line.Select(t => new PaperPoint(X(t), Y(trend.Between(t).Dry)))]]) { Stroke = 1, Dashed = true });
        foreach (var sample in shown) items.Add(Mark(X(sample.At), Y(sample.Moisture)));
        items.Add(new DrawingItem.Path([[new(Left, 6), new(Left, foot), new(width - 4, foot)]]) { Stroke = 1 });
        foreach (var at in new[] { from, now, until })
        {
            items.Add(new DrawingItem.Label(tell.ShortDay(at), new PaperPoint(X(at), height - 4), Type) { Setting = at == until ? Setting.Right : at == from ? Setting.Left : Setting.Center, Clear = true });
        }

        return new Drawing(tell.Words.Harvest.MoistTitle, Template.Fill(tell.Words.Harvest.TrendSaid, ("moisture", Percent(trend.On(now))))) { Width = width, Height = height, Items = items.ToImmutable() };
    }

    private static DrawingItem.Path Mark(double x, double y) => new([[new(x, y - 4), new(x + 4, y), new(x, y + 4), new(x - 4, y)]]) { Closed = true, Fill = Ink.Black, Stroke = 0.5 };

    private static string Percent(Fraction share) => Say.Number(share.Percent, 1) + " %";
}
