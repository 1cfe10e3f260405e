namespace Watersown.Flight.Laying;

/// <summary>Wind that passes are reckoned in, steady and the same over the field, as somebody told it.</summary>
/// <param name="From">Whence it blows, from the plane's north.</param>
/// <param name="Speed">Below half of the aeroplane's.</param>
public sealed record PassWind(Bearing From, Speed Speed)
{
    /// <summary>Most of it across a pass that somebody wants; none where nobody said.</summary>
    public Speed? MostAcross { get; init; }

    /// <summary>From left to right of a pass; below zero from the right.</summary>
    [Source(nameof(Sources.Definition), "w sin(wind toward − heading)")]
    public Speed Across(Bearing heading) => Speed * Math.Sin(Toward(heading));

    /// <summary>From behind; below zero from ahead.</summary>
    [Source(nameof(Sources.Definition), "w cos(wind toward − heading)")]
    public Speed Along(Bearing heading) => Speed * Math.Cos(Toward(heading));

    /// <summary>Over the ground on a line held against the wind.</summary>
    /// <param name="air">Through the air.</param>
    /// <param name="heading">Of the line.</param>
    [Source(nameof(Sources.Arithmetic), "√(V² − c²) + along")]
    public Speed Ground(Speed air, Bearing heading) => Held(air, heading) + Along(heading);

    /// <summary>As fast as a line is flown that is flown one way as often as the other.</summary>
    /// <param name="air">Through the air.</param>
    /// <param name="heading">Of the line.</param>
    [Source(nameof(Sources.Arithmetic), "(V² − w²) / √(V² − c²), one over the mean of both times")]
    public Speed Mean(Speed air, Bearing heading) => Speed.FromMetersPerSecond(((air.MetersPerSecond * air.MetersPerSecond) - (Speed.MetersPerSecond * Speed.MetersPerSecond)) / Held(air, heading).MetersPerSecond);

    internal bool Suits(Bearing heading) => MostAcross is not { } most || Math.Abs(Across(heading).MetersPerSecond) <= most.MetersPerSecond + Dust;

    // The heading of the wind itself must suit whatever is wanted, m/s.
    private const double Dust = 1e-9;

    private Speed Held(Speed air, Bearing heading)
    {
        var across = Across(heading).MetersPerSecond;
        return Speed.FromMetersPerSecond(Math.Sqrt((air.MetersPerSecond * air.MetersPerSecond) - (across * across)));
    }

    private double Toward(Bearing heading) => From.Radians + Math.PI - heading.Radians;
}
