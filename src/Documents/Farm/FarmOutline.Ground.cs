using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;

namespace Watersown.Documents.Farms;

public static partial class FarmOutline
{
    internal static Outline.Thing Point => new("point",
    [
        Need(OutlineKey.Of(LandLimits.Latitude, "degrees north")),
        Need(OutlineKey.Of(LandLimits.Longitude, "degrees east")),
    ]);

    private static Outline.Thing Field => new("field",
    [
        new("code", new Outline.Text(LandLimits.MaxCodeLength), "the farm's short code; made from the name where not given"),
        Need("name", Text(), "the farm's own name for the field"),
        Need(OutlineKey.Of(LandLimits.Net, "net sown acres: what is flown, seeded and billed")),
        OutlineKey.Of(LandLimits.Gross, "everything inside the edge"),
        OutlineKey.Of(LandLimits.Certified, "acres as certified for government or insurance"),
        Need(OutlineKey.Of(SeedLimits.Rate, "dry seed per acre")),
        new("variety", Text(), "variety meant for it; any seed will do where not given"),
        new("boundary", new Outline.Geometry(), "the edge of the field"),
        new("center", Point, "the middle of the field, where there is no boundary"),
        OutlineKey.Of(LandLimits.Ferry, "distance to the strip as flown, where there is no geometry"),
        OutlineKey.Of(LandLimits.LongAxis, "direction of the long side, where there is no boundary"),
        OutlineKey.Of(LandLimits.PassLength, "length of a pass along the long side, where there is no boundary"),
        new("soil", Text(), "code of its soil"),
        new("sources", Codes(), "codes of the sources that reach it, first choice first"),
        new("checks", new Outline.NumberOrSeveral(new Outline.Number(LandLimits.BasinCount), new Outline.Several(Basin, LandLimits.MaxBasinsPerField)),
            "the checks from the head to the tail, or how many equal ones there are"),
        new("boxes", new Outline.Several(Box, 1000), "the boarded openings"),
        OutlineKey.Of(LandLimits.InletLimit, "the most water that can be passed into the field"),
        new("box_notes", Note(), "what an irrigator would want to know of the boxes"),
        new("note", Note(), "anything a relief would want to know"),
        new("stage", new Outline.Word(Words.Stages.All), "how far it has come"),
        new("work_left", new Outline.Several(new Outline.Word(Words.Work.All), 20), "ground work still to do, where it differs from what the stage implies"),
        new("fit_from", new Outline.Moment(), "not fit for a tractor before this moment"),
        new("aqua_on", new Outline.Day(), "the day the aqua went in"),
        new("first_water", new Outline.Moment(), "when the head check first got water"),
        new("full_since", new Outline.Moment(), "when the last check was covered"),
        OutlineKey.Of(ScheduleLimits.BasinsWet, "how many checks are wet, from the head"),
        new("sown_at", new Outline.Moment(), "when it was sown"),
        OutlineKey.Of(ScheduleLimits.Depth, "depth of water now"),
        new("no_spill", new Outline.Flag(), "no water may be let out of it"),
        new("as_of", new Outline.Moment(), "when these facts were true"),
    ]);

    private static Outline.Thing Basin => new("check",
    [
        OutlineKey.Of(LandLimits.BasinNumber, "its place from the head; counted where not given"),
        Need(OutlineKey.Of(LandLimits.BasinArea, "its acres")),
        OutlineKey.Of(LandLimits.Drop, "drop to the next check"),
        OutlineKey.Of(LandLimits.HighSpot, "how far the highest ground stands above the mean"),
        new("boundary", new Outline.Geometry(), "the edge of the check"),
    ]);

    private static Outline.Thing Box => new("box",
    [
        Need(OutlineKey.Of(LandLimits.BoxNumber, "the farm's number for it")),
        Need("kind", new Outline.Word(Words.Boxes.All), "what it is for"),
        OutlineKey.Of(LandLimits.FromCheck, "check it takes water from"),
        OutlineKey.Of(LandLimits.ToCheck, "check it gives water to"),
        OutlineKey.Of(LandLimits.BoxWidth, "width of the opening"),
        OutlineKey.Of(LandLimits.Boards, "height of the boards now"),
        new("leaks", new Outline.Flag(), "it leaks"),
        new("drains_to", Text(), "where a drain goes"),
        new("at", Point, "where it is"),
    ]);

    private static Outline.Thing Soil => new("soil",
    [
        Need("code", Text(), "the farm's code for the soil"),
        Need("name", Text(), "heavy clay, clay, clay on hardpan, leaky, saline patch"),
        Need(OutlineKey.Of(LandLimits.Fill, "water to wet the worked soil and stand shallow over it")),
        Need(OutlineKey.Of(LandLimits.Seepage, "lost down and sideways once full")),
        OutlineKey.Of(LandLimits.LearnedFrom, "how many seasons stand behind the figures"),
    ]);

    private static Outline.Thing Strip => new("strip",
    [
        Need("name", Text(), "the farm's name for the strip"),
        Need(OutlineKey.Of(LandLimits.PadTrailers, "how many trailers the loading pad holds")),
        new("at", Point, "where it is"),
        OutlineKey.Of(LandLimits.Runway, "length of the runway, for the record only"),
    ]);

    private static Outline.Thing Hazard => new("hazard",
    [
        Need("kind", new Outline.Word(Words.Hazards.All), "what it is"),
        Need("name", Text(), "the farm's words for it"),
        new("points", new Outline.Several(Point, 1000), "where it is, or the corners of a line"),
        OutlineKey.Of(LandLimits.HazardHeight, "its height above the ground"),
        new("confirmed", new Outline.Day(), "when somebody last looked"),
        new("near", Codes(), "codes of the fields it lies near"),
        new("note", Note(), "anything more"),
        new("listed", Listed, "what a public file of obstacles says of it"),
    ]);

    private static Outline.Thing Listed => new("listed",
    [
        Need("id", Text(), "its number in the file"),
        Need("file_of", new Outline.Day(), "the day the file was current"),
        new("verified", new Outline.Flag(), "somebody verified it, by the file"),
        OutlineKey.Of(LandLimits.HazardWithin, "how far from its point it may stand; not known where not given"),
        OutlineKey.Of(LandLimits.HazardHeightWithin, "how far its height may be off"),
        OutlineKey.Of(LandLimits.HazardTop, "its top above the sea"),
        new("light", new Outline.Word(Words.Lights.All), "how it is lit"),
        new("marking", new Outline.Word(Words.Markings.All), "how it is painted or marked"),
        OutlineKey.Of(LandLimits.HazardCount, "how many stand together"),
        new("taken_down", new Outline.Flag(), "the file says that it was taken down"),
        new("changed", new Outline.Day(), "when the file last changed its line"),
    ]);
}
