namespace Watersown.Flight;

/// <summary>
/// The sums behind <see cref="SpreadPattern"/>: one pass p(x) repeated every swath S, x to the right of its line.
/// One way D(x) = Σ p(x − k S), period S; back and forth D(x) = Σ p((−1)^k (x − k S)), period 2 S.
/// </summary>
internal sealed class Overlap
{
    private readonly double[] trays;
    private readonly double spacing;
    private readonly double shift;

    /// <summary>A row whose middle lies a shift to the right of the flight line.</summary>
    public Overlap(double[] trays, double spacing, double shift = 0)
    {
        (this.trays, this.spacing, this.shift) = (trays, spacing, shift);
        Total = trays.Sum() * spacing;
        if (Total <= 0 || trays.Any(t => t < 0)) throw new ArgumentException("Trays hold nothing, or less.", nameof(trays));
    }

    /// <summary>∫ p dx; the straight-line form gives the same as the sum of trays.</summary>
    public double Total { get; }

    /// <summary>From zero to zero of the joined form.</summary>
    public double JoinedWidth => (trays.Length + 1) * spacing;

    public double CaughtWidth => (Array.FindLastIndex(trays, t => t > 0) - Array.FindIndex(trays, t => t > 0) + 1) * spacing;

    public double Spacing => spacing;

    /// <summary>∫ p x dx / ∫ p dx.</summary>
    public double Middle => trays.Select((t, i) => t * PlaceOf(i)).Sum() / trays.Sum();

    /// <summary>
    /// S over tray spacing where it is a whole number and, back and forth, the trays of a pass flown the other way fall on trays again.
    /// </summary>
    public int? WholeRatio(double swath, FlyingMode mode)
    {
        if (mode == FlyingMode.BackAndForth && Math.Abs((2 * shift / spacing) - Math.Round(2 * shift / spacing)) > 1e-9) return null;
        var ratio = swath / spacing;
        var whole = Math.Round(ratio);
        return whole >= 1 && Math.Abs(ratio - whole) <= 1e-9 * ratio ? (int)whole : null;
    }

    /// <summary>CV of the sums of trays, m = S / spacing whole.</summary>
    public double SummedCv(int m, FlyingMode mode)
    {
        // Places are counted in half spacings from the flight line, so that even and odd rows go alike: one way the
        // period is 2 m half spacings, back and forth 4 m, and every other half spacing holds a tray.
        var period = (mode == FlyingMode.OneWay ? 2 : 4) * m;
        var sums = new double[period / 2];
        for (var tray = 0; tray < trays.Length; tray++)
        {
            var place = (2 * tray) - (trays.Length - 1) + (int)Math.Round(2 * shift / spacing);
            sums[Slot(place, period)] += trays[tray];
            if (mode == FlyingMode.BackAndForth) sums[Slot((2 * m) - place, period)] += trays[tray];
        }

        var mean = trays.Sum() / m;
        return Math.Sqrt(sums.Sum(s => (s - mean) * (s - mean)) / sums.Length) / mean;
    }

    /// <summary>CV of the joined form: piecewise straight, so its square integrates exactly between its knots.</summary>
    public double JoinedCv(double swath, FlyingMode mode)
    {
        var period = mode == FlyingMode.OneWay ? swath : 2 * swath;
        var knots = Knots(swath, period, mode);
        var mean = Total / swath;
        double square = 0, from = knots[0], before = Deposit(from, swath, mode) - mean, first = before;
        for (var i = 1; i <= knots.Length; i++)
        {
            var to = i < knots.Length ? knots[i] : knots[0] + period;
            var after = i < knots.Length ? Deposit(to, swath, mode) - mean : first;
            square += (to - from) * ((before * before) + (before * after) + (after * after)) / 3;
            (from, before) = (to, after);
        }

        return Math.Sqrt(square / period) / mean;
    }

    /// <summary>The same by its Fourier series.</summary>
    public double FourierCv(double swath, FlyingMode mode) => OverlapSpectrum.Cv(trays, spacing, shift, (swath, mode));

    /// <summary>From the flight line outward, where the deposit first falls to half of what lies on the line: left and right together.</summary>
    public double? HalfMeanWidth()
    {
        var half = Single(0) / 2;
        return half > 0 ? FallsTo(half, -1) + FallsTo(half, 1) : null;
    }

    /// <summary>The swath at which the CV reaches a limit if passes do not meet at all: S = (1 + CV²) (∫p)² / ∫p².</summary>
    public double WidthAtCvWithoutOverlap(double cv)
    {
        double square = 0, before = 0;
        foreach (var after in trays.Append(0))
        {
            square += spacing * ((before * before) + (before * after) + (after * after)) / 3;
            before = after;
        }

        return (1 + (cv * cv)) * Total * Total / square;
    }

    private static double Wrapped(double x, double period)
    {
        var inside = x - (period * Math.Floor(x / period));
        return inside >= period ? 0 : inside;
    }

    private static int Slot(int place, int period) => ((place % period) + period) % period / 2;

    private double[] Knots(double swath, double period, FlyingMode mode)
    {
        var knots = new List<double>();
        for (var i = -1; i <= trays.Length; i++)
        {
            var place = PlaceOf(i);
            knots.Add(Wrapped(place, period));
            if (mode == FlyingMode.BackAndForth) knots.Add(Wrapped(swath - place, period));
        }

        knots.Sort();
        return [.. knots];
    }

    private double PlaceOf(int tray) => ((tray - ((trays.Length - 1) / 2.0)) * spacing) + shift;

    // Straight between trays: of the first two between which it passes the value, the place follows by proportion.
    private double FallsTo(double value, int side)
    {
        double from = 0, before = Single(0);
        foreach (var place in Enumerable.Range(-1, trays.Length + 2).Select(PlaceOf).Where(p => p * side > 0).OrderBy(p => p * side))
        {
            var after = Single(place);
            if (after <= value) return Math.Abs(from + ((place - from) * (before - value) / (before - after)));
            (from, before) = (place, after);
        }

        return Math.Abs(from);
    }

    /// <summary>What all passes together lay at a place.</summary>
    public double Deposit(double x, double swath, FlyingMode mode)
    {
        var half = (JoinedWidth / 2) + Math.Abs(shift);
        var sum = 0.0;
        for (var k = (int)Math.Ceiling((x - half) / swath); k * swath <= x + half; k++)
        {
            var away = x - (k * swath);
            sum += Single(mode == FlyingMode.BackAndForth && k % 2 != 0 ? -away : away);
        }

        return sum;
    }

    private double Single(double x)
    {
        var at = ((x - shift) / spacing) + ((trays.Length - 1) / 2.0);
        var left = (int)Math.Floor(at);
        return At(left) + ((at - left) * (At(left + 1) - At(left)));
    }

    private double At(int tray) => tray >= 0 && tray < trays.Length ? trays[tray] : 0;
}
