using System.Globalization;
using Watersown.Documents.Farms;
using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Records.Files.Boundaries;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Records.Land;

/// <summary>Opens a farm document with the boundary file beside it.</summary>
public static class OpenFarm
{
    /// <summary>The season as it stands, or everything that is wrong with the files.</summary>
    /// <param name="path">The farm document.</param>
    /// <param name="time">The clock, for a document that does not say when it was true; the machine's where not given.</param>
    /// <param name="now">Plan from this moment rather than the document's own.</param>
    public static Outcome<SeasonState> Run(string path, TimeProvider? time = null, DateTimeOffset? now = null)
    {
        var file = FileText.Read(path, JsonText.MaxBytes);
        if (file.IsRefused) return Outcome<SeasonState>.Refuse(file.Problems);
        return FarmReading.Read(file.Value, new FarmContext((time ?? TimeProvider.System).GetUtcNow())
        {
            Now = now,
            Boundaries = (farm, name) => ReadBoundaries(path, farm, name),
        });
    }

    private static Outcome<ImmutableDictionary<string, Boundary>> ReadBoundaries(string farmPath, Farm farm, string name)
    {
        // A document that came from somebody else must not make the desk open any file of this machine.
        if (Path.IsPathRooted(name) || name.Split('/', '\\').Contains("..", StringComparer.Ordinal))
            return NotRead(name, "Name a file in the same folder as the farm document.");
        var map = MapFile.Open(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(farmPath)) ?? string.Empty, name));
        if (map.Problems.Any(p => p.Kind == FileProblems.NotThere)) return NotRead(name, "Put the file beside the farm document, or take its name out.");
        return map.Then(boundaries => Match(farm, boundaries, name)).Then(matched => ByCode(farm, matched, name));
    }

    /// <summary>How far an edge is off the gross acres is told by the farm itself, whatever file the edge came from.</summary>
    private static Outcome<MatchedBoundaries> Match(Farm farm, ImmutableArray<MapBoundary> boundaries, string name)
    {
        var matched = BoundaryMatching.Match(farm, boundaries, new MatchOptions(), name);
        var problems = matched.Problems.Where(p => p.Kind != MapFileProblems.AcresDiffer);
        return matched.HasValue ? Outcome<MatchedBoundaries>.Of(matched.Value, problems) : Outcome<MatchedBoundaries>.Refuse(problems);
    }

    private static Outcome<ImmutableDictionary<string, Boundary>> ByCode(Farm farm, MatchedBoundaries matched, string file)
    {
        var problems = matched.Unmatched.Select(b => Stray(farm, b)).ToList();
        ImmutableArray<string> without = [.. matched.Without.Where(f => f.Boundary is null).Select(f => f.Name)];
        if (!without.IsEmpty)
        {
            var more = without.Length > 6 ? string.Create(CultureInfo.InvariantCulture, $" and {without.Length - 6} more") : string.Empty;
            problems.Add(FarmProblems.NoBoundaryOfField.At(file, ("value", string.Join(", ", without.Take(6)) + more)));
        }

        return Outcome<ImmutableDictionary<string, Boundary>>.Of(
            matched.Pairs.ToImmutableDictionary(p => p.Field.Code, p => p.Boundary.Edge, StringComparer.Ordinal), problems);
    }

    private static Problem Stray(Farm farm, MapBoundary boundary)
    {
        var called = boundary.Name.Length > 0 ? boundary.Name : boundary.Codes.FirstOrDefault() ?? "without a name";
        var nearest = Nearest.Of(called, farm.Fields.Select(f => f.Name).Concat(farm.Fields.Select(f => f.Code)));
        return FarmProblems.NoFieldOfBoundary.At(boundary.Where, ("value", called), ("nearest", nearest is null ? string.Empty : " " + nearest + "?"));
    }

    private static Outcome<ImmutableDictionary<string, Boundary>> NotRead(string name, string remedy) =>
        Outcome<ImmutableDictionary<string, Boundary>>.Refuse(FarmProblems.BoundariesNotRead.At("boundaries", ("value", name), ("remedy", remedy)));
}
