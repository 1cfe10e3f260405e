using Watersown.Documents.Farms;
using Watersown.Documents.Json;
using Watersown.Schedule;

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
        var context = new FarmContext((time ?? TimeProvider.System).GetUtcNow())
        {
            Now = now,
            Boundaries = name => ReadBoundaries(path, name),
        };
        return FarmReading.Read(file.Value, context);
    }

    private static Outcome<ImmutableArray<NamedBoundary>> ReadBoundaries(string farm, string name)
    {
        // A document that came from somebody else must not make the desk open any file of this machine.
        if (Path.IsPathRooted(name) || name.Split('/', '\\').Contains("..", StringComparer.Ordinal))
            return NotRead(name, "Name a file in the same folder as the farm document.");
        var path = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(farm)) ?? string.Empty, name);
        var file = FileText.Read(path, JsonText.MaxBytes);
        if (file.HasValue) return BoundaryFile.Read(file.Value, name);
        return file.Problems.Any(p => p.Kind == FileProblems.NotThere)
            ? NotRead(name, "Put the file beside the farm document, or take its name out.")
            : Outcome<ImmutableArray<NamedBoundary>>.Refuse(file.Problems);
    }

    private static Outcome<ImmutableArray<NamedBoundary>> NotRead(string name, string remedy) =>
        Outcome<ImmutableArray<NamedBoundary>>.Refuse(FarmProblems.BoundariesNotRead.At("boundaries", ("value", name), ("remedy", remedy)));
}
