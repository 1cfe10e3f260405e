using System.Globalization;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Documents.Farms;

/// <summary>Gives boundaries of a file to the fields they belong to, by code first and then by name.</summary>
internal static class BoundaryMatching
{
    public static Farm Apply(Farm farm, string? file, FarmContext context, PartReader reader)
    {
        if (file is null) return farm;
        var read = context.Boundaries?.Invoke(file);
        if (read is null)
        {
            reader.Aside.Add(FarmProblems.BoundariesNotRead.At("boundaries", ("value", file), ("remedy", "Read the farm from its folder to have them.")));
            return farm;
        }

        // A boundary that is left out is no reason to refuse the farm: the day's plan must not wait for a crooked polygon.
        reader.Aside.AddRange(read.Problems.Select(p => p with { Kind = p.Kind with { Weight = ProblemWeight.Warn } }));
        return read.HasValue ? Match(farm, file, read.Value, reader) : farm;
    }

    private static Farm Match(Farm farm, string file, ImmutableArray<NamedBoundary> boundaries, PartReader reader)
    {
        var fields = farm.Fields.ToBuilder();
        foreach (var boundary in boundaries)
        {
            var index = IndexOf(fields, boundary);
            if (index < 0)
            {
                var called = boundary.Code.Length > 0 ? boundary.Code : boundary.Name;
                var nearest = Nearest.Of(called, fields.Select(f => f.Name).Concat(fields.Select(f => f.Code)));
                reader.Aside.Add(FarmProblems.NoFieldOfBoundary.At(file, ("value", called), ("nearest", nearest is null ? string.Empty : " " + nearest + "?")));
            }
            else if (fields[index].Boundary is null)
            {
                // A boundary written inside the farm document is the farm's own word and stays.
                fields[index] = fields[index] with { Boundary = boundary.Edge };
            }
        }

        var without = fields.Where(f => f.Boundary is null).Select(f => f.Name).ToList();
        if (without.Count > 0)
        {
            var names = string.Join(", ", without.Take(6)) + (without.Count > 6 ? string.Create(CultureInfo.InvariantCulture, $" and {without.Count - 6} more") : string.Empty);
            reader.Aside.Add(FarmProblems.NoBoundaryOfField.At(file, ("value", names)));
        }

        return farm with { Fields = fields.ToImmutable() };
    }

    private static int IndexOf(ImmutableArray<Field>.Builder fields, NamedBoundary boundary)
    {
        var byCode = boundary.Code.Length == 0 ? -1 : Find(f => string.Equals(f.Code, boundary.Code, StringComparison.OrdinalIgnoreCase));
        return byCode >= 0 || boundary.Name.Length == 0 ? byCode : Find(f => string.Equals(f.Name, boundary.Name, StringComparison.OrdinalIgnoreCase));

        int Find(Predicate<Field> match)
        {
            for (var i = 0; i < fields.Count; i++)
            {
                if (match(fields[i])) return i;
            }

            return -1;
        }
    }
}
