using Watersown.Growth;
using Watersown.Land;
using Watersown.Nutrition;
using Watersown.Schedule;

namespace Watersown.Season.Crop;

/// <summary>Nitrogen of one time of the season.</summary>
public sealed record NitrogenPart(NitrogenTiming Timing, NutrientRate Rate, DateTimeOffset At, string By)
{
    /// <summary>Gallons of the ticket, and what the rate would have taken by the grade used here.</summary>
    public (Volume Ticket, Volume Reckoned)? Aqua { get; init; }
}

/// <summary>What a field has had and what its readings say.</summary>
/// <param name="Field">The field.</param>
/// <param name="Nitrogen">In order.</param>
/// <param name="Readings">The newest of each.</param>
public sealed record FieldNutrition(Field Field, ImmutableArray<NitrogenPart> Nitrogen, ImmutableArray<(NutrientRead Read, LevelSaid Said, DateTimeOffset At)> Readings)
{
    public NutrientRate Total => Nitrogen.Aggregate(NutrientRate.Zero, (sum, n) => sum + n.Rate);

    /// <summary>Days from injection to water, so far where there is no water yet; none where no aqua is on.</summary>
    public int? AquaDays { get; init; }

    /// <summary>Water stands on it: the days have ended.</summary>
    public bool Flooded { get; init; }

    /// <summary>The stage at which a topdress is decided.</summary>
    public StageDate? Window { get; init; }

    /// <summary>The newest decision.</summary>
    public (Mark Mark, TopdressDecided Decision)? Topdress { get; init; }
}

/// <summary>Nutrition of fields from their marks.</summary>
public static class FieldNutritions
{
    /// <summary>Aqua as it usually comes: the ticket beats it.</summary>
    [Source(nameof(Sources.AquaUsual), "20 % N, 7.6 lb/gal at 60 °F")]
    public static AquaGrade UsualAqua { get; } = new(Fraction.FromPercent(20), Mass.FromPounds(7.6));

    /// <summary>What a field has had.</summary>
    [Source(nameof(Sources.FarmRecord), "marks of the field")]
    public static FieldNutrition Of(SeasonBook book, Field field)
    {
        var (told, season) = (book.Field(field.Code), book.State.Season(field.Code));
        var marks = told.Story.Where(l => l.Standing == Standing.Stands).Select(l => l.Mark).ToList();
        var parts = marks.Where(m => m.Fact is NitrogenOn).Select(m => Part((NitrogenOn)m.Fact, m, field)).ToImmutableArray();
        var readings = marks.Where(m => m.Fact is NutrientRead).Select(m => (Read: (NutrientRead)m.Fact, m.Happened)).GroupBy(r => r.Read.Reading)
            .Select(g => g.Last()).OrderBy(r => r.Read.Reading).Select(r => (r.Read, CriticalLevels.Of(r.Read.Reading, r.Read.Value), r.Happened)).ToImmutableArray();
        DateOnly? injected = season.AquaOn ?? (parts.FirstOrDefault(p => p.Timing == NitrogenTiming.Aqua) is { } aqua ? FarmTime.Day(book.State, aqua.At) : null);
        var water = season.FirstWater ?? season.FullSince ?? season.SownAt;
        var until = FarmTime.Day(book.State, water ?? book.Now);
        return new FieldNutrition(field, parts, readings)
        {
            AquaDays = injected is { } day ? Math.Max(0, until.DayNumber - day.DayNumber) : null,
            Flooded = water is not null,
            Window = SeasonStages.Of(book, field.Code)?.Calendar.Of(CropStage.PanicleInitiation),
            Topdress = marks.Where(m => m.Fact is TopdressDecided).Select(m => ((Mark, TopdressDecided)?)(m, (TopdressDecided)m.Fact)).LastOrDefault(),
        };
    }

    /// <summary>Fields whose aqua waits for water, the longest first.</summary>
    [Source(nameof(Sources.FarmDefault), "longer than 7 days")]
    public static ImmutableArray<FieldNutrition> Waiting(SeasonBook book) =>
        [.. book.State.Farm.Fields.Select(f => Of(book, f)).Where(n => n is { Flooded: false, AquaDays: { } days } && AquaWait.Of(days) != AquaWaitBand.Fine).OrderByDescending(n => n.AquaDays)];

    private static NitrogenPart Part(NitrogenOn on, Mark mark, Field field) => new(on.Timing, on.Rate, mark.Happened, mark.By)
    {
        Aqua = on is { Timing: NitrogenTiming.Aqua, Ticket: { } ticket } ? (ticket, Aqua.Needed(on.Rate, field.Net, UsualAqua)) : null,
    };
}
