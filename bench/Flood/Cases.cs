using Watersown.Hydraulics;
using Watersown.Water.Flood;

namespace Watersown.Bench;

/// <summary>Fields of twenty checks in a row, invented.</summary>
internal static class Cases
{
    public static TimeSpan Span { get; } = TimeSpan.FromHours(96);

    /// <summary>Fifteen centimeters deep from the start, three from check to check: every box runs and is drowned while the flow rises, falls and settles.</summary>
    public static FloodNetwork Drowned(int checks = 20) => Row(checks, 0.03, 1, [(0, 0.10), (24, 0.25), (60, 0.15)]);

    /// <summary>Dry at the start, with a tenth of a meter to drink: the front goes down the field for all of the four days.</summary>
    public static FloodNetwork Dry(int checks = 20) => Row(checks, 0.06, 0, [(0, 0.35), (48, 0.25)]);

    /// <summary>Dry at the start, boards three kilometers wide at the front's depth: a sheet of a millimeter or two goes over them, and is gone in a minute.</summary>
    public static FloodNetwork Sheets(int checks = 20)
    {
        var dry = Dry(checks);
        return dry with { Boxes = [.. dry.Boxes.Select(b => b with { Width = Length.FromMeters(3000) })] };
    }

    /// <summary>Futures of one field: flow and loss as badly known as they are.</summary>
    public static ImmutableArray<FloodFuture> Futures(int count) =>
        [.. Enumerable.Range(0, count).Select(i => new FloodFuture { Flow = 0.9 + (0.2 * (i % 16) / 15), Loss = 0.7 + (0.6 * (i / 16) / Math.Max(1, (count - 1) / 16)) })];

    /// <summary>Fields that have nothing in common but the number of their checks.</summary>
    public static ImmutableArray<FloodNetwork> Unlike(FloodNetwork like, int count) => [.. Enumerable.Range(0, count).Select(k => like with
    {
        Checks = [.. like.Checks.Select((c, i) => c with { Area = c.Area * (1 + (0.04 * ((i * 7 * (k + 1) % 11) - 5))), TakeUp = c.TakeUp * (1 + (0.05 * ((k % 7) - 3))) })],
        Boxes = [.. like.Boxes.Select((b, i) => b with { Width = b.Width * (1 + (0.05 * ((i * (k + 3) % 9) - 4))), Boards = b.Boards * (1 + (0.06 * ((i + k) % 5))) })],
    })];

    private static FloodNetwork Row(int checks, double drop, double covered, (double Hour, double Flow)[] inflow) => new()
    {
        Checks = [.. Enumerable.Range(0, checks).Select(i => new FloodCheck($"ck {i + 1}", Area.FromHectares(1.5 + (2.0 * (i * 7 % 11) / 10)), WaterDepth.FromMeters(0.10), WaterDepth.FromMeters(0.05))
        {
            Ground = WaterDepth.FromMeters(-drop * i),
            Percolation = DepthRate.FromMillimetersPerDay(2),
            Covered = Fraction.FromShare(covered),
            Depth = WaterDepth.FromMeters(0.15 * covered),
        })],
        Boxes = [.. Enumerable.Range(0, checks).Select(i => new FloodBox($"box {i + 1}", i, i + 1 < checks ? i + 1 : null, Length.FromMeters(1 + (0.2 * (i % 6))), WaterDepth.FromMeters(0.05)) { Kind = i % 2 == 0 ? WeirKind.Contracted : WeirKind.Suppressed })],
        Inlets = [new FloodInlet("source", 0, [.. inflow.Select(f => new FlowStep(TimeSpan.FromHours(f.Hour), FlowRate.FromCubicMetersPerSecond(f.Flow)))])],
        Air = [new FloodAir(TimeSpan.Zero, DepthRate.FromMillimetersPerDay(6), DepthRate.Zero)],
    };
}
