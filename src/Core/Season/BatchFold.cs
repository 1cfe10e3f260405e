using Watersown.Seed;

namespace Watersown.Season;

/// <summary>One batch as the marks go by: what went in, what was sown, dumped and left.</summary>
internal sealed class BatchFold(string code, SoakBatch? ground)
{
    private readonly SortedDictionary<string, FieldUse> uses = new(StringComparer.OrdinalIgnoreCase);

    private readonly ImmutableArray<StoryLine>.Builder story = ImmutableArray.CreateBuilder<StoryLine>();

    public string Code { get; } = code;

    public SoakBatch? Ground { get; } = ground;

    public bool SoakTold { get; set; }

    public DateTimeOffset? InSoak { get; set; } = ground?.InSoak;

    public DateTimeOffset? Drained { get; set; } = ground?.Drained;

    public string? Lot { get; set; } = ground?.Lot;

    public string? Variety { get; set; } = ground?.Variety;

    public DrySeed? Dry { get; set; } = ground?.Dry;

    public ImmutableArray<string> MeantFor { get; set; } = ground?.MeantFor ?? [];

    public List<string> Trailers { get; } = [.. ground?.Trailers ?? []];

    public Dictionary<string, SoakedSeed> Weights { get; } = new(StringComparer.OrdinalIgnoreCase);

    public Dictionary<string, SoakedSeed> Left { get; } = new(StringComparer.OrdinalIgnoreCase);

    public DrySeed Dumped { get; set; }

    public bool AllDumped { get; set; }

    public bool Assumed { get; set; }

    public double WetFactor { get; set; } = 1.25;

    public DrySeed Sown => uses.Values.Aggregate(DrySeed.Zero, (sum, use) => sum + use.Dry);

    /// <summary>Dry seed still there: what the scale left behind beats the sum.</summary>
    public DrySeed? Remaining
    {
        get
        {
            if (AllDumped) return DrySeed.Zero;
            if (Left.Count > 0 && Trailers.TrueForAll(Left.ContainsKey)) return Soaking.DryOf(Trailers.Aggregate(SoakedSeed.Zero, (sum, t) => sum + Left[t]), WetFactor);
            if (Dry is not { } dry) return null;
            var rest = dry - Sown - Dumped;
            return rest > DrySeed.Zero ? rest : DrySeed.Zero;
        }
    }

    /// <summary>All but a hundredth of it is gone: no scale tells more.</summary>
    public bool Spent => Remaining is { } left && (left <= DrySeed.Zero || (Dry is { } dry && (Sown > DrySeed.Zero || Dumped > DrySeed.Zero || Left.Count > 0) && left / dry <= 0.01));

    public void Tell(StoryLine line) => story.Add(line);

    public FieldUse Use(string field)
    {
        if (!uses.TryGetValue(field, out var use)) uses[field] = use = new FieldUse();
        return use;
    }

    /// <summary>The batch as a plan may count on it.</summary>
    public SoakBatch? Batch()
    {
        if (Spent || Dry is not { } dry || InSoak is not { } inSoak || string.IsNullOrEmpty(Variety)) return null;
        var weighed = Trailers.Count > 0 && Trailers.TrueForAll(Weights.ContainsKey)
            ? Trailers.Aggregate(SoakedSeed.Zero, (sum, t) => sum + Weights[t])
            : Ground?.Weighed;
        var batch = new SoakBatch(Code, Lot ?? string.Empty, Variety, dry, inSoak) { Drained = Drained, MeantFor = MeantFor, Trailers = [.. Trailers], Weighed = weighed };
        return Remaining is { } left && left < dry ? batch with { Dry = left, Weighed = weighed * (left / dry) } : batch;
    }

    public BatchBook Book(DateTimeOffset now) => new(Code)
    {
        Batch = Batch(),
        Place = Place(now),
        Dry = Dry,
        Lot = Lot,
        Sown = Sown,
        Dumped = AllDumped && Dry is { } dry && dry > Sown ? dry - Sown : Dumped,
        Remaining = Remaining,
        Assumed = Assumed,
        Story = story.ToImmutable(),
    };

    private BatchPlace Place(DateTimeOffset now)
    {
        if (AllDumped || (Spent && Dumped > Sown)) return BatchPlace.Dumped;
        if (Spent) return BatchPlace.Sown;
        if (Drained is { } drained && drained <= now) return BatchPlace.Drained;
        return InSoak is { } inSoak && inSoak <= now ? BatchPlace.InSoak : BatchPlace.Called;
    }

    /// <summary>Seed of one batch on one field. What was said beats what the loads weighed, and that beats the rate.</summary>
    internal sealed class FieldUse
    {
        public DrySeed Said { get; set; }

        public DrySeed Loads { get; set; }

        public DrySeed ByRate { get; set; }

        public DrySeed Dry => Said > DrySeed.Zero ? Said : Loads > DrySeed.Zero ? Loads : ByRate;
    }
}
