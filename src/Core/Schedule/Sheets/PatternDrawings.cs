using Watersown.Flight;
using Watersown.Flight.Patterns;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Draws what a pattern test says: trays, passes side by side, unevenness over swath.</summary>
internal static class PatternDrawings
{
    private const double Type = 10;

    /// <summary>What the trays caught, mean of the passes, with the least and the most of them.</summary>
    public static Drawing Trays(TrayAnswer answer, Telling tell, double width, double height)
    {
        var words = tell.Words.Pattern;
        var trays = answer.Trays;
        var most = trays.Max(t => t.Most.Kilograms) * 1000;
        var half = answer.Test.Spacing.Meters / 2;
        var chart = new Chart(width, height, (trays[0].Across.Meters - half, trays[^1].Across.Meters + half), (0, most * 1.08));
        foreach (var tray in trays)
        {
            double left = tray.Across.Meters - (half * 0.8), right = tray.Across.Meters + (half * 0.8), mean = tray.Mean.Kilograms * 1000;
            if (mean > 0) chart.Ring([(left, 0), (left, mean), (right, mean), (right, 0)], Ink.Pale, 1);
            if (tray.Most > tray.Least) chart.Line([(tray.Across.Meters, tray.Least.Kilograms * 1000), (tray.Across.Meters, tray.Most.Kilograms * 1000)], 1.6);
        }

        chart.Line([(0, 0), (0, most * 1.08)], 1.2, dashed: true);
        chart.Across(tell, signed: true);
        chart.Up(v => Say.Figure(v) + " " + "g");
        chart.Say(words.Line, 0, most * 1.08);
        var fullest = trays.MaxBy(t => t.Mean.Kilograms);
        return chart.Drawing(words.TraysTitle, Template.Fill(words.TraysSaid, ("trays", Telling.Count(trays.Length)), ("most", Say.Number(fullest.Mean.Kilograms * 1000, 1)), ("where", PatternSaid.Side(fullest.Across, tell))));
    }

    /// <summary>Passes side by side at a swath, over two of them.</summary>
    public static Drawing Laid(TrayAnswer answer, (Length Swath, FlyingMode Mode) flown, Telling tell, double width, double height)
    {
        const int Places = 160;
        var words = tell.Words.Pattern;
        var (swath, mode) = flown;
        var mean = answer.Pattern.Over(swath, mode).Mean;
        ImmutableArray<(double X, double Y)> sum =
            [.. Enumerable.Range(0, Places + 1).Select(i => (i * 2 * swath.Meters / Places) - (swath.Meters / 2)).Select(x => (x, answer.Pattern.Laid(Length.FromMeters(x), swath, mode) / mean * 100))];
        var most = Math.Max(150, sum.Max(p => p.Y) * 1.08);
        var chart = new Chart(width, height, (sum[0].X, sum[^1].X), (0, most));
        chart.Ring([(sum[0].X, 0), .. sum, (sum[^1].X, 0)], Ink.Pale, 0);
        chart.Line(sum, 2);
        chart.Line([(sum[0].X, 100), (sum[^1].X, 100)], 1, dashed: true);
        foreach (var line in new[] { 0, swath.Meters }) chart.Line([(line, 0), (line, most)], 1, dashed: true);
        chart.Across(tell, signed: false);
        chart.Up(v => Say.Number(v) + " %");
        chart.Say(words.Mean, sum[^1].X, 100);
        return chart.Drawing(Template.Fill(words.LaidTitle, ("swath", PatternSaid.Swath(swath, tell)), ("mode", PatternSaid.Mode(mode, words))),
            Template.Fill(words.LaidSaid, ("least", Say.Number(sum.Min(p => p.Y)) + " %"), ("most", Say.Number(sum.Max(p => p.Y)) + " %")));
    }

    /// <summary>Unevenness over swath in both ways of flying, and the limit.</summary>
    public static Drawing Curve(TrayAnswer answer, Telling tell, double width, double height)
    {
        var words = tell.Words.Pattern;
        var limit = answer.Ask.Limit.Percent;
        var most = Math.Min(answer.Curve.Max(p => Math.Max(p.OneWay.Percent, p.BackAndForth.Percent)) * 1.05, Math.Max(50, limit * 2));
        // Swaths that both ways of flying leave far too uneven would only flatten the rest.
        var shown = answer.Curve[..Math.Max(2, answer.Curve.Count(p => Math.Min(p.OneWay.Percent, p.BackAndForth.Percent) <= most))];
        var chart = new Chart(width, height, (shown[0].Swath.Meters, shown[^1].Swath.Meters), (0, most));
        chart.Line([.. shown.Select(p => (p.Swath.Meters, p.OneWay.Percent))], 2);
        chart.Line([.. shown.Select(p => (p.Swath.Meters, p.BackAndForth.Percent))], 1.6, dashed: true);
        chart.Line([(shown[0].Swath.Meters, limit), (shown[^1].Swath.Meters, limit)], 0.8);
        foreach (var mode in new[] { answer.OneWay, answer.BackAndForth })
        {
            if (mode is { Steady: { } steady, CvAtSteady: { } cv }) chart.Dot(steady.Meters, cv.Percent);
        }

        chart.Across(tell, signed: false);
        chart.Up(v => Say.Number(v) + " %");
        chart.Say(Template.Fill(words.Limit, ("limit", Say.Figure(limit))), shown[0].Swath.Meters, limit, Setting.Left);
        return chart.Drawing(words.CurveTitle, Template.Fill(words.CurveSaid, ("limit", Say.Figure(limit))));
    }

    /// <summary>A plain chart: lines and shapes by value, a bar of values on either side.</summary>
    private sealed class Chart(double width, double height, (double From, double To) x, (double From, double To) y)
    {
        private const double Left = 40;
        private const double Foot = 18;
        private const double Head = 14;
        private readonly ImmutableArray<DrawingItem>.Builder items = ImmutableArray.CreateBuilder<DrawingItem>();

        public void Line(ImmutableArray<(double X, double Y)> points, double stroke, bool dashed = false) => items.Add(new DrawingItem.Path([[.. points.Select(At)]]) { Stroke = stroke, Dashed = dashed });

        public void Ring(ImmutableArray<(double X, double Y)> points, Ink fill, double stroke) => items.Add(new DrawingItem.Path([[.. points.Select(At)]]) { Closed = true, Fill = fill, Stroke = stroke });

        public void Dot(double x, double y)
        {
            var at = At((x, y));
            items.Add(new DrawingItem.Path([[new(at.X, at.Y - 4), new(at.X + 4, at.Y), new(at.X, at.Y + 4), new(at.X - 4, at.Y)]]) { Closed = true, Fill = Ink.Black, Stroke = 0.5 });
        }

        public void Say(string words, double x, double y, Setting setting = Setting.Right)
        {
            var at = At((x, y));
            items.Add(new DrawingItem.Label(words, new PaperPoint(at.X + (setting == Setting.Right ? -3 : 3), at.Y - 3), Type) { Setting = setting, Clear = true });
        }

        /// <summary>Lengths along the foot, in round feet or meters.</summary>
        public void Across(Telling tell, bool signed)
        {
            var unit = tell.Metric ? 1 : 0.3048;
            foreach (var value in Round(x.From / unit, x.To / unit, Math.Max(3, (width - Left) / 55)))
            {
                var at = At((value * unit, y.From));
                items.Add(new DrawingItem.Path([[at, at with { Y = at.Y + 4 }]]) { Stroke = 1 });
                items.Add(new DrawingItem.Label((signed ? Wording.Say.Number(Math.Abs(value)) : Wording.Say.Number(value)) + (tell.Metric ? " m" : " " + tell.Words.Common.Feet), at with { Y = at.Y + 14 }, Type) { Setting = Setting.Center });
            }
        }

        public void Up(Func<double, string> words)
        {
            foreach (var value in Round(y.From, y.To, 5))
            {
                var at = At((x.From, value));
                items.Add(new DrawingItem.Path([[at, at with { X = at.X - 4 }]]) { Stroke = 1 });
                items.Add(new DrawingItem.Label(words(value), new PaperPoint(at.X - 6, at.Y + 3.5), Type) { Setting = Setting.Right });
            }
        }

        public Drawing Drawing(string title, string said)
        {
            items.Add(new DrawingItem.Path([[new(Left, Head), new(Left, height - Foot), new(width, height - Foot)]]) { Stroke = 1 });
            return new Drawing(title, said) { Width = width, Height = height, Items = items.ToImmutable() };
        }

        private PaperPoint At((double X, double Y) p) => new(
            Left + ((width - Left) * Math.Clamp((p.X - x.From) / (x.To - x.From), 0, 1)),
            height - Foot - ((height - Foot - Head) * Math.Clamp((p.Y - y.From) / (y.To - y.From), 0, 1)));

        // One, two or five of a power of ten.
        private static IEnumerable<double> Round(double from, double to, double about)
        {
            var bare = (to - from) / about;
            var ten = Math.Pow(10, Math.Floor(Math.Log10(bare)));
            var step = (bare / ten) switch { <= 1 => ten, <= 2 => 2 * ten, <= 5 => 5 * ten, _ => 10 * ten };
            for (var value = Math.Ceiling(from / step); value * step <= to + 1e-9; value++) yield return value * step;
        }
    }
}
