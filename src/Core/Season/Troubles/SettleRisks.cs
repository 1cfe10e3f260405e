using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Shapes;
using Watersown.Water;
using Watersown.Weather;

namespace Watersown.Season.Troubles;

/// <summary>How wind has pulled at the loose seed of a field. Ranks fields to look at; promises nothing.</summary>
/// <param name="Field">The field.</param>
/// <param name="SownAt">When it was sown.</param>
public sealed record SettleRisk(Field Field, DateTimeOffset SownAt)
{
    /// <summary>The index; only its order means something.</summary>
    [PlainNumber("an index; only its order means something")]
    public required double Index { get; init; }

    /// <summary>The index over that of the first.</summary>
    public Fraction Share { get; init; }

    /// <summary>Depth told, or the sowing depth where nobody told one.</summary>
    public required WaterDepth Depth { get; init; }

    public required bool DepthTold { get; init; }

    /// <summary>The strongest wind since it was sown; none where nobody told of any.</summary>
    public Wind? Strongest { get; init; }

    /// <summary>Water from levee to levee along that wind, at most.</summary>
    public Length? Fetch { get; init; }

    /// <summary>No levees are drawn: the fetch is the field's extent over the root of its number of checks.</summary>
    public bool FetchGuessed { get; init; }

    /// <summary>How that wind leans the water, once it has blown a quarter of an hour.</summary>
    public LeaningWater? Lean { get; init; }

    /// <summary>Strongest wind still forecast while its seed is loose.</summary>
    public Wind? Coming { get; init; }

    /// <summary>Somebody looked since the strongest wind.</summary>
    public bool Scouted { get; init; }

    public required Working Working { get; init; }
}

/// <summary>Ranks the fields sown within three days by what wind did over them.</summary>
public static class SettleRisks
{
    /// <summary>The fields, the most at risk first. Empty where nothing was sown within 72 hours.</summary>
    [Source(nameof(Sources.FarmDefault), "the index of wind, fetch, depth and hours since sowing")]
    public static ImmutableArray<SettleRisk> Of(SeasonBook book)
    {
        var state = book.State;
        var fresh = state.Farm.Fields.Where(f => state.Season(f.Code).SownAt is { } at && at <= state.Now && state.Now - at < SettleIndex.Loose).Select(f => Of(book, f, state.Season(f.Code).SownAt!.Value))
            .OrderByDescending(r => r.Index).ThenByDescending(r => r.SownAt).ThenBy(r => r.Field.Code, StringComparer.Ordinal).ToImmutableArray();
        return fresh.IsEmpty || fresh[0].Index <= 0 ? fresh : [.. fresh.Select(r => r with { Share = Fraction.FromShare(r.Index / fresh[0].Index) })];
    }

    /// <summary>Water from levee to levee along a wind: the longest drawn check, or the field's extent over the root of its number of checks. An upper figure.</summary>
    [Source(nameof(Sources.CoastalEngineeringManual), "part II-2: straight-line fetch; levees end it")]
    [Source(nameof(Sources.FarmDefault), "checks shaped like the field, where none is drawn")]
    public static (Length Fetch, bool Guessed) FetchOf(Field field, Bearing? from)
    {
        if (FieldPlace.Middle(field) is not { } middle) return (Guess(FieldFlight.UsualPass, field), true);
        var plane = new MapPlane(FarmPlane.At(middle), middle);
        if (!field.Basins.IsEmpty && field.Basins.All(b => b.Boundary is not null)) return (Length.FromMeters(field.Basins.Max(b => Along(plane.Place(b.Boundary!), from))), false);
        return (Guess(Length.FromMeters(Along(FieldPlace.Outlined(field, plane, middle).Parts, from)), field), true);
    }

    private static Length Guess(Length extent, Field field) => extent / Math.Sqrt(Math.Max(1, field.Basins.Length));

    // A wind whose direction nobody told is taken along the longer side.
    private static double Along(ImmutableArray<PlanePart> parts, Bearing? from)
    {
        var (along, across) = MapGeometry.Extent(parts, from ?? Bearing.FromDegrees(0));
        return from is null ? Math.Max(along.Meters, across.Meters) : along.Meters;
    }

    private static SettleRisk Of(SeasonBook book, Field field, DateTimeOffset sown)
    {
        var state = book.State;
        var told = state.Season(field.Code).Depth;
        var depth = told is { } read && read > WaterDepth.Zero ? read : WaterTargets.Sowing;
        var hours = Blown(state, field, sown);
        var strongest = hours.OrderByDescending(h => h.Wind.Sustained).ThenByDescending(h => h.Wind.Gust).FirstOrDefault();
        var index = SettleIndex.Of(sown, depth, hours);
        return new SettleRisk(field, sown)
        {
            Index = index,
            Depth = depth,
            DepthTold = told is not null,
            Strongest = strongest?.Wind,
            Fetch = strongest?.Fetch,
            FetchGuessed = FetchOf(field, strongest?.Wind.From).Guessed,
            Lean = strongest is null ? null : WindSetup.Of(strongest.Wind.Sustained, strongest.Fetch, depth),
            Coming = state.Wind.Where(w => w.At > state.Now && w.At < sown + SettleIndex.Loose).OrderByDescending(w => w.Sustained).ThenByDescending(w => w.Gust).FirstOrDefault(),
            Scouted = strongest is not null && book.Field(field.Code).ScoutedAt > strongest.From,
            Working = Show(sown, depth, told is not null, hours, index),
        };
    }

    private static ImmutableArray<BlownHours> Blown(SeasonState state, Field field, DateTimeOffset sown)
    {
        var until = sown + SettleIndex.Loose < state.Now ? sown + SettleIndex.Loose : state.Now;
        ImmutableArray<DateTimeOffset> cuts = [sown, .. state.Wind.Select(w => w.At).Where(t => t > sown && t < until).Distinct().Order(), until];
        var hours = ImmutableArray.CreateBuilder<BlownHours>();
        for (var i = 0; i + 1 < cuts.Length; i++)
        {
            if (FlyingWindows.Standing(state, cuts[i]) is { } wind) hours.Add(new BlownHours(cuts[i], cuts[i + 1], wind, FetchOf(field, wind.From).Fetch));
        }

        return hours.ToImmutable();
    }

    private static Working Show(DateTimeOffset sown, WaterDepth depth, bool told, ImmutableArray<BlownHours> hours, double index)
    {
        var working = Working.Empty
            .Given("s", "sown", Datum.Moment(sown), string.Empty, "marks or farm")
            .Given("d", "depth", depth.Inches, "in", told ? "stick" : "not told: the sowing depth");
        foreach (var blown in hours.Where(h => h.Wind.Sustained > SettleIndex.Calm))
        {
            working = working.Given("w", "wind for " + Wording.Say.Number((blown.Until - blown.From).TotalHours, 1) + " h over " + Wording.Say.Number(blown.Fetch.Feet) + " ft", blown.Wind.Sustained.MilesPerHour, "mph",
                blown.Wind.Issued is null ? "seen" : "forecast", blown.Wind.At);
        }

        return working.Step("i", "index, to rank by", index, "mph² h ft", "Σ (w − 12)² × hours × fetch × (1 − hours since sowing / 72) × d / 2 in", Sources.FarmDefault);
    }
}
