using Watersown.Land;
using Watersown.Schedule;
using Watersown.Water;

namespace Watersown.Season.Troubles;

/// <summary>What a raise is asked for.</summary>
/// <param name="Source">Code of the source.</param>
/// <param name="By">When the water must stand: the first cold night, or the day from which nights can turn cold.</param>
public sealed record RaiseWish(string Source, DateTimeOffset By)
{
    public WaterDepth Target { get; init; } = Raising.ColdNights;

    /// <summary>Codes of the fields that need it; all flooded fields of the source where none is named.</summary>
    public ImmutableArray<string> Fields { get; init; } = [];
}

/// <summary>A raise of fields on one source before cold nights.</summary>
/// <param name="Source">The source.</param>
/// <param name="Raise">What it takes.</param>
public sealed record ColdNightRaise(WaterSource Source, WaterRaise Raise)
{
    /// <summary>What the source gives: what runs, or the most it can where nobody told; where that changes until then, its mean.</summary>
    public required FlowRate Gives { get; init; }

    /// <summary>To hold all that is wet on it.</summary>
    public required FlowRate Holds { get; init; }

    /// <summary>Last moment at which a raise with the same flow to spare would stand in time; none where it never would.</summary>
    public DateTimeOffset? StartBy { get; init; }

    /// <summary>Flow to ask for so that it stands in time; above the source's cap where it cannot.</summary>
    public FlowRate? Order { get; init; }

    /// <summary>Names of fields whose depth nobody told: the sowing depth is taken.</summary>
    public required ImmutableArray<string> DepthUntold { get; init; }

    public required Working Working { get; init; }
}

/// <summary>Deep water before cold nights, from the farm as it stands.</summary>
public static class ColdNightRaises
{
    /// <summary>What a raise takes, whether it can stand in time, and which fields gain most with the time that is left.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="wish">What is asked for.</param>
    /// <param name="plan">The plan, which may lead water to a field from another source than its first.</param>
    [Source(nameof(Sources.WaterBalance), "spare = gives − wet land × (evaporation + seepage)")]
    public static ColdNightRaise Of(SeasonState state, RaiseWish wish, SeasonPlan? plan = null)
    {
        var source = state.Farm.Sources.First(s => string.Equals(s.Code, wish.Source, StringComparison.Ordinal));
        var wet = state.Farm.Fields.Where(f => FieldSource.First(plan, f) == source.Code && FieldWater.Of(state, f.Code).Job.Wet > Area.Zero).ToImmutableArray();
        var holds = wet.Aggregate(FlowRate.Zero, (sum, f) => sum + FieldWater.Of(state, f.Code).HoldingNow);
        var gives = SourceSupply.MeanUntil(SourceSupply.Running(state, source) ?? SourceSupply.Most(state, source), wish.By - state.Now);
        var wanted = wet.Where(f => wish.Fields.IsEmpty || wish.Fields.Contains(f.Code, StringComparer.Ordinal)).ToImmutableArray();
        var left = wish.By > state.Now ? wish.By - state.Now : TimeSpan.Zero;
        var raise = Raising.Of([.. wanted.Select(f => new RaisedLand(f.Name, FieldWater.Of(state, f.Code).Job.Wet, state.Season(f.Code).Depth ?? WaterTargets.Sowing))], wish.Target, gives - holds, left);
        return new ColdNightRaise(source, raise)
        {
            Gives = gives,
            Holds = holds,
            StartBy = raise.Time is { } time && time < wish.By - DateTimeOffset.MinValue ? wish.By - time : null,
            Order = raise.Wanted is { } flow ? holds + flow : null,
            DepthUntold = [.. wanted.Where(f => state.Season(f.Code).Depth is null).Select(f => f.Name)],
            Working = Show(source, gives, holds).Then(RaiseWorking.Show(raise)),
        };
    }

    private static Working Show(WaterSource source, FlowRate gives, FlowRate holds) => Working.Empty
        .Given("Q", "source " + source.Code + " gives", gives.CubicFeetPerSecond, "cfs", source.Down ? "down" : source.Running is null ? "the most it can" : "order or reading")
        .Step("H", "to hold all that is wet on it", holds.CubicFeetPerSecond, "cfs", "Σ wet land × (evaporation + seepage)", Sources.WaterBalance);
}
