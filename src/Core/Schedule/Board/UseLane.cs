namespace Watersown.Schedule.Board;

/// <summary>Things that fields share and that only one can have at a time.</summary>
public enum LaneKind
{
    Aeroplane,
    Trailers,
    SoakPlace,
    Tractors,
}

/// <summary>What a shared thing is taken for.</summary>
public enum LaneUse
{
    Sowing,
    InSoak,
    Drained,
    ComingBack,
    PastUse,
    Working,
}

/// <summary>A shared thing taken for a span.</summary>
/// <param name="Layer">Which of several, 0 first.</param>
/// <param name="Use">For what.</param>
/// <param name="From">First moment.</param>
/// <param name="Until">Last moment.</param>
public sealed record LaneBar(int Layer, LaneUse Use, DateTimeOffset From, DateTimeOffset Until)
{
    /// <summary>Field code; none for seed that no field uses.</summary>
    public string? Field { get; init; }

    public string? Batch { get; init; }

    /// <summary>For ground work: which.</summary>
    public GroundWork? Work { get; init; }
}

/// <summary>Hours in which an aeroplane may be planned.</summary>
public sealed record LaneSlot(DateTimeOffset From, DateTimeOffset Until)
{
    /// <summary>Hours promised in which the wind is over the pilot's limit.</summary>
    public bool Blown { get; init; }
}

/// <summary>One shared thing over time.</summary>
/// <param name="Kind">What.</param>
/// <param name="Name">The farm's name for it.</param>
/// <param name="Most">How many there are; none known means no limit.</param>
public sealed record UseLane(LaneKind Kind, string Name, int? Most)
{
    /// <summary>More trailers than this are shown as a count over time instead of one by one.</summary>
    public const int MostOneByOne = 8;

    public required ImmutableArray<LaneBar> Bars { get; init; }

    /// <summary>Names of single things, by layer, where the farm has given them.</summary>
    public ImmutableArray<string> Names { get; init; } = [];

    public ImmutableArray<LaneSlot> Slots { get; init; } = [];

    /// <summary>How many lie under one another: all there are, or as many as are used at once.</summary>
    public int Layers => Math.Max(Math.Max(1, Most is { } most && Kind != LaneKind.SoakPlace && most <= MostOneByOne ? most : 0), Bars.IsEmpty ? 0 : Bars.Max(b => b.Layer) + 1);

    public bool IsCounted => Layers > MostOneByOne;

    /// <summary>How many are taken over time: changes only, in order; nothing before the first.</summary>
    public ImmutableArray<(DateTimeOffset From, int Taken)> Counts()
    {
        var counts = ImmutableArray.CreateBuilder<(DateTimeOffset, int)>();
        var last = 0;
        foreach (var at in Bars.SelectMany(b => new[] { b.From, b.Until }).Distinct().Order())
        {
            var taken = Bars.Where(b => b.From <= at && at < b.Until).Select(b => b.Layer).Distinct().Count();
            if (taken != last) counts.Add((at, taken));
            last = taken;
        }

        return counts.ToImmutable();
    }
}
