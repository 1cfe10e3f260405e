using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>
/// Takes a track place by place and keeps what an aeroplane can have flown near one field. A place that does not fit the one
/// before is dropped, unless those after it agree with it and not with the one before: then the track was lost there and goes on.
/// What lies far away is counted and not kept, so that a file of any length takes little memory.
/// </summary>
public sealed class TrackSieve
{
    private const double MetersOfDegree = 111_195;
    private const double FarSquare = 0.02;
    private const int MostSquares = 10_000;

    private readonly LocalPlane plane;
    private readonly KeptFixes kept = new();
    private readonly DropTally drops = new();
    private readonly List<(Fix Fix, long Number, DropReason Reason)> doubted = [];
    private readonly Dictionary<(int, int), long> far = [];
    private readonly (double South, double North, double West, double East) reach;
    private Fix last;
    private (double East, double North, double Took) motion;
    private bool any;
    private bool begins;
    private bool away;
    private long given;

    /// <summary>For one field.</summary>
    /// <param name="field">Its edge.</param>
    public TrackSieve(Boundary field)
    {
        plane = FarmPlane.Over(field);
        ImmutableArray<GeoPoint> corners = [.. field.Parts.SelectMany(p => p.Outer)];
        var north = TrackLimits.Reach.Meters / MetersOfDegree;
        var east = north / Math.Cos(plane.Latitude * Math.PI / 180);
        reach = (
            corners.Min(c => c.Latitude) - north, corners.Max(c => c.Latitude) + north,
            corners.Min(c => Geodesic.LongitudeStep(plane.Longitude, c.Longitude)) - east, corners.Max(c => Geodesic.LongitudeStep(plane.Longitude, c.Longitude)) + east);
    }

    /// <summary>More is near the field than can be kept: the rest is not taken.</summary>
    public bool IsFull => kept.IsFull;

    /// <summary>Told of every place that is kept, while the track is still read.</summary>
    public Action<FlownFix>? Kept { get; init; }

    /// <summary>The next place of the track.</summary>
    public void Add(Fix fix)
    {
        given++;
        begins |= fix.Begins;
        if (!OnEarth(fix))
        {
            drops.Add(DropReason.OffTheEarth, given);
            return;
        }

        if (!any || begins)
        {
            DropDoubted();
            Accept(fix, TrackBreak.Piece);
            return;
        }

        if (Fault(last, fix, motion) is not { } reason)
        {
            DropDoubted();
            Accept(fix, TrackBreak.None);
        }
        else if (reason is DropReason.SameTime or DropReason.NoTime || (reason == DropReason.TimeBack && last.Seconds - fix.Seconds < TrackLimits.LongestRepeat.TotalSeconds))
        {
            drops.Add(reason, given);
        }
        else
        {
            Doubt(fix, reason);
        }
    }

    /// <summary>The track, after its last place.</summary>
    [Source(nameof(Sources.TrackCleaning), "in the order of the file, each place against the one before")]
    public FlownTrack Finish()
    {
        DropDoubted();
        kept.MarkGaps();
        return new FlownTrack
        {
            Plane = plane,
            Fixes = kept.All,
            Given = given,
            Dropped = drops.All,
            Every = kept.Every,
            Gaps = kept.Gaps,
            Far = [.. far.OrderByDescending(f => f.Value).ThenBy(f => f.Key).Select(f => new FarPlace(new GeoPoint((f.Key.Item1 + 0.5) * FarSquare, (f.Key.Item2 + 0.5) * FarSquare), f.Value))],
        };
    }

    private static bool OnEarth(Fix fix) =>
        Math.Abs(fix.Latitude) <= 89 && Math.Abs(fix.Longitude) <= 180 && !(fix.Latitude == 0 && fix.Longitude == 0) && !double.IsInfinity(fix.Seconds);

    private static (double East, double North) Step(Fix from, Fix to) => (
        Geodesic.LongitudeStep(from.Longitude, to.Longitude) * MetersOfDegree * Math.Cos((from.Latitude + to.Latitude) * Math.PI / 360),
        (to.Latitude - from.Latitude) * MetersOfDegree);

    private static DropReason? Fault(Fix from, Fix to, (double East, double North, double Took) motion)
    {
        if (double.IsNaN(from.Seconds)) return null;
        if (double.IsNaN(to.Seconds)) return DropReason.NoTime;
        var took = to.Seconds - from.Seconds;
        if (Math.Abs(took) < 1e-4) return DropReason.SameTime;
        if (took < 0) return DropReason.TimeBack;
        var (east, north) = Step(from, to);
        if (Turn.Hypot(east, north) > (TrackLimits.Fastest.MetersPerSecond * took) + TrackLimits.Wander.Meters) return DropReason.Jump;
        var longest = TrackLimits.LongestTurn.TotalSeconds;
        if (took > longest || motion.Took <= 0 || motion.Took > longest) return null;
        var off = Turn.Hypot(east - (motion.East / motion.Took * took), north - (motion.North / motion.Took * took));

        // The motion before is known no better than the receiver trembles, and that grows with the step.
        var tremble = TrackLimits.Tremble.Meters * (1 + (took / motion.Took));
        return off > tremble + (TrackLimits.HardestPull * took * (took + motion.Took) / 2) ? DropReason.Jump : null;
    }

    private void Doubt(Fix fix, DropReason reason)
    {
        if (doubted.Count > 0 && Fault(doubted[^1].Fix, fix, default) is not null) DropDoubted();
        doubted.Add((fix, given, reason));
        if (doubted.Count < TrackLimits.Agreeing) return;
        var believed = doubted.ToList();
        doubted.Clear();
        for (var i = 0; i < believed.Count; i++) Accept(believed[i].Fix, i == 0 ? TrackBreak.Lost : TrackBreak.None);
    }

    private void DropDoubted()
    {
        foreach (var (_, number, reason) in doubted) drops.Add(reason, number);
        doubted.Clear();
    }

    private void Accept(Fix fix, TrackBreak seen)
    {
        var (east, north) = any ? Step(last, fix) : default;
        motion = seen == TrackBreak.None ? (east, north, fix.Seconds - last.Seconds) : default;
        (last, any, begins) = (fix, true, false);
        var across = Geodesic.LongitudeStep(plane.Longitude, fix.Longitude);
        if (fix.Latitude < reach.South || fix.Latitude > reach.North || across < reach.West || across > reach.East)
        {
            away = true;
            var square = ((int)Math.Floor(fix.Latitude / FarSquare), (int)Math.Floor(fix.Longitude / FarSquare));
            if (far.Count < MostSquares || far.ContainsKey(square)) far[square] = far.GetValueOrDefault(square) + 1;
            return;
        }

        if (away && seen == TrackBreak.None) seen = TrackBreak.Lost;
        away = false;
        var near = new FlownFix(plane.ToPlane(fix.Latitude, fix.Longitude), fix.Seconds) { Height = (float)fix.Height, Speed = (float)fix.Speed, Gate = fix.Gate, Break = seen };
        kept.Add(near);
        Kept?.Invoke(near);
    }
}
