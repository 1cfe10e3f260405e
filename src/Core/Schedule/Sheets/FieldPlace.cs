using Watersown.Flight;
using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Schedule.Sheets;

/// <summary>Where a field lies: its outline on a plane of its own, the way from the strip, and what is near.</summary>
public sealed record FieldPlace
{
    /// <summary>How far a flight sheet looks for hazards.</summary>
    [Source(nameof(Sources.FarmDefault), "three miles from the field's edge")]
    public static Length HazardReach { get; } = Length.FromMiles(3);

    /// <summary>How near another field must be to count as a neighbor.</summary>
    [Source(nameof(Sources.FarmDefault), "a quarter mile between edges")]
    public static Length NeighborReach { get; } = Length.FromMiles(0.25);

    /// <summary>The plane; none where neither edge nor middle of the field is known.</summary>
    public MapPlane? Plane { get; init; }

    public ImmutableArray<PlanePart> Parts { get; init; } = [];

    public MapOutline Outline { get; init; }

    public Strip? Strip { get; init; }

    public PlanePoint? StripAt { get; init; }

    public Length? Distance { get; init; }

    /// <summary>From the strip to the middle of the field.</summary>
    public Bearing? Direction { get; init; }

    public ImmutableArray<HazardSight> Hazards { get; init; } = [];

    public int HazardsElsewhere { get; init; }

    public ImmutableArray<Neighbor> Neighbors { get; init; } = [];

    public static FieldPlace Of(SeasonState state, Field field, Aeroplane aeroplane)
    {
        var farm = state.Farm;
        var strip = farm.Strips.FirstOrDefault(s => s.Name == aeroplane.Strip) ?? farm.Strips.FirstOrDefault();
        if (Middle(field) is not { } middle)
        {
            var told = farm.Hazards.Where(h => h.Near.Contains(field.Code, StringComparer.Ordinal)).ToImmutableArray();
            return new FieldPlace
            {
                Strip = strip,
                HazardsElsewhere = farm.Hazards.Length - told.Length,
                Hazards = [.. told.Select(h => new HazardSight(h, string.Empty) { Near = field, Look = Look(state, h) })],
            };
        }

        var plane = new MapPlane(FarmPlane.At(strip?.At ?? middle), middle);
        var (parts, outline) = Outlined(field, plane, middle);
        PlanePoint? stripAt = strip?.At is { } at ? plane.Place(at) : null;
        var hazards = NearHazards(state, field, plane, parts);
        return new FieldPlace
        {
            Plane = plane,
            Parts = parts,
            Outline = outline,
            Strip = strip,
            StripAt = stripAt,
            Distance = stripAt is { } p ? MapGeometry.Distance(p) : null,
            Direction = stripAt is { } q ? MapGeometry.Direction(q).Back : null,
            Hazards = hazards,
            HazardsElsewhere = farm.Hazards.Length - hazards.Length,
            Neighbors = NearFields(state, field, plane, parts),
        };
    }

    /// <summary>Middle of the field as told, or of the box round its edge.</summary>
    public static GeoPoint? Middle(Field field)
    {
        if (field.Center is { } told) return told;
        if (field.Boundary is not { } boundary) return null;
        var points = boundary.Parts.SelectMany(p => p.Outer).ToArray();
        return new GeoPoint((points.Min(p => p.Latitude) + points.Max(p => p.Latitude)) / 2, (points.Min(p => p.Longitude) + points.Max(p => p.Longitude)) / 2);
    }

    /// <summary>The field's outline on a plane: its boundary, or a rectangle of its acres about its middle.</summary>
    internal static (ImmutableArray<PlanePart> Parts, MapOutline Outline) Outlined(Field field, MapPlane plane, GeoPoint middle)
    {
        if (field.Boundary is { } boundary) return (plane.Place(boundary), MapOutline.Boundary);
        var along = field.PassLength ?? FieldFlight.UsualPass;
        var across = Length.FromMeters((field.Gross ?? field.Net).SquareMeters / along.Meters);
        var rectangle = MapGeometry.Rectangle(along, across, field.LongAxis ?? Bearing.FromDegrees(0));
        var place = plane.Place(middle);
        ImmutableArray<PlanePoint> outer = [.. rectangle.Outer.Select(p => new PlanePoint(p.East + place.East, p.North + place.North))];
        return ([new PlanePart(outer, [])], field.LongAxis is null ? MapOutline.FromAcresDirectionUnknown : MapOutline.FromAcres);
    }

    private static HazardLook Look(SeasonState state, Hazard hazard) => HazardLooks.Of(state.Farm, hazard, new DateOnly(state.Now.Year, state.Now.Month, state.Now.Day));

    private static ImmutableArray<HazardSight> NearHazards(SeasonState state, Field field, MapPlane plane, ImmutableArray<PlanePart> parts)
    {
        var near = state.Farm.Hazards.Select(h => Sight(state.Farm, h, field, plane, parts) with { Look = Look(state, h) })
            .Where(s => s.Distance is not { } d ? s.Hazard.Near.Contains(field.Code, StringComparer.Ordinal) : d <= HazardReach)
            .OrderBy(s => s.Distance?.Meters ?? -1);
        var marks = 0;
        return [.. near.Select(s => s.Hazard.Points.IsEmpty ? s : s with { Mark = Letter(marks++) })];
    }

    private static HazardSight Sight(Farm farm, Hazard hazard, Field field, MapPlane plane, ImmutableArray<PlanePart> parts)
    {
        if (!hazard.Points.IsEmpty)
        {
            var points = plane.Place(hazard.Points);
            var distance = MapGeometry.ToEdge(parts, points);
            return new HazardSight(hazard, string.Empty) { Distance = distance, Direction = MapGeometry.Direction(MapGeometry.Nearest(points)), Inside = distance <= Length.Zero };
        }

        if (hazard.Near.Contains(field.Code, StringComparer.Ordinal)) return new HazardSight(hazard, string.Empty) { Near = field };
        var near = hazard.Near.Select(code => farm.Fields.FirstOrDefault(f => f.Code == code)).FirstOrDefault(f => f is not null && Middle(f) is not null);
        if (near is null) return new HazardSight(hazard, string.Empty) { Distance = HazardReach * 2 };
        var at = plane.Place(Middle(near)!.Value);
        return new HazardSight(hazard, string.Empty) { Near = near, Distance = MapGeometry.Distance(at), Direction = MapGeometry.Direction(at) };
    }

    private static ImmutableArray<Neighbor> NearFields(SeasonState state, Field field, MapPlane plane, ImmutableArray<PlanePart> parts)
    {
        var near = ImmutableArray.CreateBuilder<Neighbor>();
        foreach (var other in state.Farm.Fields.Where(f => f.Code != field.Code))
        {
            if (Middle(other) is not { } middle) continue;
            var place = plane.Place(middle);
            var apart = MapGeometry.Between(parts, Outlined(other, plane, middle).Parts);
            if (apart > NeighborReach) continue;
            var season = state.Season(other.Code);
            near.Add(new Neighbor(other, CoverOf(season), season.SownAt ?? season.FullSince) { Distance = apart, Direction = MapGeometry.Direction(place) });
        }

        return [.. near.OrderBy(n => n.Distance.Meters).ThenBy(n => n.Field.Code, StringComparer.Ordinal)];
    }

    private static GroundCover CoverOf(FieldSeason season) => season.Stage switch
    {
        FieldStage.Sown => GroundCover.Sown,
        FieldStage.Full => GroundCover.Full,
        FieldStage.Flooding => GroundCover.Filling,
        _ => GroundCover.DryGround,
    };

    private static string Letter(int index) => index < 26 ? ((char)('A' + index)).ToString() : Letter((index / 26) - 1) + (char)('A' + (index % 26));
}
