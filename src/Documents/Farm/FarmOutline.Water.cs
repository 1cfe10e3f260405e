using Watersown.Documents.Json;
using Watersown.Land;

namespace Watersown.Documents.Farms;

public static partial class FarmOutline
{
    private static Outline.Thing Source => new("source",
    [
        Need("code", Text(), "the farm's code for the source"),
        Need("kind", new Outline.Word(Words.Sources.All), "where the water comes from"),
        new("name", Text(), "its name"),
        OutlineKey.Of(LandLimits.Cap, "the most it can give"),
        OutlineKey.Of(LandLimits.CapGallons, "the most it can give, as a pump's plate says it; instead of cap_cfs"),
        OutlineKey.Of(LandLimits.Notice, "how long before a change it must be asked for"),
        new("change_hours", new Outline.Several(new Outline.Hour(), 96), "the hours of day at which the flow may change; any hour where not given"),
        OutlineKey.Of(LandLimits.MinStep, "the smallest step in which it can be ordered"),
        OutlineKey.Of(LandLimits.Running, "what is running now"),
        new("down", new Outline.Flag(), "out of order until repaired"),
        new("needs_full", NeedsFull, "tailwater comes only while so many acres of these fields are full"),
    ])
    { ExactlyOne = [LandLimits.Cap.Key, LandLimits.CapGallons.Key] };

    private static Outline.Thing NeedsFull => new("tailwater need",
    [
        Need("fields", Codes(), "codes of the fields"),
        Need(OutlineKey.Of(LandLimits.NeedsFull, "acres of them that must be full")),
    ]);

    private static Outline.Thing SharedCap => new("shared cap",
    [
        Need("name", Text(), "the farm's name for the cap"),
        Need("sources", Codes(), "codes of the sources under it"),
        Need(OutlineKey.Of(LandLimits.Cap, "the most they can give together")),
    ]);
}
