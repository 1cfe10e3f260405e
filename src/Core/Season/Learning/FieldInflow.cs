using Watersown.Land;
using Watersown.Schedule;
using Watersown.Water.Flood;

namespace Watersown.Season.Learning;

/// <summary>Water told to come into a field since a moment.</summary>
/// <param name="Steps">Since that moment, in order.</param>
/// <param name="Shared">Other fields fill from the same source at some time.</param>
/// <param name="Readings">Flows that somebody read at the source.</param>
internal sealed record FieldInflow(ImmutableArray<FlowStep> Steps, bool Shared, ImmutableArray<(TimeSpan At, Mark Mark)> Readings)
{
    /// <summary>A reading holds for a flood that begins so much later.</summary>
    private static readonly TimeSpan readBefore = TimeSpan.FromDays(2);

    /// <summary>What the source gives less what holding other land takes, by net acres among the fields that fill; none where nobody knows.</summary>
    public static FieldInflow? Of(SeasonState state, ImmutableArray<SourceRun> runs, Field field, DateTimeOffset start, DateTimeOffset until)
    {
        if (field.Sources.FirstOrDefault() is not { } source || runs.IsEmpty) return null;
        ImmutableArray<Other> others = [.. state.Farm.Fields.Where(f => f.Code != field.Code && f.Sources.FirstOrDefault() == source).Select(f => Other.Of(state, f))];
        ImmutableArray<DateTimeOffset> moments =
        [
            .. runs.Select(r => r.From).Concat(others.SelectMany(o => new[] { o.Fills, o.Holds }).OfType<DateTimeOffset>()).Where(m => m > start).Append(start).Distinct().Order(),
        ];
        var (steps, sources, shared) = (ImmutableArray.CreateBuilder<FlowStep>(), ImmutableArray.CreateBuilder<(TimeSpan, bool)>(), false);
        foreach (var moment in moments)
        {
            if (runs.Last(r => r.From <= moment).Flow is not { } gives) return null;
            var left = others.Where(o => o.HoldsAt(moment)).Aggregate(gives, (sum, o) => sum - o.Holding);
            var filling = others.Where(o => o.FillsAt(moment)).Aggregate(Area.Zero, (sum, o) => sum + o.Net);
            shared |= filling > Area.Zero && moment < until;
            var flow = left > FlowRate.Zero ? left * (field.Net / (field.Net + filling)) : FlowRate.Zero;
            sources.Add((moment - start, gives > FlowRate.Zero));
            steps.Add(new FlowStep(moment - start, field.InletLimit is { } limit && limit < flow ? limit : flow));
        }

        var readings = runs.Where(r => r.Read is not null && r.Flow > FlowRate.Zero && r.From >= start - readBefore && r.From <= until);
        return new FieldInflow(steps.ToImmutable(), shared, [.. readings.Select(r => (r.From < start ? TimeSpan.Zero : r.From - start, r.Read!))]) { Source = sources.ToImmutable() };
    }

    /// <summary>When the source gives anything at all, and when nothing.</summary>
    public required ImmutableArray<(TimeSpan From, bool Gives)> Source { get; init; }

    /// <summary>The source gives nothing for the whole of a span.</summary>
    public bool Stopped(TimeSpan from, TimeSpan to) => !Source.LastOrDefault(s => s.From <= from, (default, true)).Gives && !Source.Any(s => s.From > from && s.From < to && s.Gives);

    // Another field of the source: fills from one moment on and only holds from a later one.
    private sealed record Other(Area Net, FlowRate Holding, DateTimeOffset? Fills, DateTimeOffset? Holds)
    {
        public static Other Of(SeasonState state, Field field)
        {
            var (season, water) = (state.Season(field.Code), FieldWater.Of(state, field.Code));
            DateTimeOffset? holds = season.Stage >= FieldStage.Full ? season.FullSince ?? DateTimeOffset.MinValue : null;
            DateTimeOffset? fills = season.Stage >= FieldStage.Flooding ? season.FirstWater ?? holds ?? DateTimeOffset.MinValue : null;
            return new Other(field.Net, water.Holding, fills, holds);
        }

        public bool HoldsAt(DateTimeOffset moment) => Holds <= moment;

        public bool FillsAt(DateTimeOffset moment) => Fills <= moment && !HoldsAt(moment);
    }
}
