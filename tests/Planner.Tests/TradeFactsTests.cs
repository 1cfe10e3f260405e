using Watersown.Flight;
using Watersown.Schedule;

namespace Watersown.Planner;

/// <summary>What practitioners say of their season, held against what the desk reckons (common practice, no source).</summary>
public sealed class TradeFactsTests
{
    // 150 acres at 165 lb with a hopper of about 1,650 lb: 15 loads on one weight basis; strip near by, under an hour to an hour in the air.
    [Theory]
    [InlineData(45, 130)]
    [InlineData(50, 120)]
    [InlineData(50, 130)]
    public void A_quarter_section_is_in_the_air_for_up_to_about_an_hour(double swathFeet, double mph)
    {
        var aeroplane = new Aeroplane("hired") { Swath = Length.FromFeet(swathFeet), Working = Speed.FromMilesPerHour(mph), Turn = TimeSpan.FromSeconds(30) };
        var loads = Loads.Equal(SeedRate.FromPoundsPerAcre(165) * Area.FromAcres(150), 1, SoakedSeed.FromPounds(1650)).Count;
        Assert.Equal(15, loads);
        var job = new FlyingJob(Area.FromAcres(150), loads, Length.FromFeet(2640), Length.FromMiles(0.5));
        var inTheAir = FlyingTime.Of(job, aeroplane) - (loads * (aeroplane.Reload + aeroplane.GroundAndAir));
        Assert.InRange(inTheAir.TotalMinutes, 30, 62);
        // Over the field alone, turns and ferry left out: about a quarter of an hour.
        Assert.InRange(Area.FromAcres(150) / Area.FromAcres((aeroplane.Working * aeroplane.Swath).AcresPerMinute), 11, 15);
    }

    [Fact]
    public void With_water_for_all_a_farm_is_sown_within_about_two_weeks()
    {
        var state = SomeSeason.Bare([.. Enumerable.Repeat(100.0, 12)]);
        var plan = SeasonPlanner.Plan(state, new PlanOptions { Budget = TimeSpan.FromSeconds(1) });
        var sown = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow).ToList();
        Assert.Equal(12, sown.Count);
        Assert.InRange((sown.Max(t => t.End) - state.Now).TotalDays, 4, 15);
    }

    [Fact]
    public void Seed_is_soaked_and_drained_about_two_days_before_it_is_flown()
    {
        var plan = SeasonPlanner.Plan(SomeSeason.Bare(118, 96, 103), new PlanOptions { Budget = TimeSpan.FromSeconds(0.5) });
        foreach (var sow in plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow))
            Assert.InRange((sow.Start - plan.Task(sow.Field, PlanTaskKind.Soak)!.Start).TotalHours, 48, 96);
    }

    [Fact]
    public void Names_acres_and_rates_alone_give_a_plan_that_says_what_it_took_as_usual()
    {
        var plan = SeasonPlanner.Plan(SomeSeason.Bare(118, 96), new PlanOptions { Budget = TimeSpan.FromSeconds(0.5) });
        Assert.Equal(2, plan.Tasks.Count(t => t.Kind == PlanTaskKind.Sow));
        Assert.Contains(plan.Assumptions, a => a.Contains("No aeroplane was described", StringComparison.Ordinal));
        Assert.Contains(plan.Assumptions, a => a.Contains("No water source was named", StringComparison.Ordinal));
        Assert.Empty(Checking.PlanChecker.Faults(plan));
    }
}
