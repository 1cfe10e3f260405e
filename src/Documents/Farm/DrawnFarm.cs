using Watersown.Documents.Json;
using Watersown.Land;

namespace Watersown.Documents.Farms;

/// <summary>A field of which only the edge and a name are known, with what a planner needs guessed from the edge.</summary>
/// <param name="Code">Short code; none where the file has none.</param>
/// <param name="Name">Its name.</param>
/// <param name="Edge">Its edge.</param>
/// <param name="Gross">Land inside the edge.</param>
/// <param name="Net">Net acres by the default rule.</param>
/// <param name="Checks">How many checks.</param>
/// <param name="Rate">Dry seed per acre.</param>
public sealed record DrawnField(string? Code, string Name, Boundary Edge, Area Gross, Area Net, int Checks, SeedRate Rate);

/// <summary>A farm document from drawn edges alone.</summary>
public static class DrawnFarm
{
    /// <summary>Bytes of the document.</summary>
    /// <param name="fields">The fields, in order.</param>
    /// <param name="name">The farm's name.</param>
    /// <param name="zone">The farm's time zone, IANA.</param>
    public static ReadOnlyMemory<byte> Write(ImmutableArray<DrawnField> fields, string name, string zone)
    {
        var made = new Queue<string>(ShortCodes.For(fields.Where(f => f.Code is null).Select(f => f.Name), fields.Select(f => f.Code).OfType<string>()));
        using var pen = new JsonPen();
        pen.Thing(null, () =>
        {
            pen.Number(FarmOutline.VersionKey, FarmOutline.Version);
            pen.Text("name", name);
            pen.Text("time_zone", zone);
            pen.List("fields", fields, field => pen.Thing(null, () =>
            {
                pen.Text("code", field.Code ?? made.Dequeue());
                pen.Text("name", field.Name);
                pen.Number(LandLimits.Net.Key, field.Net.Acres);
                pen.Number(LandLimits.Gross.Key, field.Gross.Acres);
                pen.Number(Seed.SeedLimits.Rate.Key, field.Rate.PoundsPerAcre);
                pen.Number(LandLimits.BasinCount.Key, field.Checks);
                GeometryWriting.Write(pen, "boundary", field.Edge);
            }));
        });
        return pen.Finish();
    }
}
