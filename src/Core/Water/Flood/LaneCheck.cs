using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Lanes = System.Runtime.Intrinsics.Vector512<float>;

namespace Watersown.Water.Flood;

/// <summary>The boxes below one check, of sixteen fields.</summary>
internal struct LaneBox
{
    /// <summary>Width of a plain crest that passes as much, m.</summary>
    public Lanes Width;

    /// <summary>Share of the head by which the ends draw in.</summary>
    public Lanes Contraction;

    /// <summary>Head from which they draw in no further, m.</summary>
    public Lanes Most;

    /// <summary>Most that runs for each meter by which the levels differ, m²/s.</summary>
    public Lanes Leveling;
}

/// <summary>One check of sixteen fields, in m, m² and s, as it stands between two changes.</summary>
internal struct LaneCheck
{
    /// <summary>One over the ground, 1/m²; zero where there is no check, and what comes there has left.</summary>
    public Lanes PerArea;

    public Lanes TakeUp;

    /// <summary>One over what is held when the last ground is covered, spread over the check, 1/m.</summary>
    public Lanes PerFull;

    /// <summary>Share of the ground covered so far.</summary>
    public Lanes Covered;

    /// <summary>Lost from covered ground, m/s.</summary>
    public Lanes Loss;

    /// <summary>Let in and rained, m/s over the whole check.</summary>
    public Lanes Given;

    /// <summary>Tops of the boards below over the ground.</summary>
    public Lanes Boards;

    /// <summary>The same over the ground of the next check; far above it where nothing stands below.</summary>
    public Lanes BoardsBelow;

    public LaneBox Box;

    /// <summary>Let in, m³/s.</summary>
    public Wide Inflow;

    /// <summary>Let in and rained, m³/s.</summary>
    public Wide Poured;

    /// <summary>Lost where all is covered, m³/s.</summary>
    public Wide Losing;

    /// <summary>The part of it that the ground takes, m³/s.</summary>
    public Wide Seeping;

    /// <summary>Pond spread over the whole check, m, and the ground that loses water, a share of it.</summary>
    /// <param name="held">Held, spread over the check.</param>
    /// <param name="wet">Ground that loses water: all that is covered, less over the last millimeter.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly Lanes Pond(Lanes held, out Lanes wet)
    {
        var covered = CoveredAt(held);
        var pond = Vector512.MaxNative(Lanes.Zero, held - (TakeUp * covered));
        wet = Vector512.MinNative(covered, pond * Vector512.Create((float)(1 / FloodSystem.Film)));
        return pond;
    }

    public readonly Lanes CoveredAt(Lanes held) => Vector512.MaxNative(Covered, Vector512.MinNative(Lanes.One, held * PerFull));
}

/// <summary>Rates of one check of sixteen fields.</summary>
/// <param name="Net">Held more and more, m/s over the check.</param>
/// <param name="Box">Over the boards below, m³/s.</param>
/// <param name="Wet">Ground that loses water, share.</param>
internal readonly record struct LaneRates(Lanes Net, Lanes Box, Lanes Wet);
