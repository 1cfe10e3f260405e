namespace Watersown.Weather;

/// <summary>
/// Water that rice and its flood give to the air over that of the reference grass, through the season: level at first, rising
/// to the full canopy, level, then falling to the end. Straight lines in between.
/// </summary>
/// <param name="Initial">Until the canopy begins to close.</param>
/// <param name="Mid">Under the full canopy.</param>
/// <param name="End">On the last day.</param>
/// <param name="InitialDays">Days of the first stage.</param>
/// <param name="RisingDays">Of the second.</param>
/// <param name="MidDays">Of the third.</param>
/// <param name="LateDays">Of the last.</param>
public sealed record CropCoefficient(
    [property: PlainNumber("crop over reference water")] double Initial,
    [property: PlainNumber("crop over reference water")] double Mid,
    [property: PlainNumber("crop over reference water")] double End,
    int InitialDays,
    int RisingDays,
    int MidDays,
    int LateDays)
{
    /// <summary>Rice by the general tables: 150 days from May in a Mediterranean climate. Overstates measured use in dry, cool-night valleys by a fifth.</summary>
    [Source(nameof(Sources.Fao56), "Tables 11 and 12, rice; end of 0.60 to 0.90, the middle taken")]
    public static CropCoefficient General { get; } = new(1.05, 1.20, 0.75, 30, 30, 60, 30);

    /// <summary>Rice as measured in the Sacramento Valley, 145 days; the lengths are the general ones brought to 145 days.</summary>
    [Source(nameof(Sources.Montazar2017), "1.10, 1.00, 0.80")]
    public static CropCoefficient SacramentoValley { get; } = new(1.10, 1.00, 0.80, 29, 29, 58, 29);

    /// <summary>Shallow open water, before there is a crop.</summary>
    [Source(nameof(Sources.Fao56), "Table 12, open water under 2 m deep")]
    [PlainNumber("water over reference water")]
    public static double OpenWater => 1.05;

    /// <summary>Days of the season.</summary>
    public int Days => InitialDays + RisingDays + MidDays + LateDays;

    /// <summary>The coefficient on a day; before the first and after the last day that of the first and the last.</summary>
    [Source(nameof(Sources.Fao56), "fig. 34, eq. 66")]
    [return: PlainNumber("crop over reference water")]
    public double On([PlainNumber("days since planting")] double day)
    {
        if (day <= InitialDays) return Initial;
        if (day < InitialDays + RisingDays) return Initial + ((Mid - Initial) * (day - InitialDays) / RisingDays);
        var late = day - (Days - LateDays);
        if (late <= 0) return Mid;
        return late >= LateDays ? End : Mid + ((End - Mid) * late / LateDays);
    }

    /// <summary>A tabled coefficient brought to the climate: more in wind and dry air.</summary>
    /// <param name="tabled">From the table.</param>
    /// <param name="windAtTwoMeters">Mean of the stage; held between 1 and 6 m/s.</param>
    /// <param name="lowestHumidity">Mean of the daily lowest; held between 20 and 80 %.</param>
    /// <param name="height">Of the crop.</param>
    [Source(nameof(Sources.Fao56), "eqs 62 and 65: + [0.04 (u2 − 2) − 0.004 (RHmin − 45)] (h / 3)^0.3")]
    [return: PlainNumber("crop over reference water")]
    public static double InClimate([PlainNumber("crop over reference water")] double tabled, Speed windAtTwoMeters, Fraction lowestHumidity, Length height)
    {
        double u = Math.Clamp(windAtTwoMeters.MetersPerSecond, 1, 6), rh = Math.Clamp(lowestHumidity.Percent, 20, 80);
        return tabled + (((0.04 * (u - 2)) - (0.004 * (rh - 45))) * Math.Pow(height.Meters / 3, 0.3));
    }

    /// <summary>Water of the crop for that of the reference.</summary>
    [Source(nameof(Sources.Fao56), "eq. 58")]
    public DepthRate Water(DepthRate reference, [PlainNumber("days since planting")] double day) => reference * On(day);
}
