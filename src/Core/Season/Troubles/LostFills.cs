using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Water;

namespace Watersown.Season.Troubles;

/// <summary>What becomes of a fill, its flight and its seed when its water stops.</summary>
internal static class LostFills
{
    public static FillLost Of(SeasonBook book, SeasonPlan? plan, Field field, WaterSource source)
    {
        var state = book.State;
        var season = state.Season(field.Code);
        var fill = plan?.Task(field.Code, PlanTaskKind.Fill);
        var sow = plan?.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && t.Field == field.Code && !t.Fixed).OrderBy(t => t.Start).FirstOrDefault()?.Start;
        var job = plan is null ? null : SeedSheets.All(plan with { State = state }).FirstOrDefault(j => j.Fields.Contains(field.Code, StringComparer.Ordinal));
        var most = SourceSupply.MeanAt(source with { Down = false }, state.Now);
        var supply = fill?.Flow ?? source.Running ?? most;
        if (supply > most) supply = most;
        var left = Ponding.FillTime(FieldWater.Of(state, field.Code).Job, supply);
        var lost = new FillLost(field, season)
        {
            HeadAge = season.FirstWater is { } wet ? state.Now - wet : null,
            FullAt = fill?.End,
            Sow = sow,
            HeadAgeAtSow = season.FirstWater is { } first ? sow - first : null,
            Batch = job?.Batch,
            CancelBy = job is { Soaking: false } ? job.CallBy ?? job.InSoak : null,
            Soaking = job?.Soaking == true,
            Instead = Instead(book, plan, season),
            OtherSources = StoppedSources.Others(state, field, source),
        };
        return sow is not { } flight ? lost : lost with { BackBy = left is { } time && flight - time > state.Now ? flight - time : null, Working = Show(state, field, supply, left, flight) };
    }

    // Full, of its variety, and no batch that can still be sown stands for them already.
    private static ImmutableArray<string> Instead(SeasonBook book, SeasonPlan? plan, FieldSeason season) =>
    [
        .. book.State.Fields.Where(f => f.Code != season.Code && f.Stage == FieldStage.Full && f.Variety is not null && f.Variety == season.Variety)
            .Where(f => plan?.Task(f.Code, PlanTaskKind.Sow) is not { } sow || sow.Start > (plan.Task(season.Code, PlanTaskKind.Sow)?.Start ?? DateTimeOffset.MaxValue))
            .OrderBy(f => f.FirstWater ?? DateTimeOffset.MaxValue).Select(f => f.Code),
    ];

    private static Working Show(SeasonState state, Field field, FlowRate supply, TimeSpan? left, DateTimeOffset flight)
    {
        var job = FieldWater.Of(state, field.Code).Job;
        return Working.Empty
            .Given("A", "land still to be covered", job.Dry.Acres, "ac", "checks not wet")
            .Given("A0", "its land already wet", job.Wet.Acres, "ac", "checks wet")
            .Given("V", "water to wet and cover it", job.Fill.Feet, "ft", "soil")
            .Given("m", "loss from wet land", job.Loss.FeetPerDay, "ft/day", "evaporation + seepage")
            .Given("S", "water it had, or was to have", supply.CubicFeetPerSecond, "cfs", "plan, else order")
            .Step("t", "still to run", Datum.Of(left?.TotalHours), "h", left is null ? "never: S is not above m (A0 + A)" : "(V / m) ln((S − m A0) / (S − m (A0 + A)))", Sources.WaterBalance)
            .Step("b", "running again by then still makes the flight", left is { } time ? Datum.Moment(flight - time) : Datum.None, string.Empty, "flight − t; what the wet land loses meanwhile is left out", Sources.Arithmetic);
    }
}
