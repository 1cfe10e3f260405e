using Watersown.Flight;
using Watersown.Flight.AtStrip;
using Watersown.Schedule;

namespace Watersown.Season.Boards;

/// <summary>A morning at the strip: the fields to be flown by all aeroplanes, and the hours there are.</summary>
/// <param name="Day">The day.</param>
/// <param name="Aeroplane">The aeroplane reckoned with; the others are taken as alike.</param>
/// <param name="Jobs">What is to be flown, in order.</param>
/// <param name="Offered">The hours of the morning that the plan counts on.</param>
public sealed record StripBoard(DateOnly Day, Aeroplane Aeroplane, ImmutableArray<StripJob> Jobs, TimeSpan Offered)
{
    /// <summary>The mornings on which something is to be flown.</summary>
    public static ImmutableArray<StripBoard> Of(SeasonState state, IEnumerable<FlightMorning> mornings) =>
    [
        .. mornings.GroupBy(m => m.Day).Where(day => day.Any(m => !m.Flights.IsEmpty)).OrderBy(day => day.Key)
            .Select(day => new StripBoard(day.Key, day.First(m => !m.Flights.IsEmpty).Aeroplane, [.. day.SelectMany(m => m.Flights).OrderBy(f => f.From).Select(f => Job(state, f))], day.Max(m => m.Offered))),
    ];

    private static StripJob Job(SeasonState state, FlightSheet flight) =>
        new(flight.Field.Code, flight.Land, flight.WetRate, new StripSeed(flight.Seed.Variety, flight.Seed.Lot, flight.Seed.Batch))
        {
            PassLength = FieldFlight.PassLength(flight.Field, flight.Aeroplane),
            Ferry = FieldFlight.Ferry(state, flight.Field, flight.Aeroplane),
            Beside = [.. flight.Neighbors.Select(n => n.Field.Code)],
        };
}
