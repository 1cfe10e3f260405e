using Watersown.Land;

namespace Watersown.Season;

/// <summary>Lays what marks say of the ground itself on the farm as it was told: acres put right, names, edges drawn.</summary>
internal static class GroundMarks
{
    /// <summary>The farm with every field as its last marks tell it; each acre figure stands for itself.</summary>
    /// <param name="farm">The farm as told.</param>
    /// <param name="marks">Marks that count, in the order in which they happened.</param>
    public static Farm Lay(Farm farm, IEnumerable<Mark> marks)
    {
        var fields = farm.Fields.ToDictionary(f => f.Code, StringComparer.OrdinalIgnoreCase);
        foreach (var fact in marks.Select(m => m.Fact))
        {
            if (fact.AboutField is not { } code || !fields.TryGetValue(code, out var field)) continue;
            fields[code] = fact switch
            {
                FieldCorrected corrected => Corrected(field, corrected),
                BoundaryDrawn drawn => field with { Boundary = drawn.ToBoundary() },
                _ => field,
            };
        }

        return farm with { Fields = [.. farm.Fields.Select(f => fields[f.Code])] };
    }

    private static Field Corrected(Field field, FieldCorrected corrected)
    {
        var net = corrected.Net ?? field.Net;
        return field with
        {
            Name = corrected.Name ?? field.Name,
            Net = net,
            Gross = corrected.Gross ?? field.Gross,
            Certified = corrected.Certified ?? field.Certified,
            Basins = Equal(field) ? [.. field.Basins.Select(b => b with { Area = net / field.Basins.Length })] : field.Basins,
        };
    }

    // A mere count of checks means equal parts of the net acres; checks with acres of their own keep them.
    private static bool Equal(Field field) => field.Basins.All(b => b.Area == field.Net / field.Basins.Length);
}
