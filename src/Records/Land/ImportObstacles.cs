using System.Security;
using Watersown.Documents.Farms;
using Watersown.Flight.Hazards;
using Watersown.Land;
using Watersown.Records.Files.Obstacles;
using Watersown.Schedule;

namespace Watersown.Records.Land;

/// <summary>What came of giving a farm what a public obstacle file lists near it.</summary>
/// <param name="Document">The farm document with them inside.</param>
/// <param name="State">The same, as read.</param>
/// <param name="Found">What the file gave.</param>
/// <param name="Before">How many of an earlier file they stand in for.</param>
public sealed record ImportedObstacles(ReadOnlyMemory<byte> Document, SeasonState State, ObstaclesFound Found, int Before);

/// <summary>Gives a farm document the obstacles that the public file lists near its fields.</summary>
public static class ImportObstacles
{
    /// <summary>
    /// Reads both files. What an earlier obstacle file gave is replaced, but a look of the farm at one of its obstacles is kept; the
    /// farm's own hazards stay as they are. Nothing is written.
    /// </summary>
    public static Outcome<ImportedObstacles> Run(string farmPath, string filePath, Length within, TimeProvider time)
    {
        var farm = OpenFarm.Run(farmPath, time);
        if (!farm.HasValue || farm.Refusals.Any()) return Outcome<ImportedObstacles>.Refuse(farm.Problems);
        if (FieldsReach.Of(farm.Value.Farm, within) is not { } reach) return Outcome<ImportedObstacles>.Refuse([.. farm.Problems, ObstacleProblems.NowhereToLook.At(farmPath)]);
        var found = Open(filePath, reach);
        ImmutableArray<Problem> problems = [.. farm.Problems, .. found.Problems];
        if (!found.HasValue) return Outcome<ImportedObstacles>.Refuse(problems);
        var state = farm.Value with { Farm = Attach(farm.Value.Farm, found.Value) };
        if (TooOld(found.Value, state.Now) is { } old) problems = problems.Add(old);
        return Outcome<ImportedObstacles>.Of(new ImportedObstacles(FarmWriting.Write(state), state, found.Value, farm.Value.Farm.Hazards.Count(h => h.Listing is not null)), problems);
    }

    private static Outcome<ObstaclesFound> Open(string path, FieldsReach reach)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            return ObstacleFile.Read(Path.GetFileName(path), stream, reach);
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            return Outcome<ObstaclesFound>.Refuse(FileProblems.NotThere.At(path));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or SecurityException or ArgumentException or NotSupportedException)
        {
            return Outcome<ObstaclesFound>.Refuse(FileProblems.NotReadable.At(path, ("value", failure.Message.TrimEnd('.'))));
        }
    }

    private static Farm Attach(Farm farm, ObstaclesFound found)
    {
        var looked = farm.Hazards.Where(h => h.Listing is not null).GroupBy(h => h.Listing!.Id, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Last(), StringComparer.Ordinal);
        return farm with
        {
            Hazards =
            [
                .. farm.Hazards.Where(h => h.Listing is null),
                .. found.Near.Select(o => o.ToHazard(found.FileOf)).Select(h => looked.TryGetValue(h.Listing!.Id, out var before) ? h with { Confirmed = before.Confirmed, Near = before.Near, Note = before.Note } : h),
            ],
        };
    }

    private static Problem? TooOld(ObstaclesFound found, DateTimeOffset now) =>
        new DateOnly(now.Year, now.Month, now.Day).DayNumber - found.FileOf.DayNumber > ObstacleFile.Edition
            ? ObstacleProblems.OldFile.At(string.Empty, ("value", found.FileOf.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)), ("limit", Wording.Say.Number(ObstacleFile.Edition)))
            : null;
}
