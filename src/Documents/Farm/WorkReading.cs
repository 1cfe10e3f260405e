using Watersown.Documents.Json;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Documents.Farms;

/// <summary>Tractors, crew, prices, pins and people.</summary>
internal static class WorkReading
{
    public static TractorGroup Tractors(JsonFacts facts) => new(
        facts.Text("name") ?? string.Empty,
        FieldReading.Work(facts, "work"),
        facts.Whole("count") ?? 0,
        AreaRate.FromAcresPerHour(facts.Number(ScheduleLimits.TractorRate) ?? 0));

    public static Crew Crew(JsonFacts facts)
    {
        var usual = new Crew();
        return usual with
        {
            Drivers = facts.Whole("drivers"),
            Irrigators = facts.Whole("irrigators"),
            FieldsPerIrrigator = facts.Whole("fields_per_irrigator") ?? usual.FieldsPerIrrigator,
            WorkFrom = facts.Hour("work_from") ?? usual.WorkFrom,
            WorkUntil = facts.Hour("work_until") ?? usual.WorkUntil,
        };
    }

    public static PlanPrices Prices(JsonFacts facts)
    {
        var usual = new PlanPrices();
        return usual with
        {
            Delay = Words.Delays.Find(facts.Text("delay")) ?? usual.Delay,
            OwnDelay = Money(facts, ScheduleLimits.OwnDelay) ?? usual.OwnDelay,
            Grain = Money(facts, ScheduleLimits.Grain) ?? usual.Grain,
            HeadAge = Money(facts, ScheduleLimits.HeadAge) ?? usual.HeadAge,
            HeadAgeFree = facts.Days(ScheduleLimits.HeadAgeFree) ?? usual.HeadAgeFree,
            IdleWater = Money(facts, ScheduleLimits.IdleWater) ?? usual.IdleWater,
            Seed = Money(facts, ScheduleLimits.Seed) ?? usual.Seed,
            SoakAndHaul = Money(facts, ScheduleLimits.SoakAndHaul) ?? usual.SoakAndHaul,
            FlyingHour = Money(facts, ScheduleLimits.FlyingHour) ?? usual.FlyingHour,
            FlyingAcre = Money(facts, ScheduleLimits.FlyingAcre),
            FlyingWetPound = Money(facts, ScheduleLimits.FlyingWetPound),
            Unsown = Money(facts, ScheduleLimits.Unsown) ?? usual.Unsown,
        };
    }

    public static Pin Pin(JsonFacts facts, int index, PartReader reader) => new(
        facts.Text("field") ?? string.Empty,
        facts.Text("task") ?? string.Empty,
        reader.Moment(facts, "start", Place.Of("pins", index, string.Empty, "start")) ?? default)
    {
        Told = facts.Text("told"),
    };

    public static Person Person(JsonFacts facts) => new(facts.Text("name") ?? string.Empty, facts.Text("role") ?? string.Empty)
    {
        Phone = facts.Text("phone"),
        Speaks = Words.Languages.Find(facts.Text("speaks")) ?? Language.English,
    };

    private static Money? Money(JsonFacts facts, Limit limit) => facts.Number(limit) is { } dollars ? Quantities.Money.FromDollars(dollars) : null;
}
