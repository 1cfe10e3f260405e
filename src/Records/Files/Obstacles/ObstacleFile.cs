using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Watersown.Flight.Hazards;

namespace Watersown.Records.Files.Obstacles;

/// <summary>What was found in an obstacle file.</summary>
/// <param name="FileOf">The day it was current.</param>
/// <param name="Near">Obstacles near the farm's fields, in the order of the file.</param>
public sealed record ObstaclesFound(DateOnly FileOf, ImmutableArray<Obstacle> Near)
{
    /// <summary>Lines that could be read, near or not.</summary>
    public required int Read { get; init; }

    /// <summary>Lines that could not be read and were left out.</summary>
    public required int LeftOut { get; init; }
}

/// <summary>
/// Reads the public obstacle file line by line, so that the whole country's costs no more memory than one line. It lists made things
/// that matter to charts and claims no completeness: what is not in it may stand all the same.
/// </summary>
public static partial class ObstacleFile
{
    /// <summary>A new edition is made so often.</summary>
    [PlainNumber("days")]
    [Source(nameof(Sources.PublicObstacleFile), "issued every 56 days")]
    public const int Edition = 56;

    /// <summary>So many lines are told one by one; more would bury the rest.</summary>
    [PlainNumber("lines")]
    public const int ToldLines = 20;

    private const int HeadLines = 4;
    private const int LongestLine = 512;

    /// <summary>The obstacles near a farm's fields.</summary>
    /// <param name="file">Its name, for problems.</param>
    /// <param name="stream">Its bytes.</param>
    /// <param name="reach">What is near.</param>
    [Source(nameof(Sources.PublicObstacleFile), "fixed-width layout of 128 columns")]
    public static Outcome<ObstaclesFound> Read(string file, Stream stream, FieldsReach reach)
    {
        var near = ImmutableArray.CreateBuilder<Obstacle>();
        var problems = new List<Problem>();
        DateOnly? current = null;
        int number = 0, read = 0, faults = 0;
        foreach (var line in Lines(stream))
        {
            number++;
            if (number == 1)
            {
                current = Currency(line);
                if (current is null) return Outcome<ObstaclesFound>.Refuse(ObstacleProblems.NoCurrency.At(file, ("value", Wording.Say.Short(line.Trim(), 60))));
                continue;
            }

            if (number <= HeadLines || line.Length == 0) continue;
            var (obstacle, fault) = ObstacleLine.Read(line);
            if (fault is not null)
            {
                if (++faults <= ToldLines) problems.Add(Told(file, number, line, fault));
                continue;
            }

            read++;
            if (reach.Holds(obstacle!.At, obstacle.Within)) near.Add(obstacle);
        }

        if (current is null) return Outcome<ObstaclesFound>.Refuse(ObstacleProblems.NoCurrency.At(file, ("value", string.Empty)));
        if (faults > ToldLines) problems.Add(ObstacleProblems.MoreBadLines.At(file, ("value", Wording.Say.Number(faults - ToldLines))));
        return read == 0
            ? Outcome<ObstaclesFound>.Refuse([.. problems, ObstacleProblems.NothingRead.At(file)])
            : Outcome<ObstaclesFound>.Of(new ObstaclesFound(current.Value, near.ToImmutable()) { Read = read, LeftOut = faults }, problems);
    }

    /// <summary>The day in the head, written month, day and two figures of the year.</summary>
    private static DateOnly? Currency(string line) =>
        Day().Match(line) is { Success: true } found && DateOnly.TryParseExact("20" + found.Groups["year"].Value + found.Groups["month"].Value + found.Groups["day"].Value, "yyyyMMdd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day
            : null;

    private static Problem Told(string file, int number, string line, LineFault fault) => ObstacleProblems.BadLine.At(
        file + ":" + number.ToString(CultureInfo.InvariantCulture), ("reason", fault.English), ("reason:es", fault.Spanish), ("value", Wording.Say.Short(line.Trim(), 60)));

    // Lines end in LF or CR LF. One that never ends is cut, and is then told as too long.
    private static IEnumerable<string> Lines(Stream stream)
    {
        using var reader = new StreamReader(stream, Encoding.Latin1, detectEncodingFromByteOrderMarks: true, bufferSize: 65_536, leaveOpen: true);
        var line = new StringBuilder(LongestLine);
        var piece = new char[65_536];
        for (int count; (count = reader.Read(piece, 0, piece.Length)) > 0;)
        {
            for (int from = 0, end; from < count; from = end + 1)
            {
                end = Array.IndexOf(piece, '\n', from, count - from);
                var upTo = end < 0 ? count : end;
                line.Append(piece, from, Math.Min(upTo - from, Math.Max(0, LongestLine - line.Length)));
                if (end < 0) break;
                yield return line.ToString().TrimEnd('\r');
                line.Clear();
            }
        }

        if (line.Length > 0) yield return line.ToString().TrimEnd('\r', '\u001A');
    }

    [GeneratedRegex(@"(?<month>\d{2})/(?<day>\d{2})/(?<year>\d{2})\s*$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Day();
}
