using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;

namespace Watersown.Planner.Instances;

internal sealed partial class InstanceBuilder
{
    // Where neither a source nor an order is known, a field is taken to fill in four days (common practice, no source).
    private static readonly TimeSpan UsualFill = TimeSpan.FromDays(4);

    private FieldItem BuildField(FieldSeason season, int index)
    {
        var field = state.Farm.Field(season.Code);
        var dry = season.Rate * field.Net;
        var water = FieldWater.Of(state, season.Code);
        var need = season.Stage switch { FieldStage.Full => WaterNeed.None, FieldStage.Flooding => WaterNeed.Running, _ => WaterNeed.ToStart };
        var waterClass = ClassOf(season.Code, holds: false);
        var most = waterClass < 0 ? 0 : MostFlow(field, waterClass, HoldNow(water));
        var curve = need == WaterNeed.None || waterClass < 0 ? null : FillCurve.Of(water.Job, most, clock.Horizon);
        var flights = aeroplanes.Select(a => Flight(field, season, a)).ToImmutableArray();
        if (waterClass < 0 && need != WaterNeed.None) withoutSource.Add(season.Code);
        return new FieldItem
        {
            Index = index,
            Code = season.Code,
            Acres = field.Net.Acres,
            Works = BuildWorks(field, season),
            FitAxis = season.FitFrom is { } fit ? work.AtOrAfter(Math.Max(0, clock.Ceiling(fit))) : work.AtOrAfter(0),
            Need = need,
            FirstWater = FirstWater(season, need),
            Class = waterClass,
            Hold = (int)Math.Ceiling((water.Holding.CubicFeetPerSecond * 100) - 1e-6),
            HoldNow = HoldNow(water),
            Fill = curve,
            UsualFill = SeasonClock.Steps(UsualFill * (need == WaterNeed.Running ? Math.Max(0.05, water.Job.Dry / water.All) : 1)),
            LeastWater = curve is null ? 0 : (long)(curve.MostFlow - HoldNow(water)) * curve.LeastSteps,
            MostWater = curve is null ? 0 : (long)(curve.LeastFlow - HoldNow(water)) * curve.MostSteps,
            DryPounds = dry.Pounds,
            Trailers = SeedClock.Trailers(dry, state.WetFactor, state.SoakPlace?.HaulLimit),
            Variety = season.Variety,
            FlySteps = [.. flights.Select(f => SeasonClock.Steps(f.Time))],
            FerryCost = [.. flights.Select(f => (long)Math.Round(f.FerryHours * (double)state.Prices.FlyingHour.Amount * 1000))],
            Loads = [.. flights.Select(f => f.Loads)],
            DelayCost = [.. Enumerable.Range(0, clock.Days).Select(d => DelayOn(field, d))],
            HeadAgeCost = (double)state.Prices.HeadAge.Amount * field.Net.Acres * 1000,
            UnsownCost = (long)Math.Round((double)state.Prices.Unsown.Amount * field.Net.Acres * 1000),
            PinnedFill = Pinned(season.Code, "fill"),
            PinnedSow = Pinned(season.Code, "sow"),
            PinnedSoakDay = PinnedSoak(season),
            Impossible = Impossible(field, need, waterClass, curve, flights),
        };
    }

    private static int HoldNow(FieldWater water) => (int)Math.Floor((water.HoldingNow.CubicFeetPerSecond * 100) + 1e-6);

    private long DelayOn(Field field, int day) =>
        (long)Math.Round((double)(DelayCost.PerAcre(state.Prices, clock.Date(0), clock.Date(day)) * field.Net.Acres).Amount * 1000);

    private int? Pinned(string code, string task) =>
        state.Pins.FirstOrDefault(p => p.Field == code && p.Task == task) is { } pin ? clock.Ceiling(pin.Start) : null;

    /// <summary>The day of the soak that its seed is to come from; no batch of a day that is past means no such pin any more.</summary>
    private int? PinnedSoak(FieldSeason season)
    {
        if (Pinned(season.Code, "soak") is not { } soak) return null;
        var day = clock.DayOf(soak);
        return day >= 0 || state.Batches.Any(b => clock.DayOf(clock.Floor(b.InSoak)) == day && (season.Variety is null || season.Variety == b.Variety)) ? day : null;
    }

    private int FirstWater(FieldSeason season, WaterNeed need)
    {
        if (need == WaterNeed.ToStart) return 0;
        if (season.FirstWater is { } first) return Math.Min(0, clock.Floor(first));
        assumptions.Add($"{season.Code}: nobody has said when its head check first got water; three days ago is taken.");
        return -3 * SeasonClock.PerDay;
    }

    /// <summary>
    /// Most flow the field can ever be given: what its sources give, less what ground that is wet already takes from them and
    /// can take from nowhere else, and no more than its inlet passes.
    /// </summary>
    private int MostFlow(Field field, int waterClass, int holdNow)
    {
        var sources = classes[waterClass].Sources;
        var all = sources.Sum(s => caps[s]);
        var held = classes.Where(c => c.Sources.All(sources.Contains)).Sum(c => (int)Math.Floor(c.Base * 100));
        var free = Math.Max(0, all - held + holdNow);
        return field.InletLimit is { } limit ? Math.Min(free, Centi(limit)) : free;
    }

    private ImmutableArray<WorkItem> BuildWorks(Field field, FieldSeason season)
    {
        var items = ImmutableArray.CreateBuilder<WorkItem>();
        foreach (var step in GroundChain.Left(season))
        {
            var group = state.Tractors.IndexOf(state.Tractors.FirstOrDefault(t => t.Work.Contains(step))!);
            // A tractor nobody described still takes its time: 9 acres an hour (common practice, no source).
            var rate = group >= 0 ? state.Tractors[group].Rate.AcresPerHour : 9;
            if (group < 0) withoutTractor.Add(step);
            items.Add(new WorkItem(step, group, Math.Max(1, (int)Math.Ceiling((field.Net.Acres / rate * SeasonClock.PerHour) - 1e-6))));
        }

        return items.ToImmutable();
    }

    private (TimeSpan Time, double FerryHours, int Loads) Flight(Field field, FieldSeason season, Aeroplane aeroplane)
    {
        var loads = Loads.Equal(season.Rate * field.Net, state.WetFactor, aeroplane.WorkingLoad).Count;
        var job = FieldFlight.Job(state, field, loads, aeroplane);
        return (FlyingTime.Of(job, aeroplane), (FlyingTime.FerryPerLoad(job, aeroplane) * loads).TotalHours, loads);
    }

    private string? Impossible(Field field, WaterNeed need, int waterClass, FillCurve? curve, ImmutableArray<(TimeSpan Time, double FerryHours, int Loads)> flights)
    {
        if (need != WaterNeed.None && waterClass >= 0 && curve is null)
        {
            var holding = FieldWater.Of(state, field.Code).Holding.CubicFeetPerSecond;
            var gives = MostFlow(field, waterClass, HoldNow(FieldWater.Of(state, field.Code))) / 100.0;
            return FormattableString.Invariant($"its sources have at most {gives:0.##} cfs for it beside what they hold already, and holding it alone takes {holding:0.##} cfs, so it never fills");
        }

        var longest = windows.SelectMany(w => w).Select(w => w.Until - w.From).DefaultIfEmpty(TimeSpan.Zero).Max();
        var shortest = flights.Min(f => f.Time);
        return shortest > longest
            ? FormattableString.Invariant($"it takes {shortest.TotalHours:0.0} h to fly and the longest slot is {longest.TotalHours:0.0} h; sow it as two jobs")
            : null;
    }
}
