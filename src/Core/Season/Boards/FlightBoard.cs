using Watersown.Flight;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Weather;

namespace Watersown.Season.Boards;

/// <summary>What is known of the wind in a slot, against the pilot's own limits.</summary>
public enum SlotAir
{
    /// <summary>Nobody has said anything about wind then.</summary>
    NoWord,
    Within,
    PartOver,
    Over,
}

/// <summary>One morning of one aeroplane. A request of the farm: the pilot decides.</summary>
/// <param name="Day">The day.</param>
/// <param name="Aeroplane">The aeroplane.</param>
public sealed record FlightMorning(DateOnly Day, Aeroplane Aeroplane)
{
    public required ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)> Slots { get; init; }

    /// <summary>Parts of the slots inside the pilot's limits, or that part of the usual hours which is counted on.</summary>
    public required ImmutableArray<FlyingWindow> Calm { get; init; }

    public required SlotAir Air { get; init; }

    /// <summary>The strongest wind and the strongest gust in the slots.</summary>
    public (Speed Sustained, Speed Gust)? Strongest { get; init; }

    /// <summary>When the forecast behind it was issued; none where the wind was seen or nobody said anything.</summary>
    public DateTimeOffset? Issued { get; init; }

    /// <summary>Flights of the plan on that day, in order.</summary>
    public required ImmutableArray<FlightSheet> Flights { get; init; }

    public required TimeSpan Needed { get; init; }

    public required TimeSpan Offered { get; init; }

    /// <summary>Who stood down that day, and why.</summary>
    public ImmutableArray<CalledOff> CalledOff { get; init; } = [];

    /// <summary>The next mornings from now, a line for each aeroplane.</summary>
    /// <param name="book">The season as it stands.</param>
    /// <param name="plan">The plan, if there is one.</param>
    /// <param name="days">How many days.</param>
    public static ImmutableArray<FlightMorning> Of(SeasonBook book, SeasonPlan? plan, int days)
    {
        var state = book.State;
        var first = FarmTime.Day(state, state.Now);
        var sheets = plan is null ? [] : FlightSheets.Of(plan with { State = state }, t => FarmTime.Day(state, t.Start) is var day && day >= first && day < first.AddDays(days));
        ImmutableArray<Aeroplane> planes = state.Aeroplanes.IsEmpty ? [new Aeroplane(string.Empty)] : state.Aeroplanes;
        return [.. Enumerable.Range(0, days).SelectMany(i => planes.Select(p => Of(book, sheets, first.AddDays(i), p)))];
    }

    private static FlightMorning Of(SeasonBook book, ImmutableArray<FlightSheet> sheets, DateOnly day, Aeroplane plane)
    {
        var state = book.State;
        var slots = FlyingWindows.Slots(state, plane, day);
        var winds = slots.SelectMany(s => Winds(state, s.From, s.Until)).Distinct().ToImmutableArray();
        var calm = FlyingWindows.Of(state, plane).Where(w => FarmTime.Day(state, w.From) == day).ToImmutableArray();
        var flights = sheets.Where(f => FarmTime.Day(state, f.From) == day && f.Aeroplane.Name == plane.Name).OrderBy(f => f.From).ToImmutableArray();
        return new FlightMorning(day, plane)
        {
            Slots = slots,
            Calm = calm,
            Air = AirOf(winds, plane),
            Strongest = winds.IsEmpty ? null : (winds.Max(w => w.Sustained), winds.Max(w => w.Gust)),
            Issued = winds.Select(w => w.Issued).Min(),
            Flights = flights,
            Needed = flights.Aggregate(TimeSpan.Zero, (sum, f) => sum + f.FlyingTime),
            Offered = calm.Aggregate(TimeSpan.Zero, (sum, w) => sum + (w.Until - w.From)),
            CalledOff = [.. book.CalledOff.Where(c => c.What.Day == day)],
        };
    }

    private static IEnumerable<Wind> Winds(SeasonState state, DateTimeOffset from, DateTimeOffset until)
    {
        if (FlyingWindows.Standing(state, from) is { } standing) yield return standing;
        foreach (var wind in state.Wind.Where(w => w.At > from && w.At < until)) yield return wind;
    }

    private static SlotAir AirOf(ImmutableArray<Wind> winds, Aeroplane plane)
    {
        if (winds.IsEmpty) return SlotAir.NoWord;
        var over = winds.Count(w => FlyingWindows.TooWindy(w, plane));
        return over == 0 ? SlotAir.Within : over == winds.Length ? SlotAir.Over : SlotAir.PartOver;
    }
}
