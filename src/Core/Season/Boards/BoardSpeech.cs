using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Board;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season.Boards;

/// <summary>Says the board in words: each bar, what holds each field, each lane. What is drawn is said, so that nobody needs the drawing.</summary>
/// <param name="tell">The reader's language and units.</param>
public sealed class BoardSpeech(Telling tell)
{
    private ScheduleScreenWords Words => tell.Words.ScheduleScreen;

    public string Of(BarState state) => state switch
    {
        BarState.TooWet => Words.BarTooWet,
        BarState.DryGround => Words.BarDry,
        BarState.Working => Words.BarWorking,
        BarState.Filling => Words.BarFilling,
        BarState.Full => Words.BarFull,
        BarState.Sowing => Words.BarSowing,
        BarState.Sown => Words.BarSown,
        BarState.InSoak => Words.BarInSoak,
        BarState.Drained => Words.BarDrained,
        BarState.OnTheRoad => Words.BarRoad,
        BarState.NoWord => Words.BarNoWord,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public string Of(BoardHold hold) => hold switch
    {
        BoardHold.Pinned => Words.HoldPinned,
        BoardHold.Ground => Words.HoldGround,
        BoardHold.Water => Words.HoldWater,
        BoardHold.Seed => Words.HoldSeed,
        BoardHold.Wind => Words.HoldWind,
        BoardHold.Plane => Words.HoldPlane,
        BoardHold.Trailers => Words.HoldTrailers,
        BoardHold.Others => Words.HoldOthers,
        BoardHold.TooWet => Words.HoldTooWet,
        BoardHold.NotInPlan => Words.HoldNotInPlan,
        BoardHold.Sown => Words.HoldSown,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>What holds a field, in a few words after the one word.</summary>
    public string Of(BoardReason reason, BoardRow row)
    {
        var when = reason.At is { } at ? tell.NearMoment(at) : null;
        var others = string.Join(", ", reason.Others);
        return reason.Hold switch
        {
            BoardHold.Pinned => row.Pins.FirstOrDefault(p => p.Start == reason.At)?.Told is { } who ? Fill(Words.ReasonPinnedTold, ("when", when!), ("who", who)) : Fill(Words.ReasonPinned, ("when", when!)),
            BoardHold.Ground => Fill(Words.ReasonGround, ("when", when!)),
            BoardHold.Water => reason.Others.IsEmpty ? Fill(Words.ReasonFull, ("when", when!)) : Fill(Words.ReasonWater, ("source", others), ("when", when!)),
            BoardHold.Seed => reason.Others.IsEmpty ? Fill(Words.ReasonSeed, ("when", when!)) : Fill(Words.ReasonSeedOf, ("batch", others), ("when", when!)),
            BoardHold.Wind => Fill(Words.ReasonWind, ("when", when!)),
            BoardHold.Plane => Fill(Words.ReasonPlane, ("fields", others), ("when", when!)),
            BoardHold.Trailers => Fill(Words.ReasonTrailers, ("when", when!)),
            BoardHold.Others => Words.ReasonOthers,
            BoardHold.TooWet => when is null ? Words.ReasonTooWetUntold : Fill(Words.ReasonTooWet, ("when", when)),
            BoardHold.NotInPlan => Words.ReasonNotInPlan,
            BoardHold.Sown => when ?? Words.ReasonSownUntold,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>A field's row as one sentence, with its conclusion.</summary>
    public string Of(BoardRow row, BoardSpan span) => Fill(Words.RowSaid,
        ("field", Telling.Name(row.Field)), ("land", tell.Land(row.Field.Net)), ("bars", string.Join("; ", row.Bars.Where(b => b.Until > span.From).Select(b => Of(b)))),
        ("hold", Of(row.Reason.Hold)), ("reason", Of(row.Reason, row)));

    /// <summary>The sowing or fill that a bar shows, its field, from when until when, and how firm it is.</summary>
    public string Step(PlanTask task, Field field, ToldTo? told)
    {
        var step = Fill(Words.StepSaid, ("task", StageNames.Of(task.Kind, tell.Words.Story)), ("field", Telling.Name(field)), ("from", tell.NearMoment(task.Start)), ("until", tell.NearMoment(task.End)));
        if (task.Fixed) step += ", " + Words.StepFixed;
        if (task.Pinned) step += ", " + Words.StepPinned;
        if (told is { } to) step += ", " + Fill(Words.StepTold, ("who", to.Who), ("when", tell.NearMoment(to.Start)));
        return step;
    }

    /// <summary>The water of a source: its next change to be ordered, or that there is none.</summary>
    public (string What, string When) Order(FlowLane lane)
    {
        if (lane.Changes.IsEmpty) return (Words.ChangeNone, string.Empty);
        var next = lane.Changes[0];
        return (Fill(next.To > next.From ? Words.ChangeUp : Words.ChangeDown, ("from", tell.Flow(next.From)), ("to", tell.Flow(next.To))),
            Fill(Words.ChangeLine, ("when", tell.NearMoment(next.At)), ("by", tell.NearMoment(next.AskBy))));
    }

    /// <summary>Where a source gives more than is taken, or less than is wanted, worst first; tenths of a cfs are not worth a word.</summary>
    public ImmutableArray<string> Balance(FlowLane lane)
    {
        var least = FlowRate.FromCubicFeetPerSecond(0.1);
        var over = lane.Changes.IsEmpty && !WaterOrders.IsOrdered(lane.Source) ? null : lane.Steps.Where(s => s.Over > least).MaxBy(s => s.Over);
        var lacking = lane.Steps.Where(s => s.Short > least).MaxBy(s => s.Short);
        return
        [
            .. lacking is null ? [] : new[] { Fill(Words.FlowShort, ("flow", tell.Flow(lacking.Short)), ("from", tell.NearMoment(lacking.From)), ("until", tell.NearMoment(lacking.Until))) },
            .. over is null ? [] : new[] { Fill(Words.FlowOver, ("flow", tell.Flow(over.Over)), ("from", tell.NearMoment(over.From)), ("until", tell.NearMoment(over.Until))) },
        ];
    }

    /// <summary>How much of a shared thing is used.</summary>
    public string Of(UseLane lane)
    {
        if (lane.Kind == LaneKind.Aeroplane) return Slots(lane);
        if (lane.Bars.IsEmpty) return Words.LaneNothing;
        var most = lane.Counts().Select(c => c.Taken).DefaultIfEmpty(0).Max();
        return lane.Most is { } all ? Fill(Words.LaneMostUsed, ("n", Telling.Count(most)), ("most", Telling.Count(all))) : Fill(Words.LaneUsed, ("n", Telling.Count(most)));
    }

    private string Slots(UseLane lane)
    {
        if (lane.Slots.IsEmpty) return Words.LaneNothing;
        var used = lane.Bars.Aggregate(TimeSpan.Zero, (sum, b) => sum + (b.Until - b.From));
        var calm = lane.Slots.Where(s => !s.Blown).Aggregate(TimeSpan.Zero, (sum, s) => sum + (s.Until - s.From));
        return Fill(Words.SlotHours, ("used", Say.Number(used.TotalHours, 1)), ("slot", Say.Number(calm.TotalHours, 1)));
    }

    private string Of(BoardBar bar)
    {
        if (bar.State == BarState.Sowing) return Fill(Words.SowSaid, ("when", tell.NearMoment(bar.From)));
        return bar.GoesOn ? Fill(Words.BarSaidOn, ("state", Of(bar.State))) : Fill(Words.BarSaid, ("state", Of(bar.State)), ("until", tell.NearMoment(bar.Until)));
    }

    private static string Fill(string sentence, params ReadOnlySpan<(string Name, string Text)> facts) => Template.Fill(sentence, facts);
}
