using Watersown.Records.Land;
using Watersown.Schedule;
using Watersown.Water;
using Watersown.Water.Flood;

namespace Watersown.Bench;

/// <summary>All checks of the farm of the examples over 31 days, every field with the water that fills it in less than five, then what holds it.</summary>
internal static class May
{
    private static readonly TimeSpan Span = TimeSpan.FromDays(31);
    private static readonly FloodOptions Quiet = new() { Telling = TimeSpan.Zero };

    public static void Measure(string farm)
    {
        var state = OpenFarm.Run(farm).Value;
        Table(state, "boxes at their own width, boards at the depth for sowing", asMeasured: true);
        Table(state, "boards that nobody has told of set for what flows, a thin sheet over wide boards", asMeasured: false);
    }

    private static void Table(SeasonState state, string how, bool asMeasured)
    {
        ImmutableArray<FloodNetwork> networks = [.. state.Farm.Fields.Select(f => Network(state, f.Code, f.Sources[0], asMeasured))];
        Console.WriteLine();
        Console.WriteLine($"{state.Farm.Name}: {networks.Length} fields, {networks.Sum(n => n.Checks.Length)} checks, 31 days, one core; {how}");
        Measured.Row("what", "best, ms", "median, ms");
        Measured.Row("---", "---:", "---:");
        // A minute is too long a step for a thin sheet over wide boards: the plain steps would blow up.
        if (asMeasured) Say("scalar RK4 with powers, 60 s", () => Plain(networks));
        Say("Flooding.Run, field by field, depths told by the hour", () => Each(networks, null));
        Say("Flooding.Run, field by field", () => Each(networks, Quiet));
        Say("FloodBatch", () => FloodBatch.Run(networks, Span));
        Compare(networks);
    }

    private static FloodNetwork Network(SeasonState state, string code, string source, bool asMeasured)
    {
        var water = FieldWater.Of(state, code);
        var fill = FlowRate.FromCubicMetersPerSecond((water.Job.Dry * water.Job.Fill).CubicMeters / (5 * 86400.0));
        var full = Ponding.FillTime(water.Job, water.Holding + fill)!.Value;
        return FieldFlood.Network(state, code, source, [new FlowStep(TimeSpan.Zero, water.Holding + fill), new FlowStep(full, water.Holding)], asMeasured: asMeasured);
    }

    private static void Compare(ImmutableArray<FloodNetwork> networks)
    {
        var (one, many) = (networks.Select(n => Flooding.Run(n, Span, Quiet)).ToList(), FloodBatch.Run(networks, Span));
        var apart = one.Zip(many, (a, b) => a.Checks.Zip(b.Checks, (x, y) => Math.Abs((x.Depth - y.Depth).Millimeters)).Max()).Max();
        var minutes = one.Zip(many, (a, b) => a.AllFull is { } x && b.AllFull is { } y ? Math.Abs((x - y).TotalMinutes) : 0).Max();
        Console.WriteLine($"FloodBatch against Flooding.Run: {Measured.Figure(apart, "0.0000")} mm, {Measured.Figure(minutes, "0.00")} min of the hour when all is full; {many.Count(m => m.AllFull is not null)} of {many.Length} fields full; steps {one.Sum(r => r.Steps)} one by one");
    }

    private static void Plain(ImmutableArray<FloodNetwork> networks)
    {
        foreach (var network in networks.Where(n => n.Boxes.Length > 0)) new PlainStep(Closed(network)).Run(Span.TotalSeconds, 60);
    }

    private static void Each(ImmutableArray<FloodNetwork> networks, FloodOptions? options)
    {
        foreach (var network in networks) Flooding.Run(network, Span, options);
    }

    // The plain steps want a box below every check: one that passes nothing.
    private static FloodNetwork Closed(FloodNetwork network) => network.Boxes.Length == network.Checks.Length
        ? network
        : network with { Boxes = [.. network.Boxes, network.Boxes[0] with { Boards = WaterDepth.FromMeters(100), To = null, From = network.Checks.Length - 1 }] };

    private static void Say(string what, Action action)
    {
        var (best, median) = Measured.Time(action);
        Measured.Row(what, Measured.Figure(best.TotalMilliseconds, "0.00"), Measured.Figure(median.TotalMilliseconds, "0.00"));
    }
}
