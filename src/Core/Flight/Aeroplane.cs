using Watersown.Flight.Patterns;

namespace Watersown.Flight;

/// <summary>The hired aeroplane as the flying service described it. Never used to approve a flight.</summary>
/// <param name="Name">The farm's name for it.</param>
public sealed record Aeroplane(string Name)
{
    /// <summary>Strip it loads at.</summary>
    public string? Strip { get; init; }

    public Volume? Hopper { get; init; }

    /// <summary>Load to plan with; the pilot decides each morning.</summary>
    public SoakedSeed WorkingLoad { get; init; } = SoakedSeed.FromPounds(2800);

    /// <summary>The most the pilot named.</summary>
    public SoakedSeed? TopLoad { get; init; }

    public Length Swath { get; init; } = Length.FromFeet(50);

    public Speed Working { get; init; } = Speed.FromMilesPerHour(120);

    public Speed Ferry { get; init; } = Speed.FromMilesPerHour(130);

    public TimeSpan Turn { get; init; } = TimeSpan.FromSeconds(32);

    public TimeSpan Reload { get; init; } = TimeSpan.FromSeconds(90);

    /// <summary>Taxi, take-off and landing for each load.</summary>
    public TimeSpan GroundAndAir { get; init; } = TimeSpan.FromSeconds(100);

    /// <summary>The last test of its spread.</summary>
    public TrayTest? Tested { get; init; }

    /// <summary>The pilot's own limits, as told.</summary>
    public Speed WindLimit { get; init; } = Speed.FromMilesPerHour(10);

    public Speed GustLimit { get; init; } = Speed.FromMilesPerHour(15);
}

/// <summary>When the flying service can come. A dated slot replaces the usual hours of its day.</summary>
/// <param name="Day">The day.</param>
/// <param name="From">First minute.</param>
/// <param name="Until">Last minute; equal to <paramref name="From"/> means not that day.</param>
public sealed record FlyingSlot(DateOnly Day, TimeOnly From, TimeOnly Until)
{
    /// <summary>Aeroplane it is for; none means every one.</summary>
    public string? Aeroplane { get; init; }
}
