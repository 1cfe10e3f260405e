namespace Watersown.Flight.Cover;

/// <summary>How finely coverage is looked at, and what counts as a place worth walking to.</summary>
public sealed record CoverOptions
{
    /// <summary>Side of a cell; none for <see cref="Coverage.CellFor"/>.</summary>
    public Length? Cell { get; init; }

    /// <summary>How far right of the line of flight the middle of the swath lies; below zero to the left. A pattern may lean.</summary>
    public Length Right { get; init; }

    /// <summary>Bare pieces nearer to one another than this are one place.</summary>
    [Source(nameof(Sources.FarmDefault), "about what one look from a boat or a levee takes in")]
    public Length Together { get; init; } = Length.FromMeters(3);

    /// <summary>Places with less bare ground than this are slivers that nobody walks to.</summary>
    [Source(nameof(Sources.FarmDefault), "a strip half a meter wide and forty long")]
    public Area LeastPlace { get; init; } = Area.FromSquareMeters(20);

    /// <summary>Only so many of the largest places are told.</summary>
    public int MostPlaces { get; init; } = 200;
}
