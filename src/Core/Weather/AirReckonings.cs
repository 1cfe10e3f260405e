using Watersown.Reckon;

namespace Watersown.Weather;

/// <summary>The calculations about the thickness of the air that can be asked for by name.</summary>
public static class AirReckonings
{
    public static ImmutableArray<Reckoning> All { get; } = [DensityAltitude];

    private static Reckoning DensityAltitude => new(
        "density-altitude",
        "How high does the strip feel to the aeroplane in this heat?",
        [
            new("elev_ft", KeyKind.Number, "ft", "elevation of the strip") { Least = -1500, Most = 20_000 },
            new("pressure_hpa", KeyKind.Number, "hPa", "altimeter setting, as an airport reports it") { Least = 850, Most = 1090 },
            new("temp_c", KeyKind.Number, "°C", "temperature of the air") { Least = -60, Most = 60 },
            new("dewpoint_c", KeyKind.Number, "°C", "dew point; without it the air is taken as dry") { Least = -80, Most = 40, Optional = true },
        ],
        [
            new("density_altitude_ft", KeyKind.Number, "ft", "density altitude"),
            new("pressure_altitude_ft", KeyKind.Number, "ft", "pressure altitude"),
            new("density_ratio", KeyKind.Number, string.Empty, "density over standard density at sea level"),
        ],
        Sources.StandardAtmosphere1976,
        "elev_ft=100 pressure_hpa=1013.25 temp_c=38 dewpoint_c=15",
        Work)
    { Limits = "The pressure is the altimeter setting, not the pressure at the place. Exact for the standard atmosphere; as good as the thermometer, which should be in shade at the strip." };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var elevation = Length.FromFeet(given.Number("elev_ft"));
        var setting = Pressure.FromHectopascals(given.Number("pressure_hpa"));
        var air = Temperature.FromCelsius(given.Number("temp_c"));
        Temperature? dew = given.NumberOrNone("dewpoint_c") is { } point ? Temperature.FromCelsius(point) : null;
        if (dew is { } above && above > air)
        {
            return Outcome<Reckoned>.Refuse(ReckonProblems.Impossible.At("dewpoint_c",
                ("value", Wording.Say.Figure(above.Celsius) + " °C"),
                ("limit", "the dew point is never above the " + Wording.Say.Figure(air.Celsius) + " °C of the air"),
                ("remedy", "Check which of the two temperatures is which.")));
        }

        var pressureAltitude = AirDensity.PressureAltitude(elevation, setting);
        var station = StandardAtmosphere.PressureAt(pressureAltitude);
        var warmth = dew is { } known ? AirDensity.Virtual(air, known, station) : air;
        var ratio = AirDensity.Ratio(station, warmth);
        var altitude = StandardAtmosphere.HeightOfDensity(ratio);
        var working = Working.Empty
            .Given("z", "elevation of the strip", elevation.Feet, "ft", "typed")
            .Given("Q", "altimeter setting", setting.Hectopascals, "hPa", "typed")
            .Given("T", "temperature of the air", air.Celsius, "°C", "typed")
            .Given("Td", "dew point", Datum.Of(dew?.Celsius), "°C", dew is null ? "not given, dry air" : "typed")
            .Step("PA", "pressure altitude", pressureAltitude.Feet, "ft", "z + 145,442 (1 − (Q / 1013.25)^0.190263)", Sources.AltimeterDefinition)
            .Step("p", "pressure at the strip", station.Hectopascals, "hPa", "1013.25 (1 − PA / 145,442)^5.25588", Sources.StandardAtmosphere1976)
            .Step("Tv", "virtual temperature", warmth.Celsius, "°C", "T / (1 − 0.378 e / p), in kelvin; e = 6.11 × 10^(7.5 Td / (237.7 + Td))", Sources.HumidAir)
            .Step("σ", "density over standard density at sea level", ratio, string.Empty, "p / (287.053 Tv) / 1.225", Sources.StandardAtmosphere1976)
            .Step("DA", "density altitude", altitude.Feet, "ft", "145,442 (1 − σ^0.234969)", Sources.StandardAtmosphere1976);
        return Outcome<Reckoned>.Of(new Reckoned(
            [("density_altitude_ft", altitude.Feet), ("pressure_altitude_ft", pressureAltitude.Feet), ("density_ratio", ratio)], working)
        {
            Cautions =
            [
                "A figure to tell the pilot, never a leave to fly: load and take-off come from the aeroplane's manual, the strip, and the pilot.",
                .. dew is null ? (ImmutableArray<string>)["No dew point was given, so the air is taken as dry; humid air is thinner still."] : [],
            ],
        });
    }
}
