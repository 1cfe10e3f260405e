using Watersown.Flight;
using Watersown.Land;
using Watersown.Seed;
using Watersown.Water.Learning;
using Watersown.Weather;

namespace Watersown.Schedule;

/// <summary>Work of a tractor before the water, in the usual order.</summary>
public enum GroundWork
{
    Chisel,
    Disc,
    Plane,
    Aqua,
    Roll,
}

/// <summary>How far a field has come.</summary>
public enum FieldStage
{
    TooWet,
    Unworked,
    Chiselled,
    Disced,
    Planed,
    AquaOn,
    Rolled,
    Flooding,
    Full,
    Sown,
}

/// <summary>One field's season: what is meant to be sown on it, and how far it has come.</summary>
/// <param name="Code">Field code.</param>
/// <param name="Rate">Dry seed per acre.</param>
/// <param name="Stage">How far it has come.</param>
public sealed record FieldSeason(string Code, SeedRate Rate, FieldStage Stage)
{
    /// <summary>Nobody has said how far it has come: the stage is only what is taken where nothing is known.</summary>
    public bool StageUntold { get; init; }

    /// <summary>Variety meant for it; none known means any seed will do.</summary>
    public string? Variety { get; init; }

    /// <summary>Ground work still to do, where it differs from what the stage implies.</summary>
    public ImmutableArray<GroundWork>? WorkLeft { get; init; }

    /// <summary>Not fit for a tractor before this moment.</summary>
    public DateTimeOffset? FitFrom { get; init; }

    public DateOnly? AquaOn { get; init; }

    /// <summary>When the head check first got water.</summary>
    public DateTimeOffset? FirstWater { get; init; }

    public DateTimeOffset? FullSince { get; init; }

    /// <summary>How many checks are wet, from the head.</summary>
    public int? ChecksWet { get; init; }

    public DateTimeOffset? SownAt { get; init; }

    public WaterDepth? Depth { get; init; }

    /// <summary>No water may be let out of it.</summary>
    public bool NoSpill { get; init; }

    /// <summary>What its marks have taught of the water it takes; none where the farm's figures are all there is.</summary>
    public LearnedWater? Learned { get; init; }

    /// <summary>When the facts above were true.</summary>
    public DateTimeOffset? AsOf { get; init; }
}

/// <summary>Tractors that pull one implement.</summary>
/// <param name="Name">The farm's name for them.</param>
/// <param name="Work">What they can do; one at a time.</param>
/// <param name="Count">How many.</param>
/// <param name="Rate">Land worked by one of them in a working hour.</param>
public sealed record TractorGroup(string Name, ImmutableArray<GroundWork> Work, int Count, AreaRate Rate);

/// <summary>People who limit how much goes on at once.</summary>
public sealed record Crew
{
    /// <summary>Tractor drivers; none known means no limit.</summary>
    public int? Drivers { get; init; }

    /// <summary>Irrigators; none known means no limit.</summary>
    public int? Irrigators { get; init; }

    /// <summary>How many filling fields one irrigator can look after.</summary>
    public int FieldsPerIrrigator { get; init; } = 3;

    public TimeOnly WorkFrom { get; init; } = new(6, 0);

    public TimeOnly WorkUntil { get; init; } = new(18, 0);
}

/// <summary>How a day's delay is priced.</summary>
public enum DelayRule
{
    /// <summary>About 5 cwt an acre lower over the month of May: 0.2 cwt an acre a day from 1 May.</summary>
    Trials,

    /// <summary>The old saying: a sack an acre a day after 12 May.</summary>
    Saying,

    /// <summary>The farm's own price a day and acre from 1 May.</summary>
    Own,
}

/// <summary>What the farm says things cost, so that a plan can be weighed in money.</summary>
public sealed record PlanPrices
{
    public DelayRule Delay { get; init; } = DelayRule.Trials;

    /// <summary>For <see cref="DelayRule.Own"/>: dollars an acre a day.</summary>
    public Money OwnDelay { get; init; } = Money.FromDollars(3.6m);

    /// <summary>Price of grain a hundredweight.</summary>
    public Money Grain { get; init; } = Money.FromDollars(18m);

    /// <summary>Dollars an acre and squared day that the head check has been wet beyond <see cref="HeadAgeFree"/>.</summary>
    public Money HeadAge { get; init; } = Money.FromDollars(4m);

    /// <summary>Days the head check may be wet before it counts.</summary>
    public TimeSpan HeadAgeFree { get; init; } = TimeSpan.FromDays(8);

    /// <summary>Ordered water that nothing takes up, an acre-foot.</summary>
    public Money IdleWater { get; init; } = Money.FromDollars(10m);

    /// <summary>Dry seed, bought, a pound.</summary>
    public Money Seed { get; init; } = Money.FromDollars(0.33m);

    /// <summary>Soaking and hauling, a pound of dry seed.</summary>
    public Money SoakAndHaul { get; init; } = Money.FromDollars(0.06m);

    /// <summary>Seed, soaking and hauling together: what a pound of dry seed has cost once it is soaked.</summary>
    public Money SoakedSeed => Seed + SoakAndHaul;

    /// <summary>Flying an hour.</summary>
    public Money FlyingHour { get; init; } = Money.FromDollars(900m);

    /// <summary>Flying an acre, as the flying service bills it; none where it bills otherwise.</summary>
    public Money? FlyingAcre { get; init; }

    /// <summary>Flying a pound of seed as loaded, as the flying service bills it; none where it bills otherwise.</summary>
    public Money? FlyingWetPound { get; init; }

    /// <summary>An acre that is not sown within the plan's days.</summary>
    public Money Unsown { get; init; } = Money.FromDollars(600m);
}

/// <summary>A step that a person has fixed.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Task">Task name as in the plan: <c>fill</c>, <c>sow</c> and so on.</param>
/// <param name="Start">When it is to start.</param>
public sealed record Pin(string Field, string Task, DateTimeOffset Start)
{
    /// <summary>Who was told, where somebody was.</summary>
    public string? Told { get; init; }
}

/// <summary>Somebody who is rung or handed a sheet.</summary>
public sealed record Person(string Name, string Role)
{
    public string? Phone { get; init; }

    public Wording.Language Speaks { get; init; }
}

/// <summary>Everything the plan starts from: the farm as it stands at one moment.</summary>
public sealed record SeasonState
{
    public required Farm Farm { get; init; }

    /// <summary>The moment of planning, with the farm's offset.</summary>
    public required DateTimeOffset Now { get; init; }

    /// <summary>The farm's offset from UTC at every moment of the plan.</summary>
    public required TimeSpan Offset { get; init; }

    /// <summary>One for each field of the farm, in the farm's order.</summary>
    public required ImmutableArray<FieldSeason> Fields { get; init; }

    /// <summary>Last day the plan looks at.</summary>
    public required DateOnly Horizon { get; init; }

    /// <summary>Number that this plan will carry.</summary>
    public int PlanNumber { get; init; } = 1;

    public ImmutableArray<SeedLot> Lots { get; init; } = [];

    public ImmutableArray<SoakBatch> Batches { get; init; } = [];

    public SoakPlace? SoakPlace { get; init; }

    /// <summary>The rules that seed is soaked by: those of <see cref="SoakPlace"/>, or the usual ones.</summary>
    public SoakPlace SoakRules => SoakPlace ?? Seed.SoakPlace.Usual;

    [PlainNumber("soaked weight over dry weight")]
    public double WetFactor { get; init; } = 1.25;

    public ImmutableArray<Aeroplane> Aeroplanes { get; init; } = [];

    /// <summary>The flying service's hours on a day without a dated slot.</summary>
    public TimeOnly UsualFrom { get; init; } = new(5, 45);

    public TimeOnly UsualUntil { get; init; } = new(10, 30);

    public ImmutableArray<FlyingSlot> Slots { get; init; } = [];

    public ImmutableArray<Wind> Wind { get; init; } = [];

    public ImmutableArray<DayWarmth> Warmth { get; init; } = [];

    /// <summary>What days are like as a rule, as the farm typed it.</summary>
    public FarmNormals Normals { get; init; } = FarmNormals.None;

    public ImmutableArray<TractorGroup> Tractors { get; init; } = [];

    public Crew Crew { get; init; } = new();

    /// <summary>Water lost to the air from a flooded field.</summary>
    public DepthRate Evaporation { get; init; } = DepthRate.FromInchesPerDay(0.22);

    /// <summary>How long the farm's seed takes until its roots hold; none where the farm has not said.</summary>
    public TimeSpan? Anchoring { get; init; }

    /// <summary>For how long seed counts as loose after sowing: as the farm says, or as usual.</summary>
    public TimeSpan SeedLoose => Anchoring ?? Water.SettleIndex.Loose;

    public PlanPrices Prices { get; init; } = new();

    public ImmutableArray<Pin> Pins { get; init; } = [];

    public ImmutableArray<Person> People { get; init; } = [];

    public FieldSeason Season(string code) => Fields.First(f => string.Equals(f.Code, code, StringComparison.Ordinal));
}
