using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Schedule.Lists;

namespace Watersown.Documents.Farms;

/// <summary>A farm document from a mere list of fields. What the list does not say stays unsaid, so that it can still be asked.</summary>
public static class ListedFarm
{
    /// <summary>Bytes of the document.</summary>
    /// <param name="list">The fields.</param>
    /// <param name="name">The farm's name.</param>
    /// <param name="zone">The farm's time zone, IANA.</param>
    /// <param name="now">The moment it was true; the moment of reading counts where not given.</param>
    public static ReadOnlyMemory<byte> Write(FieldList list, string name, string zone, string? now)
    {
        var nameless = list.Fields.Where(f => f.Code is null).Select(f => f.Name);
        var made = new Queue<string>(ShortCodes.For(nameless, list.Fields.Select(f => f.Code).OfType<string>()));
        using var pen = new JsonPen();
        pen.Thing(null, () =>
        {
            pen.Number(FarmOutline.VersionKey, FarmOutline.Version);
            pen.Text("name", name);
            pen.Text("time_zone", zone);
            pen.Text("now", now);
            pen.List("fields", list.Fields, field => pen.Thing(null, () => WriteField(pen, field, field.Code ?? made.Dequeue())));
        });
        return pen.Finish();
    }

    private static void WriteField(JsonPen pen, ListedField field, string code)
    {
        pen.Text("code", code);
        pen.Text("name", field.Name);
        pen.Number(LandLimits.Net.Key, field.Net.Acres);
        pen.Number(LandLimits.Gross.Key, field.Gross?.Acres);
        pen.Number(LandLimits.Certified.Key, field.Certified?.Acres);
        pen.Number(Seed.SeedLimits.Rate.Key, field.Rate.PoundsPerAcre);
        pen.Text("variety", field.Variety);
        pen.Number(LandLimits.BasinCount.Key, field.Checks);
        pen.Text("stage", field.Stage is { } stage ? Words.Stages.Of(stage) : null);
    }
}
