using Watersown.Flight;
using Watersown.Flight.Laying;
using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Schedule.Sheets;

/// <summary>Another way of flying the same field.</summary>
public enum PassWayKind
{
    /// <summary>As the farm wishes, or the quickest where it wishes nothing.</summary>
    AsWished,

    /// <summary>A heading somebody wants to see.</summary>
    Tried,

    /// <summary>The quickest cells and headings.</summary>
    Quickest,

    /// <summary>Square to the first.</summary>
    Square,

    /// <summary>A foot more from pass to pass.</summary>
    WiderSwath,

    /// <summary>So much more in the hopper that a load is saved.</summary>
    LargerLoad,

    /// <summary>Loads that may stop within a pass.</summary>
    PartPasses,

    /// <summary>Half of the field from pass to pass.</summary>
    Racetrack,
}

/// <summary>One way, and what it comes to.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Layout">The field laid out so.</param>
/// <param name="Time">The whole job, or the passes alone where nothing is known of loads.</param>
/// <param name="Loads">Loads flown; none where nothing is known of them.</param>
public sealed record PassWay(PassWayKind Kind, FieldLayout Layout, TimeSpan Time, int? Loads)
{
    /// <summary>Most in one load, where that is what differs.</summary>
    public SoakedSeed? Limit { get; init; }
}

/// <summary>A field laid out for the aeroplane that the farm has hired, and what other ways would change.</summary>
public sealed record PassBoard
{
    public required Field Field { get; init; }

    public required Aeroplane Aeroplane { get; init; }

    public required FieldMap Map { get; init; }

    /// <summary>What was taken off the field, and what passes are cut at.</summary>
    public required ImmutableArray<NoDescent> Round { get; init; }

    /// <summary>None where the ground round what is known takes all of the field.</summary>
    public required FieldLayout? Layout { get; init; }

    /// <summary>The layout itself first, then the others.</summary>
    public required ImmutableArray<PassWay> Ways { get; init; }

    /// <summary>Strip to the middle of the field, as reckoned with; none where it is not known.</summary>
    public Length? StripOff { get; init; }

    /// <summary>Of each piece, where somebody told a wind.</summary>
    public ImmutableArray<PassAim> Aims { get; init; } = [];

    public Working Working { get; init; } = Working.Empty;
}

/// <summary>Lays a field of the farm out.</summary>
public static class PassBoards
{
    /// <summary>The board of a field; none where nobody knows where it lies.</summary>
    /// <param name="state">The season.</param>
    /// <param name="field">The field.</param>
    /// <param name="flight">Its next flight, where one is planned.</param>
    /// <param name="tried">Figures that somebody wants to see it laid out for.</param>
    [Source(nameof(Sources.WholePassCount), "laid out for the swath, speed and turn told by the flying service")]
    public static PassBoard? Of(SeasonState state, Field field, FlightSheet? flight, PassTry tried)
    {
        var aeroplane = tried.Of(flight?.Aeroplane ?? state.Aeroplanes.FirstOrDefault() ?? new Aeroplane(string.Empty));
        var place = Placed(FieldPlace.Of(state, field, aeroplane), tried.StripOff);
        if (place.Plane is not { } plane || FieldMaps.Of(field, aeroplane, place) is not { } map) return null;
        var rate = flight?.WetRate ?? Seed.Soaking.Rate(state.Season(field.Code).Rate, state.WetFactor);
        var ask = AskOf(field, place, plane, aeroplane, rate);
        if (tried.Wind is { } told) ask = ask with { Pace = ask.Pace with { Wind = told } };
        var layout = FieldLaying.Lay(place.Parts, ask);
        ImmutableArray<PassAim> aims = tried.Wind is { } wind && layout is not null ? [.. layout.Cells.Select(c => PassAim.Of(c.Plan.Heading, aeroplane.Working, wind))] : [];
        return new PassBoard
        {
            Field = field,
            Aeroplane = aeroplane,
            Map = map,
            Round = ask.Round,
            Layout = layout,
            Ways = layout is null ? [] : [Way(PassWayKind.AsWished, layout), .. Others(place.Parts, ask, layout, tried.Heading)],
            StripOff = place.StripAt is { } strip ? MapGeometry.Distance(strip) : null,
            Aims = aims,
            Working = layout is null ? Working.Empty : aims.Aggregate(LayoutWorking.Of(layout), (working, aim) => aim.Tell(working)),
        };
    }

    /// <summary>The layout of a field as its board shows it, other ways left aside; none where nobody knows where it lies, or nothing of it is sown.</summary>
    /// <param name="state">The season.</param>
    /// <param name="field">The field.</param>
    /// <param name="place">Where it lies.</param>
    /// <param name="aeroplane">Which flies.</param>
    [Source(nameof(Sources.WholePassCount), "laid out for the swath, speed and turn told by the flying service")]
    public static (FieldLayout Layout, MapPlane Plane)? Laid(SeasonState state, Field field, FieldPlace place, Aeroplane aeroplane)
    {
        if (place.Plane is not { } plane) return null;
        var rate = Seed.Soaking.Rate(state.Season(field.Code).Rate, state.WetFactor);
        return FieldLaying.Lay(place.Parts, AskOf(field, place, plane, aeroplane, rate)) is { } layout ? (layout, plane) : null;
    }

    // The strip where it is, or so far off in the same direction.
    private static FieldPlace Placed(FieldPlace place, Length? off) => place.StripAt is { } strip && off is { } wanted && MapGeometry.Distance(strip) is { Meters: > 0 } now
        ? place with { StripAt = new PlanePoint(strip.East * (wanted / now), strip.North * (wanted / now)) }
        : place;

    private static LayingAsk AskOf(Field field, FieldPlace place, MapPlane plane, Aeroplane aeroplane, SoakedRate rate) =>
        new(new PassPace(aeroplane.Swath, aeroplane.Working, aeroplane.Turn < LeastTurn ? LeastTurn : aeroplane.Turn))
        {
            Run = field.LongAxis,
            Round = RoundOf(place, plane, aeroplane),
            Hopper = HopperOf(aeroplane, place, rate),
        };

    // Nobody turns in less; a turn of nothing would lay a field out as if passes were joined.
    private static readonly TimeSpan LeastTurn = TimeSpan.FromSeconds(5);

    private static HopperAsk? HopperOf(Aeroplane aeroplane, FieldPlace place, SoakedRate rate) =>
        place.StripAt is { } strip && rate > SoakedRate.Zero
            ? new HopperAsk { Rate = rate, Limit = aeroplane.WorkingLoad, Strip = strip, Ferry = aeroplane.Ferry, Turnaround = aeroplane.Reload + aeroplane.GroundAndAir }
            : null;

    private static ImmutableArray<NoDescent> RoundOf(FieldPlace place, MapPlane plane, Aeroplane aeroplane) =>
    [
        .. place.Hazards.Where(h => !h.Hazard.Points.IsEmpty && h.Distance is not null)
            .Select(h => (Sight: h, Ground: NoDescents.Of(h.Hazard, plane.Place(h.Hazard.Points), aeroplane.Swath)))
            .Where(h => h.Ground is { } ground && h.Sight.Distance < ground.Reach)
            .Select(h => h.Ground!),
    ];

    private static IEnumerable<PassWay> Others(ImmutableArray<PlanePart> field, LayingAsk ask, FieldLayout layout, Bearing? tried)
    {
        var run = layout.Cells[0].Plan.Heading;
        if (tried is { } asked && Try(field, ask with { Run = asked }, PassWayKind.Tried) is { } seen) yield return seen;
        if (ask.Run is not null && Try(field, ask with { Run = null }, PassWayKind.Quickest) is { } quickest) yield return quickest;
        if (Try(field, ask with { Run = Bearing.FromDegrees((run.Degrees + 90) % 180) }, PassWayKind.Square) is { } square) yield return square;
        if (Try(field, ask with { Pace = ask.Pace with { Swath = ask.Pace.Swath + Length.FromFeet(1) } }, PassWayKind.WiderSwath) is { } wider) yield return wider;
        if (layout.Loads is { ForOneFewer: { } limit } && Try(field, ask with { Hopper = ask.Hopper! with { Limit = limit } }, PassWayKind.LargerLoad) is { } larger) yield return larger with { Limit = limit };
        if (layout.Loads is not null && Try(field, ask with { Hopper = ask.Hopper! with { LineUp = ask.Pace.Turn } }, PassWayKind.PartPasses) is { } parted) yield return parted;
        if (Try(field, ask with { Order = PassOrderKind.Racetrack }, PassWayKind.Racetrack) is { } race) yield return race;
    }

    private static PassWay? Try(ImmutableArray<PlanePart> field, LayingAsk ask, PassWayKind kind) =>
        FieldLaying.Lay(field, ask) is { } layout ? Way(kind, layout) : null;

    private static PassWay Way(PassWayKind kind, FieldLayout layout) => new(kind, layout, layout.Job ?? layout.Passing, layout.Loads?.Chosen.Loads.Length);
}
