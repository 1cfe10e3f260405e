using Watersown.Water.Filling;
using Watersown.Water.Flood;

namespace Watersown.Schedule.Finish;

/// <summary>A field that is to get its first water.</summary>
/// <param name="Field">Field code.</param>
/// <param name="From">Not before; at once where not told.</param>
public sealed record FieldStart(string Field, DateTimeOffset? From = null);

/// <summary>What is asked of a source: by itself, when everything is full that it fills now, at the flow that runs.</summary>
public sealed record FillAsk
{
    /// <summary>As it runs.</summary>
    public static FillAsk Running { get; } = new();

    /// <summary>Sources joined to it, whose fields and water count with its own.</summary>
    public ImmutableArray<string> With { get; init; } = [];

    /// <summary>What they give together from now on, taken as it stands; what runs, kept to their turns and curtailments, where not told.</summary>
    public ImmutableArray<FlowStep> Flow { get; init; } = [];

    /// <summary>Dry fields to be opened besides, in the order in which they get water.</summary>
    public ImmutableArray<FieldStart> Open { get; init; } = [];

    public FillingWay Way { get; init; }

    /// <summary>The same at one flow throughout.</summary>
    public FillAsk At(FlowRate flow) => this with { Flow = [new FlowStep(TimeSpan.Zero, flow)] };
}
