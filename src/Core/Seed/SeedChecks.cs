using System.Globalization;
using Watersown.Wording;

namespace Watersown.Seed;

/// <summary>Whether the facts of lots and batches can be true together.</summary>
public static class SeedChecks
{
    /// <summary>Lots and batches against each other.</summary>
    public static ImmutableArray<Problem> Check(ImmutableArray<SeedLot> lots, ImmutableArray<SoakBatch> batches)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        Unique(lots.Select(l => l.Code), "lots", problems);
        Unique(batches.Select(b => b.Code), "batches", problems);
        for (var i = 0; i < batches.Length; i++) CheckBatch(lots, batches[i], i, problems);
        var trailers = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < batches.Length; i++)
        {
            foreach (var trailer in batches[i].Trailers)
            {
                if (trailer.Length > 0 && !trailers.TryAdd(trailer, batches[i].Code))
                    problems.Add(SeedProblems.TrailerTwice.At(Place.Of("batches", i, batches[i].Code, "trailers"), ("value", trailer), ("other", trailers[trailer])));
            }
        }

        return problems.ToImmutable();
    }

    /// <summary>Hours of the soak place in their order.</summary>
    public static ImmutableArray<Problem> Check(SoakPlace place)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        if (place.SoakMost < place.SoakLeast)
            problems.Add(SeedProblems.SoakHours.At("soak_place.soak_most_h", ("value", Hours(place.SoakMost)), ("limit", Hours(place.SoakLeast))));
        if (place.SoakLost < place.SoakMost)
            problems.Add(SeedProblems.SoakHours.At("soak_place.soak_lost_h", ("value", Hours(place.SoakLost)), ("limit", Hours(place.SoakMost))));
        return problems.ToImmutable();
    }

    private static void CheckBatch(ImmutableArray<SeedLot> lots, SoakBatch batch, int index, ImmutableArray<Problem>.Builder problems)
    {
        string Where(string key) => Place.Of("batches", index, batch.Code, key);
        var lot = lots.FirstOrDefault(l => string.Equals(l.Code, batch.Lot, StringComparison.Ordinal));
        if (lot is null && batch.Lot.Length > 0 && !lots.IsEmpty) problems.Add(SeedProblems.UnknownLot.At(Where("lot"), ("value", batch.Lot)));
        if (lot is { Variety.Length: > 0 } && batch.Variety.Length > 0 && !string.Equals(lot.Variety, batch.Variety, StringComparison.Ordinal))
            problems.Add(SeedProblems.SecondVariety.At(Where("variety"), ("value", batch.Variety), ("limit", lot.Variety), ("lot", lot.Code)));
        if (batch.Drained is { } drained && drained < batch.InSoak)
            problems.Add(SeedProblems.DrainedBeforeSoak.At(Where("drained"), ("value", Moment(drained)), ("limit", Moment(batch.InSoak))));
        else if (batch.Drained - batch.InSoak is { } soaked && (soaked < SeedLimits.UsualSoakLeast || soaked > SeedLimits.UsualSoakMost))
            problems.Add(SeedProblems.SoakUnusual.At(Where("drained"), ("value", Hours(soaked))));
        if (batch.Weighed is { } wet && batch.Dry > DrySeed.Zero && wet.Pounds / batch.Dry.Pounds is < 1.10 or > 1.40)
        {
            problems.Add(SeedProblems.WeightUnusual.At(Where("weighed_wet_lb"),
                ("value", Say.Number(wet.Pounds) + " lb"), ("share", Say.Number(100 * wet.Pounds / batch.Dry.Pounds) + " %")));
        }
    }

    private static void Unique(IEnumerable<string> codes, string list, ImmutableArray<Problem>.Builder problems)
    {
        var first = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        var index = -1;
        foreach (var code in codes)
        {
            index++;
            if (code.Length == 0 || first.TryAdd(code, index)) continue;
            problems.Add(SeedProblems.CodeTwice.At(Place.Of(list, index, string.Empty, "code"), ("value", code), ("other", Place.Of(list, first[code], string.Empty))));
        }
    }

    private static string Hours(TimeSpan span) => Say.Number(span.TotalHours, 1) + " h";

    private static string Moment(DateTimeOffset moment) => moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
