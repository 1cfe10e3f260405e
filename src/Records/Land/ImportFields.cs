using System.Globalization;
using Watersown.Documents.Farms;
using Watersown.Land;
using Watersown.Records.Files.Boundaries;
using Watersown.Schedule;

namespace Watersown.Records.Land;

/// <summary>What drawn fields become.</summary>
/// <param name="Farm">The farm's name.</param>
/// <param name="Zone">The farm's time zone, IANA.</param>
/// <param name="Rate">Dry seed per acre on every field.</param>
public sealed record ImportFieldsOptions(string Farm, string Zone, SeedRate Rate)
{
    /// <summary>Checks of a field whose file has no column <c>checks</c>.</summary>
    public int Checks { get; init; } = NetAcres.UsualChecks;

    /// <summary>The column that holds the name, where the usual ones do not.</summary>
    public string? Column { get; init; }

    /// <summary>The moment of reading.</summary>
    public required DateTimeOffset Clock { get; init; }
}

/// <summary>A farm made of drawn fields: its document, and that document read back.</summary>
/// <param name="Document">The farm document.</param>
/// <param name="State">The same, as read.</param>
public sealed record ImportedFields(ReadOnlyMemory<byte> Document, SeasonState State);

/// <summary>Makes a farm document of the drawn fields of a file.</summary>
public static class ImportFields
{
    /// <summary>Reads the file; what could be used stands beside what is wrong with the rest. Nothing is written.</summary>
    public static Outcome<ImportedFields> Run(string mapPath, ImportFieldsOptions options)
    {
        var map = MapFile.Open(mapPath);
        if (!map.HasValue) return Outcome<ImportedFields>.Refuse(map.Problems);
        if (options.Column is { } column && BoundaryMatching.NoColumn(map.Value, column, Path.GetFileName(mapPath)) is { } missing) return Outcome<ImportedFields>.Refuse([.. map.Problems, missing]);
        ImmutableArray<DrawnField> fields = [.. map.Value.Select((boundary, i) => Field(boundary, i, options))];
        var codes = fields.GroupBy(f => f.Code ?? string.Empty, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var document = DrawnFarm.Write([.. fields.Select(f => codes.Contains(f.Code ?? string.Empty) ? f with { Code = null } : f)], options.Farm, options.Zone);

        // Read back by the reader of all documents; how far the fields have come is asked next, not warned of.
        var read = FarmReading.Read(document, new FarmContext(options.Clock));
        ImmutableArray<Problem> problems = [.. map.Problems, .. read.Problems.Where(p => p.Kind != FarmProblems.StageUnknown)];
        return read.HasValue
            ? Outcome<ImportedFields>.Of(new ImportedFields(document, read.Value), problems)
            : Outcome<ImportedFields>.Refuse(problems);
    }

    private static DrawnField Field(MapBoundary boundary, int index, ImportFieldsOptions options)
    {
        var gross = GeodesicArea.Of(boundary.Edge);
        var checks = int.TryParse(boundary["checks"], NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= LandLimits.MaxBasinsPerField ? count : options.Checks;
        var name = options.Column is { } column ? boundary[column] : boundary.Name;
        return new DrawnField(
            boundary["code"] is { Length: > 0 and <= LandLimits.MaxCodeLength } code ? code : null,
            name.Length > 0 ? name : string.Create(CultureInfo.InvariantCulture, $"Field {index + 1}"),
            boundary.Edge, Kept(gross), Kept(NetAcres.Estimate(gross, checks)), checks, options.Rate);
    }

    // A document is read by people: acres are kept to the hundredth, as on any paper about land.
    private static Area Kept(Area area) => Area.FromAcres(Math.Max(0.01, Math.Round(area.Acres, 2, MidpointRounding.AwayFromZero)));
}
