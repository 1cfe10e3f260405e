using System.Globalization;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>
/// Says quantities and moments as one reader wants them: the farm's units and clock, the reader's language. Rounds for
/// paper; what it says never goes back into a calculation.
/// </summary>
public sealed class Telling
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    private readonly DateTimeOffset now;

    public Telling(SeasonState state, Language language) =>
        (Words, Metric, Offset, now) = (Words.In(language), state.Farm.Units == UnitSystem.Metric, state.Offset, state.Now);

    /// <summary>Where there is no farm at hand.</summary>
    public Telling(Language language, bool metric, DateTimeOffset now) => (Words, Metric, Offset, this.now) = (Words.In(language), metric, now.Offset, now);

    public Words Words { get; }

    public bool Metric { get; }

    /// <summary>The farm's offset from UTC.</summary>
    public TimeSpan Offset { get; }

    /// <summary>Unit of a printed weight.</summary>
    public string MassUnit => Metric ? "kg" : "lb";

    public string RateUnit => Metric ? Words.Common.PerHectare : Words.Common.PerAcre;

    private CommonWords Common => Words.Common;

    /// <summary>Dry seed in whole units.</summary>
    public int Whole(DrySeed seed) => (int)Math.Round(Metric ? seed.Kilograms : seed.Pounds, MidpointRounding.AwayFromZero);

    /// <summary>Soaked seed in whole units.</summary>
    public int Whole(SoakedSeed seed) => (int)Math.Round(Metric ? seed.Kilograms : seed.Pounds, MidpointRounding.AwayFromZero);

    public string Rate(SeedRate rate) => Say.Number(Metric ? rate.KilogramsPerHectare : rate.PoundsPerAcre);

    public string Rate(SoakedRate rate) => Say.Number(Metric ? rate.KilogramsPerHectare : rate.PoundsPerAcre);

    /// <summary>A rate with one decimal, where the difference matters.</summary>
    public string FineRate(SeedRate rate) => Trim(Metric ? rate.KilogramsPerHectare : rate.PoundsPerAcre, 1);

    public static string Count(int value) => Say.Number(value);

    public static string Factor([PlainNumber("soaked weight over dry weight")] double factor) => Trim(factor, 3);

    public string Land(Area area) => Metric ? Trim(area.Hectares, 1) + " " + Common.Hectares : Trim(area.Acres, 1) + " " + Common.Acres;

    /// <summary>A distance across country: tenths of a mile or kilometer, feet or meters where it is short.</summary>
    public string Far(Length length) => (Metric, Short: length.Meters < 160) switch
    {
        (true, true) => Rounded(length.Meters, 10) + " m",
        (true, false) => Say.Number(length.Kilometers, 1) + " km",
        (false, true) => Rounded(length.Feet, 10) + " " + Common.Feet,
        (false, false) => Say.Number(length.Miles, 1) + " " + Common.Miles,
    };

    /// <summary>A length on the ground: whole feet or meters.</summary>
    public string Long(Length length) => Metric ? Say.Number(length.Meters) + " m" : Say.Number(length.Feet) + " " + Common.Feet;

    public string Depth(WaterDepth depth) => Metric ? Trim(depth.Meters * 100, 1) + " cm" : Trim(depth.Inches, 1) + " " + Common.Inches;

    public string Flow(FlowRate flow) =>
        Metric ? Say.Number(flow.CubicMetersPerSecond * 1000) + " " + Common.LitersPerSecond : Trim(flow.CubicFeetPerSecond, 1) + " " + Common.CubicFeetPerSecond;

    /// <summary>A flow to the hundredth, where little decides.</summary>
    public string FineFlow(FlowRate flow) =>
        Metric ? Trim(flow.CubicMetersPerSecond * 1000, 1) + " " + Common.LitersPerSecond : Trim(flow.CubicFeetPerSecond, 2) + " " + Common.CubicFeetPerSecond;

    public string Water(Volume volume) => Metric ? Say.Number(volume.CubicMeters) + " m³" : Trim(volume.AcreFeet, 1) + " " + Common.AcreFeet;

    /// <summary>Water to fill ground, without its unit.</summary>
    public string FillNumber(WaterDepth fill) => Metric ? Say.Number(fill.Millimeters) : Say.Number(fill.Feet, 2);

    public string FillUnit => Metric ? "mm" : Common.AcreFeet + "/" + Common.Acres;

    /// <summary>Water lost in a day, without its unit.</summary>
    public string LossNumber(DepthRate loss) => Metric ? Say.Number(loss.MillimetersPerDay, 1) : Say.Number(loss.InchesPerDay, 2);

    public string LossUnit => Metric ? "mm" : Common.Inches;

    /// <summary>Unit of a temperature.</summary>
    public string WarmUnit => Metric ? "°C" : "°F";

    /// <summary>A temperature to the whole degree, without its unit.</summary>
    public string WarmNumber(Temperature warmth) => Say.Number(Metric ? warmth.Celsius : warmth.Fahrenheit);

    public string Warm(Temperature warmth) => WarmNumber(warmth) + " " + WarmUnit;

    /// <summary>A speed without its unit.</summary>
    public string SpeedNumber(Speed speed) => Say.Number(Metric ? speed.KilometersPerHour : speed.MilesPerHour);

    public string SpeedUnit => Metric ? "km/h" : Common.MilesPerHour;

    public string Quick(Speed speed) => SpeedNumber(speed) + " " + SpeedUnit;

    /// <summary>Three figures and a degree sign: <c>033°</c>.</summary>
    public static string Toward(Bearing bearing) => ((int)Math.Round(bearing.Degrees, MidpointRounding.AwayFromZero) % 360).ToString("000", Plain) + "°";

    /// <summary>A share with its sign: <c>+3.2 %</c>.</summary>
    public static string Percent([PlainNumber("a share, may be below zero")] double share) => (share < 0 ? "−" : "+") + Say.Number(Math.Abs(share) * 100, 1) + " %";

    public string Hours(TimeSpan span) => Trim(span.TotalHours, 2) + " " + Common.Hours;

    public static string WholeHours(TimeSpan span) => Say.Number(Math.Floor(span.TotalHours));

    /// <summary>Grain on a scale: pounds or kilograms.</summary>
    public string Weight(Mass grain) => Metric ? Say.Number(grain.Kilograms) + " kg" : Say.Number(grain.Pounds) + " lb";

    /// <summary>Grain of a harvest: hundredweights or tonnes.</summary>
    public string Heavy(Mass grain) => Metric ? Say.Number(grain.Kilograms / 1000, 1) + " t" : Say.Number(grain.Hundredweights) + " cwt";

    /// <summary>Grain of a piece of land.</summary>
    public string Grain(GrainYield grain) => Metric ? Say.Number(grain.TonnesPerHectare, 2) + " t/" + Common.Hectares : Say.Number(grain.HundredweightsPerAcre, 1) + " cwt/" + Common.Acres;

    public static string Dollars(Money money) => "$" + Say.Number((double)money.Amount);

    public DateOnly Day(DateTimeOffset moment) => DateOnly.FromDayNumber((int)(moment.ToOffset(Offset).Ticks / TimeSpan.TicksPerDay));

    public string Clock(DateTimeOffset moment) => moment.ToOffset(Offset).ToString("HH:mm", Plain);

    /// <summary><c>Friday 8 May 2026</c>.</summary>
    public string LongDay(DateOnly day) => Template.Fill(Common.LongDate,
        ("weekday", Common.LongDays[(int)day.DayOfWeek]), ("day", day.Day.ToString(Plain)),
        ("month", Common.LongMonths[day.Month - 1]), ("year", day.Year.ToString(Plain)));

    /// <summary><c>Fri 8 May</c>.</summary>
    public string ShortDay(DateOnly day) =>
        string.Create(Plain, $"{Common.ShortDays[(int)day.DayOfWeek]} {day.Day} {Common.Months[day.Month - 1]}");

    public string ShortDay(DateTimeOffset moment) => ShortDay(Day(moment));

    /// <summary>With the year: <c>3 Mar 2026</c>.</summary>
    public string DayAndYear(DateOnly day) => string.Create(Plain, $"{day.Day} {Common.Months[day.Month - 1]} {day.Year}");

    /// <summary><c>Fri 8 May 06:30</c>.</summary>
    public string Moment(DateTimeOffset moment) => ShortDay(moment) + " " + Clock(moment);

    /// <summary><c>Fri 06:30</c> where the weekday is enough, otherwise with the date.</summary>
    public string NearMoment(DateTimeOffset moment) => Math.Abs(Day(moment).DayNumber - Day(now).DayNumber) < 6
        ? Common.ShortDays[(int)Day(moment).DayOfWeek] + " " + Clock(moment)
        : Moment(moment);

    /// <summary>For a text message: <c>Sat 5/9</c> in English and US units, otherwise <c>Sat 9 May</c>.</summary>
    public string TextDay(DateOnly day) => Metric || Words == Words.Spanish
        ? ShortDay(day)
        : string.Create(Plain, $"{Common.ShortDays[(int)day.DayOfWeek]} {day.Month}/{day.Day}");

    public string TextMoment(DateTimeOffset moment) => TextDay(Day(moment)) + " " + Clock(moment);

    /// <summary>How old a fact is at a moment.</summary>
    public string Age(DateTimeOffset at, DateTimeOffset now) => (now - at) switch
    {
        { TotalMinutes: < 60 } age => Template.Fill(Common.AgeMinutes, ("n", Say.Number(Math.Max(0, age.TotalMinutes)))),
        { TotalHours: < 48 } age => Template.Fill(Common.AgeHours, ("n", Say.Number(age.TotalHours))),
        var age => Template.Fill(Common.AgeDays, ("n", Say.Number(age.TotalDays))),
    };

    /// <summary>Name and code of a field, neither ever shortened.</summary>
    public static string Name(Field field) => field.Name + " (" + field.Code + ")";

    /// <summary>The same words, the first letter large: days open a page in languages that write them small.</summary>
    public static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    private static string Trim(double value, int decimals)
    {
        var text = Say.Number(value, decimals);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    private static string Rounded(double value, double step) => Say.Number(Math.Round(value / step) * step);
}
