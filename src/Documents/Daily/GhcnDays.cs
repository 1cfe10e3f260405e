using System.Globalization;

namespace Watersown.Documents.Daily;

/// <summary>GHCN-Daily: the fixed form of its readme, section III, and the same by lines of station, day and element.</summary>
internal static class GhcnDays
{
    // ID 1-11, YEAR 12-15, MONTH 16-17, ELEMENT 18-21, then 31 times VALUE (5) MFLAG QFLAG SFLAG.
    private const int FirstValue = 21, ValueWidth = 8, Missing = -9999;

    /// <summary>Temperatures are in tenths of °C, rain in tenths of mm.</summary>
    private const double Tenth = 10;

    public static bool IsFixed(string line) =>
        line.Length >= FirstValue + ValueWidth && !line.Contains(',', StringComparison.Ordinal) && IsId(line[..11]) && line[11..17].All(char.IsAsciiDigit) && line[17..21].All(char.IsAsciiLetterOrDigit);

    public static bool IsLine(string line) =>
        line.Split(',') is { Length: >= 4 } parts && IsId(parts[0]) && parts[1].Length == 8 && parts[1].All(char.IsAsciiDigit) && parts[2].Length == 4;

    public static Outcome<WeatherRead> ReadFixed(IEnumerable<FileLine> lines, string file, WeatherOptions options)
    {
        var (days, stations) = (new DayGathering(file), new SortedSet<string>(StringComparer.Ordinal));
        foreach (var line in lines)
        {
            if (!IsFixed(line.Text)) days.Say(WeatherFileProblems.NotADay, line.Number, ("value", Wording.Say.Short(line.Text, 40)));
            else if (Wanted(line.Text[..11], options, stations)) TakeMonth(line, days);
        }

        return Close(days, stations, WeatherForm.GhcnFixed, file);
    }

    public static Outcome<WeatherRead> ReadLines(IEnumerable<FileLine> lines, string file, WeatherOptions options)
    {
        var (days, stations) = (new DayGathering(file), new SortedSet<string>(StringComparer.Ordinal));
        foreach (var line in lines)
        {
            var parts = line.Text.Split(',');
            if (parts.Length < 4 || !DateOnly.TryParseExact(parts[1], "yyyyMMdd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
                days.Say(WeatherFileProblems.NotADay, line.Number, ("value", Wording.Say.Short(line.Text, 40)));
            else if (Wanted(parts[0], options, stations) && Part(parts[2]) is { } part)
                Take(days, day, part, (parts[3], parts.Length > 5 ? parts[5] : string.Empty), line.Number);
        }

        return Close(days, stations, WeatherForm.GhcnLines, file);
    }

    private static void TakeMonth(FileLine line, DayGathering days)
    {
        var (year, month) = (int.Parse(line.Text[11..15], CultureInfo.InvariantCulture), int.Parse(line.Text[15..17], CultureInfo.InvariantCulture));
        if (Part(line.Text[17..21]) is not { } part) return;
        if (year is < 1 or > 9999 || month is < 1 or > 12)
        {
            days.Say(WeatherFileProblems.NotADay, line.Number, ("value", line.Text[11..17]));
            return;
        }

        for (var day = 1; day <= CultureInfo.InvariantCulture.Calendar.GetDaysInMonth(year, month); day++)
        {
            var at = FirstValue + ((day - 1) * ValueWidth);
            if (at + 5 > line.Text.Length) break;
            var flag = at + 6 < line.Text.Length ? line.Text[(at + 6)..(at + 7)] : string.Empty;
            Take(days, new DateOnly(year, month, day), part, (line.Text[at..(at + 5)], flag), line.Number);
        }
    }

    private static void Take(DayGathering days, DateOnly day, DayPart part, (string Value, string Quality) told, int line)
    {
        if (!int.TryParse(told.Value, NumberStyles.AllowLeadingSign | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var tenths))
            days.Say(WeatherFileProblems.NotANumber, line, ("value", told.Value));
        else if (tenths == Missing)
            return;
        else if (!string.IsNullOrWhiteSpace(told.Quality))
            days.Fail();
        else
            days.Add(day, part, tenths / Tenth, line);
    }

    private static bool Wanted(string station, WeatherOptions options, SortedSet<string> stations)
    {
        if (options.Station is { } asked && !string.Equals(asked, station, StringComparison.OrdinalIgnoreCase)) return false;
        stations.Add(station);
        return true;
    }

    private static Outcome<WeatherRead> Close(DayGathering days, SortedSet<string> stations, WeatherForm form, string file)
    {
        if (stations.Count > 1) return Outcome<WeatherRead>.Refuse(WeatherFileProblems.SeveralStations.At(file, ("value", string.Join(", ", stations.Take(10)))));
        return days.Close().Map(all => new WeatherRead(form, file + (stations.Count == 1 ? ", GHCN-Daily station " + stations.Min : string.Empty), all)
        {
            Failed = days.Failed,
            Taken = [("TMAX", "high, 0.1 °C"), ("TMIN", "low, 0.1 °C"), ("PRCP", "rain, 0.1 mm")],
        });
    }

    private static DayPart? Part(string element) => element switch { "TMAX" => DayPart.High, "TMIN" => DayPart.Low, "PRCP" => DayPart.Rain, _ => null };

    private static bool IsId(string id) => id.Length == 11 && char.IsAsciiLetterUpper(id[0]) && char.IsAsciiLetterUpper(id[1]) && id.All(c => char.IsAsciiLetterUpper(c) || char.IsAsciiDigit(c) || c is '_' or '-');
}
