using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>A field as a swath sees it that is drawn over it.</summary>
internal sealed class SwathGround(ImmutableArray<PlanePart> field, Length swath)
{
    // A wing that only runs along the edge sows nothing inside.
    private const double Wing = 0.45;

    private readonly EdgeBands edge = new(field);
    private readonly List<(double From, double To)> found = [];

    public Length Swath { get; } = swath;

    public bool Holds(PlanePoint at) => edge.Holds(at);

    /// <summary>The stretches of a step on which any of the swath lies on the field, as shares of the step, in order and apart.</summary>
    public ImmutableArray<(double From, double To)> Sown(PlanePoint from, PlanePoint to)
    {
        var (east, north) = (to.East - from.East, to.North - from.North);
        var length = Turn.Hypot(east, north);
        if (length == 0) return [];
        found.Clear();
        edge.Inside(from, to, found);
        if (found is [(0, 1)]) return [(0, 1)];
        var (right, ahead) = (north / length * Swath.Meters * Wing, -east / length * Swath.Meters * Wing);
        edge.Inside(new(from.East + right, from.North + ahead), new(to.East + right, to.North + ahead), found);
        edge.Inside(new(from.East - right, from.North - ahead), new(to.East - right, to.North - ahead), found);
        return Joined();
    }

    /// <summary>Length of a step over the field, along its middle.</summary>
    public double Over(PlanePoint from, PlanePoint to)
    {
        found.Clear();
        edge.Inside(from, to, found);
        return found.Sum(f => f.To - f.From) * Turn.Hypot(to.East - from.East, to.North - from.North);
    }

    /// <summary>Where the gate turned between two places: at the edge of the field where that lies between them, else halfway.</summary>
    /// <param name="open">The place with the gate open.</param>
    /// <param name="shut">The place with the gate shut.</param>
    /// <returns>Share of the way from the open to the shut place.</returns>
    public double TurnedAt(PlanePoint open, PlanePoint shut)
    {
        var length = Turn.Hypot(shut.East - open.East, shut.North - open.North);
        if (length == 0) return 0;

        // A place on the very edge counts as inside for the open one, as outside for the shut one.
        var nudge = Math.Min(1, length / 4) / length;
        var (a, b) = (EdgeBands.Between(open, shut, -nudge), EdgeBands.Between(open, shut, 1 + nudge));
        if (!edge.Holds(a) || edge.Holds(b)) return 0.5;
        found.Clear();
        edge.Inside(a, b, found);
        return found.Count == 0 ? 0.5 : Math.Clamp((found[0].To * (1 + (2 * nudge))) - nudge, 0, 1);
    }

    private ImmutableArray<(double From, double To)> Joined()
    {
        if (found.Count == 0) return [];
        found.Sort();
        var joined = ImmutableArray.CreateBuilder<(double From, double To)>();
        var now = found[0];
        foreach (var next in found)
        {
            if (next.From <= now.To)
            {
                now.To = Math.Max(now.To, next.To);
                continue;
            }

            joined.Add(now);
            now = next;
        }

        joined.Add(now);
        return joined.ToImmutable();
    }
}
