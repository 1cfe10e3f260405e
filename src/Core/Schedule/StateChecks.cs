using System.Globalization;
using Watersown.Land;
using Watersown.Seed;
using Watersown.Weather;
using Watersown.Wording;

namespace Watersown.Schedule;

/// <summary>Whether a season as it stands can be true: the farm, its fields' progress, seed, air and people together.</summary>
public static class StateChecks
{
    /// <summary>Everything found: the ground first, then the season in its own order.</summary>
    public static ImmutableArray<Problem> Check(SeasonState state)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        problems.AddRange(LandChecks.Check(state.Farm, state.Now));
        if (state.Horizon < Today(state))
            problems.Add(StateProblems.HorizonPast.At("horizon", ("value", Day(state.Horizon)), ("limit", Day(Today(state)))));
        for (var i = 0; i < state.Fields.Length; i++) FieldChecks.Check(state, i, problems);
        problems.AddRange(SeedChecks.Check(state.Lots, state.Batches));
        CheckBatches(state, problems);
        if (state.SoakPlace is { } place) problems.AddRange(SeedChecks.Check(place));
        CheckAir(state, problems);
        CheckWeather(state, problems);
        CheckWork(state, problems);
        return problems.ToImmutable();
    }

    private static void CheckBatches(SeasonState state, ImmutableArray<Problem>.Builder problems)
    {
        ImmutableArray<string> codes = [.. state.Fields.Select(f => f.Code)];
        for (var i = 0; i < state.Batches.Length; i++)
        {
            var batch = state.Batches[i];
            if (batch.Drained is { } drained) InFuture(drained, state, Place.Of("batches", i, batch.Code, "drained"), problems);
            foreach (var code in batch.MeantFor)
            {
                var where = Place.Of("batches", i, batch.Code, "meant_for");
                if (LandChecks.Missing(code, codes, "the fields of this farm", where) is { } missing) problems.Add(missing);
                var variety = state.Fields.FirstOrDefault(f => string.Equals(f.Code, code, StringComparison.Ordinal))?.Variety;
                if (variety is { Length: > 0 } && batch.Variety.Length > 0 && !string.Equals(variety, batch.Variety, StringComparison.Ordinal))
                    problems.Add(SeedProblems.OtherVariety.At(where, ("value", batch.Variety), ("field", code), ("limit", variety)));
            }
        }
    }

    private static void CheckAir(SeasonState state, ImmutableArray<Problem>.Builder problems)
    {
        ImmutableArray<string> strips = [.. state.Farm.Strips.Select(s => s.Name)];
        for (var i = 0; i < state.Aeroplanes.Length; i++)
        {
            var plane = state.Aeroplanes[i];
            if (plane.TopLoad is { } top && top.Kilograms > 0 && plane.WorkingLoad > top)
                problems.Add(StateProblems.LoadAboveTop.At(Place.Of("aeroplanes", i, plane.Name, "working_load_wet_lb"), ("value", Wet(plane.WorkingLoad)), ("limit", Wet(top))));
            if (plane.Strip is { } strip && LandChecks.Missing(strip, strips, "the strips of this farm", Place.Of("aeroplanes", i, plane.Name, "strip")) is { } missing)
                problems.Add(missing);
        }

        ImmutableArray<string> planes = [.. state.Aeroplanes.Select(a => a.Name)];
        for (var i = 0; i < state.Slots.Length; i++)
        {
            var slot = state.Slots[i];
            Reversed(slot.From, slot.Until, Place.Of("slots", i, Day(slot.Day), "until"), problems);
            if (slot.Aeroplane is { } plane && LandChecks.Missing(plane, planes, "the aeroplanes of this farm", Place.Of("slots", i, Day(slot.Day), "aeroplane")) is { } missing)
                problems.Add(missing);
        }

        Reversed(state.UsualFrom, state.UsualUntil, "flying_hours.until", problems);
    }

    private static void CheckWeather(SeasonState state, ImmutableArray<Problem>.Builder problems)
    {
        for (var i = 0; i < state.Wind.Length; i++)
        {
            var wind = state.Wind[i];
            if (wind.Gust < wind.Sustained)
                problems.Add(StateProblems.GustBelowWind.At(Place.Of("wind", i, Moment(wind.At), "gust_mph"), ("value", Mph(wind.Gust)), ("limit", Mph(wind.Sustained))));
            if (i > 0 && state.Wind[i - 1].At == wind.At)
                problems.Add(StateProblems.SameMoment.At(Place.Of("wind", i, string.Empty, "at"), ("value", Moment(wind.At))));
        }

        var issued = state.Wind.Where(w => w.Issued is not null).Select(w => w.Issued!.Value).DefaultIfEmpty(state.Now).Max();
        if (state.Now - issued > WeatherLimits.ForecastOld)
            problems.Add(StateProblems.ForecastOld.At("wind", ("value", Moment(issued)), ("limit", Say.Number((state.Now - issued).TotalHours) + " h")));
        for (var i = 0; i < state.Warmth.Length; i++)
        {
            var day = state.Warmth[i];
            if (day.Low > day.High)
                problems.Add(StateProblems.LowAboveHigh.At(Place.Of("warmth", i, Day(day.Day), "low_f"), ("value", Fahrenheit(day.Low)), ("limit", Fahrenheit(day.High))));
        }
    }

    private static void CheckWork(SeasonState state, ImmutableArray<Problem>.Builder problems)
    {
        Reversed(state.Crew.WorkFrom, state.Crew.WorkUntil, "crew.work_until", problems);
        ImmutableArray<string> codes = [.. state.Fields.Select(f => f.Code)];
        for (var i = 0; i < state.Pins.Length; i++)
        {
            if (LandChecks.Missing(state.Pins[i].Field, codes, "the fields of this farm", Place.Of("pins", i, string.Empty, "field")) is { } missing) problems.Add(missing);
        }

        for (var i = 0; i < state.People.Length; i++)
        {
            if (state.People[i].Phone is { } phone && phone.Count(char.IsAsciiDigit) is not (10 or 11))
                problems.Add(StateProblems.Phone.At(Place.Of("people", i, state.People[i].Name, "phone"), ("value", phone)));
        }
    }

    internal static void InFuture(DateTimeOffset moment, SeasonState state, string where, ImmutableArray<Problem>.Builder problems)
    {
        if (moment - state.Now > ScheduleLimits.ClockSlack)
            problems.Add(StateProblems.InFuture.At(where, ("value", Moment(moment)), ("limit", Moment(state.Now))));
    }

    internal static string Moment(DateTimeOffset moment) => moment.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    internal static DateOnly Today(SeasonState state) => new(state.Now.Year, state.Now.Month, state.Now.Day);

    private static void Reversed(TimeOnly from, TimeOnly until, string where, ImmutableArray<Problem>.Builder problems)
    {
        if (until < from)
            problems.Add(StateProblems.HoursReversed.At(where, ("value", Hour(until)), ("limit", Hour(from))));
    }

    private static string Hour(TimeOnly hour) => hour.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Mph(Speed speed) => Say.Figure(speed.MilesPerHour) + " mph";

    private static string Wet(SoakedSeed seed) => Say.Number(seed.Pounds) + " lb wet";

    private static string Fahrenheit(Temperature temperature) => Say.Figure(temperature.Fahrenheit) + " °F";
}
