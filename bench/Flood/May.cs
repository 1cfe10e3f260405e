using Watersown.Records.Land;
using Watersown.Schedule;
using Watersown.Water.Flood;

namespace Watersown.Bench;

/// <summary>All checks of the farm of the examples over 31 days, by each way there is.</summary>
internal static class May
{
    private static readonly FloodOptions Quiet = new() { Telling = TimeSpan.Zero };

    public static void Measure(string farm)
    {
        var state = OpenFarm.Run(farm).Value;
        Table(state, "boxes at their own width, boards at the depth for sowing", asMeasured: true);
        Table(state, "boards that nobody has told of set for what flows, a thin sheet over wide boards", asMeasured: false);
    }

    private static void Table(SeasonState state, string how, bool asMeasured)
    {
        var networks = MayFields.Of(state, asMeasured);
        Console.WriteLine();
        Console.WriteLine($"{state.Farm.Name}: {networks.Length} fields, {networks.Sum(n => n.Checks.Length)} checks, 31 days, one core; {how}");
        Measured.Row("what", "best, ms", "median, ms");
        Measured.Row("---", "---:", "---:");
        // A minute is too long a step for a thin sheet over wide boards: the plain steps would blow up.
        if (asMeasured) Say("scalar RK4 with powers, 60 s", () => Plain(networks));
        Say("Flooding.Run, field by field, depths told by the hour", () => Each(networks, null));
        Say("Flooding.Run, field by field", () => Each(networks, Quiet));
        Say("FloodBatch", () => FloodBatch.Run(networks, MayFields.Span));
        Compare(networks);
    }

    private static void Compare(ImmutableArray<FloodNetwork> networks)
    {
        var (one, many) = (networks.Select(n => Flooding.Run(n, MayFields.Span, Quiet)).ToList(), FloodBatch.Run(networks, MayFields.Span));
        var apart = one.Zip(many, (a, b) => a.Checks.Zip(b.Checks, (x, y) => Math.Abs((x.Depth - y.Depth).Millimeters)).Max()).Max();
        var minutes = one.Zip(many, (a, b) => a.AllFull is { } x && b.AllFull is { } y ? Math.Abs((x - y).TotalMinutes) : 0).Max();
        var fine = networks.Select(n => Flooding.Run(n, MayFields.Span, Quiet with { StepError = WaterDepth.FromMeters(1e-9) })).ToList();
        var off = one.Zip(fine, (a, b) => a.Checks.Zip(b.Checks, (x, y) => Math.Abs((x.Depth - y.Depth).Millimeters)).Max()).Max();
        var late = one.Zip(fine, (a, b) => a.Checks.Zip(b.Checks, (x, y) => x.Full is { } p && y.Full is { } q ? Math.Abs((p - q).TotalSeconds) : 0).Max()).Max();
        Console.WriteLine($"Flooding.Run against a five-thousandth of its error: {Measured.Figure(off, "0.0000")} mm at the end, {Measured.Figure(late, "0.0")} s of any check's full hour; water astray at most {Measured.Figure(one.Max(r => Math.Abs(r.Balance.Residual.CubicMeters)) * 1000, "0.0e+0")} liters a field");
        Console.WriteLine($"FloodBatch against Flooding.Run: {Measured.Figure(apart, "0.0000")} mm, {Measured.Figure(minutes, "0.00")} min of the hour when all is full; {many.Count(m => m.AllFull is not null)} of {many.Length} fields full; steps {one.Sum(r => r.Steps)} one by one");
    }

    private static void Plain(ImmutableArray<FloodNetwork> networks)
    {
        foreach (var network in networks.Where(n => n.Boxes.Length > 0)) new PlainStep(Closed(network)).Run(MayFields.Span.TotalSeconds, 60);
    }

    private static void Each(ImmutableArray<FloodNetwork> networks, FloodOptions? options)
    {
        foreach (var network in networks) Flooding.Run(network, MayFields.Span, options);
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
