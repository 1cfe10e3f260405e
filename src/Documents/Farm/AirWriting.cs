using Watersown.Documents.Json;
using Watersown.Flight;
using Watersown.Schedule;
using Watersown.Weather;

namespace Watersown.Documents.Farms;

internal static class AirWriting
{
    public static void Write(JsonPen pen, FarmClock clock, SeasonState state)
    {
        pen.Things("aeroplanes", state.Aeroplanes, plane => WriteAeroplane(pen, plane));
        pen.Thing("flying_hours", () =>
        {
            pen.Hour("from", state.UsualFrom);
            pen.Hour("until", state.UsualUntil);
        });
        pen.Things("slots", state.Slots, slot =>
        {
            pen.Day("day", slot.Day);
            pen.Hour("from", slot.From);
            pen.Hour("until", slot.Until);
            pen.Text("aeroplane", slot.Aeroplane);
        });
        pen.Things("wind", state.Wind, wind =>
        {
            pen.Text("at", clock.Write(wind.At));
            pen.Number("sustained_mph", wind.Sustained.MilesPerHour);
            pen.Number("gust_mph", wind.Gust.MilesPerHour);
            pen.Number("from_deg", wind.From?.Degrees);
            pen.Text("issued", wind.Issued is { } issued ? clock.Write(issued) : null);
        });
        pen.Things("warmth", state.Warmth, day =>
        {
            pen.Day("day", day.Day);
            pen.Number("high_f", day.High.Fahrenheit);
            pen.Number("low_f", day.Low.Fahrenheit);
        });
        WriteNormals(pen, state.Normals);
    }

    private static void WriteNormals(JsonPen pen, FarmNormals normals)
    {
        if (normals.Months.IsEmpty) return;
        pen.Thing("normals", () =>
        {
            pen.Text("source", normals.Source);
            pen.Things("months", normals.Months, month =>
            {
                pen.Number("month", month.Month);
                if (month.MeanOnly) pen.Number("mean_f", month.Mean.Fahrenheit);
                if (month.MeanOnly) return;
                pen.Number("high_f", month.High.Fahrenheit);
                pen.Number("low_f", month.Low.Fahrenheit);
            });
        });
    }

    private static void WriteAeroplane(JsonPen pen, Aeroplane plane)
    {
        pen.Text("name", plane.Name);
        pen.Text("strip", plane.Strip);
        pen.Number("hopper_gal", plane.Hopper?.Gallons);
        pen.Number("working_load_wet_lb", plane.WorkingLoad.Pounds);
        pen.Number("top_load_wet_lb", plane.TopLoad?.Pounds);
        pen.Number("swath_ft", plane.Swath.Feet);
        pen.Number("working_mph", plane.Working.MilesPerHour);
        pen.Number("ferry_mph", plane.Ferry.MilesPerHour);
        pen.Number("turn_s", plane.Turn.TotalSeconds);
        pen.Number("reload_s", plane.Reload.TotalSeconds);
        pen.Number("ground_and_air_s", plane.GroundAndAir.TotalSeconds);
        pen.Number("wind_limit_mph", plane.WindLimit.MilesPerHour);
        pen.Number("gust_limit_mph", plane.GustLimit.MilesPerHour);
        if (plane.Tested is { } tested) pen.Thing("tested", () => TrayTestForm.Write(pen, tested));
    }
}
