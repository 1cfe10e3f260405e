using Watersown.Flight;
using Watersown.Schedule;

namespace Watersown.Planner.Instances;

/// <summary>Where a field's water stands.</summary>
internal enum WaterNeed
{
    /// <summary>Full: nothing to fill.</summary>
    None,

    /// <summary>Filling now: goes on at once.</summary>
    Running,

    /// <summary>To be filled once the ground is done.</summary>
    ToStart,
}

/// <summary>A piece of ground work on the working axis.</summary>
internal sealed record WorkItem(GroundWork Work, int Group, int Steps);

/// <summary>A field that is not yet sown, in whole numbers: steps of five minutes, hundredths of a cfs, thousandths of a dollar.</summary>
internal sealed record FieldItem
{
    public required int Index { get; init; }

    public required string Code { get; init; }

    public required double Acres { get; init; }

    public required ImmutableArray<WorkItem> Works { get; init; }

    /// <summary>First working-axis step at which the ground is fit.</summary>
    public required int FitAxis { get; init; }

    public required WaterNeed Need { get; init; }

    /// <summary>Step of first water, where it is wet already; at or below zero.</summary>
    public required int FirstWater { get; init; }

    /// <summary>Index of its water class; −1 where nobody knows its source, and it fills in the usual time.</summary>
    public required int Class { get; init; }

    /// <summary>Flow it takes up once full.</summary>
    public required int Hold { get; init; }

    /// <summary>Flow its wet ground takes up now; counted in the base of its class whatever the plan does.</summary>
    public required int HoldNow { get; init; }

    /// <summary>Steps against flow; none where it is full already or where no source is known.</summary>
    public FillCurve? Fill { get; init; }

    /// <summary>Steps to fill where no source is known.</summary>
    public int UsualFill { get; init; }

    /// <summary>Flow × steps at the fastest fill, beyond what its wet ground takes anyway: the least water it can be filled with.</summary>
    public long LeastWater { get; init; }

    /// <summary>The same at the slowest.</summary>
    public long MostWater { get; init; }

    public required double DryPounds { get; init; }

    public required int Trailers { get; init; }

    public string? Variety { get; init; }

    /// <summary>Steps of flying by aeroplane.</summary>
    public required ImmutableArray<int> FlySteps { get; init; }

    /// <summary>Ferry cost by aeroplane.</summary>
    public required ImmutableArray<long> FerryCost { get; init; }

    public required ImmutableArray<int> Loads { get; init; }

    /// <summary>Cost of delay by day of the plan.</summary>
    public required ImmutableArray<long> DelayCost { get; init; }

    /// <summary>Cost of one squared day of head-check age beyond the free ones.</summary>
    public required double HeadAgeCost { get; init; }

    public required long UnsownCost { get; init; }

    /// <summary>Steps pinned by a person.</summary>
    public int? PinnedFill { get; init; }

    public int? PinnedSow { get; init; }

    public int? PinnedSoakDay { get; init; }

    /// <summary>Why it can never be planned, where that is so.</summary>
    public string? Impossible { get; init; }
}

/// <summary>A period of a source over which its order cannot change.</summary>
internal sealed record OrderPeriod(int From, int Until, int? FixedFlow);

/// <summary>A water source in whole numbers.</summary>
internal sealed record SourceItem
{
    public required string Code { get; init; }

    /// <summary>The most it can give at any step of the plan.</summary>
    public required int Cap { get; init; }

    /// <summary>What it can give over time, in order, without gaps.</summary>
    public required ImmutableArray<SupplyStretch> Stretches { get; init; }

    /// <summary>Periods of one order each; empty where it is turned at will.</summary>
    public required ImmutableArray<OrderPeriod> Periods { get; init; }

    public required int Step { get; init; }

    /// <summary>The most it can give at a step.</summary>
    public int MostAt(int step) => Stretches.FirstOrDefault(s => s.From <= step && step < s.Until)?.Most ?? Cap;

    /// <summary>The most it can give at any step of a period of its orders.</summary>
    public int MostIn(int period) => Stretches.Where(s => s.Period == period).Select(s => s.Most).DefaultIfEmpty(Cap).Max();

    /// <summary>The most of a stretch that is not left to an order: what runs unchangeably, or what it can give.</summary>
    public int FixedMost(SupplyStretch stretch) => stretch.Period >= 0 && Periods[stretch.Period].FixedFlow is { } runs ? Math.Min(stretch.Most, runs) : stretch.Most;

    /// <summary>Tailwater: fields of the plan whose fullness counts, acres needed beyond those full already; none for other kinds.</summary>
    public TailwaterItem? Needs { get; init; }
}

/// <summary>Acres still needed before tailwater comes, and which fields bring them.</summary>
internal sealed record TailwaterItem(double AcresMissing, ImmutableArray<int> Fields);

/// <summary>Fields that draw on the same sources.</summary>
/// <param name="Sources">Indices of the sources, first choice first.</param>
/// <param name="BaseHold">Flow that ground of this class which is wet now takes up all along.</param>
internal sealed record WaterClass(ImmutableArray<int> Sources, int BaseHold);

/// <summary>
/// One limit on flow: what these classes take together can never exceed what all their sources give, each source counted
/// by itself or under its joint cap. All such limits together say exactly that the water can be shared out (every cut of
/// the flow network from fields over sources and caps).
/// </summary>
/// <param name="Classes">Water classes that take.</param>
/// <param name="Sources">Sources counted by themselves.</param>
/// <param name="Caps">Joint caps counted in place of their sources.</param>
internal sealed record WaterLimit(ImmutableArray<int> Classes, ImmutableArray<int> Sources, ImmutableArray<int> Caps)
{
    /// <summary>The most all of them can ever give.</summary>
    public int Most(Instance instance) => Sources.Sum(s => instance.Sources[s].Cap) + Caps.Sum(j => instance.JointCaps[j].Cap);
}

/// <summary>Ordered sources under one cap.</summary>
internal sealed record JointCap(ImmutableArray<int> Sources, int Cap);

/// <summary>An aeroplane with the windows in which it may be planned.</summary>
internal sealed record PlaneItem(Aeroplane Aeroplane, ImmutableArray<(int From, int Until)> Windows, int Strip);

/// <summary>A batch that is soaking, drained, or called for today.</summary>
internal sealed record BatchItem
{
    public required string Code { get; init; }

    public required string Variety { get; init; }

    public required double DryPounds { get; init; }

    public required int Trailers { get; init; }

    /// <summary>First step at which it can be sown.</summary>
    public required int ReadyFrom { get; init; }

    /// <summary>Sowing must have ended by this step.</summary>
    public required int GoodUntil { get; init; }

    /// <summary>Day on which it went under water; below zero before today.</summary>
    public required int SoakDay { get; init; }

    /// <summary>Not under water yet: not using it costs nothing.</summary>
    public required bool CanBeCalledOff { get; init; }

    /// <summary>Cost of one pound of it thrown away.</summary>
    public required double CostPerPound { get; init; }
}

/// <summary>Everything the search needs, in whole numbers, built once from a season state.</summary>
internal sealed record Instance
{
    public required SeasonState State { get; init; }

    public required SeasonClock Clock { get; init; }

    public required WorkAxis Work { get; init; }

    public required ImmutableArray<FieldItem> Fields { get; init; }

    public required ImmutableArray<SourceItem> Sources { get; init; }

    public required ImmutableArray<WaterClass> Classes { get; init; }

    public required ImmutableArray<WaterLimit> Limits { get; init; }

    public required ImmutableArray<JointCap> JointCaps { get; init; }

    /// <summary>Tractors of each group.</summary>
    public required ImmutableArray<(string Name, int Count)> Groups { get; init; }

    public int? Drivers { get; init; }

    /// <summary>Fields that may be filling at once.</summary>
    public int? Fillings { get; init; }

    public required ImmutableArray<PlaneItem> Planes { get; init; }

    public required ImmutableArray<(string Name, int Pad)> Strips { get; init; }

    public required ImmutableArray<BatchItem> Batches { get; init; }

    public int? Trailers { get; init; }

    /// <summary>Trailers tied up by batches that exist, with the step until which they stay so if their batch is not used.</summary>
    public required SoakItem Soak { get; init; }

    public required double IdleCost { get; init; }

    public required ImmutableArray<string> Assumptions { get; init; }

    /// <summary>Steps for which drained seed lasts, by day of sowing.</summary>
    public required ImmutableArray<int> Usable { get; init; }
}

/// <summary>The soak place in whole numbers.</summary>
/// <param name="FirstDay">First day on which a new batch can go under water.</param>
/// <param name="Hour">Step within a day at which it does.</param>
/// <param name="Least">Steps from in-soak to the first sowing: soak and drain.</param>
/// <param name="Most">Steps from in-soak to the end of draining at the longest soak.</param>
/// <param name="Return">Steps until a trailer can be filled again after sowing.</param>
/// <param name="Lead">Steps that a trailer stands at the strip before its first load.</param>
internal sealed record SoakItem(int FirstDay, int Hour, int Least, int Most, int Return, int Lead);
