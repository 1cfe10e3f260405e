namespace Watersown.Wording;

/// <summary>Words of the map that moves.</summary>
public sealed partial record MovingMapWords
{
    public required string Title { get; init; }

    public required string TwoFingers { get; init; }

    public required string Moves { get; init; }

    public required string In { get; init; }

    public required string Out { get; init; }

    public required string West { get; init; }

    public required string NorthWay { get; init; }

    public required string South { get; init; }

    public required string East { get; init; }

    public required string Whole { get; init; }
}
