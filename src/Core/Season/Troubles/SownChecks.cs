using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Seed;

namespace Watersown.Season.Troubles;

/// <summary>What the seed left over says of a field, and where and when to look.</summary>
/// <param name="Field">The field.</param>
/// <param name="Answer">The sum.</param>
/// <param name="Look">Day to look at the stand along the run edges.</param>
public sealed record SownCheck(Field Field, SownAnswer Answer, DateOnly Look)
{
    /// <summary>Direction of the runs; none where nobody knows.</summary>
    public Bearing? Run { get; init; }
}

/// <summary>Reconciles seed in and seed left of a field that was sown.</summary>
public static class SownChecks
{
    /// <summary>A skip shows so long after sowing.</summary>
    [Source(nameof(Sources.FarmDefault), "ten days")]
    public const int LookAfterDays = 10;

    /// <summary>The check of a field; none while nobody told what was left, or nothing was sown.</summary>
    [Source(nameof(Sources.MassBalance), "seed in less seed left")]
    public static SownCheck? Of(SeasonBook book, string code)
    {
        var state = book.State;
        var (told, season) = (book.Field(code), state.Season(code));
        if (told.Left is not { } left || told.Sowings.IsEmpty) return null;
        var (field, last) = (state.Farm.Field(code), told.Sowings[^1]);
        var land = told.Sown > Area.Zero ? told.Sown : field.Net;
        var batch = last.Batch is { } name ? state.Batches.FirstOrDefault(b => b.Code == name) ?? book.Batch(name)?.Batch : null;
        var lot = state.Lots.FirstOrDefault(l => l.Code == batch?.Lot);
        var factor = FlightSheets.Factor(state, null, lot).Factor;
        var wanted = season.Rate * land;
        var brought = Brought(book, told) ?? Soaking.Weigh(last.Dry is { } dry && told.Sowings.Length == 1 ? dry : wanted, factor);
        if (brought <= SoakedSeed.Zero || land <= Area.Zero || season.Rate.KilogramsPerSquareMeter <= 0) return null;
        var plane = state.Aeroplanes.IsEmpty ? new Aeroplane(string.Empty) : state.Aeroplanes[0];
        var answer = SeedLeftOver.Of(new SownSeed(brought, left, land, season.Rate) { WetFactor = factor, FactorWeighed = lot?.WetFactor is not null });
        return new SownCheck(field, answer, FarmTime.Day(state, last.At).AddDays(LookAfterDays)) { Run = FieldMaps.Of(field, plane, FieldPlace.Of(state, field, plane))?.Run };
    }

    // The scale beats the plan, where every trailer that gave a load or was for the field was weighed.
    private static SoakedSeed? Brought(SeasonBook book, FieldBook told)
    {
        var numbers = told.Loads.Select(l => l.Trailer).OfType<string>().Concat(book.Trailers.Where(t => t.Field is { } f && string.Equals(f, told.Code, StringComparison.OrdinalIgnoreCase)).Select(t => t.Number))
            .Distinct(StringComparer.OrdinalIgnoreCase).ToImmutableArray();
        var tickets = numbers.Select(n => ScaleTickets.Of(book, n)).ToImmutableArray();
        return tickets.IsEmpty || tickets.Any(t => t is null) ? null : tickets.Aggregate(SoakedSeed.Zero, (sum, t) => sum + t!.Soaked);
    }
}
