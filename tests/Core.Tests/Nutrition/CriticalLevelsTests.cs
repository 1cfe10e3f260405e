namespace Watersown.Nutrition;

public sealed class CriticalLevelsTests
{
    // Olsen P 6 mg/kg and Y-leaf P 0.2 % (Agronomy Journal 103:501-508, 2011); soil K 60 ppm and flag-leaf K 1.2 % (rice board, 2013);
    // N-rich strip over field 1.07 (AgAlert, 15 September 2021). One reading on either side of each.
    [Theory]
    [InlineData(NutrientReading.OlsenPhosphorus, 5, true)]
    [InlineData(NutrientReading.OlsenPhosphorus, 7, false)]
    [InlineData(NutrientReading.LeafPhosphorus, 0.19, true)]
    [InlineData(NutrientReading.LeafPhosphorus, 0.21, false)]
    [InlineData(NutrientReading.SoilPotassium, 55, true)]
    [InlineData(NutrientReading.SoilPotassium, 61, false)]
    [InlineData(NutrientReading.FlagLeafPotassium, 1.1, true)]
    [InlineData(NutrientReading.FlagLeafPotassium, 1.3, false)]
    [InlineData(NutrientReading.NitrogenStrip, 1.08, true)]
    [InlineData(NutrientReading.NitrogenStrip, 1.05, false)]
    public void A_reading_is_short_on_its_side_of_the_published_level(NutrientReading reading, double value, bool shortOf) =>
        Assert.Equal(shortOf, CriticalLevels.Of(reading, value).Short);

    [Theory]
    [InlineData(7, AquaWaitBand.Fine)]
    [InlineData(8, AquaWaitBand.Warn)]
    [InlineData(10, AquaWaitBand.Warn)]
    [InlineData(11, AquaWaitBand.Alarm)]
    public void Aqua_that_waits_is_said_after_seven_days_and_alarms_after_ten(int days, AquaWaitBand band) => Assert.Equal(band, AquaWait.Of(days));
}
