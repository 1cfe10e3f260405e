using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Board;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season.Boards;

/// <summary>Says what a pinned step breaks, how far a step was moved, and what a new plan moves, in the reader's words.</summary>
/// <param name="tell">The reader's language and units.</param>
/// <param name="state">The farm as it stands.</param>
public sealed class PinSpeech(Telling tell, SeasonState state)
{
    private PinScreenWords Words => tell.Words.PinScreen;

    /// <summary>One thing that breaks, with by how much.</summary>
    public string Of(PinBreak broken) => broken.Kind switch
    {
        PinBreakKind.Past => Fill(Words.BreakPast, ("span", By(broken))),
        PinBreakKind.NoSlot => Words.BreakSlotNone,
        PinBreakKind.Slot => Fill(Words.BreakSlot, ("span", By(broken)), ("hours", tell.Clock(broken.At!.Value) + "–" + tell.Clock(broken.Until!.Value))),
        PinBreakKind.Dark => Fill(Words.BreakLight, ("from", tell.Clock(broken.At!.Value)), ("until", tell.Clock(broken.Until!.Value)), ("span", By(broken))),
        PinBreakKind.Wind => Fill(Words.BreakWind, ("wind", tell.SpeedNumber(broken.Wind!.Sustained) + "–" + tell.Quick(broken.Wind.Gust)), ("limit", Limit())),
        PinBreakKind.Plane => Fill(Words.BreakPlane, ("fields", Others(broken)), ("span", By(broken))),
        PinBreakKind.Water => Fill(Words.BreakWater, ("when", When(broken)), ("span", By(broken))),
        PinBreakKind.SeedYoung => Fill(broken.Others.IsEmpty ? Words.BreakSeedNone : Words.BreakSeedYoung, ("when", When(broken)), ("span", By(broken))),
        PinBreakKind.SeedOld => Fill(Words.BreakSeedOld, ("when", When(broken)), ("span", By(broken))),
        PinBreakKind.Ground => Fill(Words.BreakGround, ("when", When(broken)), ("span", By(broken))),
        PinBreakKind.Flow => Fill(Words.BreakFlow, ("source", Others(broken)), ("flow", tell.Flow(broken.Flow!.Value)), ("when", When(broken))),
        PinBreakKind.Notice => Fill(Words.BreakNotice, ("source", Others(broken)), ("notice", Span(state.Farm.Source(broken.Others[0])!.Notice)), ("span", By(broken))),
        PinBreakKind.FullLate => Fill(Words.BreakSown, ("when", When(broken)), ("span", By(broken))),
        PinBreakKind.HeadAge => Fill(Words.BreakHead, ("days", Say.Number(broken.By!.Value.TotalDays, 1)), ("free", Say.Number(state.Prices.HeadAgeFree.TotalDays))),
        PinBreakKind.Told => Fill(Words.BreakTold, ("who", Others(broken)), ("when", When(broken))),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>A step by its name and its field.</summary>
    public string Step(PlanTaskKind task, Field field) => StageNames.Of(task, tell.Words.Story) + " " + Telling.Name(field);

    /// <summary>How far a step was shifted from where the plan has it.</summary>
    public string Shifted(TimeSpan by) => by == TimeSpan.Zero ? Words.MoveSame : Fill(by > TimeSpan.Zero ? Words.MoveBy : Words.MoveByEarlier, ("span", Span(by.Duration())));

    /// <summary>A step that a plan puts elsewhere than somebody was told.</summary>
    public string Of(ToldMoved moved)
    {
        var (task, field) = (StageNames.Of(moved.Told.Step.Task, tell.Words.Story), Name(moved.Told.Step.Field));
        var told = tell.NearMoment(moved.Told.Step.Start);
        return moved.Start is { } now
            ? Fill(Words.MoveLine, ("task", task), ("field", field), ("who", moved.Told.Person), ("told", told), ("now", tell.NearMoment(now)))
            : Fill(Words.MoveGone, ("task", task), ("field", field), ("who", moved.Told.Person), ("told", told));
    }

    /// <summary>A span as people say it: minutes, hours and minutes, or days.</summary>
    public string Span(TimeSpan span) => span switch
    {
        { TotalMinutes: < 60 } => Fill(tell.Words.Desk.AgeMinutes, ("n", Say.Number(span.TotalMinutes))),
        { TotalHours: < 48, Minutes: 0 } => Say.Number(span.TotalHours) + " " + tell.Words.Common.Hours,
        { TotalHours: < 48 } => Fill(tell.Words.Desk.AgeHours, ("h", Say.Number(Math.Floor(span.TotalHours))), ("m", Say.Number(span.Minutes))),
        _ => Fill(tell.Words.Desk.AgeDays, ("n", Say.Number(span.TotalDays, 1))),
    };

    private string Name(string code) => state.Farm.Fields.FirstOrDefault(f => string.Equals(f.Code, code, StringComparison.OrdinalIgnoreCase)) is { } field ? Telling.Name(field) : code;

    private string Limit() => state.Aeroplanes.IsEmpty ? tell.Words.Common.NotTold : tell.SpeedNumber(state.Aeroplanes.Min(a => a.WindLimit)) + "–" + tell.Quick(state.Aeroplanes.Min(a => a.GustLimit));

    private string By(PinBreak broken) => Span(broken.By!.Value);

    private string When(PinBreak broken) => tell.NearMoment(broken.At!.Value);

    private static string Others(PinBreak broken) => string.Join(", ", broken.Others);

    private static string Fill(string sentence, params ReadOnlySpan<(string Name, string Text)> facts) => Template.Fill(sentence, facts);
}
