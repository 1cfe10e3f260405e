namespace Watersown.Flight.Patterns;

/// <summary>
/// A test of how an aeroplane spreads: trays in a row square to its track, flown over one or several times. It holds for that
/// aeroplane, spreader, gate, height, speed and seed, and for no other.
/// </summary>
public sealed record TrayTest
{
    /// <summary>Most trays in a row.</summary>
    [PlainNumber("trays")]
    public const int MostTrays = 200;

    /// <summary>Most passes over them.</summary>
    [PlainNumber("passes")]
    public const int MostPasses = 20;

    public required DateOnly Day { get; init; }

    /// <summary>Name of the aeroplane; none where the farm has only one.</summary>
    public string? Aeroplane { get; init; }

    /// <summary>What was flown, in the farm's words.</summary>
    public string? Seed { get; init; }

    /// <summary>What each pass left on each tray, left to right seen along the flight.</summary>
    public required ImmutableArray<ImmutableArray<SoakedSeed>> Passes { get; init; }

    /// <summary>From tray to tray.</summary>
    public required Length Spacing { get; init; }

    /// <summary>Of one tray.</summary>
    public required Area Tray { get; init; }

    /// <summary>How far to the right of the flight line the middle of the row lay; below zero to the left.</summary>
    public Length Offset { get; init; }

    /// <summary>Ground speed over the trays.</summary>
    public Speed? Speed { get; init; }

    /// <summary>What left the gate, by scale and watch.</summary>
    public MassFlow? Gate { get; init; }

    /// <summary>Weight of a thousand of the soaked grains, to tell chance from unevenness.</summary>
    public SoakedSeed? ThousandGrains { get; init; }

    /// <summary>The rows can be worked: as many trays in each, enough of them, and something caught.</summary>
    public bool IsWhole => Passes is [{ Length: >= SpreadPattern.FewestTrays and <= MostTrays } first, ..] && Passes.Length <= MostPasses
        && Passes.All(p => p.Length == first.Length && p.All(t => t.Kilograms >= 0) && p.Any(t => t.Kilograms > 0))
        && Spacing > Length.Zero && Tray.SquareMeters > 0;

    /// <summary>The mean of the passes on each tray.</summary>
    [Source(nameof(Sources.Arithmetic), "mean of the passes, tray by tray")]
    public ImmutableArray<SoakedSeed> MeanRow => [.. Passes[0].Select((_, i) => SoakedSeed.FromKilograms(Passes.Average(p => p[i].Kilograms)))];

    /// <summary>The pattern of the mean row, on its own flight line.</summary>
    public SpreadPattern Pattern => SpreadPattern.Of(MeanRow, Spacing, Tray, Offset);

    /// <summary>Mean weight on a tray as the passes were told to lie, left to right.</summary>
    internal IEnumerable<SpreadPattern> PatternsOfPasses => Passes.Select(p => SpreadPattern.Of(p, Spacing, Tray, Offset));
}
