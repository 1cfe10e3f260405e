using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>
/// The places kept of a track. Where there are very many, those that lie straight between their neighbors are let go: the
/// line stays the same to a few times <see cref="TrackLimits.Straight"/>, and every place where the gate turns or the track breaks stays.
/// </summary>
internal sealed class KeptFixes
{
    private const int MostSteps = 100_000;
    private const int MostGaps = 1000;

    private readonly List<FlownFix> fixes = [];
    private readonly List<double> steps = [];
    private readonly List<TrackGap> gaps = [];
    private int looked;
    private int thinAt = TrackLimits.ThinFrom;

    public bool IsFull => fixes.Count >= TrackLimits.Most;

    public ImmutableArray<FlownFix> All => [.. fixes];

    public ImmutableArray<TrackGap> Gaps => [.. gaps];

    public TimeSpan? Every => steps.Count == 0 ? null : TimeSpan.FromSeconds(Middle());

    public void Add(FlownFix fix)
    {
        if (IsFull) return;
        if (fixes.Count > 0 && fix.Break == TrackBreak.None && steps.Count < MostSteps && fix.Seconds - fixes[^1].Seconds is > 0 and var step) steps.Add(step);
        fixes.Add(fix);
        if (fixes.Count < thinAt) return;
        MarkGaps();
        Thin();
        thinAt = Math.Max(TrackLimits.ThinFrom, fixes.Count + (TrackLimits.ThinFrom / 2));
    }

    /// <summary>Breaks the line where more time went by than usual, as far as that was not looked at yet.</summary>
    public void MarkGaps()
    {
        if (steps.Count > 0)
        {
            var most = Math.Max(TrackLimits.GapSteps * Middle(), TrackLimits.LeastGap.TotalSeconds);
            for (var i = Math.Max(1, looked); i < fixes.Count; i++)
            {
                var took = fixes[i].Seconds - fixes[i - 1].Seconds;
                if (fixes[i].Break != TrackBreak.None || !(took > most + 1e-3)) continue;
                fixes[i] = fixes[i] with { Break = TrackBreak.Lost };
                if (gaps.Count < MostGaps) gaps.Add(new TrackGap(fixes[i - 1].At, fixes[i].At, TimeSpan.FromSeconds(Math.Min(took, 1e9))));
            }
        }

        looked = fixes.Count;
    }

    private void Thin()
    {
        var write = 1;
        var dropped = true; // so that no two in a row go
        for (var i = 1; i < fixes.Count; i++)
        {
            var (before, fix) = (fixes[write - 1], fixes[i]);
            if (!dropped && i + 1 < fixes.Count && fix.Break == TrackBreak.None && fixes[i + 1].Break == TrackBreak.None
                && fix.Gate == before.Gate && fix.Gate == fixes[i + 1].Gate && Off(before.At, fixes[i + 1].At, fix.At) <= TrackLimits.Straight.Meters)
            {
                dropped = true;
                continue;
            }

            fixes[write++] = fix;
            dropped = false;
        }

        fixes.RemoveRange(write, fixes.Count - write);
        looked = write;
    }

    private static double Off(PlanePoint from, PlanePoint to, PlanePoint point)
    {
        var (east, north) = (to.East - from.East, to.North - from.North);
        var length = Turn.Hypot(east, north);
        var (e, n) = (point.East - from.East, point.North - from.North);
        return length == 0 ? Turn.Hypot(e, n) : Math.Abs((e * north) - (n * east)) / length;
    }

    private double Middle()
    {
        var sorted = steps.ToArray();
        Array.Sort(sorted);
        return sorted[sorted.Length / 2];
    }
}
