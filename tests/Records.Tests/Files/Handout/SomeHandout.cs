using Watersown.Flight.Handout;
using Watersown.Land;

namespace Watersown.Records.Files.Handout;

/// <summary>A handout that has everything: two pieces, a hole, a pass cut in two, hazards as point and line, and a flight with its times.</summary>
internal static class SomeHandout
{
    public static readonly DateTimeOffset Made = new(2026, 5, 9, 14, 0, 0, TimeSpan.FromHours(-7));

    // Deliberately the wrong way round: every format must turn rings as it wants them.
    private static readonly ImmutableArray<GeoPoint> Outer = [new(39.01, -122.02), new(39.02, -122.02), new(39.02, -122.01), new(39.01, -122.01)];
    private static readonly ImmutableArray<GeoPoint> Hole = [new(39.014, -122.016), new(39.014, -122.014), new(39.016, -122.014), new(39.016, -122.016)];
    private static readonly ImmutableArray<GeoPoint> Beyond = [new(39.021, -122.02), new(39.021, -122.01), new(39.025, -122.01)];

    public static FarmHandout Whole { get; } = Of("Two Gates & <\"Sons\"> \u0001ñandú", timed: true);

    public static FarmHandout Of(string name, bool timed)
    {
        var field = new Field { Code = "N4", Name = name, Net = Area.FromAcres(118) };
        return new FarmHandout("Marrowfen Farm", Made,
        [
            new FieldHandout(field, new Boundary([new BoundaryPart(Outer, [Hole]), new BoundaryPart(Beyond, [])]))
            {
                Swath = Length.FromFeet(50),
                Dry = SeedRate.FromPoundsPerAcre(150),
                Soaked = SoakedRate.FromPoundsPerAcre(187.5),
                Drawn = Area.FromSquareMeters(1_030_117.4),
                Passes =
                [
                    new HandoutPass(1, Bearing.FromDegrees(0), [new HandoutSpan(new(39.01, -122.0195), new(39.02, -122.0195))]),
                    new HandoutPass(2, Bearing.FromDegrees(0), [new HandoutSpan(new(39.01, -122.015), new(39.014, -122.015)), new HandoutSpan(new(39.016, -122.015), new(39.02, -122.015))]),
                ],
                Flown = [Run(1, timed, 0), Run(2, timed, 60)],
            },
        ])
        {
            Hazards =
            [
                new Hazard(HazardKind.Tower, "mast") { Points = [new(39.03, -122.03)], Height = Length.FromFeet(110), Confirmed = new DateOnly(2026, 5, 2) },
                new Hazard(HazardKind.Wire, "line") { Points = [new(39.0, -122.03), new(39.0, -122.0), new(39.01, -121.99)] },
            ],
            Strips = [new Strip("Heron's Elbow", 2) { At = new GeoPoint(39, -122) }],
        };
    }

    private static HandoutRun Run(int pass, bool timed, double later) => new(pass,
        [.. Enumerable.Range(0, 4).Select(i => new HandoutFix(new GeoPoint(39.01 + (i * 0.003), -122.02 + (pass * 0.0001)), timed ? Made.AddSeconds(later + (i * 0.2)) : null))])
    {
        GateInferred = pass == 2,
    };
}
