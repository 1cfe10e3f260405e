using System.Globalization;

namespace Watersown.Weather;

/// <summary>Against a general library of moist air that shares no formula with the product: tests/Reference/air.</summary>
public sealed class AirLibraryReference
{
    [Fact]
    public void Saturation_agrees_from_frost_to_the_hottest_day()
    {
        foreach (var row in ReferenceFile.Rows("air", "saturation.csv"))
            Assert.Equal(Cell(row, "saturation_kpa"), Humidity.Saturation(Temperature.FromCelsius(Cell(row, "celsius"))).Kilopascals, Cell(row, "saturation_kpa") * 0.0013);
    }

    [Fact]
    public void Air_presses_as_much_to_six_parts_in_a_thousand()
    {
        foreach (var row in ReferenceFile.Rows("air", "pressure.csv"))
            Assert.Equal(Cell(row, "pressure_kpa"), ReferenceEvapotranspiration.AirPressure(Length.FromMeters(Cell(row, "elev_m"))).Kilopascals, Cell(row, "pressure_kpa") * 0.006);
    }

    [Fact]
    public void A_wet_thermometer_tells_nearly_the_same_vapor()
    {
        foreach (var row in ReferenceFile.Rows("air", "wetbulb.csv"))
        {
            var vapor = MissingWeather.VaporByWetBulb(Temperature.FromCelsius(Cell(row, "dry_c")), Temperature.FromCelsius(Cell(row, "wet_c")), ReferenceEvapotranspiration.AirPressure(Length.FromMeters(Cell(row, "elev_m"))));
            Assert.Equal(Cell(row, "vapour_kpa"), vapor.Kilopascals, 0.035);
        }
    }

    [Fact]
    public void A_dew_point_tells_the_vapor_that_it_was_found_from()
    {
        foreach (var row in ReferenceFile.Rows("air", "wetbulb.csv"))
        {
            // 0.02 °C of dew point is as many times the slope there of vapor.
            var dew = Temperature.FromCelsius(Cell(row, "dewpoint_c"));
            Assert.Equal(Cell(row, "vapour_kpa"), Humidity.FromDewPoint(dew).Kilopascals, 0.02 * Humidity.Slope(dew));
        }
    }

    private static double Cell(IReadOnlyDictionary<string, string> row, string name) => double.Parse(row[name], CultureInfo.InvariantCulture);
}
