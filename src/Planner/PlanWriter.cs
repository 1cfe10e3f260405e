using Watersown.Flight;
using Watersown.Planner.Instances;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Planner;

/// <summary>Writes a whole-number plan out in the grower's terms: steps, orders, cost, and why each step stands where it does.</summary>
internal sealed partial class PlanWriter(Instance instance, Solution solution, long bound, TimeSpan solveTime)
{
    private readonly SeasonState state = instance.State;
    private readonly SoakPlace soakPlace = instance.State.SoakRules;

    public SeasonPlan Write()
    {
        var tasks = new List<PlanTask>();
        foreach (var field in instance.Fields) AddField(field, solution.Fields[field.Index], tasks);
        var cost = SolutionCost.Of(instance, solution);
        var used = solution.Fields.Where(f => f.Sown && f.Batch >= 0).Select(f => instance.Batches[f.Batch].Code).ToHashSet(StringComparer.Ordinal);
        return new SeasonPlan
        {
            Number = state.PlanNumber,
            MadeAt = state.Now,
            State = state,
            Tasks = [.. tasks.OrderBy(t => t.Start).ThenBy(t => t.Field, StringComparer.Ordinal).ThenBy(t => t.Kind)],
            Orders = [.. Orders()],
            Cost = new PlanCost(Dollars(cost.Delay), Dollars(cost.HeadAge), Dollars(cost.Idle), Dollars(cost.SeedLost), Dollars(cost.Ferry), Dollars(cost.Unsown)),
            Bound = Dollars(Math.Min(bound, cost.Total)),
            SolveTime = solveTime,
            LostBatches = [.. instance.Batches.Where(b => !b.CanBeCalledOff && !used.Contains(b.Code)).Select(b => b.Code)],
            Assumptions = instance.Assumptions,
        };
    }

    private static Money Dollars(long mills) => Money.FromDollars(mills / 1000m);

    private void AddField(FieldItem field, FieldSolution planned, List<PlanTask> tasks)
    {
        if (!planned.Flooded) return;
        AddGround(field, planned, tasks);
        if (field.Need != WaterNeed.None) AddWater(field, planned, tasks);
        if (!planned.Sown) return;
        AddSeed(field, planned, tasks);
        AddSowing(field, planned, tasks);
    }

    private void AddGround(FieldItem field, FieldSolution planned, List<PlanTask> tasks)
    {
        for (var i = 0; i < field.Works.Length; i++)
        {
            var item = field.Works[i];
            var start = planned.Works[i];
            var before = i == 0 ? field.FitAxis : planned.Works[i - 1] + field.Works[i - 1].Steps;
            var group = item.Group < 0 ? "tractor" : instance.Groups[item.Group].Name;
            tasks.Add(new PlanTask(field.Code, PlanTaskKind.Ground, instance.Clock.Moment(instance.Work.Start(start)), instance.Clock.Moment(instance.Work.End(start + item.Steps)), group)
            {
                Implement = item.Work,
                Reasons = [start > before ? item.Work is GroundWork.Aqua or GroundWork.Roll ? "just ahead of the water, with days in hand for weather" : $"waits for {group}: other fields first" : i == 0 ? "as soon as the ground is fit" : "as soon as the work before it is done"],
                Working = Working.Empty
                    .Given("A", "net acres", field.Acres, "ac", "field " + field.Code)
                    .Given("t", "working hours", item.Steps / (double)SeasonClock.PerHour, "h", group)
                    .Step("r", "land worked", field.Acres / (item.Steps / (double)SeasonClock.PerHour), "ac/h", "A / t", Sources.Arithmetic),
            });
        }
    }

    private void AddWater(FieldItem field, FieldSolution planned, List<PlanTask> tasks)
    {
        var start = instance.Clock.Moment(planned.FillStart);
        var full = FullAt(field, planned);
        var running = field.Need == WaterNeed.Running;
        var from = Shares(field, planned);
        AddOrder(field, planned, from, tasks);
        tasks.Add(new PlanTask(field.Code, PlanTaskKind.Fill, start, full, from.IsEmpty ? "water" : from[0].Source)
        {
            Flow = FlowRate.FromCubicFeetPerSecond(planned.Flow / 100.0),
            From = from,
            Fixed = running,
            Pinned = field.PinnedFill is not null,
            Reasons = FillReasons(field, planned),
            Working = FillWorking(field, planned),
        });
    }

    /// <summary>The plan's lines lie a little above the true curve; what people are told is the true time at the planned flow.</summary>
    private DateTimeOffset FullAt(FieldItem field, FieldSolution planned)
    {
        if (field.Fill is null) return instance.Clock.Moment(planned.FillEnd);
        var job = FieldWater.Of(state, field.Code).Job;
        var time = Ponding.FillTime(job, FlowRate.FromCubicFeetPerSecond(planned.Flow / 100.0)) ?? throw new System.Diagnostics.UnreachableException();
        var exact = Math.Max(0, planned.FillStart) + SeasonClock.Steps(time);
        return instance.Clock.Moment(Math.Min(exact, planned.FillEnd));
    }

    private void AddOrder(FieldItem field, FieldSolution planned, ImmutableArray<(string Source, FlowRate Flow)> from, List<PlanTask> tasks)
    {
        if (field.Need != WaterNeed.ToStart) return;
        foreach (var share in from)
        {
            var source = state.Farm.Source(share.Source)!;
            var index = state.Farm.Sources.IndexOf(source);
            if (instance.Sources[index].Periods.IsEmpty) continue;
            var period = instance.Sources[index].Periods.First(p => p.From <= planned.FillStart && planned.FillStart < p.Until);
            if (period.FixedFlow is not null) continue;
            var change = instance.Clock.Moment(period.From);
            tasks.Add(new PlanTask(field.Code, PlanTaskKind.OrderWater, change - source.Notice, change, source.Code)
            {
                Flow = share.Flow,
                Reasons = [FormattableString.Invariant($"{source.Code} wants {source.Notice.TotalHours:0} h notice and changes at {string.Join(", ", source.ChangeHours.Select(h => h.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture)))}")],
            });
        }
    }

    private void AddSeed(FieldItem field, FieldSolution planned, List<PlanTask> tasks)
    {
        var dry = DrySeed.FromPounds(field.DryPounds);
        var existing = planned.Batch >= 0 ? state.Batches.First(b => b.Code == instance.Batches[planned.Batch].Code) : null;
        var sow = instance.Clock.Moment(planned.Sow);
        var into = existing?.InSoak ?? instance.Clock.Moment(instance.Clock.DayStart(planned.SoakDay) + instance.Soak.Hour);
        var batch = existing?.Code ?? "new " + field.Code;
        PlanTask Step(PlanTaskKind kind, DateTimeOffset from, DateTimeOffset until, string resource) => new(field.Code, kind, from, until, resource)
        {
            Batch = batch,
            Dry = dry,
            Soaked = Soaking.Weigh(dry, state.WetFactor),
            Trailers = field.Trailers,
            Working = SeedWorking(field),
        };

        var drain = existing?.Drained ?? LatestDrain(into, sow, existing is not null && into <= state.Now);
        if (existing is null || into > state.Now)
        {
            var until = FarmTime.At(state, FarmTime.Day(state, into), soakPlace.CallsUntil);
            var noon = FarmTime.At(state, FarmTime.Day(state, into).AddDays(-1), new TimeOnly(12, 0));
            var call = new[] { noon > state.Now ? noon : state.Now, until }.Min();
            tasks.Add(Step(PlanTaskKind.CallSeed, call, until, soakPlace.Name) with { Reasons = [$"calls are taken until {When.Hour(until)} of the day of soak; the day before is kinder"] });
        }

        tasks.Add(Step(PlanTaskKind.Soak, into, drain, soakPlace.Name) with { Fixed = into <= state.Now, Reasons = [FormattableString.Invariant($"{(drain - into).TotalHours:0.#} h under water, drained {soakPlace.Drain.TotalHours:0} h before sowing")] });
        tasks.Add(Step(PlanTaskKind.Drain, drain, drain + soakPlace.Drain, soakPlace.Name) with { Fixed = drain <= state.Now && existing is not null, Reasons = ["drained as late as it may be: until then the seed can wait at little cost"] });
        var atStrip = sow - SoakPlace.AtStripBefore;
        tasks.Add(Step(PlanTaskKind.Haul, atStrip - soakPlace.Haul, atStrip, "trailer") with { Reasons = ["at the strip a quarter of an hour before its first load"] });
    }

    private DateTimeOffset LatestDrain(DateTimeOffset into, DateTimeOffset sow, bool soaking)
    {
        var wanted = sow - soakPlace.Drain;
        var most = into + (soaking ? soakPlace.SoakLost : soakPlace.SoakMost);
        var drain = wanted < most ? wanted : most;
        return drain < state.Now ? state.Now : drain;
    }

    private void AddSowing(FieldItem field, FieldSolution planned, List<PlanTask> tasks)
    {
        var plane = instance.Planes[planned.Plane].Aeroplane;
        var land = state.Farm.Field(field.Code);
        var job = FieldFlight.Job(state, land, field.Loads[planned.Plane], plane);
        var start = instance.Clock.Moment(planned.Sow);
        var dry = DrySeed.FromPounds(field.DryPounds);
        tasks.Add(new PlanTask(field.Code, PlanTaskKind.Sow, start, start + FlyingTime.Of(job, plane), plane.Name)
        {
            Batch = planned.Batch >= 0 ? instance.Batches[planned.Batch].Code : "new " + field.Code,
            Dry = dry,
            Soaked = Soaking.Weigh(dry, state.WetFactor),
            Trailers = field.Trailers,
            Loads = field.Loads[planned.Plane],
            Pinned = field.PinnedSow is not null,
            Reasons = SowReasons(field, planned),
            Working = FlyingTime.Working(job, plane),
        });
    }

    private IEnumerable<OrderedFlow> Orders()
    {
        for (var s = 0; s < instance.Sources.Length; s++)
        {
            var source = instance.Sources[s];
            for (var k = 0; k < source.Periods.Length;)
            {
                var last = k;
                while (last + 1 < source.Periods.Length && solution.Orders[s][last + 1] == solution.Orders[s][k]) last++;
                yield return new OrderedFlow(source.Code, instance.Clock.Moment(source.Periods[k].From), instance.Clock.Moment(source.Periods[last].Until), FlowRate.FromCubicFeetPerSecond(solution.Orders[s][k] / 100.0));
                k = last + 1;
            }
        }
    }
}
