using Watersown.Flight;
using Watersown.Flight.Handout;
using Watersown.Flight.Laying;
using Watersown.Land;
using Watersown.Schedule.Sheets;
using Watersown.Seed;
using Watersown.Shapes;

namespace Watersown.Schedule;

/// <summary>Puts together what is handed out of a farm's fields.</summary>
public static class Handouts
{
    /// <summary>
    /// The fields asked for, or all of them. A field whose edge nobody has drawn is left out and told: a rectangle of its acres
    /// must not come to fly by.
    /// </summary>
    /// <param name="state">The farm as it stands.</param>
    /// <param name="codes">Field codes; none for every field.</param>
    [Source(nameof(Sources.WholePassCount), "the passes of the field's own board")]
    public static Outcome<FarmHandout> Of(SeasonState state, ImmutableArray<string> codes)
    {
        var unknown = codes.Where(c => state.Farm.Fields.All(f => f.Code != c)).Select(c => SheetsProblems.UnknownField.At("--field", ("value", c), ("known", string.Join(", ", state.Farm.Fields.Select(f => f.Code))))).ToList();
        if (unknown.Count > 0) return Outcome<FarmHandout>.Refuse(unknown);
        ImmutableArray<Field> wanted = [.. state.Farm.Fields.Where(f => codes.IsEmpty || codes.Contains(f.Code, StringComparer.Ordinal))];
        ImmutableArray<Field> drawn = [.. wanted.Where(f => f.Boundary is not null)];
        var without = wanted.Where(f => f.Boundary is null).Select(f => SheetsProblems.NoEdge.At(f.Code, ("value", f.Name))).ToList();
        if (drawn.IsEmpty) return Outcome<FarmHandout>.Refuse([SheetsProblems.NothingDrawn.At("FARM"), .. without]);

        var aeroplane = state.Aeroplanes.FirstOrDefault() ?? new Aeroplane(string.Empty);
        ImmutableArray<(Field Field, FieldPlace Place)> placed = [.. drawn.Select(f => (f, FieldPlace.Of(state, f, aeroplane)))];
        var handout = new FarmHandout(state.Farm.Name, state.Now, [.. placed.Select(p => Of(state, p.Field, p.Place, aeroplane))])
        {
            Hazards = [.. placed.SelectMany(p => p.Place.Hazards).Select(s => s.Hazard).Where(h => !h.Points.IsEmpty).Distinct()],
            Strips = [.. state.Farm.Strips.Where(s => s.At is not null)],
        };
        return Outcome<FarmHandout>.Of(handout, without);
    }

    private static HandoutPass Pass(FlownLine line, MapPlane plane) => new(
        line.Number,
        MapGeometry.Direction(new PlanePoint(line.To.East - line.From.East, line.To.North - line.From.North)),
        [.. line.Spans.Select(s => new HandoutSpan(plane.OnGround(s.From), plane.OnGround(s.To)))]);

    private static FieldHandout Of(SeasonState state, Field field, FieldPlace place, Aeroplane aeroplane)
    {
        var edge = field.Boundary!;
        var rate = state.Season(field.Code).Rate;
        return new FieldHandout(field, edge)
        {
            Swath = aeroplane.Swath,
            Dry = rate,
            Soaked = Soaking.Rate(rate, state.WetFactor),
            Drawn = GeodesicArea.Of(edge),
            Passes = PassBoards.Laid(state, field, place, aeroplane) is { } laid ? [.. laid.Layout.Lines.Select(line => Pass(line, laid.Plane))] : [],
        };
    }
}
