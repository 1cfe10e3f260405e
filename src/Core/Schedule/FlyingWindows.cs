using Watersown.Flight;
using Watersown.Land;
using Watersown.Weather;

namespace Watersown.Schedule;

/// <summary>A span in which an aeroplane may be planned to sow.</summary>
/// <param name="From">First moment.</param>
/// <param name="Until">Last moment.</param>
/// <param name="Forecast">A wind forecast stands behind it; otherwise only part of the usual hours is counted on.</param>
public sealed record FlyingWindow(DateTimeOffset From, DateTimeOffset Until, bool Forecast);

/// <summary>
/// When sowing may be planned: inside the flying service's hours, by daylight, inside the pilot's wind limits as told.
/// A plan, never a permission: the pilot decides.
/// </summary>
public static class FlyingWindows
{
    /// <summary>Share of a slot that is counted on where no wind forecast reaches.</summary>
    [Source(nameof(Sources.FarmDefault), "three quarters of a slot beyond the forecast")]
    public static Fraction CountedOn { get; } = Fraction.FromPercent(75);

    /// <summary>The windows of one aeroplane from now to the horizon, in order.</summary>
    public static ImmutableArray<FlyingWindow> Of(SeasonState state, Aeroplane aeroplane)
    {
        var windows = ImmutableArray.CreateBuilder<FlyingWindow>();
        for (var day = FarmTime.Day(state, state.Now); day <= state.Horizon; day = day.AddDays(1))
        {
            foreach (var (from, until) in Slots(state, aeroplane, day)) AddCalmParts(state, aeroplane, from, until, windows);
        }

        return windows.ToImmutable();
    }

    /// <summary>The slots of a day, cut to daylight and to what is still ahead.</summary>
    public static ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)> Slots(SeasonState state, Aeroplane aeroplane, DateOnly day)
    {
        var dated = state.Slots.Where(s => s.Day == day && (s.Aeroplane is null || s.Aeroplane == aeroplane.Name)).ToImmutableArray();
        ImmutableArray<FlyingSlot> slots = dated.IsEmpty ? [new FlyingSlot(day, state.UsualFrom, state.UsualUntil)] : dated;
        var (dawn, dusk) = Daylight(state, day);
        return
        [
            .. slots.Select(s => (Later(Later(FarmTime.At(state, day, s.From), dawn), state.Now), Earlier(FarmTime.At(state, day, s.Until), dusk)))
                .Where(s => s.Item1 < s.Item2)
                .OrderBy(s => s.Item1),
        ];
    }

    /// <summary>Wind that stands at a moment: the last one seen or forecast before it, for no longer than a day.</summary>
    public static Wind? Standing(SeasonState state, DateTimeOffset moment) =>
        state.Wind.Where(w => w.At <= moment && moment - w.At < TimeSpan.FromHours(24)).MaxBy(w => w.At);

    /// <summary>Winds told for a span, with the one that stands at its start.</summary>
    internal static IEnumerable<Wind> Told(SeasonState state, DateTimeOffset from, DateTimeOffset until) =>
        state.Wind.Where(w => w.At > from && w.At < until).Append(Standing(state, from)).OfType<Wind>();

    /// <summary>Over either of the pilot's limits as told.</summary>
    public static bool TooWindy(Wind wind, Aeroplane aeroplane) =>
        wind.Sustained > aeroplane.WindLimit || wind.Gust > aeroplane.GustLimit;

    private static void AddCalmParts(SeasonState state, Aeroplane aeroplane, DateTimeOffset from, DateTimeOffset until, ImmutableArray<FlyingWindow>.Builder windows)
    {
        // The wind changes only at the moments of the list, so cut there and keep the calm pieces, joined where they touch.
        ImmutableArray<DateTimeOffset> cuts =
            [from, .. state.Wind.Select(w => w.At).Where(t => t > from && t < until).Distinct().Order(), until];
        if (Standing(state, from) is null && cuts.Length == 2)
        {
            windows.Add(new FlyingWindow(from, from + ((until - from) * CountedOn.Share), Forecast: false));
            return;
        }

        DateTimeOffset? start = null;
        for (var i = 0; i + 1 < cuts.Length; i++)
        {
            var blown = Standing(state, cuts[i]) is { } wind && TooWindy(wind, aeroplane);
            if (!blown) start ??= cuts[i];
            if (start is { } begun && (blown || i + 2 == cuts.Length))
            {
                windows.Add(new FlyingWindow(begun, blown ? cuts[i] : cuts[i + 1], Forecast: true));
                start = null;
            }
        }
    }

    /// <summary>Hours without daylight between two moments, in order.</summary>
    public static ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)> Nights(SeasonState state, DateTimeOffset from, DateTimeOffset until)
    {
        var nights = ImmutableArray.CreateBuilder<(DateTimeOffset From, DateTimeOffset Until)>();
        var start = from;
        for (var day = FarmTime.Day(state, from); FarmTime.Midnight(state, day) < until; day = day.AddDays(1))
        {
            var (dawn, dusk) = Daylight(state, day);
            Add(dawn);
            if (dusk > start) start = dusk;
        }

        Add(until);
        return nights.ToImmutable();

        void Add(DateTimeOffset end)
        {
            var stop = end < until ? end : until;
            if (stop - start > TimeSpan.FromMinutes(1)) nights.Add((start, stop));
        }
    }

    /// <summary>
    /// Civil dawn to civil dusk at the strip, or at the first field with a place; the whole day where no place is known, or
    /// where the sun does not cross that height.
    /// </summary>
    public static (DateTimeOffset Dawn, DateTimeOffset Dusk) Daylight(SeasonState state, DateOnly day)
    {
        var (midnight, end) = (FarmTime.At(state, day, TimeOnly.MinValue), FarmTime.At(state, day, TimeOnly.MaxValue));
        if (Place(state) is not { } place || !Sun.Holds(day)) return (midnight, end);
        var sun = Sun.On(day, place);
        return (sun.CivilDawn?.ToOffset(state.Offset) ?? midnight, sun.CivilDusk?.ToOffset(state.Offset) ?? end);
    }

    private static GeoPoint? Place(SeasonState state) =>
        state.Farm.Strips.Select(s => s.At).FirstOrDefault(p => p is not null) ?? state.Farm.Fields.Select(FieldFlight.Middle).FirstOrDefault(c => c is not null);

    private static DateTimeOffset Later(DateTimeOffset a, DateTimeOffset b) => a > b ? a : b;

    private static DateTimeOffset Earlier(DateTimeOffset a, DateTimeOffset b) => a < b ? a : b;
}
