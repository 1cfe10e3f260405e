using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

/// <summary>
/// One check as the flood sees it: level ground that takes up water where it gets wet, then carries a pond. Water comes over dry
/// ground as a front of <see cref="Front"/> depth; once all ground is covered the pond rises.
/// </summary>
/// <param name="Name">What people call it: <c>N4 ck 5</c>.</param>
/// <param name="Area">Its ground.</param>
/// <param name="TakeUp">Water that each part of the ground drinks as it gets wet: cracks and the worked layer.</param>
/// <param name="Front">Mean depth of the pond at which the last ground is covered; the check is full then.</param>
public sealed record FloodCheck(string Name, Area Area, WaterDepth TakeUp, WaterDepth Front)
{
    /// <summary>Height of the mean ground over a level common to the network; only differences count.</summary>
    public WaterDepth Ground { get; init; }

    /// <summary>Lost downward and sideways from covered ground for as long as it is covered.</summary>
    public DepthRate Percolation { get; init; }

    /// <summary>Drunk besides by ground that has not been wet for long; none where the take-up is the whole of it.</summary>
    public Soaking? Soaking { get; init; }

    /// <summary>Ground that was wet already, from no ground to all of it.</summary>
    public Fraction Covered { get; init; }

    /// <summary>Depth of the pond on the covered ground.</summary>
    public WaterDepth Depth { get; init; }
}

/// <summary>
/// How soil that is wet at the surface goes on drinking: f = K (1 + ψΔθ / F), with F all it has drunk since it got wet. The
/// mean of F over the covered ground is used, which is exact once all of the check has been wet for long.
/// </summary>
/// <param name="Conductivity">K, of the wetted soil.</param>
/// <param name="Suction">ψ Δθ: suction at the wetting front times the water that the soil can still hold.</param>
public sealed record Soaking(DepthRate Conductivity, WaterDepth Suction);

/// <summary>Boards in a box, from one check to the next, into a ditch, or off the farm.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="From">Check above, counted from 0 in the network's order.</param>
/// <param name="To">Check below; none where it drains.</param>
/// <param name="Width">Width of the opening; several boxes side by side are one wide one.</param>
/// <param name="Boards">Top of the boards over the mean ground of the check above.</param>
public sealed record FloodBox(string Name, int From, int? To, Length Width, WaterDepth Boards)
{
    /// <summary>Straight crest, drawn in at the ends or not. A notch is no box.</summary>
    public WeirKind Kind { get; init; } = WeirKind.Contracted;

    /// <summary>Ditch that a drain gives to; none: the water leaves the farm.</summary>
    public int? Ditch { get; init; }
}

/// <summary>Levee that lets water through to a check or away, in proportion to the squares of the depths on its two sides.</summary>
/// <param name="From">Check on one side.</param>
/// <param name="To">Check on the other; none where the water leaves the farm.</param>
/// <param name="Length">Along the levee.</param>
/// <param name="Width">Through it.</param>
/// <param name="Conductivity">Of its soil.</param>
public sealed record FloodLevee(int From, int? To, Length Length, Length Width, DepthRate Conductivity);

/// <summary>A flow from a moment on, until the next one.</summary>
/// <param name="From">Since the start of the run.</param>
/// <param name="Flow">Water per time.</param>
public sealed record FlowStep(TimeSpan From, FlowRate Flow);

/// <summary>Water let into a check.</summary>
/// <param name="Source">Where it comes from; several inlets of one name share its cap.</param>
/// <param name="To">Check that gets it.</param>
/// <param name="Flow">As ordered, in order of time; nothing before the first.</param>
public sealed record FloodInlet(string Source, int To, ImmutableArray<FlowStep> Flow);

/// <summary>A ditch that gathers drain water and lifts it back: what is over its pump's flow leaves the farm.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="To">Check that gets the water; none where it gives to another ditch.</param>
/// <param name="Cap">Most that is lifted.</param>
public sealed record FloodDitch(string Name, int? To, FlowRate Cap)
{
    /// <summary>Ditch further on that it gives to; must stand later in the network's order.</summary>
    public int? Next { get; init; }
}

/// <summary>Air over the farm from a moment on.</summary>
/// <param name="From">Since the start of the run.</param>
/// <param name="Evaporation">Taken from covered ground.</param>
/// <param name="Rain">Falling on all ground.</param>
public sealed record FloodAir(TimeSpan From, DepthRate Evaporation, DepthRate Rain);

/// <summary>Boards put in or taken out during the run, or a levee that goes: then the box stands for the gap.</summary>
/// <param name="At">Since the start of the run.</param>
/// <param name="Box">Box, counted from 0.</param>
/// <param name="Boards">Top of the boards from then on.</param>
public sealed record BoardMove(TimeSpan At, int Box, WaterDepth Boards);

/// <summary>Checks, and everything that joins them.</summary>
public sealed record FloodNetwork
{
    public required ImmutableArray<FloodCheck> Checks { get; init; }

    public ImmutableArray<FloodBox> Boxes { get; init; } = [];

    public ImmutableArray<FloodLevee> Levees { get; init; } = [];

    public ImmutableArray<FloodInlet> Inlets { get; init; } = [];

    public ImmutableArray<FloodDitch> Ditches { get; init; } = [];

    public ImmutableArray<FloodAir> Air { get; init; } = [];

    public ImmutableArray<BoardMove> Moves { get; init; } = [];

    /// <summary>Most that a source gives; inlets that ask for more together get less in proportion. Not told: no cap.</summary>
    public ImmutableSortedDictionary<string, FlowRate> Caps { get; init; } = ImmutableSortedDictionary.Create<string, FlowRate>(StringComparer.OrdinalIgnoreCase);
}
