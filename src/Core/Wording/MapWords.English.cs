namespace Watersown.Wording;

public sealed partial record MapWords
{
    public static MapWords English { get; } = new()
    {
        Title = "Map of {field}",
        NorthUp = "North is up.",
        North = "N",
        FromBoundary = "Outline from the farm's boundary.",
        FromAcres = "Drawn from acres, not surveyed",
        FromAcresNorth = "Drawn from acres, not surveyed; direction not known",
        RunWished = "{length}, run {a} and {b} wished",
        RunOpen = "{length}, run: pilot's choice",
        Passes = "{length}, {n} passes of {swath}",
        Strip = "strip {distance}",
        Leaks = "leaks",
        Sown = "sown",
        Full = "full",
        Filling = "filling",
        DryGround = "dry ground",
        NotTold = "not told",
        HasHole = "Gray inside the field: not sown.",
        LeveesUnknown = "{n} checks, levees not drawn.",
        NoMap = "No map: neither an edge nor a middle is known for this field. The facts stand beside.",
        NoHazards = "No hazard is marked on this map. Unknown, not none.",
        Beyond = "{mark} lies {distance} off, toward {bearing}.",
        Wire = "wire",
        Tower = "tower",
        Pole = "pole",
        Trees = "trees",
        House = "house",
        School = "school",
        Livestock = "livestock",
        Bees = "bees",
        SensitiveCrop = "crop to protect",
        WaterIntake = "water intake",
        Pond = "pond",
        Road = "road",
        Other = "other",
        NotSown = "not sown",
    };
}
