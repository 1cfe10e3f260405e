namespace Watersown.Harvest;

/// <summary>What the farm cuts and delivers with.</summary>
public sealed record HarvestMeans
{
    /// <summary>Moisture that paddy is paid at, and yields are told at.</summary>
    public static Fraction PaidAt { get; } = Fraction.FromPercent(14);

    [PlainNumber("combines")]
    public int? Combines { get; init; }

    /// <summary>Land that one combine cuts in a day.</summary>
    public Area? EachDay { get; init; }

    /// <summary>Sets that the usual dryer takes in a day.</summary>
    [PlainNumber("sets of two trailers")]
    public int? Sets { get; init; }

    /// <summary>Green grain in one set. Common practice, no source: about 50,000 lb.</summary>
    public Mass SetWeight { get; init; } = Mass.FromPounds(50_000);

    /// <summary>Grain expected, at <see cref="PaidAt"/>; none where the farm has not said.</summary>
    public GrainYield? Expected { get; init; }

    /// <summary>Not cut above this moisture. Common practice, no source: about 22 %.</summary>
    public Fraction CutFrom { get; init; } = Fraction.FromPercent(22);

    /// <summary>Below this moisture grain that grows wet again cracks.</summary>
    [Source(nameof(Sources.UcHarvestMoisture), "below 17 to 18 % grain cracks if dew or rain wets it again")]
    public Fraction CutTo { get; init; } = Fraction.FromPercent(18);

    /// <summary>Land that all combines cut in a day; none where nobody said.</summary>
    public Area? Combining => Combines is { } count && EachDay is { } each ? each * count : null;
}

/// <summary>Room at a dryer on some days.</summary>
/// <param name="From">First day.</param>
/// <param name="Until">Last day.</param>
/// <param name="Sets">Sets in a day.</param>
public sealed record DryerRoom(DateOnly From, DateOnly Until, [property: PlainNumber("sets of two trailers")] int Sets)
{
    /// <summary>Whose room; the usual dryer's where not given, and then it stands in for the usual sets.</summary>
    public string? Dryer { get; init; }

    /// <summary>The only variety it takes.</summary>
    public string? Variety { get; init; }

    public bool IsOn(DateOnly day) => day >= From && day <= Until;
}
