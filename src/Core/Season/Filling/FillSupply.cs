using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Finish;
using Watersown.Water.Flood;

namespace Watersown.Season.Filling;

/// <summary>What comes to a field that fills: its part of what its source gives, once all other wet land on it is held.</summary>
/// <param name="Source">The source; none where nobody has said which reaches the field.</param>
/// <param name="Flow">From each moment on; the first is what comes now.</param>
/// <param name="Working">The lines behind it.</param>
internal sealed record FillSupply(string? Source, ImmutableArray<FlowStep> Flow, Working Working)
{
    public static FillSupply Of(SeasonState state, SeasonPlan? plan, Field field)
    {
        if (FieldSource.First(plan, field) is not { } code || state.Farm.Source(code) is not { } source) return new FillSupply(null, [], Working.Empty);
        // A source of which nobody has said what it gives is taken at its most; a field not yet opened is opened now.
        var ask = FillAsk.Running with { Open = state.Season(field.Code).Stage < FieldStage.Flooding ? [new FieldStart(field.Code)] : [] };
        if (SourceSupply.Running(state, source) is null) ask = ask with { Flow = SourceSupply.Most(state, source) };
        var finish = SourceFinish.Of(state, code, ask, plan);
        return finish.Field(field.Code) is { Given.IsEmpty: false } own ? new FillSupply(code, own.Given, finish.Working.Then(own.Working)) : new FillSupply(code, [new FlowStep(TimeSpan.Zero, FlowRate.Zero)], finish.Working);
    }
}
