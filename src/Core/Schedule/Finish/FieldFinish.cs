using Watersown.Land;
using Watersown.Water.Filling;
using Watersown.Water.Flood;

namespace Watersown.Schedule.Finish;

/// <summary>When water comes to a check, and when it is full.</summary>
/// <param name="Number">Order from the head.</param>
/// <param name="Area">Its acres, as sown.</param>
public sealed record CheckFinish(int Number, Area Area)
{
    /// <summary>It was full at the start.</summary>
    public bool FullNow { get; init; }

    /// <summary>When it is first wet; none where it is wet already, or stays dry.</summary>
    public DateTimeOffset? FirstWet { get; init; }

    /// <summary>When it is full; none where it is full already, or never is.</summary>
    public DateTimeOffset? Full { get; init; }
}

/// <summary>When a field that fills is full, check by check.</summary>
/// <param name="Field">The field.</param>
public sealed record FieldFinish(Field Field)
{
    public required ImmutableArray<CheckFinish> Checks { get; init; }

    /// <summary>Water to cover what is still dry, without what is lost meanwhile.</summary>
    public required Volume ToCome { get; init; }

    /// <summary>Let in from each moment on, what its own wet ground takes included.</summary>
    public required ImmutableArray<FlowStep> Given { get; init; }

    /// <summary>When its last check is full; none where it never is at this flow.</summary>
    public DateTimeOffset? Full { get; init; }

    /// <summary>It is never full at this flow.</summary>
    public bool Never => Full is null;

    /// <summary>When its head check got its first water; none where it never does, or nobody said when it did.</summary>
    public DateTimeOffset? HeadWet { get; init; }

    /// <summary>Age of the head check when the field is full.</summary>
    public TimeSpan? HeadAge => Full - HeadWet;

    /// <summary>How much more it must get than it does, where it is never full: more than this, and it ends some day.</summary>
    public FlowRate? Short { get; init; }

    /// <summary>The check that is first wet next after a moment.</summary>
    public CheckFinish? NextWet(DateTimeOffset after) => Checks.FirstOrDefault(c => c.FirstWet > after);

    /// <summary>The check that is full next after a moment.</summary>
    public CheckFinish? NextFull(DateTimeOffset after) => Checks.FirstOrDefault(c => c.Full > after);

    public required Working Working { get; init; }

    /// <summary>One field by itself at one flow.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="code">Field code.</param>
    /// <param name="flow">Let into it, what its own wet land takes included.</param>
    /// <param name="from">From when.</param>
    [Source(nameof(Sources.WaterBalance), "check by check: t = (V / m) ln((S − m A0) / (S − m A1))")]
    public static FieldFinish Of(SeasonState state, string code, FlowRate flow, DateTimeOffset from)
    {
        var ground = FinishGround.Of(state, new FieldStart(code, from));
        ImmutableArray<FlowStep> flows = [new FlowStep(TimeSpan.Zero, flow)];
        _ = new FillRun([ground.Ground], FlowRate.Zero, flows, FillingWay.OneAfterAnother).Run();
        return FinishWorking.Field(state, ground, new FinishCase([ground], FlowRate.Zero, flows, FillingWay.OneAfterAnother));
    }
}
