using System.Runtime.InteropServices;

namespace Watersown.Water.Flood;

/// <summary>Gathers the lanes in which the parts of one network ran.</summary>
internal sealed class FloodTally(FloodNetwork network)
{
    private readonly FloodStory[] checks = new FloodStory[network.Checks.Length];
    private readonly BoxStory[] boxes = new BoxStory[network.Boxes.Length];
    private double come;
    private double rained;
    private double lost;
    private double seeped;
    private double left;
    private double stored;
    private int steps;

    /// <summary>Takes what ran in one lane.</summary>
    public void Take(FloodLaneStepper ran, int lane)
    {
        var part = ran.Fields.Part(lane)!;
        for (var i = 0; i < part.Count; i++)
        {
            ref readonly var check = ref ran.Fields.Checks[i];
            var held = ran.Depth[i];
            checks[part.Checks[i]] = new FloodStory(part.Names[i], ran.Marks.FirstWet(i, lane), ran.Marks.Full(i, lane),
                WaterDepth.FromMeters(check.Pond(held, out _)[lane]), Fraction.FromShare(check.CoveredAt(held)[lane]))
            {
                Deepest = WaterDepth.FromMeters(ran.Marks.Deepest(i, lane)),
            };
            stored += ran.Held[i][lane] - ran.Fields.Held[i][lane];
        }

        for (var b = 0; b < part.Boxes.Count; b++)
        {
            var from = part.BoxFrom[b];
            boxes[part.Boxes[b]] = new BoxStory(network.Boxes[part.Boxes[b]].Name, ran.Marks.FirstOver(from, lane),
                Volume.FromCubicMeters(ran.Passed[from][lane]), FlowRate.FromCubicMetersPerSecond(ran.Marks.Most(from, lane)));
        }

        come += ran.In[lane];
        rained += ran.Rain[lane];
        lost += ran.Lost[lane];
        seeped += ran.Seeped[lane];
        left += ran.Held[part.Count][lane];
        steps += ran.Steps;
    }

    public FloodRun Run() => new(ImmutableCollectionsMarshal.AsImmutableArray(checks), ImmutableCollectionsMarshal.AsImmutableArray(boxes), new FloodBalance
    {
        In = Volume.FromCubicMeters(come),
        Rain = Volume.FromCubicMeters(rained),
        Evaporated = Volume.FromCubicMeters(lost - seeped),
        Percolated = Volume.FromCubicMeters(seeped),
        Left = Volume.FromCubicMeters(left),
        Stored = Volume.FromCubicMeters(stored),
    })
    {
        Steps = steps,
    };
}
