namespace Watersown.Water.Learning;

/// <summary>Reads figures, moments and their ends out of a fit.</summary>
internal static class FloodReading
{
    public static FloodFitted Of(FloodCase flood, FloodModel model, FitResult fit)
    {
        var before = flood.Before;
        var (take, pond, seep) = (FloodModel.TakeUpAt(before, fit.At), FloodModel.PondAt(before, fit.At), FloodModel.SeepageAt(before, fit.At));
        var figures = new FloodFigures
        {
            TakeUp = take,
            TakeUpSpread = Left(before.TakeUpSpread, fit, FloodModel.TakeUp),
            Pond = pond,
            PondSpread = Left(before.PondSpread, fit, FloodModel.Pond),
            Seepage = seep,
            SeepageSpread = Left(before.SeepageSpread, fit, FloodModel.Seepage),
        };
        // Of ln(take-up + pond) by each of the two.
        var slope = new double[FloodModel.Count];
        slope[FloodModel.TakeUp] = take / figures.Fill * before.TakeUpSpread.Share;
        slope[FloodModel.Pond] = pond / figures.Fill * before.PondSpread.Share;
        var (fill, loses, comes) = (Wide(Spread(fit, slope)), Wide(figures.SeepageSpread.Share), Wide(Left(flood.InflowSpread, fit, FloodModel.Inflow).Share));
        var gain = model.InflowAt(fit.At);
        return new FloodFitted
        {
            Figures = figures,
            Fill = new(figures.Fill, figures.Fill / fill, figures.Fill * fill),
            Seepage = new(seep, seep / loses, seep * loses),
            Inflow = new(gain, gain / comes, gain * comes),
            Verdicts = [.. flood.Sightings.Select((s, i) => new SightingVerdict(s, fit.Rows[i], Fraction.FromShare(fit.Weights[i])))],
            Checks = [.. flood.Network.Checks.Select((_, c) => new CheckForecast(Moment(fit, model.RowOf(c)), Moment(fit, model.RowOf(c) + 1)))],
            Full = AllFull(model, fit, flood.Network.Checks.Length),
        };
    }

    private static double Wide(double spread) => Math.Exp(LearningSpreads.NineOfTen * spread);

    private static Fraction Left(Fraction before, FitResult fit, int figure) => Fraction.FromShare(before.Share * Math.Sqrt(fit.Covariance[figure, figure]));

    private static double Spread(FitResult fit, double[] slope) => Math.Sqrt(SmallMatrix.Dot(slope, SmallMatrix.Times(fit.Covariance, slope)));

    private static double[] Slope(FitResult fit, int row) => [.. Enumerable.Range(0, FloodModel.Count).Select(j => fit.Slopes[row, j])];

    // In the logarithm, so that nothing ends before it began.
    private static LikelyMoment Moment(FitResult fit, int row)
    {
        var at = fit.Rows[row];
        if (at >= FloodModel.Never) return default;
        if (at <= 0) return new LikelyMoment(TimeSpan.Zero, TimeSpan.Zero, TimeSpan.Zero);
        var wide = Wide(Whole(Spread(fit, Slope(fit, row)) / at));
        return new LikelyMoment(Span(at), Span(at / wide), Span(at * wide));
    }

    private static double Whole(double spread) => Math.Sqrt((spread * spread) + (LearningSpreads.Flood.Share * LearningSpreads.Flood.Share));

    // The ends are run with the likeliest figures that lead there: close to a stall, a straight line would be too hopeful.
    private static LikelyMoment AllFull(FloodModel model, FitResult fit, int checks)
    {
        var row = Enumerable.Range(0, checks).Select(c => model.RowOf(c) + 1).MaxBy(r => fit.Rows[r]);
        if (Moment(fit, row) is not { Middle: { } middle } straight || middle <= TimeSpan.Zero) return Moment(fit, row);
        var slope = Slope(fit, row);
        var spread = Spread(fit, slope);
        if (spread <= 0) return straight;
        var way = SmallMatrix.Times(fit.Covariance, slope);
        double End(double side) => model.AllFull([.. fit.At.Zip(way, (a, w) => a + (side * LearningSpreads.NineOfTen * w / spread))]);
        var (at, low, high) = (middle.TotalSeconds, End(-1), End(1));
        return new LikelyMoment(middle, Farther(at, low, -1), high >= FloodModel.Never ? null : Farther(at, high, 1));
    }

    // How far the figures move it and how far floods differ anyway, together.
    private static TimeSpan Farther(double at, double end, int side)
    {
        var (figures, flood) = (Math.Log(Math.Max(end, 1) / at), LearningSpreads.NineOfTen * LearningSpreads.Flood.Share);
        return Span(at * Math.Exp(side * Math.Sqrt((figures * figures) + (flood * flood))));
    }

    private static TimeSpan Span(double seconds) => TimeSpan.FromSeconds(Math.Min(seconds, 2 * FloodModel.Never));
}
