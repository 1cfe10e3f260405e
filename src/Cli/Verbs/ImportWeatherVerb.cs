using System.CommandLine;
using System.Globalization;
using System.Text;
using Watersown.Documents.Daily;
using Watersown.Records.Season;
using Watersown.Weather;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>Takes days of weather into a book, and says what is missing.</summary>
internal static class ImportWeatherVerb
{
    public static Command Create(Edge edge)
    {
        var file = new Argument<string>("FILE") { Description = "A table with headings (date, high, low, rain), GHCN-Daily in its fixed form or by lines, or an hourly EPW file." };
        var book = new Option<string?>("--book") { Description = "The book to keep the days in; without it they are only shown as understood." };
        var year = new Option<int?>("--year") { Description = "The season's year; this year where not given." };
        var scale = new Option<string?>("--temperature") { Description = "Scale of temperatures that the file does not tell: f or c." };
        scale.AcceptOnlyFromAmong("f", "c");
        var rain = new Option<string?>("--rain") { Description = "Unit of rain that the file does not tell: in or mm." };
        rain.AcceptOnlyFromAmong("in", "mm");
        var dayFirst = new Option<bool>("--day-first") { Description = "Dates such as 3/4/2026 have the day first." };
        var station = new Option<string?>("--station") { Description = "Station to take, where the file holds several." };
        var source = new Option<string?>("--source") { Description = "What to call the source; the file and its station where not given." };
        var by = new Option<string>("--by") { Description = "Who brings it.", DefaultValueFactory = _ => "office" };
        var language = LanguageOption.Create();
        var command = new Command("weather", "Take daily weather into a book: the season's days, and what is usual where the file holds years.") { file, book, year, scale, rain, dayFirst, station, source, by, language };
        command.SetAction((parsed, stop) => RunAsync(
            edge,
            new WeatherRequest(parsed.GetValue(file)!, parsed.GetValue(year) ?? edge.Time.GetLocalNow().Year, parsed.GetValue(by)!)
            {
                Source = parsed.GetValue(source),
                Options = new WeatherOptions
                {
                    Scale = parsed.GetValue(scale) switch { "f" => WarmthScale.Fahrenheit, "c" => WarmthScale.Celsius, _ => null },
                    RainMetric = parsed.GetValue(rain) switch { "mm" => true, "in" => false, _ => null },
                    DayFirst = parsed.GetValue(dayFirst),
                    Station = parsed.GetValue(station),
                },
            },
            parsed.GetValue(book), LanguageOption.Of(parsed, language), stop));
        return command;
    }

    private static async Task<int> RunAsync(Edge edge, WeatherRequest asked, string? connection, Language language, CancellationToken stop)
    {
        var looked = ImportWeather.Look(asked);
        await LanguageOption.TellAsync(edge, looked.Problems, language);
        if (looked.IsRefused) return ExitCode.ProblemsInInput;
        var words = Words.In(language).Crop;
        var told = Told(looked.Value, asked, words);
        if (connection is null)
        {
            await edge.Out.WriteAsync(told);
            return ExitCode.Done;
        }

        return await new AskedBook(connection, language).RunAsync(edge, async book =>
        {
            var kept = await ImportWeather.KeepAsync(looked.Value, asked, book, edge.Time, stop);
            await edge.Out.WriteAsync(told + (kept == 0 ? words.FileKeptBefore : Template.Fill(words.FileKept, ("n", Say.Number(kept)))) + "\n");
            return ExitCode.Done;
        });
    }

    private static string Told(WeatherTakenIn taken, WeatherRequest asked, CropWords words)
    {
        var (read, text) = (taken.Read, new StringBuilder());
        void Line(string sentence, params (string, string)[] facts) => text.Append(Template.Fill(sentence, facts)).Append('\n');
        Line(words.FileRead, ("source", asked.Source ?? read.Source), ("n", Say.Number(read.Days.Count(d => d.IsWhole))), ("from", Iso(read.Days[0].Day)), ("until", Iso(read.Days[^1].Day)));
        foreach (var (heading, meaning) in read.Taken) Line(words.FileTaken, ("heading", heading), ("meaning", meaning));
        if (read.TypicalYear) Line(words.FileTypical);
        if (read.Failed > 0) Line(words.FileFailed, ("n", Say.Number(read.Failed)));
        foreach (var run in read.TypicalYear ? [] : read.Missing.Take(20))
            Line(run.Days <= DaySeries.BridgedDays ? words.FileGapBridged : words.FileGapNormal, ("from", Iso(run.From)), ("until", Iso(run.Until)), ("n", Say.Number(run.Days)));
        if (!read.TypicalYear && read.Missing.Length > 20) Line(words.FileGapsMore, ("n", Say.Number(read.Missing.Length - 20)));
        Line(words.FileSeason, ("n", Say.Number(taken.Season.Count(d => d.IsWhole))), ("year", asked.Year.ToString(CultureInfo.InvariantCulture)));
        if (!taken.Normals.Months.IsEmpty)
        {
            text.Append(TextTable.Write([words.Month, ">" + words.HighF, ">" + words.LowF], taken.Normals.Months.Select(m => (ImmutableArray<string>)
                [m.Month.ToString(CultureInfo.InvariantCulture), Say.Number(m.High.Fahrenheit, 1), Say.Number(m.Low.Fahrenheit, 1)])));
        }

        return text.ToString();
    }

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
