using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>What a field is to be laid out for.</summary>
/// <param name="Pace">Swath, speed and turn.</param>
public sealed record LayingAsk(PassPace Pace)
{
    /// <summary>The run wished for; none for the quickest.</summary>
    public Bearing? Run { get; init; }

    public PassOrderKind Order { get; init; }

    /// <summary>Ground on which no pass comes down to sow.</summary>
    public ImmutableArray<NoDescent> Round { get; init; } = [];

    /// <summary>How fast the aeroplane climbs loaded, as the pilot told; none where nobody did, and the climb before wires is then left out.</summary>
    public Speed? Climb { get; init; }

    /// <summary>How the seed gets there; without it passes and turns alone are told.</summary>
    public HopperAsk? Hopper { get; init; }
}

/// <summary>How the seed gets to the field.</summary>
public sealed record HopperAsk
{
    /// <summary>Rate as loaded.</summary>
    public required SoakedRate Rate { get; init; }

    /// <summary>Most in one load: the smaller of what the pilot named and what the hopper holds.</summary>
    public required SoakedSeed Limit { get; init; }

    /// <summary>On the plane of the field.</summary>
    public required PlanePoint Strip { get; init; }

    public required Speed Ferry { get; init; }

    /// <summary>Reload, taxi, take-off and landing for each load.</summary>
    public required TimeSpan Turnaround { get; init; }

    /// <summary>Time to line up again within a pass, where the farm lets loads stop there; none where every load ends with a pass.</summary>
    public TimeSpan? LineUp { get; init; }
}
