using System.Globalization;
using System.Text;

namespace Watersown.Documents.Daily;

/// <summary>What the headings of a table of days mean, in English and Spanish, and in which units.</summary>
internal sealed record TableColumns(char Delimiter, int Date)
{
    private static readonly string[] dates = ["date", "day", "datetime", "fecha", "dia", "time", "observation date", "obs date"];
    private static readonly string[] highs = ["tmax", "t max", "temp max", "max temp", "tx", "high", "max", "maximum temperature", "temperature max", "temperature 2m max", "max air temp", "air temp max", "maxima", "temp maxima", "temperatura maxima", "alta"];
    private static readonly string[] lows = ["tmin", "t min", "temp min", "min temp", "tn", "low", "min", "minimum temperature", "temperature min", "temperature 2m min", "min air temp", "air temp min", "minima", "temp minima", "temperatura minima", "baja"];
    private static readonly string[] rains = ["prcp", "precip", "precipitation", "precipitation sum", "rain", "rainfall", "ppt", "lluvia", "precipitacion"];
    private static readonly string[] stations = ["station", "station id", "estacion"];
    private static readonly string[] fahrenheit = ["f", "degf", "deg f", "fahrenheit"];
    private static readonly string[] celsius = ["c", "degc", "deg c", "celsius", "centigrados"];
    private static readonly string[] inches = ["in", "inch", "inches", "pulg", "pulgadas"];
    private static readonly string[] millimeters = ["mm"];

    /// <summary>The layout of an open table of daily weather, whose units its own description tells: °C and mm.</summary>
    private const string OpenLayout = "date,precipitation,temp_max,temp_min,wind,weather";

    public required ImmutableArray<string> Headings { get; init; }

    public int High { get; private init; } = -1;

    public int Low { get; private init; } = -1;

    public int Rain { get; private init; } = -1;

    /// <summary>Column that names the station, where a file holds several.</summary>
    public int Station { get; private init; } = -1;

    /// <summary>Temperatures are whole tenths of °C, as GHCN-Daily tables have them.</summary>
    public bool Tenths { get; private init; }

    public WarmthScale? Scale { get; private init; }

    public bool? RainMetric { get; private init; }

    public static Outcome<TableColumns> Of(string line, string file, WeatherOptions options)
    {
        var delimiter = new[] { '\t', ';', ',' }.MaxBy(d => line.Count(c => c == d));
        ImmutableArray<string> headings = [.. TableDays.Cells(line, delimiter).Select(h => h.Trim())];
        var plain = headings.Select(Plain).ToArray();
        int At(string[] names) => Array.FindIndex(plain, p => names.Contains(p.Name, StringComparer.Ordinal));
        var (date, high, low, rain) = (At(dates), At(highs), At(lows), At(rains));
        foreach (var (place, what, spanish, example) in new[] { (date, "the date", "la fecha", "date"), (high, "the high", "la máxima", "tmax_f"), (low, "the low", "la mínima", "tmin_f") })
        {
            if (place < 0) return Outcome<TableColumns>.Refuse(WeatherFileProblems.NoColumn.At(file, ("value", what), ("value:es", spanish), ("known", Wording.Say.Short(string.Join(", ", headings), 200)), ("example", example)));
        }

        var open = string.Equals(line.Trim(), OpenLayout, StringComparison.OrdinalIgnoreCase);
        // A GHCN-Daily table by station is known by the flags beside its figures.
        var tenths = Array.Exists(plain, p => p.Name is "tmax attributes");
        var unit = plain[high].Unit ?? plain[low].Unit;
        WarmthScale? scale = open || tenths || celsius.Contains(unit, StringComparer.Ordinal) ? WarmthScale.Celsius : fahrenheit.Contains(unit, StringComparer.Ordinal) ? WarmthScale.Fahrenheit : options.Scale;
        if (scale is null) return Outcome<TableColumns>.Refuse(WeatherFileProblems.NoScale.At(file, ("value", headings[high])));
        bool? metric = rain < 0 ? null : open || tenths || millimeters.Contains(plain[rain].Unit, StringComparer.Ordinal) ? true : inches.Contains(plain[rain].Unit, StringComparer.Ordinal) ? false : options.RainMetric ?? scale == WarmthScale.Celsius;
        return Outcome<TableColumns>.Of(new TableColumns(delimiter, date)
        {
            Headings = headings,
            High = high,
            Low = low,
            Rain = rain,
            Station = At(stations),
            Tenths = tenths,
            Scale = scale,
            RainMetric = metric,
        });
    }

    public double ToCelsius(double told) => Tenths ? told / 10 : Scale == WarmthScale.Fahrenheit ? (told - 32) / 1.8 : told;

    public double ToMillimeters(double told) => Tenths ? told / 10 : RainMetric == false ? told * 25.4 : told;

    public ImmutableArray<(string, string)> Taken
    {
        get
        {
            var degrees = Tenths ? "0.1 °C" : Scale == WarmthScale.Fahrenheit ? "°F" : "°C";
            var depth = Tenths ? "0.1 mm" : RainMetric == false ? "in" : "mm";
            return [(Headings[Date], "date"), (Headings[High], "high, " + degrees), (Headings[Low], "low, " + degrees), .. Rain < 0 ? (ImmutableArray<(string, string)>)[] : [(Headings[Rain], "rain, " + depth)]];
        }
    }

    // Words of a heading without signs and accents; a unit at its end apart.
    private static (string Name, string? Unit) Plain(string heading)
    {
        var words = new string([.. heading.Normalize(NormalizationForm.FormD).ToLowerInvariant().Where(c => CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark).Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' ')])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var take = Math.Min(2, words.Length - 1); take >= 1; take--)
        {
            var unit = string.Join(' ', words[^take..]);
            if (new[] { fahrenheit, celsius, inches, millimeters }.Any(u => u.Contains(unit, StringComparer.Ordinal))) return (string.Join(' ', words[..^take]), unit);
        }

        return (string.Join(' ', words), null);
    }
}
