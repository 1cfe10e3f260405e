using Watersown.Flight.Flown;
using Watersown.Land;
using Watersown.Shapes;

namespace Watersown;

/// <summary>Tracks made for tests: straight passes there and back over a field that stands square to north.</summary>
public sealed record SomeTrack
{
    public static LocalPlane Plane { get; } = FarmPlane.At(new GeoPoint(39.2, -121.9));

    /// <summary>8 May 2026, 05:50 in the zone of the farm.</summary>
    public const double Morning = 1_778_244_600;

    public required ImmutableArray<double> Lines { get; init; }

    public double From { get; init; }

    public double To { get; init; } = 800;

    public double Speed { get; init; } = 50;

    public double Every { get; init; } = 0.2;

    /// <summary>How far it flies on beyond each end before it turns.</summary>
    public double Beyond { get; init; } = 150;

    public Boundary Field { get; init; } = Box(0, 0, 100, 800);

    public static Boundary Box(double west, double south, double east, double north, params (double West, double South, double East, double North)[] holes) =>
        new([new BoundaryPart(Ring(west, south, east, north), [.. holes.Select(h => (ImmutableArray<GeoPoint>)[.. Ring(h.West, h.South, h.East, h.North).Reverse()])])]);

    public static ImmutableArray<GeoPoint> Ring(double west, double south, double east, double north) =>
        [Place(west, south), Place(east, south), Place(east, north), Place(west, north)];

    public static GeoPoint Place(double east, double north) => Plane.ToPlace(new PlanePoint(east, north));

    /// <summary>Every place of it, the gate told as open over the field.</summary>
    public IEnumerable<Fix> Fixes(bool gate = true)
    {
        var seconds = Morning;
        for (var i = 0; i < Lines.Length; i++)
        {
            var up = i % 2 == 0;
            var way = To - From + (2 * Beyond);
            var steps = (int)Math.Round(way / (Speed * Every));
            for (var s = 0; s <= steps; s++, seconds += Every)
            {
                var ahead = From - Beyond + (way * s / steps);
                var at = Place(Lines[i], up ? ahead : From + To - ahead);
                var open = ahead >= From - 1e-6 && ahead <= To + 1e-6;
                yield return new Fix(at.Latitude, at.Longitude) { Seconds = seconds, Height = 30, Speed = Speed, Gate = !gate ? GateSign.NotTold : open ? GateSign.Open : GateSign.Shut };
            }

            if (i + 1 == Lines.Length) yield break;
            foreach (var fix in Turning(i, up, seconds)) yield return fix;
            seconds += TurnSeconds;
        }
    }

    private const double TurnSeconds = 30;

    // Half an ellipse out and back to the next line.
    private IEnumerable<Fix> Turning(int i, bool up, double seconds)
    {
        var steps = (int)Math.Round(TurnSeconds / Every);
        var (middle, half) = ((Lines[i] + Lines[i + 1]) / 2, (Lines[i + 1] - Lines[i]) / 2);
        for (var s = 1; s < steps; s++)
        {
            var angle = Math.PI * s / steps;
            var out_ = 450 * Math.Sin(angle);
            var at = Place(middle - (half * Math.Cos(angle)), up ? To + Beyond + out_ : From - Beyond - out_);
            yield return new Fix(at.Latitude, at.Longitude) { Seconds = seconds + (s * Every), Height = 60, Speed = Speed, Gate = GateSign.NotTold };
        }
    }

    /// <summary>The same, as clean and found on the field.</summary>
    public FlownRuns Runs(IEnumerable<Fix> fixes, Length swath)
    {
        var track = Clean(fixes);
        return RunFinding.Of(track, track.Plane.ToPlane(Field), swath);
    }

    public FlownTrack Clean(IEnumerable<Fix> fixes)
    {
        var sieve = new TrackSieve(Field);
        foreach (var fix in fixes) sieve.Add(fix);
        return sieve.Finish();
    }
}
