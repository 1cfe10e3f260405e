using System.Globalization;
using System.Text;

namespace Watersown.Documents.Daily;

/// <summary>Days of a table with headings, one line a day.</summary>
internal static class TableDays
{
    private static readonly string[] missing = ["", "-", "M", "NA", "N/A", "NAN", "NULL", "NONE", "-9999", "-9999.0", "9999", "-999", "-99"];
    private static readonly string[] plain = ["yyyy-MM-dd", "yyyy/MM/dd", "yyyyMMdd", "yyyy-M-d", "yyyy/M/d"];
    private static readonly string[] monthFirst = ["M/d/yyyy", "M-d-yyyy", "M/d/yy"];
    private static readonly string[] dayFirst = ["d/M/yyyy", "d-M-yyyy", "d.M.yyyy", "d/M/yy"];

    public static Outcome<WeatherRead> Read(FileLine first, IEnumerable<FileLine> rest, string file, WeatherOptions options)
    {
        var found = TableColumns.Of(first.Text, file, options);
        if (found.IsRefused) return Outcome<WeatherRead>.Refuse(found.Problems);
        var (columns, days, stations) = (found.Value, new DayGathering(file), new SortedSet<string>(StringComparer.Ordinal));
        string[] forms = [.. plain, .. options.DayFirst ? dayFirst : monthFirst];
        foreach (var line in rest)
        {
            var cells = Cells(line.Text, columns.Delimiter);
            if (columns.Station >= 0 && Cell(cells, columns.Station) is { Length: > 0 } station)
            {
                if (options.Station is { } asked && !string.Equals(asked, station, StringComparison.OrdinalIgnoreCase)) continue;
                stations.Add(station);
            }

            if (Day(Cell(cells, columns.Date), forms) is not { } day)
            {
                days.Say(WeatherFileProblems.NotADay, line.Number, ("value", Wording.Say.Short(Cell(cells, columns.Date), 40)));
                continue;
            }

            if (Figure(Cell(cells, columns.High), days, line.Number) is { } high) days.Add(day, DayPart.High, columns.ToCelsius(high), line.Number);
            if (Figure(Cell(cells, columns.Low), days, line.Number) is { } low) days.Add(day, DayPart.Low, columns.ToCelsius(low), line.Number);
            if (columns.Rain >= 0 && Figure(Trace(Cell(cells, columns.Rain)), days, line.Number) is { } rain) days.Add(day, DayPart.Rain, columns.ToMillimeters(rain), line.Number);
        }

        if (stations.Count > 1) return Outcome<WeatherRead>.Refuse(WeatherFileProblems.SeveralStations.At(file, ("value", string.Join(", ", stations.Take(10)))));
        return days.Close().Map(all => new WeatherRead(WeatherForm.Table, stations.Count == 1 ? file + ", " + stations.Min : file, all) { Taken = columns.Taken });
    }

    /// <summary>The cells of a line; quoted ones may hold the delimiter, and a quote twice is a quote.</summary>
    public static List<string> Cells(string line, char delimiter)
    {
        var (cells, cell, quoted) = (new List<string>(), new StringBuilder(), false);
        for (var i = 0; i < line.Length; i++)
        {
            var c = line[i];
            if (c == '"' && quoted && i + 1 < line.Length && line[i + 1] == '"') cell.Append(line[i++]);
            else if (c == '"') quoted = !quoted;
            else if (c == delimiter && !quoted)
            {
                cells.Add(cell.ToString().Trim());
                cell.Clear();
            }
            else cell.Append(c);
        }

        cells.Add(cell.ToString().Trim());
        return cells;
    }

    private static string Cell(List<string> cells, int at) => at < cells.Count ? cells[at] : string.Empty;

    /// <summary>A trace of rain is rain too little to measure.</summary>
    private static string Trace(string cell) => cell is "T" or "t" ? "0" : cell;

    private static double? Figure(string cell, DayGathering days, int line)
    {
        if (missing.Contains(cell, StringComparer.OrdinalIgnoreCase)) return null;
        if (double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)) return value;
        days.Say(WeatherFileProblems.NotANumber, line, ("value", Wording.Say.Short(cell, 40)));
        return null;
    }

    private static DateOnly? Day(string cell, string[] forms)
    {
        // An hour behind the day says when it was read.
        var text = cell.Length > 10 && cell[10] is ('T' or ' ') ? cell[..10] : cell.Split(' ')[0];
        return DateOnly.TryParseExact(text, forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is >= 1900 and <= 2200 ? day : null;
    }
}
