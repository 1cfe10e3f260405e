using Watersown.Records.Database;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts.Cli;

public sealed class ImportWeatherTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("weather").FullName;

    private string BookFile => Path.Combine(folder, "farm.book");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task Days_and_normals_of_a_file_are_kept_in_the_book_once()
    {
        var (file, stop) = (ReferenceFile.PathOf("weather", "seattle-weather.csv"), TestContext.Current.CancellationToken);
        await using (await MakeAsync()) { }
        var first = await AsksAsync("import", "weather", file, "--book", BookFile, "--year", "2015", "--by", "Tamsin Wexcombe");
        Assert.Equal(0, first.Code);
        Assert.Contains("seattle-weather.csv: 1,461 whole days from 2012-01-01 to 2015-12-31", first.Out, StringComparison.Ordinal);
        Assert.Contains("temp_max taken as high, °C", first.Out, StringComparison.Ordinal);
        Assert.Contains("365 days belong to the season of 2015.", first.Out, StringComparison.Ordinal);
        Assert.Contains("Kept in the book as 2 marks.", first.Out, StringComparison.Ordinal);
        Assert.Contains("The book has all of it already.", (await AsksAsync("import", "weather", file, "--book", BookFile, "--year", "2015", "--by", "Tamsin Wexcombe")).Out, StringComparison.Ordinal);
        await using var book = (await Book.OpenThereAsync(BookFile)).Value;
        Assert.Equal(["weather-days", "normals"], (await book.MarksAfterAsync(0, 100, stop)).Select(m => m.Mark.Kind));
    }

    [Fact]
    public async Task Missing_days_are_named_with_what_will_fill_them()
    {
        var file = Path.Combine(folder, "days.csv");
        await File.WriteAllLinesAsync(file, ["date,tmax_f,tmin_f", "2026-05-01,80,50", "2026-05-03,80,50", "2026-05-10,80,50"], TestContext.Current.CancellationToken);
        var said = await AsksAsync("import", "weather", file, "--year", "2026");
        Assert.Contains("missing 2026-05-02 to 2026-05-02 (1): will be filled with the mean", said.Out, StringComparison.Ordinal);
        Assert.Contains("missing 2026-05-04 to 2026-05-09 (6): will be filled with the normals", said.Out, StringComparison.Ordinal);
        Assert.Contains("faltan 2026-05-02", (await AsksAsync("import", "weather", file, "--year", "2026", "--lang", "es")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_not_there_or_has_no_scale_is_refused()
    {
        Assert.Contains("FILE-001", (await AsksAsync("import", "weather", Path.Combine(folder, "none.csv"))).Refused().Error, StringComparison.Ordinal);
        var file = Path.Combine(folder, "days.csv");
        await File.WriteAllLinesAsync(file, ["date,tmax,tmin", "2026-05-01,80,50"], TestContext.Current.CancellationToken);
        Assert.Contains("DAYS-003", (await AsksAsync("import", "weather", file)).Refused().Error, StringComparison.Ordinal);
    }

    private async Task<Book> MakeAsync() => (await Book.OpenAsync(BookFile, stop: TestContext.Current.CancellationToken)).Value;
}
