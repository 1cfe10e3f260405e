using Watersown.Growth;
using Watersown.Harvest;
using Watersown.Holds;
using Watersown.Land;
using Watersown.Season.Crop;

namespace Watersown.Season.Harvests;

/// <summary>One field's drain.</summary>
/// <param name="Field">The field.</param>
/// <param name="Heading">Half heading, reckoned or seen.</param>
/// <param name="Dates">What follows from it.</param>
public sealed record DrainLine(Field Field, StageDate Heading, Worked<DrainDates> Dates)
{
    /// <summary>Ripe by the count of warmth; none where the days do not reach so far.</summary>
    public StageDate? Ripe { get; init; }

    /// <summary>When the boards came out.</summary>
    public DateTimeOffset? Out { get; init; }

    /// <summary>Its soil lets water go fast.</summary>
    public required bool Light { get; init; }

    /// <summary>Somebody says that no water may be let out of it.</summary>
    public required bool NoSpill { get; init; }
}

/// <summary>When the boards may come out, field by field, the earliest first.</summary>
public static class DrainBoard
{
    /// <summary>A soil that loses more than this in a day is light or leaky. Common practice, no source.</summary>
    public static DepthRate LightAbove { get; } = DepthRate.FromInchesPerDay(0.15);

    /// <summary>Every sown field that is not cut yet and whose heading can be told.</summary>
    /// <param name="book">The season.</param>
    /// <param name="plan">The order of cutting, where one is known.</param>
    public static ImmutableArray<DrainLine> Of(SeasonBook book, HarvestPlan? plan) =>
    [
        .. SeasonStages.All(book).Where(s => book.Harvest.Field(s.Field.Code).Left(s.Field.Net) > Area.Zero)
            .Select(s => Line(book, s, plan)).OfType<DrainLine>().OrderBy(l => l.Dates.Value.Earliest).ThenBy(l => l.Field.Code, StringComparer.Ordinal),
    ];

    /// <summary>The first day on which a field's ground may carry a combine; none where nothing is known of it.</summary>
    public static DateOnly? Carries(SeasonBook book, Field field) =>
        book.Harvest.Field(field.Code).BoardsOut is { } boards ? DateOnly.FromDayNumber((int)(boards.Ticks / TimeSpan.TicksPerDay)).AddDays(DrainDates.Drying(IsLight(book, field)).From) : null;

    private static DrainLine? Line(SeasonBook book, FieldStages stages, HarvestPlan? plan)
    {
        if (stages.Calendar.Of(CropStage.Heading) is not { } heading) return null;
        var light = IsLight(book, stages.Field);
        var notice = stages.Field.Sources.Select(book.State.Farm.Source).FirstOrDefault(s => s is not null)?.Notice ?? TimeSpan.Zero;
        var ask = new DrainAsk(heading.Day, heading.ErrorDays, light)
        {
            Notice = notice,
            CutOn = plan?.Of(stages.Field.Code).Select(c => (DateOnly?)c.Day).FirstOrDefault(),
            HeldThrough = book.Holds.Ledger.FirstOrDefault(h => string.Equals(h.Field, stages.Field.Code, StringComparison.OrdinalIgnoreCase))?.Holds
                .Where(h => h.State == TreatmentState.Applied).Select(h => (DateOnly?)h.Held.Until).Max(),
        };
        return new DrainLine(stages.Field, heading, DrainDates.Of(ask))
        {
            Ripe = stages.Calendar.Of(CropStage.Mature),
            Out = book.Harvest.Field(stages.Field.Code).BoardsOut,
            Light = light,
            NoSpill = book.State.Fields.Any(f => f.Code == stages.Field.Code && f.NoSpill),
        };
    }

    private static bool IsLight(SeasonBook book, Field field) => book.State.Farm.SoilOf(field) is { } soil && soil.Seepage > LightAbove;
}
