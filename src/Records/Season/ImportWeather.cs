using System.Security;
using System.Security.Cryptography;
using Watersown.Documents.Daily;
using Watersown.Documents.Logbooks;
using Watersown.Records.Database;
using Watersown.Season;
using Watersown.Weather;

namespace Watersown.Records.Season;

/// <summary>Which file, and what is to be made of it.</summary>
/// <param name="Path">The file.</param>
/// <param name="Year">The year whose days are the season's.</param>
/// <param name="By">Who brings it.</param>
public sealed record WeatherRequest(string Path, int Year, string By)
{
    public WeatherOptions Options { get; init; } = new();

    /// <summary>What the source is called; the file and its station where not given.</summary>
    public string? Source { get; init; }
}

/// <summary>What a file of weather gave.</summary>
/// <param name="Read">All of it.</param>
/// <param name="Season">Days of the season's year.</param>
/// <param name="Normals">Monthly means, where the file is long enough to tell what is usual; none otherwise.</param>
public sealed record WeatherTakenIn(WeatherRead Read, ImmutableArray<WeatherDay> Season, FarmNormals Normals)
{
    /// <summary>Facts for a logbook.</summary>
    public IEnumerable<MarkFact> Facts(string source)
    {
        foreach (var part in Season.Chunk(WeatherTaken.DaysMost)) yield return new WeatherTaken(source, [.. part]);
        if (!Normals.Months.IsEmpty) yield return new NormalsTaken(source, [.. Normals.Months]);
    }
}

/// <summary>Takes days of weather out of a file, and into a book where one is given.</summary>
public static class ImportWeather
{
    /// <summary>So many years tell what is usual. Common practice, no source; thirty are the climatologists' rule.</summary>
    public const int NormalYears = 3;

    private const string Device = "import weather";

    /// <summary>What the file gives; nothing is written.</summary>
    public static Outcome<WeatherTakenIn> Look(WeatherRequest asked)
    {
        try
        {
            return WeatherFile.Read(File.ReadLines(asked.Path), System.IO.Path.GetFileName(asked.Path), asked.Options).Map(read => Sort(read, asked));
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            return Outcome<WeatherTakenIn>.Refuse(FileProblems.NotThere.At(asked.Path));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or SecurityException or ArgumentException or NotSupportedException)
        {
            return Outcome<WeatherTakenIn>.Refuse(FileProblems.NotReadable.At(asked.Path, ("value", failure.Message.TrimEnd('.'))));
        }
    }

    /// <summary>Keeps what was found as marks of the book. The same file brought twice is kept once.</summary>
    public static async Task<int> KeepAsync(WeatherTakenIn taken, WeatherRequest asked, Book book, TimeProvider time, CancellationToken stop)
    {
        var now = time.GetUtcNow();
        var source = asked.Source ?? taken.Read.Source;
        var marks = taken.Facts(source).Select(f => Stored(f, asked.By, now)).ToList();
        if (marks.Count == 0) return 0;
        // What the book has under the same name it keeps; a mark brought again is told with its first moment.
        var known = (await book.MarksAfterAsync(0, int.MaxValue, stop)).Select(m => m.Mark.Id).ToHashSet(StringComparer.Ordinal);
        var fresh = marks.Where(m => !known.Contains(m.Id)).ToList();
        return fresh.Count == 0 ? 0 : (await book.AppendMarksAsync(fresh, sender: null, stop)).Kept.Length;
    }

    private static WeatherTakenIn Sort(WeatherRead read, WeatherRequest asked)
    {
        var source = asked.Source ?? read.Source;
        ImmutableArray<WeatherDay> season = read.TypicalYear ? [] : [.. read.Days.Where(d => d.Day.Year == asked.Year)];
        var usual = read.TypicalYear || read.Days.Select(d => d.Day.Year).Distinct().Count() >= NormalYears;
        return new WeatherTakenIn(read, season, usual ? FarmNormals.Of(read.Days, source) : FarmNormals.None);
    }

    // Named by what it says, so that the same days brought again are the same mark.
    private static StoredMark Stored(MarkFact fact, string by, DateTimeOffset now)
    {
        var mark = new Mark { Id = new MarkId(new string('0', MarkId.Digits)), Happened = now, Entered = now, By = by, Device = Device, Sure = Sureness.Measured, Fact = fact };
        var told = MarkDocument.Write(mark with { Happened = DateTimeOffset.UnixEpoch, Entered = DateTimeOffset.UnixEpoch });
        var id = new MarkId(Convert.ToHexStringLower(SHA256.HashData(told.Span))[..MarkId.Digits]);
        return StoredMark.Read(MarkDocument.Write(mark with { Id = id })).Value;
    }
}
