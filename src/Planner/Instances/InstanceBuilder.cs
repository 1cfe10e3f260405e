using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;

namespace Watersown.Planner.Instances;

/// <summary>Turns a season state into whole numbers, filling what is not known with what is usual and saying so.</summary>
internal sealed partial class InstanceBuilder
{
    private readonly SeasonState state;
    private readonly SeasonClock clock;
    private readonly WorkAxis work;
    private readonly List<string> assumptions = [];
    private readonly List<string> withoutSource = [];
    private readonly SortedSet<GroundWork> withoutTractor = [];
    private readonly ImmutableArray<Aeroplane> aeroplanes;
    private readonly ImmutableArray<ImmutableArray<FlyingWindow>> windows;
    private readonly List<(ImmutableArray<int> Sources, double Base)> classes = [];
    private ImmutableArray<int> caps = [];

    private InstanceBuilder(SeasonState state)
    {
        this.state = state;
        clock = new SeasonClock(state);
        work = new WorkAxis(clock, state.Crew.WorkFrom, state.Crew.WorkUntil);
        aeroplanes = state.Aeroplanes;
        if (aeroplanes.IsEmpty)
        {
            aeroplanes = [new Aeroplane("the aeroplane")];
            assumptions.Add("No aeroplane was described: 2,800 lb soaked a load, 50 ft swath, 120 mph are taken.");
        }

        windows = [.. aeroplanes.Select(a => FlyingWindows.Of(state, a))];
    }

    public static Instance Build(SeasonState state) => new InstanceBuilder(state).Build();

    private Instance Build()
    {
        var soak = BuildSoak();
        var strips = state.Farm.Strips.IsEmpty ? [("the strip", 2)] : state.Farm.Strips.Select(s => (s.Name, Math.Max(1, s.PadTrailers))).ToImmutableArray();
        var sources = state.Farm.Sources.Select(BuildSource).ToImmutableArray();
        caps = [.. sources.Select(s => s.Cap)];
        foreach (var season in state.Fields.Where(f => f.Stage is FieldStage.Sown or FieldStage.Full or FieldStage.Flooding)) ClassOf(season.Code, holds: true);
        var fields = ImmutableArray.CreateBuilder<FieldItem>();
        foreach (var season in state.Fields.Where(f => f.Stage != FieldStage.Sown)) fields.Add(BuildField(season, fields.Count));
        var items = fields.ToImmutable();
        sources = [.. sources.Select((s, i) => s with { Needs = BuildNeed(state.Farm.Sources[i], items) })];
        var built = classes.Select(c => new WaterClass(c.Sources, (int)Math.Ceiling((c.Base * 100) - 1e-6))).ToImmutableArray();
        var joint = BuildJointCaps(sources);
        return new Instance
        {
            State = state,
            Clock = clock,
            Work = work,
            Fields = items,
            Sources = sources,
            Classes = built,
            Limits = WaterLimits.Of(built, sources, joint),
            JointCaps = joint,
            Groups = [.. state.Tractors.Select(t => (t.Name, t.Count))],
            Drivers = state.Crew.Drivers,
            // Fields that fill already are looked after somehow, even where that stretches the crew.
            Fillings = state.Crew.Irrigators is { } people ? Math.Max(people * state.Crew.FieldsPerIrrigator, items.Count(f => f.Need == WaterNeed.Running)) : null,
            Planes = [.. aeroplanes.Select((a, i) => BuildPlane(a, windows[i], strips))],
            Strips = strips,
            Batches = [.. state.Batches.Select(BuildBatch)],
            Trailers = state.SoakPlace?.Trailers,
            Soak = soak,
            IdleCost = (double)state.Prices.IdleWater.Amount * 1000 / 100 * 1.983471 / SeasonClock.PerDay,
            Assumptions = Assumed(),
            Usable = [.. Enumerable.Range(0, clock.Days).Select(d => SeasonClock.Steps(DrainedSeed.Usable(state, clock.Date(d))))],
        };
    }

    private ImmutableArray<string> Assumed()
    {
        if (withoutSource.Count > 0) assumptions.Add($"No water source was named for {string.Join(", ", withoutSource)}: four days to fill are taken.");
        if (withoutTractor.Count > 0) assumptions.Add($"No tractor was described for: {string.Join(", ", withoutTractor.Select(w => w.ToString().ToLowerInvariant()))}. 9 acres an hour are taken.");
        return [.. assumptions];
    }

    private PlaneItem BuildPlane(Aeroplane aeroplane, ImmutableArray<FlyingWindow> open, ImmutableArray<(string Name, int Pad)> strips)
    {
        var usable = open
            .Select(w => (From: Math.Max(0, clock.Ceiling(w.From)), Until: Math.Min(clock.Horizon, clock.Floor(w.Until))))
            .Where(w => w.From < w.Until);
        var strip = Math.Max(0, strips.IndexOf(strips.FirstOrDefault(s => s.Name == aeroplane.Strip)));
        return new PlaneItem(aeroplane, [.. usable], strip);
    }

    private SoakItem BuildSoak()
    {
        var place = state.SoakRules;
        if (state.SoakPlace is null) assumptions.Add("No soak place was described: 24 h soak, 24 h drain, calls until 06:30 and no limit on trailers are taken.");
        var today = FarmTime.At(state, clock.Date(0), place.CallsUntil);
        var firstDay = state.Now <= today && clock.At(0, place.SoakHour) >= 0 ? 0 : 1;
        return new SoakItem(
            firstDay,
            (int)Math.Round((place.SoakHour - TimeOnly.MinValue).TotalMinutes / SeasonClock.Minutes),
            SeasonClock.Steps(place.SoakLeast + place.Drain),
            SeasonClock.Steps(place.SoakMost + place.Drain),
            SeasonClock.Steps(place.TrailerReturn),
            SeasonClock.Steps(SoakPlace.AtStripBefore));
    }

    private BatchItem BuildBatch(SoakBatch batch)
    {
        var place = state.SoakRules;
        var due = batch.InSoak > state.Now;
        var usable = DrainedSeed.Usable(state, FarmTime.Day(state, batch.Drained ?? state.Now));
        var latestDrain = batch.Drained ?? batch.InSoak + (due ? place.SoakMost : place.SoakLost);
        var earliestDrain = batch.Drained ?? (batch.InSoak + place.SoakLeast > state.Now ? batch.InSoak + place.SoakLeast : state.Now);
        if (batch.Drained is null && earliestDrain > latestDrain) latestDrain = earliestDrain;
        var goodUntil = clock.Floor(latestDrain + place.Drain + usable);
        var readyFrom = Math.Max(0, clock.Ceiling(earliestDrain + place.Drain));
        return new BatchItem
        {
            Code = batch.Code,
            Variety = batch.Variety,
            DryPounds = batch.Dry.Pounds,
            Trailers = SeedClock.Trailers(batch.Dry, state.WetFactor, place.HaulLimit),
            ReadyFrom = readyFrom,
            GoodUntil = goodUntil,
            SoakDay = clock.DayOf(clock.Floor(batch.InSoak)),
            CanBeCalledOff = due,
            CostPerPound = (double)state.Prices.SoakedSeed.Amount,
        };
    }

    private SourceItem BuildSource(WaterSource source)
    {
        var periods = ImmutableArray<OrderPeriod>.Empty;
        // What comes in turns is not ordered: the district's calendar brings it.
        if (source.Turns is { } turns) assumptions.Add(FormattableString.Invariant($"{source.Code} is served in turns, {turns.On.TotalHours:0.#} h out of every {turns.Every.TotalHours:0.#} h: their mean is counted on throughout, so a field on it may be full up to {(turns.Every - turns.On).TotalHours:0.#} h later than planned. Its own page follows the turns."));
        if (WaterOrders.IsOrdered(source) && source.Turns is null && !source.Down)
        {
            var running = Math.Min(Centi(source.Cap), Centi(source.Running ?? FlowRate.Zero));
            var changes = WaterOrders.Changes(state, source).Select(clock.Ceiling).Where(c => c < clock.Horizon).ToImmutableArray();
            if (changes.IsEmpty && source.ChangeHours.IsEmpty)
            {
                // Any hour will do after the notice: one order a day is planned, which is what people ask for.
                var first = SeasonClock.Steps(source.Notice);
                changes = [.. Enumerable.Range(0, clock.Days).Select(d => first + (d * SeasonClock.PerDay)).Where(c => c < clock.Horizon)];
            }

            ImmutableArray<int> edges = [0, .. changes.Where(c => c > 0), clock.Horizon];
            var fixedFirst = changes.IsEmpty || changes[0] > 0;
            periods = [.. edges.Zip(edges.Skip(1), (a, b) => new OrderPeriod(a, b, a == 0 && fixedFirst ? running : null))];
        }

        var stretches = SupplyStretch.Of(clock, source, periods);
        return new SourceItem
        {
            Code = source.Code,
            Cap = stretches.Select(s => s.Most).DefaultIfEmpty(0).Max(),
            Stretches = stretches,
            Periods = periods,
            Step = Math.Max(1, Centi(WaterOrders.Step(source))),
        };
    }

    private TailwaterItem? BuildNeed(WaterSource source, ImmutableArray<FieldItem> items)
    {
        if (source.Needs is not { } need) return null;
        var already = need.Fields
            .Where(code => state.Fields.FirstOrDefault(f => f.Code == code)?.Stage is FieldStage.Sown or FieldStage.Full)
            .Sum(code => state.Farm.Field(code).Net.Acres);
        var bringing = items.Where(f => f.Need != WaterNeed.None && need.Fields.Contains(f.Code, StringComparer.Ordinal)).Select(f => f.Index);
        return new TailwaterItem(Math.Max(0, need.Full.Acres - already), [.. bringing]);
    }

    private ImmutableArray<JointCap> BuildJointCaps(ImmutableArray<SourceItem> sources)
    {
        var joint = ImmutableArray.CreateBuilder<JointCap>();
        foreach (var shared in state.Farm.SharedCaps)
        {
            var members = sources.Select((s, i) => (s, i)).Where(x => shared.Sources.Contains(x.s.Code, StringComparer.Ordinal)).Select(x => x.i);
            joint.Add(new JointCap([.. members], Centi(shared.Cap)));
        }

        return joint.ToImmutable();
    }

    /// <summary>Index of the water class of a field; −1 where no source is known.</summary>
    private int ClassOf(string code, bool holds)
    {
        var field = state.Farm.Field(code);
        ImmutableArray<int> sources = [.. field.Sources.Select(s => state.Farm.Sources.IndexOf(state.Farm.Source(s)!)).Where(i => i >= 0)];
        if (sources.IsEmpty) return -1;
        var index = classes.FindIndex(c => c.Sources.SequenceEqual(sources));
        if (index < 0)
        {
            classes.Add((sources, 0));
            index = classes.Count - 1;
        }

        if (holds) classes[index] = classes[index] with { Base = classes[index].Base + FieldWater.Of(state, code).HoldingNow.CubicFeetPerSecond };
        return index;
    }

    private static int Centi(FlowRate flow) => (int)Math.Floor((flow.CubicFeetPerSecond * 100) + 1e-6);
}
