using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;

namespace Watersown.Season.Ground;

/// <summary>What a field comes to in seed, flying and water, each with how it was worked out.</summary>
public sealed record FieldFigures
{
    /// <summary>Dry seed for the whole field.</summary>
    public required Worked<DrySeed> Dry { get; init; }

    /// <summary>The same once soaked, by the farm's usual wet factor.</summary>
    public required Worked<SoakedSeed> Soaked { get; init; }

    /// <summary>Equal loads by the flying service's working load; none where no aeroplane is described.</summary>
    public Worked<LoadPlan>? Loads { get; init; }

    /// <summary>What it keeps the aeroplane; none where no aeroplane is described.</summary>
    public Worked<TimeSpan>? Flying { get; init; }

    /// <summary>Water to wet and cover what is still dry; none where all is covered.</summary>
    public Worked<Volume>? ToFill { get; init; }

    /// <summary>Flow that all of it takes up once full.</summary>
    public required Worked<FlowRate> Holding { get; init; }

    /// <summary>How long the head check has been wet before sowing.</summary>
    public Worked<TimeSpan>? HeadAge { get; init; }

    /// <summary>What its drawn edge encloses.</summary>
    public Worked<Area>? Enclosed { get; init; }

    /// <summary>The figures of a field.</summary>
    /// <param name="state">How things stand.</param>
    /// <param name="code">Field code.</param>
    [Source(nameof(Sources.Arithmetic), "rate × net acres; loads, flying, fill and holding by their own formulas")]
    public static FieldFigures Of(SeasonState state, string code)
    {
        var (field, season) = (state.Farm.Field(code), state.Season(code));
        var dry = season.Rate * field.Net;
        var soaked = Soaking.Weigh(dry, state.WetFactor);
        var seed = Working.Empty
            .Given("A", "net acres", field.Net.Acres, "ac", "field " + code)
            .Given("r", "dry rate", season.Rate.PoundsPerAcre, "lb/ac dry", "field " + code)
            .Step("D", "dry seed", dry.Pounds, "lb dry", "A × r", Sources.Arithmetic);
        var wet = seed
            .Given("F", "soaked weight over dry weight", state.WetFactor, string.Empty, "farm")
            .Step("W", "soaked seed", soaked.Pounds, "lb wet", "D × F", Sources.MassBalance);
        var figures = new FieldFigures { Dry = new(dry, seed), Soaked = new(soaked, wet), Holding = HoldingOf(state, field), ToFill = FillOf(state, field), HeadAge = AgeOf(state, season), Enclosed = Inside(field) };
        return state.Aeroplanes is [var plane, ..] && dry > DrySeed.Zero ? Flown(figures, state, field, plane, wet) : figures;
    }

    private static FieldFigures Flown(FieldFigures figures, SeasonState state, Field field, Aeroplane plane, Working wet)
    {
        var loads = Flight.Loads.Equal(figures.Dry.Value, state.WetFactor, plane.WorkingLoad);
        var job = FieldFlight.Job(state, field, loads.Count, plane);
        var working = wet
            .Given("H", "working load", plane.WorkingLoad.Pounds, "lb wet", "flying service")
            .Step("n", "loads", loads.Count, string.Empty, "ceil(W / H)", Sources.Arithmetic)
            .Step("w", "each load", loads.Each.Pounds, "lb wet", "W / n", Sources.Arithmetic);
        return figures with { Loads = new(loads, working), Flying = new(FlyingTime.Of(job, plane), FlyingTime.Working(job, plane)) };
    }

    private static Worked<FlowRate> HoldingOf(SeasonState state, Field field)
    {
        var water = FieldWater.Of(state, field.Code);
        return new(water.Holding, Working.Empty
            .Given("A", "net acres", field.Net.Acres, "ac", "field " + field.Code)
            .Given("E", "lost to the air", state.Evaporation.InchesPerDay, "in/day", "farm")
            .Given("P", "lost to the ground", (water.Job.Loss - state.Evaporation).InchesPerDay, "in/day", SoilSaid(state, water, field))
            .Step("m", "lost from covered land", water.Job.Loss.InchesPerDay, "in/day", "E + P", Sources.Arithmetic)
            .Step("H", "to hold it once full", water.Holding.CubicFeetPerSecond, "cfs", "A × m / 12 / 1.983471", Sources.WaterBalance));
    }

    private static Worked<Volume>? FillOf(SeasonState state, Field field)
    {
        var water = FieldWater.Of(state, field.Code);
        if (water.Job.Dry <= Area.Zero) return null;
        var volume = water.Job.Dry * water.Job.Fill;
        return new(volume, Working.Empty
            .Given("A", "land still to be covered", water.Job.Dry.Acres, "ac", "checks not wet", state.Season(field.Code).AsOf)
            .Given("V", "water to wet and cover it", water.Job.Fill.Feet, "ft", SoilSaid(state, water, field))
            .Step("Q", "to wet and cover what is dry, losses not in it", volume.AcreFeet, "ac-ft", "A × V", Sources.WaterBalance));
    }

    private static string SoilSaid(SeasonState state, FieldWater water, Field field) => state.Season(field.Code).Learned is { } learned
        ? Wording.Say.Number(learned.Marks) + " marks of this field"
        : water.Known ? "soil " + field.Soil : "soil not told: a usual clay";

    private static Worked<TimeSpan>? AgeOf(SeasonState state, FieldSeason season)
    {
        if (season is not { FirstWater: { } first, SownAt: null, Stage: not FieldStage.Sown } || first > state.Now) return null;
        var age = state.Now - first;
        return new(age, Working.Empty
            .Given("t0", "head check first wet", Wording.When.Moment(first), string.Empty, "marks", first)
            .Step("t", "since then", age.TotalDays, "days", "now − t0", Sources.Arithmetic));
    }

    private static Worked<Area>? Inside(Field field)
    {
        if (field.Boundary is not { } edge) return null;
        var inside = GeodesicArea.Of(edge);
        var working = Working.Empty
            .Given("c", "corners", edge.Parts.Sum(p => p.Outer.Length + p.Holes.Sum(h => h.Length)), string.Empty, "edge of " + field.Code)
            .Step("A", "land inside the edge, holes taken off", inside.Acres, "ac", "area on the WGS 84 ellipsoid", Sources.Karney2013);
        if (field.Gross is { } gross && gross > Area.Zero)
        {
            working = working
                .Given("G", "gross acres", gross.Acres, "ac", "field " + field.Code)
                .Step("d", "edge against gross", ((inside / gross) - 1) * 100, "%", "100 (A / G − 1)", Sources.Arithmetic);
        }

        return new(inside, working);
    }
}
