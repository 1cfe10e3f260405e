using Watersown.Documents.Farms;
using Watersown.Land;
using Watersown.Records.Files.Boundaries;
using Watersown.Schedule;

namespace Watersown.Records.Land;

/// <summary>What came of giving a farm its boundaries.</summary>
/// <param name="Document">The farm document with the boundaries inside.</param>
/// <param name="State">The same, as read.</param>
/// <param name="Matched">Which boundary went where.</param>
public sealed record ImportedBoundaries(ReadOnlyMemory<byte> Document, SeasonState State, MatchedBoundaries Matched);

/// <summary>Gives the fields of a farm document the boundaries of a file.</summary>
public static class ImportBoundaries
{
    /// <summary>Reads both files and matches them; what could be used stands beside what is wrong with the rest. Nothing is written.</summary>
    public static Outcome<ImportedBoundaries> Run(string farmPath, string mapPath, MatchOptions options, TimeProvider time)
    {
        var farm = OpenFarm.Run(farmPath, time);
        var map = MapFile.Open(mapPath);
        if (!farm.HasValue || farm.Refusals.Any() || !map.HasValue) return Outcome<ImportedBoundaries>.Refuse(Told(farm).Concat(map.Problems));
        var matched = BoundaryMatching.Match(farm.Value.Farm, map.Value, options, Path.GetFileName(mapPath));
        ImmutableArray<Problem> problems = [.. Told(farm), .. map.Problems, .. matched.Problems];
        if (!matched.HasValue) return Outcome<ImportedBoundaries>.Refuse(problems);
        var state = farm.Value with { Farm = Attach(farm.Value.Farm, matched.Value) };
        return Outcome<ImportedBoundaries>.Of(new ImportedBoundaries(FarmWriting.Write(state), state, matched.Value), problems);
    }

    // That a boundary is missing is what is being put right.
    private static IEnumerable<Problem> Told(Outcome<SeasonState> farm) =>
        farm.Problems.Where(p => p.Kind != FarmProblems.BoundariesNotRead && p.Kind != FarmProblems.NoBoundaryOfField);

    private static Farm Attach(Farm farm, MatchedBoundaries matched)
    {
        var edges = matched.Pairs.ToDictionary(p => p.Field.Code, p => p.Boundary.Edge, StringComparer.Ordinal);
        return farm with { Fields = [.. farm.Fields.Select(f => edges.TryGetValue(f.Code, out var edge) ? f with { Boundary = edge } : f)] };
    }
}
