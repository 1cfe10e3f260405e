namespace Watersown.Water.Flood;

/// <summary>How one future of a flood differs from what is told of it.</summary>
public readonly record struct FloodFuture()
{
    /// <summary>The flood as it is told.</summary>
    public static FloodFuture AsTold { get; } = new();

    /// <summary>All that is let in, times this.</summary>
    [PlainNumber("flow over the flow told")]
    public double Flow { get; init; } = 1;

    /// <summary>All that covered ground loses, times this.</summary>
    [PlainNumber("loss over the loss told")]
    public double Loss { get; init; } = 1;

    /// <summary>What the ground drinks as it gets wet, times this.</summary>
    [PlainNumber("take-up over the take-up told")]
    public double TakeUp { get; init; } = 1;

    /// <summary>All boards stand so much higher.</summary>
    public WaterDepth Boards { get; init; }

    /// <summary>The network as this future finds it.</summary>
    internal FloodNetwork Of(FloodNetwork network)
    {
        var self = this;
        return network with
        {
            Checks = [.. network.Checks.Select(c => c with { TakeUp = c.TakeUp * self.TakeUp, Percolation = c.Percolation * self.Loss })],
            Boxes = [.. network.Boxes.Select(b => b with { Boards = b.Boards + self.Boards })],
            Inlets = [.. network.Inlets.Select(i => i with { Flow = [.. i.Flow.Select(f => f with { Flow = f.Flow * self.Flow })] })],
            Caps = network.Caps.ToImmutableSortedDictionary(c => c.Key, c => c.Value * self.Flow, network.Caps.KeyComparer),
            Air = [.. network.Air.Select(a => a with { Evaporation = a.Evaporation * self.Loss })],
            Moves = [.. network.Moves.Select(m => m with { Boards = m.Boards + self.Boards })],
        };
    }
}
