using Watersown.Growth;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Weather;

namespace Watersown.Season.Crop;

/// <summary>The stages of one field's crop, with what they rest on.</summary>
/// <param name="Field">The field.</param>
/// <param name="Sown">The day it was sown.</param>
/// <param name="Calendar">Its stages.</param>
/// <param name="Targets">Warmth to the stages, and whose.</param>
public sealed record FieldStages(Field Field, DateOnly Sown, StageCalendar Calendar, ClassTargets Targets)
{
    /// <summary>No lot tells how early its variety ripens.</summary>
    public bool ClassUnknown { get; init; }

    /// <summary>Days since sowing that were measured, and that were filled in.</summary>
    public (int Measured, int Filled) Past { get; init; }

    /// <summary>The nights in which cold makes blank heads.</summary>
    public TenderNights? Tender => TenderNights.Of(Calendar);

    public required Working Working { get; init; }
}

/// <summary>Stages of the farm's fields from its weather, its normals and what was seen.</summary>
public static class SeasonStages
{
    /// <summary>No rice stands longer than this.</summary>
    private const int DaysMost = 220;

    /// <summary>Every sown field, the one furthest along first.</summary>
    public static ImmutableArray<FieldStages> All(SeasonBook book) =>
        [.. book.State.Farm.Fields.Select(f => Of(book, f.Code)).OfType<FieldStages>().OrderBy(s => s.Sown).ThenBy(s => s.Field.Code, StringComparer.Ordinal)];

    /// <summary>The stages of a field; none while it is not sown.</summary>
    public static FieldStages? Of(SeasonBook book, string code)
    {
        var field = book.State.Farm.Fields.FirstOrDefault(f => string.Equals(f.Code, code, StringComparison.OrdinalIgnoreCase));
        return field is null || book.State.Season(field.Code).SownAt is not { } sown || sown > book.Now ? null : On(book, field, FarmTime.Day(book.State, sown), book.Field(field.Code));
    }

    /// <summary>The stages that a field would have if it were sown on a day.</summary>
    public static FieldStages If(SeasonBook book, Field field, DateOnly sown) => On(book, field, sown, new FieldBook(field.Code));

    private static FieldStages On(SeasonBook book, Field field, DateOnly sown, FieldBook told)
    {
        var days = DaySeries.Of(book.Weather.Known, book.Weather.Normals, sown, sown.AddDays(DaysMost));
        var maturity = Class(book.State, field.Code);
        var targets = book.Targets.Of(maturity ?? Maturity.Other);
        var calendar = StageClock.Of(new StageQuestion(sown, days, targets.Targets)
        {
            Seen = [.. told.Stages.Select(s => new StageSighting(s.Seen.Point, FarmTime.Day(book.State, s.Mark.Happened)))],
            Water = [.. told.Flood],
        });
        var today = FarmTime.Day(book.State, book.Now);
        var past = days.Where(d => d.Day < today).ToList();
        var count = (past.Count(d => d.Measured), past.Count(d => !d.Measured));
        return new FieldStages(field, sown, calendar, targets) { ClassUnknown = maturity is null, Past = count, Working = StageWorking.Show(calendar, targets, book, count, today) };
    }

    private static Maturity? Class(SeasonState state, string code) =>
        state.Season(code).Variety is { } variety ? state.Lots.FirstOrDefault(l => string.Equals(l.Variety, variety, StringComparison.OrdinalIgnoreCase))?.Maturity : null;
}
