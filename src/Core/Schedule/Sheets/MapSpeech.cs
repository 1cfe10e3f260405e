using Watersown.Flight;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>What a map shows, in sentences for somebody who cannot see it.</summary>
public static class MapSpeech
{
    public static string Of(FlightSheet sheet, Telling tell)
    {
        var (map, words) = (sheet.Map!, tell.Words.Map);
        var said = new List<string> { words.NorthUp, OutlineNote(map.Outline, words) + (map.Outline == MapOutline.Boundary ? string.Empty : "."), RunNote(map, tell) + "." };
        if (map.Parts.Any(p => !p.Holes.IsEmpty)) said.Add(words.HasHole);
        if (map.Strip is { } strip) said.Add(Template.Fill(words.Beyond, ("mark", Template.Fill(words.Strip, ("distance", string.Empty)).Trim()), ("distance", tell.Far(MapGeometry.Distance(strip))), ("bearing", Telling.Toward(MapGeometry.Direction(strip)))));
        foreach (var neighbor in sheet.Neighbors) said.Add(Telling.Name(neighbor.Field) + ": " + Cover(neighbor.Cover, words) + ", " + Telling.Toward(neighbor.Direction) + ".");
        foreach (var sight in sheet.Hazards.Where(s => !s.Hazard.Points.IsEmpty && s is { Distance: not null, Direction: not null }))
            said.Add(Template.Fill(words.Beyond, ("mark", sight.Mark + ", " + sight.Hazard.Name + ","), ("distance", tell.Far(sight.Distance!.Value)), ("bearing", Telling.Toward(sight.Direction!.Value))));
        if (map.Hazards.IsEmpty) said.Add(words.NoHazards);
        return string.Join(' ', said);
    }

    public static string OutlineNote(MapOutline outline, MapWords words) => outline switch
    {
        MapOutline.Boundary => words.FromBoundary,
        MapOutline.FromAcres => words.FromAcres,
        MapOutline.FromAcresDirectionUnknown => words.FromAcresNorth,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The length along the run and the directions wished.</summary>
    public static string RunNote(FieldMap map, Telling tell) => map.Run is { } run
        ? Template.Fill(tell.Words.Map.RunWished, ("length", tell.Long(map.Along)), ("a", Telling.Toward(run)), ("b", Telling.Toward(run.Back)))
        : Template.Fill(tell.Words.Map.RunOpen, ("length", tell.Long(map.Along)));

    public static string Cover(GroundCover cover, MapWords words) => cover switch
    {
        GroundCover.Sown => words.Sown,
        GroundCover.Full => words.Full,
        GroundCover.Filling => words.Filling,
        GroundCover.DryGround => words.DryGround,
        GroundCover.Unknown => words.NotTold,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string Kind(HazardKind kind, MapWords words) => kind switch
    {
        HazardKind.Wire => words.Wire,
        HazardKind.Tower => words.Tower,
        HazardKind.Pole => words.Pole,
        HazardKind.Trees => words.Trees,
        HazardKind.House => words.House,
        HazardKind.School => words.School,
        HazardKind.Livestock => words.Livestock,
        HazardKind.Bees => words.Bees,
        HazardKind.SensitiveCrop => words.SensitiveCrop,
        HazardKind.WaterIntake => words.WaterIntake,
        HazardKind.Pond => words.Pond,
        HazardKind.Road => words.Road,
        HazardKind.Other => words.Other,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
