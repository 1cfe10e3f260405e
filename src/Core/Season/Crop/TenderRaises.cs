using Watersown.Growth;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Season.Troubles;

namespace Watersown.Season.Crop;

/// <summary>Fields of one source whose tender nights are to come or have begun, and the deep water that keeps them.</summary>
/// <param name="Source">The source.</param>
/// <param name="Stages">The fields, the one that is tender first in front.</param>
/// <param name="Raise">What it takes to raise them by the moment asked for.</param>
public sealed record TenderRaise(WaterSource Source, ImmutableArray<FieldStages> Stages, ColdNightRaise Raise)
{
    /// <summary>Panicle initiation of the first of them: from then on deep water is worth having.</summary>
    public required DateOnly Initiation { get; init; }

    /// <summary>Land of the fields.</summary>
    public Area Land => Stages.Aggregate(Area.Zero, (sum, s) => sum + s.Field.Net);
}

/// <summary>Joins the stages of the fields with what their sources can raise.</summary>
public static class TenderRaises
{
    /// <summary>Deep water is looked at so many days before panicle initiation; earlier it is nobody's thought. Common practice.</summary>
    private const int AheadDays = 21;

    /// <summary>By source, those first whose fields are tender first. Fields that are past it are left out.</summary>
    /// <param name="book">The season.</param>
    /// <param name="plan">The plan, which may lead water to a field from another source than its first.</param>
    /// <param name="by">When the water must stand.</param>
    [Source(nameof(Sources.WaterBalance), "Σ land × (target − depth), over the flow left once what is wet is held")]
    public static ImmutableArray<TenderRaise> Of(SeasonBook book, SeasonPlan? plan, DateTimeOffset by)
    {
        var today = FarmTime.Day(book.State, book.Now);
        return
        [
            .. SeasonStages.All(book).Where(s => s.Tender is { } nights && nights.Latest >= today && s.Calendar.Of(CropStage.PanicleInitiation) is { } initiation && initiation.Day <= today.AddDays(AheadDays))
                .OrderBy(s => s.Tender!.From).GroupBy(s => FieldSource.First(plan, s.Field), StringComparer.Ordinal)
                .Select(g => Of(book, plan, by, g.Key, [.. g])).OfType<TenderRaise>().OrderBy(r => r.Stages[0].Tender!.From).ThenBy(r => r.Source.Code, StringComparer.Ordinal),
        ];
    }

    /// <summary>Coming nights that somebody told as cold, from the farm's warmth and its forecasts by hand.</summary>
    [Source(nameof(Sources.ColdNightLimit), "at or below 55 °F")]
    public static ImmutableArray<DateOnly> ColdNights(SeasonBook book, TenderNights nights)
    {
        var today = FarmTime.Day(book.State, book.Now);
        return [.. book.Weather.Known.Where(k => k.Day >= today && nights.MayHold(k.Day) && k.Warmth.Low <= TenderNights.Cold).Select(k => k.Day)];
    }

    private static TenderRaise? Of(SeasonBook book, SeasonPlan? plan, DateTimeOffset by, string? source, ImmutableArray<FieldStages> stages)
    {
        if (book.State.Farm.Sources.FirstOrDefault(s => s.Code == source) is not { } from) return null;
        var raise = ColdNightRaises.Of(book.State, new RaiseWish(from.Code, by) { Fields = [.. stages.Select(s => s.Field.Code)] }, plan);
        return new TenderRaise(from, stages, raise) { Initiation = stages.Min(s => s.Calendar.Of(CropStage.PanicleInitiation)!.Day) };
    }
}
