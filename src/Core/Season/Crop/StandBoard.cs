using Watersown.Land;
using Watersown.Stand;

namespace Watersown.Season.Crop;

/// <summary>One zone as counted.</summary>
/// <param name="Zone">Its name, land and rings.</param>
/// <param name="Stand">What they say.</param>
/// <param name="Mark">The newest mark of it.</param>
public sealed record CountedZone(StandZone Zone, StandEstimate Stand, Mark Mark)
{
    /// <summary>It is to be judged by itself.</summary>
    public required bool Thin { get; init; }

    /// <summary>Nobody told its land: what was left of the field, shared out.</summary>
    public bool LandGuessed { get; init; }

    /// <summary>Rings still to throw for the precision asked; none where the rings cannot say.</summary>
    public long? ToGo { get; init; }
}

/// <summary>The stand of a field as its rings tell it.</summary>
/// <param name="Field">The field.</param>
/// <param name="Zones">In the order of the farm's words for them.</param>
/// <param name="Whole">The field, weighted by land.</param>
public sealed record StandBoard(Field Field, ImmutableArray<CountedZone> Zones, StandEstimate Whole)
{
    /// <summary>The field's mean looks fine and hides a thin zone.</summary>
    public bool Hides => ThinZones.IsFine(Whole) && Zones.Any(z => z.Thin);

    /// <summary>Land of the zones differs from the field's by more than a twentieth.</summary>
    public bool LandOff { get; init; }

    public required Working Working { get; init; }

    /// <summary>The mean of all rings, however much land each stands for: shown only to say that it is not the field's.</summary>
    public PlantDensity Plain { get; init; }
}

/// <summary>Rings of a field put together to its stand.</summary>
public static class StandBoards
{
    /// <summary>Land of the zones may differ from the field's by so much.</summary>
    private const double LandSlack = 0.05;

    /// <summary>The stand of a field; none where no ring was counted.</summary>
    /// <param name="book">The season.</param>
    /// <param name="field">The field.</param>
    /// <param name="precision">How near each zone's mean is wanted.</param>
    [Source(nameof(Sources.Cochran1977), "weighted by land")]
    [Source(nameof(Sources.MissouriSampleSize), "n = (t CV / E)²")]
    public static StandBoard? Of(SeasonBook book, Field field, Fraction precision)
    {
        var counts = book.Field(field.Code).Counts.Where(c => !c.Count.Rings.IsEmpty).ToImmutableArray();
        if (counts.IsEmpty) return null;
        var told = counts.Aggregate(Area.Zero, (sum, c) => sum + (c.Count.ZoneLand ?? Area.Zero));
        var silent = counts.Count(c => c.Count.ZoneLand is null);
        var rest = silent == 0 ? Area.Zero : (field.Net > told ? field.Net - told : field.Net * 0.01) * (1.0 / silent);
        ImmutableArray<StandZone> zones = [.. counts.Select(c => new StandZone(c.Count.Zone, c.Count.ZoneLand ?? rest, [.. c.Count.Rings.Select(r => r / (c.Count.Ring ?? OneFoot).SquareFeet)]))];
        var report = StandCounts.Assess(zones, OneFoot);
        var all = zones.SelectMany(z => z.Counts).ToList();
        return new StandBoard(
            field,
            [
                .. zones.Select((z, i) => new CountedZone(z, report.Zones[i], counts[i].Mark)
                {
                    Thin = ThinZones.IsThin(report.Zones[i], report.Whole),
                    LandGuessed = counts[i].Count.ZoneLand is null,
                    ToGo = ToGo(z, precision),
                }),
            ],
            report.Whole)
        {
            LandOff = silent == 0 && Math.Abs((told / field.Net) - 1) > LandSlack,
            Plain = PlantDensity.FromPerSquareFoot(all.Average()),
            Working = StandWorking.Show(OneFoot, zones, report),
        };
    }

    /// <summary>Land inside a ring of a foot each way.</summary>
    public static Area OneFoot { get; } = Area.FromSquareFeet(1);

    private static long? ToGo(StandZone zone, Fraction precision)
    {
        var mean = zone.Counts.Average();
        if (zone.Counts.Length < 2 || mean <= 0) return null;
        var deviation = Math.Sqrt(zone.Counts.Sum(c => (c - mean) * (c - mean)) / (zone.Counts.Length - 1));
        var t = StudentT.Quantile((1 + StandCounts.Confidence) / 2, zone.Counts.Length - 1);
        return Math.Max(0, SampleSize.Whole(SampleSize.Exact(mean, deviation, precision, t)) - zone.Counts.Length);
    }
}
