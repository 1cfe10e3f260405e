using System.Globalization;
using Watersown.Water;
using Watersown.Water.Filling;
using Watersown.Water.Flood;

namespace Watersown.Schedule.Finish;

/// <summary>What was put to a run.</summary>
internal sealed record FinishCase(ImmutableArray<FinishGround> Grounds, FlowRate Others, ImmutableArray<FlowStep> Flow, FillingWay Way);

/// <summary>The lines behind a finish.</summary>
internal static class FinishWorking
{
    private const int changesShown = 6;

    /// <summary>Lost from all of the ground, by its land; none where there is no ground.</summary>
    public static DepthRate? MeanLoss(ImmutableArray<FinishGround> grounds) => grounds.IsEmpty
        ? null
        : DepthRate.FromMetersPerSecond(grounds.Sum(g => g.Ground.Job.Loss.MetersPerSecond * g.Ground.Ends[^1].SquareMeters) / grounds.Sum(g => g.Ground.Ends[^1].SquareMeters));

    public static FieldFinish Field(SeasonState state, FinishGround place, FinishCase job)
    {
        var (season, ground) = (state.Season(place.Field.Code), place.Ground);
        var (start, full) = (ground.Job, ground.FullAt);
        DateTimeOffset? Moment(TimeSpan? at) => at is { } span ? state.Now + span : null;
        return new FieldFinish(place.Field)
        {
            Checks = [.. place.Numbers.Select((number, i) => new CheckFinish(number, i == 0 ? ground.Ends[0] : ground.Ends[i] - ground.Ends[i - 1]) { FullNow = i < ground.WetChecks, FirstWet = Moment(ground.FirstWet(i)), Full = Moment(ground.Full(i)) })],
            ToCome = start.Dry * start.Fill,
            Given = [.. ground.Given.Select(g => new FlowStep(g.From, g.Flow))],
            Full = Moment(full),
            Short = full is null && ground.HoldingFull - Last(ground) is { } missing && missing >= FlowRate.Zero ? missing : null,
            HeadWet = season.FirstWater ?? Moment(ground.FirstWet(0)),
            Working = Show(season, place, job),
        };
    }

    private static Working Show(FieldSeason season, FinishGround place, FinishCase job)
    {
        var ground = place.Ground;
        var (start, full) = (ground.Job, ground.FullAt);
        var first = ground.Given.Count > 0 ? ground.Given[0].Flow : FlowRate.Zero;
        var working = Working.Empty
            .Given("A", "land still to be covered", start.Dry.Acres, "ac", "checks not wet", season.AsOf)
            .Given("A0", "its land already wet", start.Wet.Acres, "ac", "checks wet", season.AsOf)
            .Given("V", "water to wet and cover it", start.Fill.Feet, "ft", "soil")
            .Given("m", "loss from wet land", start.Loss.FeetPerDay, "ft/day", "evaporation + seepage")
            .Step("W", "water still to come, losses left out", (start.Dry * start.Fill).AcreFeet, "ac-ft", "A V", Sources.Arithmetic)
            .Step("S", "let into it at first", first.AcreFeetPerDay, "ac-ft/day", "what is given less what all other wet land takes", Sources.WaterBalance)
            .Step("n0", "of that left to cover ground, at first", (first - Ponding.HoldingFlow(start.Wet, start.Loss)).AcreFeetPerDay, "ac-ft/day", "S − m A0", Sources.WaterBalance)
            .Step("n1", "and at the end", (first - ground.HoldingFull).AcreFeetPerDay, "ac-ft/day", "S − m (A0 + A)", Sources.WaterBalance);
        for (var i = ground.WetChecks; i < ground.Ends.Length; i++)
            working = working.Step("t" + place.Numbers[i].ToString(CultureInfo.InvariantCulture), "check full after", Datum.Of(ground.Full(i)?.TotalDays), "days", ground.Full(i) is null ? "never at this flow" : "as t, to the end of this check", Sources.WaterBalance);
        return working.Step("t", "all of it full after", Datum.Of(full?.TotalDays), "days", Formula(ground, job), Sources.WaterBalance);
    }

    private static FlowRate Last(FillGround ground) => ground.Given.Count > 0 ? ground.Given[^1].Flow : FlowRate.Zero;

    private static string Formula(FillGround ground, FinishCase job) => (ground.FullAt, ground.Given.Count, job.Flow.Length) switch
    {
        (null, _, _) => "never: S is not above m (A0 + A)",
        (_, <= 1, _) => "(V / m) ln((S − m A0) / (S − m (A0 + A)))",
        _ => "the same from each change of S to the next, added up",
    };

    public static Working Source(SeasonState state, SourceFinish finish, FinishCase job) => Later(state, job.Flow, Working.Empty
            .Given("Q", "given at first", Datum.Of(finish.Gives?.CubicFeetPerSecond), "cfs", "order, reading or typed, source " + string.Join(" + ", finish.Sources)))
        .Step("H", "to hold what is wet now", finish.Holds.CubicFeetPerSecond, "cfs", "Σ wet land × loss", Sources.WaterBalance)
        .Step("H1", "to hold it all once full", finish.HoldsFull.CubicFeetPerSecond, "cfs", "Σ land × loss", Sources.WaterBalance)
        .Step("d", "left then, or short where below zero", (job.Flow.MaxBy(s => s.From)!.Flow - finish.HoldsFull).CubicFeetPerSecond, "cfs", job.Flow.Length > 1 ? "the last Q, in turns their mean, − H1" : "Q − H1", Sources.Arithmetic);

    /// <summary>What is given from each later change on; of many changes the first few, and the one that lasts.</summary>
    public static Working Later(SeasonState state, ImmutableArray<FlowStep> flow, Working working)
    {
        var later = flow.OrderBy(s => s.From).Skip(1).ToImmutableArray();
        for (var i = 0; i < later.Length; i++)
        {
            if (i >= changesShown && i + 1 < later.Length) continue;
            working = working.Given("Q" + (i + 1).ToString(CultureInfo.InvariantCulture), "given from " + Wording.When.Moment(state.Now + later[i].From), later[i].Flow.CubicFeetPerSecond, "cfs", "turns, curtailment or order told ahead");
        }

        return working;
    }
}
