using Watersown.Land;
using Watersown.Schedule;
using Watersown.Season.Boards;

namespace Watersown.Season.Filling;

/// <summary>What a source can spare for a field that it fills: what it gives, less what its other land takes up.</summary>
internal static class FillSupply
{
    public static (string? Source, FlowRate Flow, Working Working) Of(SeasonState state, SeasonPlan? plan, Field field)
    {
        if (SourceBalances.FirstSource(plan, field) is not { } code) return (null, FlowRate.Zero, Working.Empty);
        var balance = SourceBalances.Of(state, plan).FirstOrDefault(b => string.Equals(b.Source.Code, code, StringComparison.Ordinal));
        if (balance is null) return (null, FlowRate.Zero, Working.Empty);
        var gives = balance.Gives ?? balance.Source.Cap;
        var own = balance.Held.Where(h => h.Field.Code == field.Code).Aggregate(FlowRate.Zero, (sum, h) => sum + h.Flow);
        var filling = balance.Filling.Aggregate(Area.Zero, (sum, f) => sum + f.Dry);
        var mine = balance.Filling.FirstOrDefault(f => f.Field.Code == field.Code)?.Dry ?? field.Net;
        var share = filling > mine ? mine / filling : 1;
        var free = gives - balance.Holds;
        if (free < FlowRate.Zero) free = FlowRate.Zero;
        // Its own wet land is held out of what it gets, as the flood itself takes that off.
        var flow = (free * share) + own;
        return (code, flow, Working.Empty
            .Given("Q", balance.Gives is null ? "at most, as nobody has said what it gives" : "gives now", gives.CubicFeetPerSecond, "cfs", "source " + code)
            .Given("H", "to hold what is wet now", balance.Holds.CubicFeetPerSecond, "cfs", "Σ wet land × loss")
            .Given("h", "of that this field's own", own.CubicFeetPerSecond, "cfs", "wet land × loss")
            .Step("s", "its share of what fills", share, "-", "dry land of this field / dry land of all that fill", Sources.Arithmetic)
            .Step("S", "into this field", flow.CubicFeetPerSecond, "cfs", "s (Q − H) + h, not below h", Sources.WaterBalance));
    }
}
