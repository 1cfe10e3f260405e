using Watersown.Documents.Json;
using Watersown.Schedule;

namespace Watersown.Documents.Farms;

public static partial class FarmOutline
{
    private static Outline.Thing Tractor => new("tractors",
    [
        Need("name", Text(), "the farm's name for them"),
        Need("work", new Outline.Several(new Outline.Word(Words.Work.All), 20), "what they can do, one at a time"),
        Need(OutlineKey.Of(ScheduleLimits.TractorCount, "how many")),
        Need(OutlineKey.Of(ScheduleLimits.TractorRate, "land worked by one of them in a working hour")),
    ]);

    private static Outline.Thing Crew => new("crew",
    [
        OutlineKey.Of(ScheduleLimits.Drivers, "tractor drivers; no limit where not given"),
        OutlineKey.Of(ScheduleLimits.Irrigators, "irrigators; no limit where not given"),
        OutlineKey.Of(ScheduleLimits.FieldsPerIrrigator, "how many filling fields one irrigator can look after"),
        new("work_from", new Outline.Hour(), "the working day starts"),
        new("work_until", new Outline.Hour(), "the working day ends"),
    ]);

    private static Outline.Thing Prices => new("prices",
    [
        new("delay", new Outline.Word(Words.Delays.All), "how a day's delay is priced"),
        OutlineKey.Of(ScheduleLimits.OwnDelay, "the farm's own price of a day's delay, for delay 'own'"),
        OutlineKey.Of(ScheduleLimits.Grain, "price of grain"),
        OutlineKey.Of(ScheduleLimits.HeadAge, "cost of a head check wet too long"),
        OutlineKey.Of(ScheduleLimits.HeadAgeFree, "days the head check may be wet before it counts"),
        OutlineKey.Of(ScheduleLimits.IdleWater, "ordered water that nothing takes up"),
        OutlineKey.Of(ScheduleLimits.Seed, "dry seed, bought"),
        OutlineKey.Of(ScheduleLimits.SoakAndHaul, "soaking and hauling"),
        OutlineKey.Of(ScheduleLimits.FlyingHour, "flying"),
        OutlineKey.Of(ScheduleLimits.FlyingAcre, "flying an acre, where it is billed so; in the strip sum only"),
        OutlineKey.Of(ScheduleLimits.FlyingWetPound, "flying a pound as loaded, where it is billed so; in the strip sum only"),
        OutlineKey.Of(ScheduleLimits.Unsown, "an acre not sown within the plan's days"),
    ]);

    private static Outline.Thing Pin => new("pin",
    [
        Need("field", Text(), "field code"),
        Need("task", new Outline.Word(Words.Tasks.All), "the step of the plan"),
        Need("start", new Outline.Moment(), "when it is to start"),
        new("told", Text(), "who was told"),
    ]);

    private static Outline.Thing Person => new("person",
    [
        Need("name", Text(), "the person's name"),
        Need("role", Text(), "what the person does"),
        new("phone", Text(), "phone number"),
        new("speaks", new Outline.Word(Words.Languages.All), "the language the person's sheets are in"),
    ]);
}
