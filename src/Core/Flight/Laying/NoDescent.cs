using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight.Laying;

/// <summary>
/// Ground on which no aeroplane comes down to sow: along a wire, round a tower, beside what must not be sown. How far it
/// reaches is common practice and the farm's to change; what nobody told is not in it.
/// </summary>
/// <param name="Name">What stands there.</param>
/// <param name="Points">A place, or the corners of a line, on the plane of the field.</param>
/// <param name="Reach">To every side of it.</param>
public sealed record NoDescent(string Name, ImmutableArray<PlanePoint> Points, Length Reach)
{
    /// <summary>Of what stands there; none where nobody told it.</summary>
    public Length? Height { get; init; }

    /// <summary>A pass may go over it with the gate shut; otherwise it is two passes.</summary>
    public bool FlownOver { get; init; } = true;

    internal bool IsLine => Points.Length > 1;
}

/// <summary>How far from things no pass comes down, and how long a climb takes.</summary>
public static class NoDescents
{
    /// <summary>Beside a wire, and beyond the height of a tower.</summary>
    [Source(nameof(Sources.CommonPractice), "100 ft each side of a power line; a tower's height and 100 ft, for its guys")]
    public static Length BesideWire { get; } = Length.FromFeet(100);

    /// <summary>From people, animals and houses.</summary>
    [Source(nameof(Sources.CommonPractice), "100 to 300 ft from people or livestock in the open and occupied houses to a pass with the gate open: the larger")]
    public static Length FromPeople { get; } = Length.FromFeet(300);

    /// <summary>From a school.</summary>
    [Source(nameof(Sources.CommonPractice), "a quarter mile from schools and gatherings")]
    public static Length FromSchool { get; } = Length.FromMiles(0.25);

    /// <summary>
    /// The ground round something that the farm knows, wider by as far as its place is unsure; none where no distance is usual,
    /// as beside a road.
    /// </summary>
    /// <param name="hazard">What it is.</param>
    /// <param name="points">Where, on the plane of the field.</param>
    /// <param name="swath">Of the aeroplane.</param>
    [Source(nameof(Sources.CommonPractice), "reach by kind")]
    public static NoDescent? Of(Hazard hazard, ImmutableArray<PlanePoint> points, Length swath) => ReachOf(hazard, swath) is { } reach
        ? new NoDescent(hazard.Name, points, reach + (hazard.Listing?.Within ?? Length.Zero)) { Height = hazard.Height, FlownOver = hazard.Kind is not (HazardKind.Tower or HazardKind.Pole) }
        : null;

    private static Length? ReachOf(Hazard hazard, Length swath) => hazard.Kind switch
    {
        HazardKind.Wire => BesideWire,
        HazardKind.Tower or HazardKind.Pole => (hazard.Height ?? Length.Zero) + BesideWire,
        HazardKind.House or HazardKind.Livestock => FromPeople,
        HazardKind.School => FromSchool,
        HazardKind.Trees or HazardKind.Bees or HazardKind.SensitiveCrop or HazardKind.WaterIntake or HazardKind.Pond => swath / 2,
        HazardKind.Road or HazardKind.Other => null,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Left unsown before something that is climbed over.</summary>
    /// <param name="height">Of the climb.</param>
    /// <param name="speed">Over the ground.</param>
    /// <param name="climb">Rate of climb; above zero.</param>
    [Source(nameof(Sources.Arithmetic), "height × ground speed / rate of climb")]
    public static Length ClimbRun(Length height, Speed speed, Speed climb)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(climb.MetersPerSecond, 0, nameof(climb));
        return height * (speed / climb);
    }
}
