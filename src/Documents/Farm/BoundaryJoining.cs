using Watersown.Land;

namespace Watersown.Documents.Farms;

/// <summary>Puts the boundaries of the file beside a farm document onto its fields.</summary>
internal static class BoundaryJoining
{
    public static Farm Apply(Farm farm, string? file, FarmContext context, PartReader reader)
    {
        if (file is null) return farm;
        var read = context.Boundaries?.Invoke(farm, file)
            ?? Outcome<ImmutableDictionary<string, Boundary>>.Refuse(FarmProblems.BoundariesNotRead.At("boundaries", ("value", file), ("remedy", "Read the farm from its folder to have them.")));

        // A boundary that is left out is no reason to refuse the farm: the day's plan must not wait for a crooked polygon.
        reader.Aside.AddRange(read.Problems.Select(p => p with { Kind = p.Kind with { Weight = ProblemWeight.Warn } }));
        if (!read.HasValue) return farm;

        // A boundary written inside the farm document is the farm's own word and stays.
        return farm with { Fields = [.. farm.Fields.Select(f => f.Boundary is null && read.Value.TryGetValue(f.Code, out var edge) ? f with { Boundary = edge } : f)] };
    }
}
