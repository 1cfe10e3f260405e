using Watersown.Land;

namespace Watersown.Season;

/// <summary>Lays what a mark says of the ground itself on a field: acres put right, a name, an edge drawn.</summary>
internal static class GroundMarks
{
    /// <summary>The field as the mark tells it; each acre figure stands for itself.</summary>
    public static Field Lay(Field field, MarkFact fact) => fact switch
    {
        FieldCorrected corrected => Corrected(field, corrected),
        BoundaryDrawn drawn => field with { Boundary = drawn.ToBoundary() },
        _ => field,
    };

    /// <summary>The part of a mark that says what the farm did not know.</summary>
    public static MarkFact Filling(Field field, MarkFact fact) => fact switch
    {
        FieldCorrected corrected => new FieldCorrected(corrected.Field)
        {
            Gross = field.Gross is null ? corrected.Gross : null,
            Certified = field.Certified is null ? corrected.Certified : null,
        },
        BoundaryDrawn when field.Boundary is not null => new FieldCorrected(field.Code),
        _ => fact,
    };

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
    private static bool Equal(Field field) => field.Basins.All(b => Math.Abs((b.Area / field.Net * field.Basins.Length) - 1) < 1e-9);
}
