namespace Watersown.Wording;

public sealed partial record HandoutWords
{
    public static HandoutWords English { get; } = new()
    {
        Title = "{farm}: fields, passes and known hazards",
        Fields = "Fields",
        Passes = "Passes wished",
        Hazards = "Hazards known to the farm",
        Strips = "Strips",
        Flown = "Flown",
        FieldAbout = "net {net} ac; {dry} lb/ac dry = {soaked} lb/ac soaked; passes {swath} ft apart",
        FieldAboutNoRate = "net {net} ac; passes {swath} ft apart",
        PassName = "{code} pass {n}",
        SoakedSeed = "soaked seed",
        SowTask = "Sow {code} {name}",
        RunName = "{code} flown {n}",
        GateInferred = "no gate signal was logged: where the gate stood open is inferred",
        HazardHeight = "{height} ft above ground",
        HazardSeen = "last seen {day}",
        HazardUnseen = "nobody has confirmed it",
        Cautions =
        [
            "A wish of the farm to plan with. The pilot decides, and may refuse any pass, load or strip.",
            "Hazards are those the farm knows of. Wires, poles, masts and new work are often missing: look by day, before every field.",
            "Rates rest on a weighed, soaked sample and a set gate: check totals against loads.",
            "Keep people and traffic away from field ends and from under the passes.",
        ],
        Readme = "handout.geojson (GeoJSON, RFC 7946), handout.kml (KML 2.2), handout.gpx (GPX 1.1), shapefiles.zip (shapefiles on WGS 84) and taskdata.zip (ISO 11783-10, version 4) all hold the same. Places are degrees on WGS 84; headings are from true north.",
    };
}
