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
        OutlineKey.Of(LandLimits.MinStep, "the smallest step in which it can be ordered; whole cfs where it is ordered ahead and none is given"),
        OutlineKey.Of(LandLimits.Running, "what is running now"),
        new("down", new Outline.Flag(), "out of order until repaired"),
        new("turns", Turns, "served in turns: on for so long out of every so long; it may run at any time where not given"),
        new("curtailed", new Outline.Several(Curtailment, 200), "curtailments told ahead; where several hold, the least that any leaves"),
        new("needs_full", NeedsFull, "tailwater comes only while so many acres of these fields are full"),
    ])
    { ExactlyOne = [LandLimits.Cap.Key, LandLimits.CapGallons.Key] };

    private static Outline.Thing Turns => new("turns",
    [
        Need("from", new Outline.Moment(), "a moment at which a turn begins; turns before it and after it follow from it"),
        Need(OutlineKey.Of(LandLimits.TurnOn, "how long a turn lasts")),
        Need(OutlineKey.Of(LandLimits.TurnEvery, "from the beginning of a turn to the beginning of the next")),
        OutlineKey.Of(LandLimits.TurnFlow, "what comes in a turn; as much as the source can give where not told"),
    ]);

    private static Outline.Thing Curtailment => new("curtailment",
    [
        Need("from", new Outline.Moment(), "from when"),
        new("until", new Outline.Moment(), "until when; until further notice where not told"),
        OutlineKey.Of(LandLimits.Left, "the most that is left of it"),
        OutlineKey.Of(LandLimits.LeftShare, "the most that is left, of what it can give; instead of left_cfs"),
    ])
    { ExactlyOne = [LandLimits.Left.Key, LandLimits.LeftShare.Key] };

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
