using Watersown.Land;
using Watersown.Water.Flood;

namespace Watersown.Schedule;

/// <summary>
/// What a source can give and does give over time: its cap, less while it is curtailed, nothing between its turns. Turns are
/// followed one by one for as long as a fill can be of use; later on their mean stands for them, so that what never ends in
/// turns is known by the mean of what they bring.
/// </summary>
public static class SourceSupply
{
    /// <summary>How far ahead turns are followed one by one.</summary>
    [Source(nameof(Sources.FarmDefault), "60 days: a field that takes longer is no plan")]
    public static TimeSpan Followed { get; } = TimeSpan.FromDays(60);

    /// <summary>The most that a source can give at a moment.</summary>
    [Source(nameof(Sources.Arithmetic), "the least of cap, turn and curtailments; nothing between turns")]
    public static FlowRate MostAt(WaterSource source, DateTimeOffset at) =>
        source.Turns is { } turns && !turns.Runs(at) ? FlowRate.Zero : InTurn(source, at);

    /// <summary>The same with turns at their mean: for whatever cannot follow each of them.</summary>
    [Source(nameof(Sources.Arithmetic), "the most in a turn × on / every")]
    public static FlowRate MeanAt(WaterSource source, DateTimeOffset at) => InTurn(source, at) * (source.Turns?.Share ?? Fraction.One).Share;

    /// <summary>Moments in a span at which the most that it can give changes, its beginning and end left out.</summary>
    public static IEnumerable<DateTimeOffset> Changes(WaterSource source, DateTimeOffset from, DateTimeOffset until)
    {
        var changes = source.Curtailments.SelectMany(c => new DateTimeOffset?[] { c.From, c.Until }).OfType<DateTimeOffset>().ToHashSet();
        if (source.Turns is { } turns)
        {
            var end = from + Followed < until ? from + Followed : until;
            for (var next = turns.NextChange(from); next < end; next = turns.NextChange(next)) changes.Add(next);
        }

        return changes.Where(c => c > from && c < until).Order();
    }

    /// <summary>The most that it can give, from now on.</summary>
    [Source(nameof(Sources.Arithmetic), "the most at each moment, turns at their mean after 60 days")]
    public static ImmutableArray<FlowStep> Most(SeasonState state, WaterSource source) => Kept(state, source, source.Cap);

    /// <summary>What comes of a flow that is wanted all along: no more than the source can give at each moment.</summary>
    [Source(nameof(Sources.Arithmetic), "the least of what is wanted and the most at each moment")]
    public static ImmutableArray<FlowStep> Kept(SeasonState state, WaterSource source, FlowRate wanted) => Steps(state, source, _ => wanted);

    /// <summary>What runs from now on: as it runs now, and in turns to come what a turn brings. None where nobody has told.</summary>
    [Source(nameof(Sources.Arithmetic), "what runs, kept to the most at each moment")]
    public static ImmutableArray<FlowStep>? Running(SeasonState state, WaterSource source)
    {
        if (source.Down) return [new FlowStep(TimeSpan.Zero, FlowRate.Zero)];
        if (source.Turns is not { } turns) return source.Running is { } running ? Kept(state, source, running) : null;
        var change = turns.NextChange(state.Now);
        return Steps(state, source, at => at < change && turns.Runs(state.Now) && source.Running is { } told && told > FlowRate.Zero ? told : source.Cap);
    }

    /// <summary>What runs of some sources together; none where nobody has told it of one.</summary>
    [Source(nameof(Sources.Arithmetic), "Σ of the sources at each change of any")]
    public static ImmutableArray<FlowStep>? Running(SeasonState state, ImmutableArray<string> sources)
    {
        var all = ImmutableArray.CreateBuilder<ImmutableArray<FlowStep>>();
        foreach (var source in sources.Select(state.Farm.Source).OfType<WaterSource>())
        {
            if (Running(state, source) is not { } steps) return null;
            all.Add(steps);
        }

        return Together(all.ToImmutable(), flows => flows.Aggregate(FlowRate.Zero, (sum, f) => sum + f));
    }

    /// <summary>The mean of a flow from its beginning over a span; what comes at first where the span is nothing.</summary>
    [Source(nameof(Sources.Arithmetic), "Σ flow × time / span")]
    public static FlowRate MeanUntil(ImmutableArray<FlowStep> flow, TimeSpan span)
    {
        if (flow.Length == 1 || span <= TimeSpan.Zero) return flow[0].Flow;
        var water = Volume.Zero;
        for (var i = 0; i < flow.Length && flow[i].From < span; i++)
            water += flow[i].Flow * ((i + 1 < flow.Length && flow[i + 1].From < span ? flow[i + 1].From : span) - flow[i].From);
        return FlowRate.FromCubicMetersPerSecond(water.CubicMeters / span.TotalSeconds);
    }

    /// <summary>Several flows over time made one.</summary>
    /// <param name="flows">Each in order of time, from the same moment.</param>
    /// <param name="join">Makes one flow of all of them at a moment.</param>
    internal static ImmutableArray<FlowStep> Together(ImmutableArray<ImmutableArray<FlowStep>> flows, Func<ImmutableArray<FlowRate>, FlowRate> join)
    {
        var moments = flows.SelectMany(f => f.Select(s => s.From)).Append(TimeSpan.Zero).Distinct().Order();
        return Merged(moments.Select(at => new FlowStep(at, join([.. flows.Select(f => f.LastOrDefault(s => s.From <= at)?.Flow ?? FlowRate.Zero)]))));
    }

    private static ImmutableArray<FlowStep> Steps(SeasonState state, WaterSource source, Func<DateTimeOffset, FlowRate> wanted)
    {
        if (source.Down) return [new FlowStep(TimeSpan.Zero, FlowRate.Zero)];
        var mean = source.Turns is null ? DateTimeOffset.MaxValue : state.Now + Followed;
        IEnumerable<DateTimeOffset> moments = Changes(source, state.Now, DateTimeOffset.MaxValue).Prepend(state.Now);
        if (source.Turns is not null) moments = moments.Append(mean).Distinct().Order();
        return Merged(moments.Select(at =>
        {
            var share = at < mean ? 1 : source.Turns!.Share.Share;
            var most = at < mean ? MostAt(source, at) : InTurn(source, at);
            return new FlowStep(at - state.Now, Least(wanted(at), most) * share);
        }));
    }

    private static FlowRate InTurn(WaterSource source, DateTimeOffset at) => source.Down
        ? FlowRate.Zero
        : source.Curtailments.Where(c => c.Holds(at)).Select(c => c.Left(source.Cap)).Append(Least(source.Turns?.Flow ?? source.Cap, source.Cap)).Min();

    private static ImmutableArray<FlowStep> Merged(IEnumerable<FlowStep> steps)
    {
        var merged = ImmutableArray.CreateBuilder<FlowStep>();
        foreach (var step in steps)
        {
            if (merged.Count == 0 || merged[^1].Flow != step.Flow) merged.Add(step);
        }

        return merged.ToImmutable();
    }

    private static FlowRate Least(FlowRate a, FlowRate b) => a < b ? a : b;
}
