using Watersown.Documents.Json;

namespace Watersown.Documents.Farms;

/// <summary>The published schema of the farm document, kept as docs/schema/farm.schema.json.</summary>
public static class FarmSchema
{
    public static string Write() => OutlineSchema.Write(
        FarmOutline.Root,
        "Watersown farm document, version 1",
        "A farm that sows rice onto water, and its season as it stands at one moment. The unit is the last part of a key. What is not given is not known. Moments without an offset from UTC are the farm's local time.");
}
