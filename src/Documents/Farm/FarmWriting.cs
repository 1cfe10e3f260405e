using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Weather;

namespace Watersown.Documents.Farms;

/// <summary>The season as it stands as a farm document: everything that is known, boundaries inside, nothing made up.</summary>
public static class FarmWriting
{
    /// <summary>Bytes of the document, UTF-8 without a byte order mark.</summary>
    public static ReadOnlyMemory<byte> Write(SeasonState state)
    {
        using var pen = new JsonPen();
        var clock = FarmClock.Find(state.Farm.TimeZone) ?? throw new ArgumentException("The farm's time zone is not known: " + state.Farm.TimeZone, nameof(state));
        pen.Thing(null, () => WriteState(pen, clock, state));
        return pen.Finish();
    }

    private static void WriteState(JsonPen pen, FarmClock clock, SeasonState state)
    {
        var farm = state.Farm;
        pen.Number(FarmOutline.VersionKey, FarmOutline.Version);
        pen.Text("name", farm.Name);
        pen.Text("time_zone", farm.TimeZone);
        pen.Number("season_year", farm.SeasonYear);
        pen.Text("units", Words.Units.Of(farm.Units));
        pen.Text("language", Words.Languages.Of(farm.Language));
        pen.Day("final_planting", farm.FinalPlanting);
        pen.Text("now", clock.Write(state.Now));
        pen.Day("horizon", state.Horizon);
        pen.Number("plan_number", state.PlanNumber);
        pen.Number(SeedLimits.Anchoring.Key, state.Anchoring?.TotalDays);
        pen.Number(WeatherLimits.Evaporation.Key, state.Evaporation.InchesPerDay);
        pen.Number(SeedLimits.WetFactor.Key, state.WetFactor);
        GroundWriting.Write(pen, clock, farm);
        FieldWriting.Write(pen, clock, state);
        SeedWriting.Write(pen, clock, state);
        AirWriting.Write(pen, clock, state);
        WorkWriting.Write(pen, clock, state);
    }

    internal static void Point(JsonPen pen, string? key, GeoPoint? point)
    {
        if (point is not { } at) return;
        pen.Thing(key, () =>
        {
            pen.Number("lat_deg", at.Latitude);
            pen.Number("lon_deg", at.Longitude);
        });
    }
}
