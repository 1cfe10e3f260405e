using Watersown.Land;

namespace Watersown.Schedule.Finish;

/// <summary>Marrowfen as it stands on Friday 8 May 2026, 04:50, every field with its source, both turnouts under one cap of 30 cfs.</summary>
internal static class SomeBlock
{
    public static SeasonState State()
    {
        var state = PlannedMorning.State();
        return state with
        {
            Farm = state.Farm with
            {
                Fields = [.. state.Farm.Fields.Select(f => f.Code == "H6" ? f with { Sources = ["W-2"] } : f)],
                SharedCaps = [new SharedCap("both turnouts", ["NT-1", "ST-2"], PlannedMorning.Cfs(30))],
            },
        };
    }

    public static SeasonState With(this SeasonState state, string source, Func<WaterSource, WaterSource> change) =>
        state with { Farm = state.Farm with { Sources = [.. state.Farm.Sources.Select(s => s.Code == source ? change(s) : s)] } };

    public static SeasonState With(this SeasonState state, string field, Func<FieldSeason, FieldSeason> change) =>
        state with { Fields = [.. state.Fields.Select(f => f.Code == field ? change(f) : f)] };

    public static FillAsk At(double cfs) => FillAsk.Running.At(PlannedMorning.Cfs(cfs));
}
