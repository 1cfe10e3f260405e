using Watersown.Flight;
using Watersown.Flight.Laying;

namespace Watersown.Schedule.Sheets;

/// <summary>Where seed falls in the wind from passes on one heading, and how fast they are flown.</summary>
/// <param name="Heading">Of the passes.</param>
/// <param name="Across">Wind from left to right of the heading; below zero from the right.</param>
/// <param name="Drift">How far the seed drifts with it: the line is flown so far upwind.</param>
/// <param name="Out">On the heading.</param>
/// <param name="Back">The other way.</param>
public sealed record PassAim(Bearing Heading, Speed Across, Length Drift, PassAimWay Out, PassAimWay Back)
{
    // What the farm's own sheets reckon with where nobody measured.
    private static readonly Length Height = Length.FromFeet(40);
    private static readonly Speed Falling = Speed.FromMetersPerSecond(6.5);

    /// <summary>The aim of passes on a heading.</summary>
    [Source(nameof(Sources.QuadraticDrag), "from 40 ft at 6.5 m/s: an estimate, the field test beats it")]
    public static PassAim Of(Bearing heading, Speed air, PassWind wind)
    {
        var (away, home) = (Landed(heading), Landed(heading.Back));
        return new PassAim(heading, wind.Across(heading), Length.FromMeters(Math.Abs(away.Drift.Meters)), new PassAimWay(wind.Ground(air, heading), away.Along), new PassAimWay(wind.Ground(air, heading.Back), home.Along));

        // Level, straight and held on its line; along it the aeroplane has what the wind across leaves of its speed.
        Landing Landed(Bearing way) => Throw.Of(new SeedRelease(Height, wind.Ground(air, way) - wind.Along(way), Falling) { WindAlong = wind.Along(way), WindAcross = wind.Across(way) });
    }

    /// <summary>How the figures were worked out.</summary>
    public Working Tell(Working working) => working
        .Step("wc", "wind across the passes", Math.Abs(Across.MilesPerHour), "mph", "w sin(wind toward − θ)", Sources.Definition)
        .Step("V1", "ground speed on the heading", Out.Ground.MilesPerHour, "mph", "√(V² − wc²) + w cos(wind toward − θ)", Sources.Arithmetic)
        .Step("V2", "ground speed the other way", Back.Ground.MilesPerHour, "mph", "√(V² − wc²) − w cos(wind toward − θ)", Sources.Arithmetic)
        .Step("d", "drift: line to be flown so far upwind", Drift.Feet, "ft", "seed falling from 40 ft at 6.5 m/s in still air, in that wind", Sources.QuadraticDrag)
        .Step("x1", "throw on the heading", Out.Throw.Feet, "ft", "over the ground, gate lag not in it", Sources.QuadraticDrag)
        .Step("x2", "throw the other way", Back.Throw.Feet, "ft", "over the ground, gate lag not in it", Sources.QuadraticDrag);
}

/// <summary>One way along a pass.</summary>
/// <param name="Ground">Speed over the ground.</param>
/// <param name="Throw">How far ahead seed lands of where it left the gate; below zero behind.</param>
public sealed record PassAimWay(Speed Ground, Length Throw);
