namespace Watersown.Flight.Patterns;

/// <summary>From trays to the swath they bear out.</summary>
public static class TrayReading
{
    private const double FineStep = 0.05;

    // A row of many meters is looked through in a thousand steps: finer ones would only take time.
    private const double MostSteps = 1000;

    // A pattern that touches nothing beyond its own width is looked at a little beyond it.
    private const double Beyond = 1.25;

    /// <summary>Everything that a whole test says.</summary>
    [Source(nameof(Sources.OverlapGeometry), "joined trays; widest swath in steps of 0.05 m, or of a thousandth of a row wider than 50 m")]
    public static TrayAnswer Of(TrayTest test, TrayAsk ask)
    {
        if (!test.IsWhole) throw new ArgumentException("The rows of trays differ or hold nothing.", nameof(test));
        var pattern = test.Pattern;
        var chance = Chance(test, test.Passes.Length);
        var step = FineStep * Math.Max(1, Math.Ceiling(pattern.JoinedWidth.Meters / MostSteps / FineStep));
        var (way, back) = (Sweep(pattern, FlyingMode.OneWay, chance, step), Sweep(pattern, FlyingMode.BackAndForth, chance, step));
        var oneWay = Mode((test, ask, step), FlyingMode.OneWay, way);
        var offset = Moved(test, oneWay.Steady ?? oneWay.Widest, chance, step);
        var answer = new TrayAnswer
        {
            Test = test,
            Ask = ask,
            Pattern = pattern,
            Trays = Trays(test),
            Curve = Curve(pattern, way, back, step),
            OneWay = oneWay,
            BackAndForth = Mode((test, ask, step), FlyingMode.BackAndForth, back),
            Middle = pattern.Middle,
            HalfMean = pattern.HalfMeanSwath,
            Offset = offset,
            Laid = test.Speed is { } speed ? MassFlow.FromKilogramsPerSecond(pattern.PerMeter.Kilograms * speed.MetersPerSecond) : null,
            FourierDifference = Difference(pattern),
            Working = Working.Empty,
        };
        answer = answer with { Closure = answer.Laid is { } laid && test.Gate is { } gate && gate > MassFlow.Zero ? Fraction.FromShare(laid / gate) : null };
        return answer with { Working = TrayWorking.Of(answer) };
    }

    /// <summary>
    /// Unevenness less what chance alone would show: variances subtract. Between trays joined by straight lines the scatter of both
    /// ends is averaged, which leaves two thirds of their variance; the mean of a swath of few trays scatters along, which takes a
    /// part in so many off; passes averaged leave one part in so many.
    /// </summary>
    [Source(nameof(Sources.CountingStatistics), "CV² less (2/3 − d/S) / (N k): mean of (1 − t)² + t² is 2/3, k passes averaged")]
    public static Fraction WithoutChance(Fraction cv, [PlainNumber("seeds on a tray at that swath, all passes together")] double seeds, [PlainNumber("tray spacing over swath")] double spacings) =>
        Fraction.FromShare(Math.Sqrt(Math.Max(0, (cv.Share * cv.Share) - (Math.Max(0, (2.0 / 3) - spacings) / seeds))));

    /// <summary>The widest step whose neighbors within the steering error keep the limit too.</summary>
    internal static int? Widest(ReadOnlySpan<double> cvs, double limit, int steps)
    {
        // Floating dust must not lose a step at which the limit is met exactly.
        var run = 0;
        int? widest = null;
        for (var i = 1; i < cvs.Length; i++)
        {
            run = cvs[i] <= limit + 1e-12 ? run + 1 : 0;
            if (run >= (2 * steps) + 1) widest = i - steps;
        }

        return widest;
    }

    // Grains on all the trays of a place at a swath: the mean weight, all passes together, over that of a grain.
    private static Func<Length, SpreadPattern, double>? Chance(TrayTest test, int passes) => test.ThousandGrains is { } grains && grains > SoakedSeed.Zero
        ? (swath, pattern) => pattern.Over(swath, FlyingMode.OneWay).Mean / grains * 1000 * passes
        : null;

    private static double Fair(SpreadPattern pattern, Length swath, FlyingMode mode, Func<Length, SpreadPattern, double>? chance)
    {
        var cv = pattern.Joined(swath, mode).Cv;
        return (chance is null ? cv : WithoutChance(cv, chance(swath, pattern), pattern.Spacing / swath)).Share;
    }

    private static double[] Sweep(SpreadPattern pattern, FlyingMode mode, Func<Length, SpreadPattern, double>? chance, double step)
    {
        var cvs = new double[(int)Math.Ceiling(pattern.JoinedWidth.Meters * Beyond / step) + 1];
        cvs[0] = double.PositiveInfinity;
        for (var i = 1; i < cvs.Length; i++) cvs[i] = i * step < pattern.JoinedWidth.Meters / 20 ? 0 : Fair(pattern, Length.FromMeters(i * step), mode, chance);
        return cvs;
    }

    private static ModeAnswer Mode((TrayTest Test, TrayAsk Ask, double Step) asked, FlyingMode mode, double[] cvs)
    {
        var limit = asked.Ask.Limit.Share;
        var steady = Widest(cvs, limit, (int)Math.Ceiling((asked.Ask.Steering.Meters / asked.Step) - 1e-9));
        return new ModeAnswer(At(Widest(cvs, limit, 0), asked.Step), At(steady, asked.Step))
        {
            CvAtSteady = steady is { } i ? Fraction.FromShare(cvs[i]) : null,
            OfPasses = OfPasses(asked.Test, limit, mode, asked.Step),
        };
    }

    private static (Length, Length)? OfPasses(TrayTest test, double limit, FlyingMode mode, double step)
    {
        if (test.Passes.Length < 2) return null;
        var chance = Chance(test, 1);
        var each = test.PatternsOfPasses.Select(p => Widest(Sweep(p, mode, chance, step), limit, 0)).ToList();
        return each.TrueForAll(e => e is not null) ? (At(each.Min(), step)!.Value, At(each.Max(), step)!.Value) : null;
    }

    private static Length? At(int? place, double step) => place is { } i ? Length.FromMeters(i * step) : null;

    private static ImmutableArray<SwathPoint> Curve(SpreadPattern pattern, double[] way, double[] back, double step)
    {
        // A quarter of the width and wider: narrower swaths are flown by nobody and would crowd the drawing.
        var first = Math.Max(1, (int)(pattern.JoinedWidth.Meters / 4 / step));
        var stride = Math.Clamp((way.Length - 1 - first) / 4, 1, 5);
        return [.. Enumerable.Range(0, 1 + ((way.Length - 1 - first) / stride)).Select(i => first + (stride * i)).Select(i => new SwathPoint(Length.FromMeters(i * step), Fraction.FromShare(way[i]), Fraction.FromShare(back[i])))];
    }

    private static ImmutableArray<TraySpread> Trays(TrayTest test)
    {
        var mean = test.MeanRow;
        return [.. mean.Select((m, i) => new TraySpread(((i - ((mean.Length - 1) / 2.0)) * test.Spacing) + test.Offset, m, test.Passes.Min(p => p[i]), test.Passes.Max(p => p[i])))];
    }

    // An off-center pattern is even one way and uneven back and forth: the lines are moved until it is as even as may be.
    private static LineOffset? Moved(TrayTest test, Length? swath, Func<Length, SpreadPattern, double>? chance, double step)
    {
        if (swath is not { } at) return null;
        var row = test.MeanRow;
        double Cv(double left) => Fair(SpreadPattern.Of(row, test.Spacing, test.Tray, test.Offset - Length.FromMeters(left)), at, FlyingMode.BackAndForth, chance);
        var middle = test.Pattern.Middle.Meters;
        var reach = (int)(at.Meters / 4 / step);
        // Near the middle first, so that of two offsets as good the smaller correction of the pattern's own middle is taken.
        var tried = Enumerable.Range(-reach, (2 * reach) + 1).Select(i => Math.Round((middle / step) + i) * step).OrderBy(left => Math.Abs(left - middle)).ToList();
        var best = tried.MinBy(Cv);
        var (before, after) = (Cv(0), Cv(best));
        return before - after < 0.01 ? null : new LineOffset(Length.FromMeters(best), at, Fraction.FromShare(before), Fraction.FromShare(after));
    }

    private static Fraction Difference(SpreadPattern pattern)
    {
        var most = 0.0;
        foreach (var share in new[] { 0.4, 0.55, 0.7 })
        {
            foreach (var mode in new[] { FlyingMode.OneWay, FlyingMode.BackAndForth })
            {
                var swath = share * pattern.JoinedWidth;
                most = Math.Max(most, Math.Abs(pattern.Joined(swath, mode).Cv.Share - pattern.ByFourier(swath, mode).Share));
            }
        }

        return Fraction.FromShare(most);
    }
}
