using Watersown.Land;
using Watersown.Schedule;
using Watersown.Water;

namespace Watersown.Season.Troubles;

/// <summary>What somebody must do about a levee that is out.</summary>
public enum LeveeStep
{
    /// <summary>The tractor closes the gap, from the upper side.</summary>
    CloseGap,

    /// <summary>A tarp and stakes until it comes.</summary>
    Tarp,

    /// <summary>Boards of the boxes below lowered, so that the deep check passes it on to the next ones.</summary>
    PassBelow,

    /// <summary>Boards of the last box raised: the water stays in the field.</summary>
    KeepIn,

    /// <summary>Water fed to the check above, so that its seed is not left bare.</summary>
    FeedAbove,

    /// <summary>Depth read above and below.</summary>
    ReadSticks,

    /// <summary>Boards of the last box lowered to let the deep check down. Never where a hold is open.</summary>
    LetDown,

    /// <summary>Water is leaving a field under hold: the adviser or the county office is rung now.</summary>
    RingAdviser,
}

/// <summary>A levee that is out in a field.</summary>
/// <param name="Field">The field.</param>
/// <param name="Fault">What was found, when and by whom.</param>
public sealed record LeveeTrouble(Field Field, OpenFault Fault)
{
    /// <summary>Check above the gap; none where nobody said.</summary>
    public int? Above { get; init; }

    /// <summary>Check below it; none for the last levee, below which lies no check.</summary>
    public int? Below { get; init; }

    /// <summary>The gap is in the last levee: water leaves the field.</summary>
    public bool LeavesField { get; init; }

    /// <summary>A hold is open: no water may leave.</summary>
    public bool NoSpill { get; init; }

    public required BreachGap Gap { get; init; }

    public required bool WidthTold { get; init; }

    public required bool HeadTold { get; init; }

    /// <summary>Land of the check above.</summary>
    public required Area Land { get; init; }

    public required BreachTime Time { get; init; }

    /// <summary>When about half of the check's water is gone: between the two.</summary>
    public (DateTimeOffset From, DateTimeOffset Until) HalfGone => (Fault.Mark.Happened + Time.HalfAtFirstRate, Fault.Mark.Happened + Time.HalfFalling);

    public required ImmutableArray<LeveeStep> Irrigator { get; init; }

    public required ImmutableArray<LeveeStep> Tractor { get; init; }

    /// <summary>It is sown: somebody looks at it on the day the levee went.</summary>
    public DateOnly? Scout { get; init; }

    /// <summary>Somebody looked since.</summary>
    public bool Scouted { get; init; }

    /// <summary>A planned flight that cannot be flown while a check lies bare.</summary>
    public DateTimeOffset? Sow { get; init; }

    public required ImmutableArray<TroubleCall> Calls { get; init; }

    public required Working Working { get; init; }
}

/// <summary>Works out what a levee that is out means for its field.</summary>
public static class LeveeTroubles
{
    /// <summary>Levees that are out in a field and not mended, the newest first.</summary>
    [Source(nameof(Sources.CommonPractice), "check above runs out, check below is loaded")]
    public static ImmutableArray<LeveeTrouble> Of(SeasonBook book, SeasonPlan? plan, string code) =>
        book.State.Farm.Fields.FirstOrDefault(f => string.Equals(f.Code, code, StringComparison.OrdinalIgnoreCase)) is not { } field
            ? []
            : [.. book.Faults.Where(f => f.Fault.Kind == FaultKind.Levee && string.Equals(f.Fault.Field, code, StringComparison.OrdinalIgnoreCase)).Select(f => Of(book, plan, field, f))];

    private static LeveeTrouble Of(SeasonBook book, SeasonPlan? plan, Field field, OpenFault open)
    {
        var state = book.State;
        var (season, told, fault) = (state.Season(field.Code), book.Field(field.Code), open.Fault);
        var last = field.Basins.IsEmpty ? (int?)null : field.Basins.Max(b => b.Number);
        var leaves = fault.Check is { } at && at == last && (fault.ToCheck is not { } to || to > last);
        var below = leaves ? null : fault.ToCheck ?? fault.Check + 1;
        var head = (fault.Check is { } n ? told.Check(n)?.Depth?.Depth : null) ?? told.Depth?.Depth ?? season.Depth;
        var wet = head is { } deep && deep > WaterDepth.Zero;
        var gap = new BreachGap(fault.Width ?? Breach.UsualWidth, wet ? head!.Value : Breach.UsualHead);
        var land = field.Basins.FirstOrDefault(b => b.Number == fault.Check)?.Area is { } own && own > Area.Zero ? own : field.Net / Math.Max(1, field.Basins.Length);
        var time = Breach.Of(gap, land);
        var sown = season.Stage == FieldStage.Sown;
        return new LeveeTrouble(field, open)
        {
            Above = fault.Check,
            Below = below,
            LeavesField = leaves,
            NoSpill = season.NoSpill,
            Gap = gap,
            WidthTold = fault.Width is not null,
            HeadTold = wet,
            Land = land,
            Time = time,
            Irrigator = ForIrrigator(season, leaves),
            Tractor = [LeveeStep.Tarp, LeveeStep.CloseGap],
            Scout = sown ? FarmTime.Day(state, open.Mark.Happened) : null,
            Scouted = told.ScoutedAt > open.Mark.Happened,
            Sow = sown ? null : plan?.Task(field.Code, PlanTaskKind.Sow)?.Start,
            Calls = [Call(book, open, TroubleRole.Irrigator), Call(book, open, TroubleRole.Tractor)],
            Working = Breach.Working(gap, land, time),
        };
    }

    // Where a hold is open nothing is offered that lets water out.
    private static ImmutableArray<LeveeStep> ForIrrigator(FieldSeason season, bool leaves) => (season.NoSpill, leaves) switch
    {
        (true, true) => [LeveeStep.RingAdviser, LeveeStep.FeedAbove, LeveeStep.ReadSticks],
        (true, false) => [LeveeStep.KeepIn, LeveeStep.PassBelow, LeveeStep.FeedAbove, LeveeStep.ReadSticks],
        (false, true) => [LeveeStep.FeedAbove, LeveeStep.ReadSticks],
        (false, false) => [LeveeStep.PassBelow, LeveeStep.FeedAbove, LeveeStep.LetDown, LeveeStep.ReadSticks],
    };

    private static TroubleCall Call(SeasonBook book, OpenFault open, TroubleRole role)
    {
        var message = "levee " + open.Fault.Field + " " + open.Mark.Id.Text + " " + role.ToString();
        return new TroubleCall(role, null) { Message = message, Person = StoppedCalls.PersonFor(book.State, role), Fields = open.Fault.Field is { } field ? [field] : [], Said = book.Message(message) };
    }
}
