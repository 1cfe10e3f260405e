namespace Watersown.Water.Flood;

/// <summary>
/// Many floods at once: fields whose checks lie in a row are reckoned sixteen side by side, others, and those with a thin sheet over
/// wide boards, one by one as <see cref="Flooding"/> does. Both tell the same depths to two hundredths of a millimeter; no depths are told on the way.
/// </summary>
public static class FloodBatch
{
    /// <summary>Runs a network in many futures.</summary>
    /// <param name="network">Checks and what joins them.</param>
    /// <param name="futures">In what each differs from the network.</param>
    /// <param name="span">How long.</param>
    /// <param name="options">How fine; the usual where not told.</param>
    /// <exception cref="ArgumentException">A place that does not stand in the network, or ground without area or front.</exception>
    [Source(nameof(Sources.WaterBalance), "dW/dt = in + rain − evaporation − percolation − over boards, of every check")]
    public static ImmutableArray<FloodRun> Run(FloodNetwork network, ImmutableArray<FloodFuture> futures, TimeSpan span, FloodOptions? options = null)
    {
        var drawn = Drawn(network);
        return Run([.. futures.Select(f => (network, drawn, f))], span, options ?? new FloodOptions());
    }

    /// <summary>Runs many networks, each as it is told.</summary>
    /// <param name="networks">Each with its checks and what joins them.</param>
    /// <param name="span">How long.</param>
    /// <param name="options">How fine; the usual where not told.</param>
    /// <exception cref="ArgumentException">A place that does not stand in its network, or ground without area or front.</exception>
    [Source(nameof(Sources.WaterBalance), "dW/dt = in + rain − evaporation − percolation − over boards, of every check")]
    public static ImmutableArray<FloodRun> Run(ImmutableArray<FloodNetwork> networks, TimeSpan span, FloodOptions? options = null) =>
        Run([.. networks.Select(n => (n, Drawn(n), FloodFuture.AsTold))], span, options ?? new FloodOptions());

    private static ImmutableArray<FloodRun> Run(List<(FloodNetwork Network, List<FloodPart>? Parts, FloodFuture Future)> floods, TimeSpan span, FloodOptions options)
    {
        var runs = floods.ConvertAll(f => f.Parts is null ? null : new FloodTally(f.Network));
        // Like sizes side by side, the longest first: then the room made for the first is enough for all.
        var waiting = floods.SelectMany((f, i) => (f.Parts ?? []).Select(p => (Run: runs[i]!, Part: p, f.Future))).OrderByDescending(w => w.Part.Count).ToList();
        if (waiting.Count > 0)
        {
            var lanes = new FloodLanes(waiting[0].Part.Count);
            var stepper = new FloodLaneStepper(lanes, options);
            foreach (var batch in waiting.Chunk(FloodLanes.Count))
            {
                lanes.Clear();
                for (var lane = 0; lane < batch.Length; lane++) lanes.Put(lane, batch[lane].Part, batch[lane].Future);
                lanes.Ready();
                stepper.Run(span.TotalSeconds);
                for (var lane = 0; lane < batch.Length; lane++) batch[lane].Run.Take(stepper, lane);
            }
        }

        var quiet = options with { Telling = TimeSpan.Zero };
        return [.. floods.Select((f, i) => runs[i]?.Run() ?? Flooding.Run(f.Future.Of(f.Network), span, quiet))];
    }

    // Laid out, where every part of it lies in a row and may go with steps that others can share.
    private static List<FloodPart>? Drawn(FloodNetwork network)
    {
        FloodChecks.Require(network);
        var parts = FloodParts.Of(network);
        return parts.TrueForAll(p => p is { InARow: true, RunsOutFast: false }) ? parts : null;
    }
}
