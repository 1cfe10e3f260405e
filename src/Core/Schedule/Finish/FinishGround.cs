using Watersown.Land;
using Watersown.Water.Filling;

namespace Watersown.Schedule.Finish;

/// <summary>A field of the farm as ground that fills.</summary>
internal sealed record FinishGround(Field Field, ImmutableArray<int> Numbers, FillGround Ground)
{
    public static FinishGround Of(SeasonState state, FieldStart start)
    {
        var field = state.Farm.Field(start.Field);
        ImmutableArray<Basin> basins = field.Basins.IsEmpty ? [new Basin(1, field.Net)] : [.. field.Basins.OrderBy(b => b.Number)];
        // Acres of checks may take in levees: they are brought to the acres that are sown.
        var sown = field.Net / basins.Aggregate(Area.Zero, (sum, b) => sum + b.Area);
        var ready = start.From is { } from && from > state.Now ? from - state.Now : TimeSpan.Zero;
        return new FinishGround(field, [.. basins.Select(b => b.Number)], new FillGround(FieldWater.Of(state, field.Code).Job, [.. basins.Select(b => b.Area * sown)], field.InletLimit, ready));
    }
}
