namespace Watersown.Water.Flood;

/// <summary>
/// The flood of checks joined by boxes: volume balance of every check, V dA/dt = what comes in less what goes on, what is
/// drunk and what is lost. A check in which water comes over dry ground holds its front's depth; then the pond rises until it
/// goes over the boards.
/// </summary>
public static class Flooding
{
    /// <summary>Runs a network.</summary>
    /// <param name="network">Checks and what joins them.</param>
    /// <param name="span">How long.</param>
    /// <param name="options">How fine; the usual where not told.</param>
    /// <exception cref="ArgumentException">A place that does not stand in the network, or ground without area or front.</exception>
    [Source(nameof(Sources.WaterBalance), "dW/dt = in + rain − evaporation − percolation − over boards, of every check")]
    public static FloodRun Run(FloodNetwork network, TimeSpan span, FloodOptions? options = null)
    {
        FloodChecks.Require(network);
        var fine = options ?? new FloodOptions();
        var (checks, boxes) = (new FloodStory[network.Checks.Length], new BoxStory[network.Boxes.Length]);
        var (sums, stored, steps) = (new FloodFlows(0, 0), 0.0, 0);
        foreach (var part in FloodParts.Of(network))
        {
            var run = new FloodStepper(part, fine);
            run.To(span.TotalSeconds);
            for (var i = 0; i < part.Count; i++) checks[part.Checks[i]] = run.Story(i);
            for (var b = 0; b < part.Boxes.Count; b++) boxes[part.Boxes[b]] = run.BoxStory(b, network.Boxes[part.Boxes[b]].Name);
            sums.Add(run.Sums, 1);
            stored += run.Stored;
            steps += run.Steps;
        }

        var balance = new FloodBalance
        {
            In = Volume.FromCubicMeters(sums.In),
            Rain = Volume.FromCubicMeters(sums.Rain),
            Evaporated = Volume.FromCubicMeters(sums.Evaporated),
            Percolated = Volume.FromCubicMeters(sums.Percolated),
            Left = Volume.FromCubicMeters(sums.Left),
            Stored = Volume.FromCubicMeters(stored),
        };
        return new FloodRun([.. checks], [.. boxes], balance) { Steps = steps };
    }
}
