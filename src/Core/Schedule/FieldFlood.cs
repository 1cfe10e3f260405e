using System.Globalization;
using Watersown.Hydraulics;
using Watersown.Land;
using Watersown.Water;
using Watersown.Water.Flood;

namespace Watersown.Schedule;

/// <summary>
/// A field laid out for the flood, check by check, from what the farm says of it. What it does not say is taken as usual: a drop of
/// 0.2 ft from check to check, a box of four feet. Boards that nobody has told of are taken as set for what flows, as an irrigator
/// sets them: the check stands at the wished depth and passes the rest, so that the field is full when its water balance says so.
/// </summary>
public static class FieldFlood
{
    /// <summary>Width of a box that nobody has measured.</summary>
    [Source(nameof(Sources.FarmDefault), "4 ft")]
    public static Length UsualBox { get; } = Length.FromFeet(4);

    /// <summary>Drop from check to check that nobody has measured.</summary>
    [Source(nameof(Sources.CommonPractice), "levees at 0.2 ft of fall")]
    public static WaterDepth UsualDrop { get; } = WaterDepth.FromFeet(0.2);

    /// <summary>Head over boards that are set for what flows: far below what a stick shows, yet something to go over by.</summary>
    private static readonly WaterDepth passingHead = WaterDepth.FromMeters(0.0005);

    /// <summary>The field with water let in as told.</summary>
    /// <param name="state">The season as it stands: which checks are wet, and how deep.</param>
    /// <param name="code">Field code.</param>
    /// <param name="source">Where the water comes from.</param>
    /// <param name="flow">Let into the field from its start on, all inlets together, what other land takes already taken off.</param>
    /// <param name="depth">Depth that boards are set for; the depth for sowing where not told.</param>
    /// <param name="asMeasured">Boxes at their own width with boards at that depth, whatever flows: a check then stands as deep as that drives.</param>
    public static FloodNetwork Network(SeasonState state, string code, string source, ImmutableArray<FlowStep> flow, WaterDepth? depth = null, bool asMeasured = false)
    {
        var (field, water, season) = (state.Farm.Field(code), FieldWater.Of(state, code), state.Season(code));
        var front = Least(depth ?? WaterTargets.Sowing, water.Job.Fill);
        var basins = Basins(field);
        var wet = WetChecks(basins, season);
        var checks = ImmutableArray.CreateBuilder<FloodCheck>();
        var ground = WaterDepth.Zero;
        // Acres of checks may take in levees: they are brought to the acres that are sown.
        var sown = field.Net / basins.Aggregate(Area.Zero, (sum, b) => sum + b.Area);
        foreach (var basin in basins)
        {
            checks.Add(new FloodCheck(NameOf(field, "ck", basin.Number), basin.Area * sown, water.Job.Fill - front, front)
            {
                Ground = ground,
                Percolation = water.Job.Loss - state.Evaporation,
                Covered = Fraction.FromShare(checks.Count < wet ? 1 : 0),
                Depth = checks.Count < wet ? season.Depth ?? front : WaterDepth.Zero,
            });
            ground -= basin.Drop ?? UsualDrop;
        }

        return new FloodNetwork
        {
            Checks = checks.ToImmutable(),
            Boxes = Boxes(field, basins, front, asMeasured ? null : Passing(flow)),
            Inlets = Inlets(field, basins, source, flow),
            Air = [new FloodAir(TimeSpan.Zero, state.Evaporation, DepthRate.Zero)],
        };
    }

    private static ImmutableArray<Basin> Basins(Field field) => field.Basins.IsEmpty ? [new Basin(1, field.Net)] : [.. field.Basins.OrderBy(b => b.Number)];

    private static int WetChecks(ImmutableArray<Basin> basins, FieldSeason season) => season.Stage switch
    {
        FieldStage.Full or FieldStage.Sown => basins.Length,
        FieldStage.Flooding => Math.Min(basins.Length, season.ChecksWet ?? (basins.Length / 2)),
        _ => 0,
    };

    // Between neighbors; boxes that stand side by side work as one wide one. A drain is shut while a field fills.
    private static ImmutableArray<FloodBox> Boxes(Field field, ImmutableArray<Basin> basins, WaterDepth front, Length? passing)
    {
        var known = field.Boxes.Where(b => b is { Kind: BoxKind.BetweenChecks, FromCheck: not null, ToCheck: not null })
            .Where(b => Place(basins, b.FromCheck!.Value) >= 0 && Place(basins, b.ToCheck!.Value) >= 0)
            .GroupBy(b => (From: b.FromCheck!.Value, To: b.ToCheck!.Value))
            .Select(g => new FloodBox(NameOf(field, "box", g.First().Number), Place(basins, g.Key.From), Place(basins, g.Key.To),
                passing is { } wide && g.All(b => b.Boards is null) ? wide : g.Aggregate(Length.Zero, (sum, b) => sum + (b.Width ?? UsualBox)), g.Select(b => b.Boards).FirstOrDefault(b => b is not null) ?? front))
            .ToList();
        for (var i = 0; i + 1 < basins.Length; i++)
        {
            var place = i;
            if (!known.Exists(b => b.To == place + 1)) known.Add(new FloodBox(NameOf(field, "below ck", basins[i].Number), i, i + 1, passing ?? UsualBox, front));
        }

        return [.. known];
    }

    // As wide as passes all that comes in at the passing head.
    private static Length Passing(ImmutableArray<FlowStep> flow)
    {
        var most = flow.Select(f => f.Flow).Append(FlowRate.FromCubicFeetPerSecond(1)).Max();
        return UsualBox * (most / Weir.FreeFlow(WeirKind.Suppressed, passingHead, UsualBox));
    }

    // Inlets share the water by their width; a field without one gets it at its head.
    private static ImmutableArray<FloodInlet> Inlets(Field field, ImmutableArray<Basin> basins, string source, ImmutableArray<FlowStep> flow)
    {
        var gates = field.Boxes.Where(b => b is { Kind: BoxKind.Inlet, ToCheck: not null } && Place(basins, b.ToCheck!.Value) >= 0).ToList();
        if (gates.Count == 0) return [new FloodInlet(source, 0, flow)];
        var all = gates.Aggregate(Length.Zero, (sum, g) => sum + (g.Width ?? UsualBox));
        return [.. gates.Select(g => new FloodInlet(source, Place(basins, g.ToCheck!.Value), [.. flow.Select(f => f with { Flow = f.Flow * ((g.Width ?? UsualBox) / all) })]))];
    }

    private static string NameOf(Field field, string what, int number) => string.Create(CultureInfo.InvariantCulture, $"{field.Code} {what} {number}");

    private static int Place(ImmutableArray<Basin> basins, int number) => basins.Select(b => b.Number).ToList().IndexOf(number);

    private static WaterDepth Least(WaterDepth a, WaterDepth b) => a < b ? a : b;
}
