using Watersown.Schedule;

namespace Watersown.Season.FieldRecords;

/// <summary>Land of one field sown on one day.</summary>
/// <param name="Day">The farm's day.</param>
/// <param name="Field">Field code.</param>
/// <param name="Land">How much.</param>
/// <param name="Together">All land sown for the first time up to and with this line.</param>
public sealed record SownDay(DateOnly Day, string Field, Area Land, Area Together)
{
    /// <summary>The sowing as told; none where only the farm document says that the field is sown.</summary>
    public Sowing? Sowing { get; init; }
}

/// <summary>What was sown by day.</summary>
public static class SownDays
{
    /// <summary>Every sowing in order of its day; land sown again is listed and not added.</summary>
    [Source(nameof(Sources.FarmRecord), "sowings as told, summed over their days")]
    public static ImmutableArray<SownDay> Of(SeasonBook book)
    {
        var lines = book.State.Farm.Fields.SelectMany(f =>
        {
            var told = book.Field(f.Code).SownBefore.AddRange(book.Field(f.Code).Sowings);
            return !told.IsEmpty ? told.Select(s => (s.At, f.Code, s.Land, Sowing: (Sowing?)s))
                : book.State.Season(f.Code).SownAt is { } at ? [(at, f.Code, f.Net, null)] : [];
        }).OrderBy(l => l.At).ThenBy(l => l.Code, StringComparer.Ordinal);
        var together = Area.Zero;
        var days = ImmutableArray.CreateBuilder<SownDay>();
        foreach (var (at, code, land, sowing) in lines)
        {
            if (sowing is not { Resow: true }) together += land;
            days.Add(new SownDay(FarmTime.Day(book.State, at), code, land, together) { Sowing = sowing });
        }

        return days.ToImmutable();
    }
}
