using Watersown.Land;
using Watersown.Water.Flood;

namespace Watersown.Schedule.Finish;

/// <summary>What can be done with water that runs and that nothing takes up.</summary>
public enum SurplusWay
{
    /// <summary>Let it into the next field.</summary>
    OpenField,

    /// <summary>Have it at another source under the same cap.</summary>
    MoveFlow,

    /// <summary>Ask for less.</summary>
    Cut,
}

/// <summary>One way out.</summary>
/// <param name="Way">What is done.</param>
/// <param name="At">When it takes effect at the earliest.</param>
/// <param name="Flow">How much of what is over it takes away; zero where it takes none.</param>
public sealed record SurplusOption(SurplusWay Way, DateTimeOffset At, FlowRate Flow)
{
    /// <summary>Last moment to send it, where it must be asked for.</summary>
    public DateTimeOffset? SendBy { get; init; }

    /// <summary>The field that would take it.</summary>
    public Field? Field { get; init; }

    /// <summary>Ground work that it still wants before water.</summary>
    public ImmutableArray<GroundWork> Wants { get; init; } = [];

    /// <summary>When the field was to be opened, where that is later than the water is over: it must be ready sooner.</summary>
    public DateTimeOffset? InsteadOf { get; init; }

    /// <summary>The source that would give it.</summary>
    public WaterSource? To { get; init; }

    /// <summary>What the other source fills is all full by then, without and with the flow moved.</summary>
    public (DateTimeOffset? Without, DateTimeOffset? With) Full { get; init; }

    /// <summary>What is over.</summary>
    public required FlowApart Over { get; init; }

    /// <summary>Still over before it takes effect, and after it if it does not take all.</summary>
    public required Volume StillOver { get; init; }

    /// <summary>The lines behind it.</summary>
    public Working Working() => Watersown.Working.Empty
        .Given("d", "over", Over.Flow.CubicFeetPerSecond, "cfs", "orders less what holding and filling take up")
        .Given("f", "from", Datum.Moment(Over.From), string.Empty, "orders").Given("u", "until", Datum.Moment(Over.Until), string.Empty, "orders")
        .Given("a", "takes effect", Datum.Moment(At), string.Empty, Way == SurplusWay.OpenField ? "when the water is over" : "first change that is a notice away")
        .Step("x", "of that taken away", Flow.CubicFeetPerSecond, "cfs", Taken, Sources.CommonPractice)
        .Step("v", "still over", StillOver.AcreFeet, "ac-ft", Way == SurplusWay.OpenField ? "(d − x) (u − f)" : "d (u − f)", Sources.Arithmetic);

    private string Taken => Way switch
    {
        SurplusWay.OpenField => "the smaller of d and what its gate passes",
        SurplusWay.MoveFlow => "the smaller of d and the other source's cap less what it runs; none where all it fills is full by then",
        SurplusWay.Cut => "what runs less what is wanted from then on",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}

/// <summary>Ways out for water that runs over.</summary>
public static class SurplusOptions
{
    /// <summary>The ways out of the first stretch of water over; none where nothing is over.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="advice">The source's orders.</param>
    /// <param name="ask">What was asked of the source: fields that are to be opened later stand in it.</param>
    /// <param name="plan">The plan, which may lead water to a field from another source than its first.</param>
    [Source(nameof(Sources.CommonPractice), "open the next field, move the flow under the joint cap, or cut it")]
    public static ImmutableArray<SurplusOption> Of(SeasonState state, OrderAdvice advice, FillAsk ask, SeasonPlan? plan = null)
    {
        if (advice.Over is not [var over, ..]) return [];
        return
        [
            .. Fields(state, advice.Source, over, ask),
            .. state.Farm.SharedCaps.Where(c => c.Sources.Contains(advice.Source.Code, StringComparer.Ordinal)).SelectMany(c => Moves(state, advice, plan, c)),
            .. Cuts(advice, over),
        ];
    }

    private static IEnumerable<SurplusOption> Fields(SeasonState state, WaterSource source, FlowApart over, FillAsk ask)
    {
        var dry = state.Farm.Fields.Where(f => f.Sources.Contains(source.Code, StringComparer.Ordinal) && state.Season(f.Code).Stage < FieldStage.Flooding);
        foreach (var field in dry.Select(f => (Field: f, Wants: GroundChain.Left(state.Season(f.Code)))).OrderBy(f => f.Wants.Length).ThenBy(f => f.Field.Code, StringComparer.Ordinal))
        {
            var asked = ask.Open.FirstOrDefault(o => o.Field == field.Field.Code)?.From ?? state.Season(field.Field.Code).FitFrom;
            var takes = field.Field.InletLimit is { } limit && limit < over.Flow ? limit : over.Flow;
            yield return new SurplusOption(SurplusWay.OpenField, over.From, takes)
            {
                Over = over,
                Field = field.Field,
                Wants = field.Wants,
                InsteadOf = asked > over.From ? asked : null,
                StillOver = (over.Flow - takes) * (over.Until - over.From),
            };
        }
    }

    // Both are changed at the same hour: one comes down as the other goes up.
    private static IEnumerable<SurplusOption> Moves(SeasonState state, OrderAdvice advice, SeasonPlan? plan, SharedCap shared)
    {
        var over = advice.Over[0];
        foreach (var other in shared.Sources.Where(s => s != advice.Source.Code).Select(state.Farm.Source).OfType<WaterSource>().Where(s => !s.Down))
        {
            var now = SourceFinish.Of(state, other.Code, null, plan);
            if (now.Fields.IsEmpty) continue;
            var first = WaterOrders.First(state, other) ?? state.Now;
            var at = first > over.Until ? first : over.Until;
            var running = SourceSupply.Running(state, other) ?? [new FlowStep(TimeSpan.Zero, FlowRate.Zero)];
            var runs = running.Last(s => s.From <= at - state.Now).Flow;
            var room = SourceSupply.MostAt(other, at) - runs;
            var moved = room <= FlowRate.Zero ? FlowRate.Zero : room < over.Flow ? room : over.Flow;
            var more = SourceSupply.Kept(state, other, runs + moved);
            var then = at - state.Now;
            var with = SourceFinish.Of(state, other.Code, FillAsk.Running with { Flow = [.. running.Where(s => s.From < then), new(then, runs + moved), .. more.Where(s => s.From > then)] }, plan);
            yield return new SurplusOption(SurplusWay.MoveFlow, at, now.Full <= at ? FlowRate.Zero : moved)
            {
                Over = over,
                To = other,
                SendBy = at - (other.Notice > advice.Source.Notice ? other.Notice : advice.Source.Notice),
                Full = (now.Full, with.Full),
                StillOver = over.Volume,
            };
        }
    }

    private static IEnumerable<SurplusOption> Cuts(OrderAdvice advice, FlowApart over)
    {
        if (advice.Changes.FirstOrDefault(c => c.After < c.Before && c.At >= over.From) is { } cut)
            yield return new SurplusOption(SurplusWay.Cut, cut.At, cut.Before - cut.After) { Over = over, SendBy = cut.SendBy, StillOver = over.Volume };
    }
}
