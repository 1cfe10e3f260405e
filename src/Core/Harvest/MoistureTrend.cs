using Watersown.Stand;

namespace Watersown.Harvest;

/// <summary>One measured moisture.</summary>
/// <param name="At">When.</param>
/// <param name="Moisture">Wet basis.</param>
public readonly record struct MoistureSample(DateTimeOffset At, Fraction Moisture);

/// <summary>
/// How a field's grain dries. Measured where samples lie a day or more apart; published rates where they do not. It says
/// nothing of rain, dew or a north wind to come: only the next sample does.
/// </summary>
public sealed record MoistureTrend
{
    // A straight line cannot dry grain for ever: it comes to rest with the air at about this moisture.
    private const double Rest = 0.11;
    private static readonly TimeSpan Apart = TimeSpan.FromDays(1);

    // What was measured weeks ago says little of tomorrow.
    private static readonly TimeSpan Looks = TimeSpan.FromDays(14);

    private MoistureTrend()
    {
    }

    /// <summary>The line at the last sample.</summary>
    public required MoistureSample Latest { get; init; }

    /// <summary>Share of weight lost in a day as water; below nothing where the grain grows wetter.</summary>
    [PlainNumber("share of the grain's weight in a day")]
    public required double PerDay { get; init; }

    /// <summary>The slowest and the fastest that it may really be.</summary>
    [PlainNumber("share of the grain's weight in a day")]
    public required (double Slow, double Fast) Band { get; init; }

    [PlainNumber("samples")]
    public required int Samples { get; init; }

    /// <summary>The rate is the published one; this field's own is not known yet.</summary>
    public bool IsPublished { get; init; }

    /// <summary>Drying in a cool and in a warm year, points of moisture a day.</summary>
    [Source(nameof(Sources.UcHarvestMoisture), "0.8 points a day in a warm year, 0.4 in a cool one")]
    [PlainNumber("share of the grain's weight in a day")]
    public static (double Cool, double Warm) Published => (0.004, 0.008);

    /// <summary>The trend of a field's samples, in any order; none without one.</summary>
    [Source(nameof(Sources.LeastSquaresLine))]
    public static MoistureTrend? Of(ImmutableArray<MoistureSample> samples)
    {
        if (samples.IsEmpty) return null;
        var last = samples.Max(s => s.At);
        ImmutableArray<MoistureSample> near = [.. samples.Where(s => last - s.At <= Looks).OrderBy(s => s.At)];
        var latest = near[^1];
        var mean = (Published.Cool + Published.Warm) / 2;
        if (latest.At - near[0].At < Apart)
            return new MoistureTrend { Latest = latest, PerDay = mean, Band = Published, Samples = near.Length, IsPublished = true };
        var days = near.Select(s => (s.At - latest.At).TotalDays).ToArray();
        var (middle, level) = (days.Average(), near.Average(s => s.Moisture.Share));
        var spread = days.Sum(d => (d - middle) * (d - middle));
        var slope = days.Zip(near, (d, s) => (d - middle) * (s.Moisture.Share - level)).Sum() / spread;
        var line = new MoistureSample(latest.At, Fraction.FromShare(Math.Clamp(level - (slope * middle), 0, 1)));
        if (near.Length == 2)
            return new MoistureTrend { Latest = latest, PerDay = -slope, Band = (Math.Min(-slope, Published.Cool), Math.Max(-slope, Published.Warm)), Samples = 2 };
        var left = days.Zip(near, (d, s) => s.Moisture.Share - level - (slope * (d - middle))).Sum(r => r * r);
        var off = StudentT.Quantile(0.975, near.Length - 2) * Math.Sqrt(left / (near.Length - 2) / spread);
        return new MoistureTrend { Latest = line, PerDay = -slope, Band = (-slope - off, -slope + off), Samples = near.Length };
    }

    /// <summary>The moisture to expect.</summary>
    public Fraction On(DateTimeOffset moment) => Fraction.FromShare(At(PerDay, (moment - Latest.At).TotalDays));

    /// <summary>The wettest and the driest that it may be then.</summary>
    public (Fraction Wet, Fraction Dry) Between(DateTimeOffset moment)
    {
        var days = (moment - Latest.At).TotalDays;
        return (Fraction.FromShare(At(days >= 0 ? Band.Slow : Band.Fast, days)), Fraction.FromShare(At(days >= 0 ? Band.Fast : Band.Slow, days)));
    }

    /// <summary>When it comes down to a moisture; the past where it is below it, none where it does not dry so far.</summary>
    public DateTimeOffset? Reaches(Fraction moisture)
    {
        if (PerDay <= 1e-6 || moisture.Share < Rest) return null;
        var days = (Latest.Moisture.Share - moisture.Share) / PerDay;
        return Math.Abs(days) < 3650 ? Latest.At.AddDays(days) : null;
    }

    private double At(double perDay, double days)
    {
        var straight = Latest.Moisture.Share - (perDay * days);
        return Math.Clamp(straight, Math.Min(Rest, Latest.Moisture.Share), Math.Max(0.5, Latest.Moisture.Share));
    }
}
