using Watersown.Land;
using Watersown.Schedule;
using Watersown.Water;
using Watersown.Water.Flood;
using Watersown.Water.Learning;

namespace Watersown.Season.Learning;

/// <summary>Learns what a field takes from flood to flood: what one taught is what the next begins with.</summary>
internal sealed class FieldLearner(SeasonState ground, SeasonState state, ImmutableArray<StoryLine> story)
{
    private readonly Dictionary<string, ImmutableArray<SourceRun>> runs = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>What a field's marks say; none where it has no flood, or nobody knows what water comes.</summary>
    /// <param name="field">The field.</param>
    /// <param name="marks">Its marks that stand, in order.</param>
    public FieldLearning? Of(Field field, ImmutableArray<Mark> marks)
    {
        if (field.Sources.FirstOrDefault() is not { } source || ground.Fields.FirstOrDefault(f => f.Code == field.Code) is not { } season) return null;
        if (field.Net <= Area.Zero || field.Basins.Any(b => b.Area <= Area.Zero) || Soil(field).Fill <= WaterDepth.Zero) return null;
        var floods = SeenFloods.Of(field, (season, season.AsOf ?? ground.Now), marks, state.Now);
        if (floods.IsEmpty) return null;
        if (!runs.TryGetValue(source, out var run)) runs[source] = run = SourceRuns.Of(ground, story, source);
        FieldLearning? learning = null;
        foreach (var flood in floods)
        {
            if (FieldInflow.Of(state, run, field, flood.Start, flood.Until) is { } inflow) learning = Learn(field, flood, inflow, learning);
        }

        return learning;
    }

    private FieldLearning Learn(Field field, SeenFlood flood, FieldInflow inflow, FieldLearning? before)
    {
        var soil = Soil(field);
        var farm = FloodFigures.OfFarm(soil.Fill, soil.Seepage, WaterTargets.Sowing, soil.LearnedFrom);
        var numbers = field.Basins.IsEmpty ? [1] : field.Basins.Select(b => b.Number).Order().ToImmutableArray();
        var seen = FloodSightings.Of(flood, numbers, inflow);
        var prior = before?.Learned is { } learned ? learned.Figures.BeforeNext() : farm;
        var network = Network(field, flood, numbers, inflow);
        var asked = new FloodCase
        {
            Network = network,
            Before = prior,
            Evaporation = state.Evaporation,
            InflowSpread = inflow.Shared ? Fraction.FromShare(Math.Sqrt(Square(LearningSpreads.Order) + Square(LearningSpreads.Shared))) : LearningSpreads.Order,
            StartSpread = StartSpread(flood, network, prior),
            Sightings = [.. seen.Select(s => s.Seen)],
        };
        var fitted = FloodFit.Of(asked);
        ImmutableArray<MarkVerdict> verdicts = [.. seen.Select((s, i) => new MarkVerdict(s.Mark, fitted.Verdicts[i]))];
        var filling = flood.FillTells && state.Season(field.Code).Stage == FieldStage.Flooding && flood.Until == state.Now;
        var told = new FieldLearning(field)
        {
            Farm = farm,
            Learned = Learned(fitted, verdicts, before?.Learned),
            Newest = fitted,
            Start = flood.Start.ToOffset(state.Offset),
            Marks = verdicts,
            Filling = filling,
            Full = filling ? Range(flood.Start, fitted.Full) : null,
            Checks = filling ? [.. numbers.Select((n, i) => new CheckMoments(n) { FirstWet = After(flood.Start, fitted.Checks[i].FirstWet.Middle), Full = Range(flood.Start, fitted.Checks[i].Full) })] : [],
            Working = Working.Empty,
        };
        return told with { Working = LearningWorking.Of(state, told, asked) };
    }

    private Soil Soil(Field field) => state.Farm.SoilOf(field) ?? FieldWater.UsualSoil;

    private static double Square(Fraction share) => share.Share * share.Share;

    private FloodNetwork Network(Field field, SeenFlood flood, ImmutableArray<int> numbers, FieldInflow inflow)
    {
        var dry = state with { Fields = [.. state.Fields.Select(f => f.Code == field.Code ? f with { Stage = FieldStage.Rolled, ChecksWet = null } : f)] };
        var network = FieldFlood.Network(dry, field.Code, field.Sources[0], inflow.Steps);
        return network with { Checks = [.. network.Checks.Select((c, i) => flood.Covered.Contains(numbers[i]) ? c with { Covered = Fraction.One } : c)] };
    }

    // Water seen first is as sure as any water seen. Where the farm document only says how many checks are wet, the front is
    // anywhere in the last of them: the deviation of an even chance over the time that one takes.
    private static TimeSpan StartSpread(SeenFlood flood, FloodNetwork network, FloodFigures prior)
    {
        if (flood.First is { } mark) return LearningSpreads.SeenWet * FloodSightings.Wider(mark.Sure);
        var flow = network.Inlets.Aggregate(FlowRate.Zero, (sum, i) => sum + (i.Flow.IsEmpty ? FlowRate.Zero : i.Flow[0].Flow));
        var check = network.Checks.Aggregate(Area.Zero, (sum, c) => sum + c.Area) * (1.0 / network.Checks.Length) * prior.Fill;
        var hours = flow > FlowRate.Zero ? check.CubicMeters / flow.CubicMetersPerSecond / 3600 : 24;
        return TimeSpan.FromHours(Math.Min(48, hours / Math.Sqrt(12)));
    }

    private LearnedWater? Learned(FloodFitted fitted, ImmutableArray<MarkVerdict> verdicts, LearnedWater? before)
    {
        ImmutableArray<Mark> counted = [.. verdicts.Where(v => !v.Verdict.Disagrees).Select(v => v.Mark)];
        if (counted.IsEmpty) return before;
        return new LearnedWater(fitted.Figures, fitted.Fill, fitted.Seepage, counted.Length + (before?.Marks ?? 0), 1 + (before?.Floods ?? 0), counted.Max(m => m.Happened).ToOffset(state.Offset));
    }

    private MomentRange? Range(DateTimeOffset start, LikelyMoment moment) =>
        moment is { Middle: { } middle, Low: { } low } && middle > TimeSpan.Zero ? new MomentRange((start + middle).ToOffset(state.Offset), (start + low).ToOffset(state.Offset), After(start, moment.High)) : null;

    private DateTimeOffset? After(DateTimeOffset start, TimeSpan? span) => span is { } time && time > TimeSpan.Zero ? (start + time).ToOffset(state.Offset) : null;
}
