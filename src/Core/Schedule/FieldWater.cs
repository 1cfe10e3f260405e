using Watersown.Land;
using Watersown.Water;

namespace Watersown.Schedule;

/// <summary>
/// The water side of one field as it stands: what is dry, what is wet, how deep it drinks, how fast it loses. What its own marks
/// have taught goes before what the farm says of its soil.
/// </summary>
/// <param name="Job">Dry land, wet land of the same field, fill and loss.</param>
/// <param name="Known">The soil is known; otherwise a usual clay is taken.</param>
public sealed record FieldWater(FloodJob Job, bool Known)
{
    /// <summary>Usual clay, where the farm has not said which soil it is.</summary>
    [Source(nameof(Sources.FarmDefault), "clay: 0.60 ft to fill, 0.10 in a day seepage")]
    public static Soil UsualSoil { get; } = new("usual", "clay", WaterDepth.FromFeet(0.60), DepthRate.FromInchesPerDay(0.10));

    public Area All => Job.Dry + Job.Wet;

    /// <summary>What the whole field takes up once it is full.</summary>
    public FlowRate Holding => Ponding.HoldingFlow(All, Job.Loss);

    /// <summary>What its wet ground takes up now.</summary>
    public FlowRate HoldingNow => Ponding.HoldingFlow(Job.Wet, Job.Loss);

    /// <summary>The field's water at the moment of the state.</summary>
    public static FieldWater Of(SeasonState state, string code)
    {
        var field = state.Farm.Field(code);
        var soil = state.Farm.SoilOf(field);
        var (basis, season) = (soil ?? UsualSoil, state.Season(code));
        var wet = field.Net * WetShare(field, season);
        var (fill, seepage) = season.Learned is { } learned ? (learned.Fill.Middle, learned.Seepage.Middle) : (basis.Fill, basis.Seepage);
        return new FieldWater(new FloodJob(field.Net - wet, wet, fill, state.Evaporation + seepage), soil is not null);
    }

    private static double WetShare(Field field, FieldSeason season)
    {
        if (season.Stage is FieldStage.Full or FieldStage.Sown) return 1;
        if (season.Stage != FieldStage.Flooding) return 0;
        if (season.ChecksWet is not { } wet || field.Basins.IsEmpty) return 0.5;
        var all = field.Basins.Sum(b => b.Area.Acres);
        return Math.Min(1, field.Basins.OrderBy(b => b.Number).Take(wet).Sum(b => b.Area.Acres) / all);
    }
}
