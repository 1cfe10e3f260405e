using System.Globalization;

namespace Watersown.Documents.Daily;

/// <summary>
/// Days of an hourly EnergyPlus weather file. Its columns are numbered in the format's description: year, month, day, hour 1 to
/// 24, minute, then dry bulb as the seventh; 99.9 is missing. Highest and lowest are those of the hours, and so a little inside
/// those of a thermometer that marks its extremes.
/// </summary>
internal static class EpwDays
{
    private const int HeaderLines = 8, DryBulb = 6;
    private const double Missing = 99.9;

    /// <summary>A day of fewer hours says nothing of its extremes; common practice.</summary>
    private const int HoursLeast = 20;

    public static Outcome<WeatherRead> Read(FileLine first, IEnumerable<FileLine> rest, string file)
    {
        var (days, hours, years) = (new DayGathering(file), new SortedDictionary<DateOnly, (double Low, double High, int Count)>(), new HashSet<int>());
        var rows = rest.Where(l => l.Number > HeaderLines || char.IsAsciiDigit(l.Text[0]));
        foreach (var line in rows)
        {
            var parts = line.Text.Split(',');
            if (parts.Length <= DryBulb || Day(parts) is not { } day)
            {
                days.Say(WeatherFileProblems.NotADay, line.Number, ("value", Wording.Say.Short(line.Text, 40)));
                continue;
            }

            if (!double.TryParse(parts[DryBulb], NumberStyles.Float, CultureInfo.InvariantCulture, out var degrees)) days.Say(WeatherFileProblems.NotANumber, line.Number, ("value", parts[DryBulb]));
            else if (degrees < Missing)
                hours[day] = hours.TryGetValue(day, out var seen) ? (Math.Min(seen.Low, degrees), Math.Max(seen.High, degrees), seen.Count + 1) : (degrees, degrees, 1);
            years.Add(day.Year);
        }

        var typical = years.Count > 1;
        foreach (var (day, seen) in hours.Where(h => h.Value.Count >= HoursLeast))
        {
            days.Add(day, DayPart.High, seen.High, 0);
            days.Add(day, DayPart.Low, seen.Low, 0);
        }

        var place = first.Text.Split(',') is { Length: > 5 } location ? string.Join(", ", new[] { location[1], location[3] }.Where(p => p.Length > 0 && p != "-")) : string.Empty;
        return days.Close().Map(all => new WeatherRead(WeatherForm.Epw, place.Length == 0 ? file : file + ", " + place, all)
        {
            TypicalYear = typical,
            Taken = [("dry bulb", "high and low of the hours, °C")],
        });
    }

    private static DateOnly? Day(string[] parts) =>
        int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var year) && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var month)
        && int.TryParse(parts[2], NumberStyles.None, CultureInfo.InvariantCulture, out var day) && year is >= 1900 and <= 2200 && month is >= 1 and <= 12 && day >= 1 && day <= CultureInfo.InvariantCulture.Calendar.GetDaysInMonth(year, month)
            ? new DateOnly(year, month, day)
            : null;
}
