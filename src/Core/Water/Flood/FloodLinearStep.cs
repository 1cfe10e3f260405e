namespace Watersown.Water.Flood;

/// <summary>
/// One step for checks that run out much faster than anybody looks, such as a thin sheet over wide boards: RODAS3 of Sandu and others, of third
/// order, with its second-order companion for the error, both still however long the step. Its four stages each ask one set of linear
/// equations in which every flow moves with what the checks on its two sides hold. The step's flows are put together from the very flows
/// of the stages and their slopes, each taken from one check and given to the other, so that water adds up here too.
/// </summary>
internal sealed class FloodLinearStep
{
    private readonly FloodSystem system;
    private readonly FloodPart part;
    private readonly FloodFlows third;
    private readonly FloodFlows fourth;
    private readonly double[] none;
    private readonly double[] at;
    private readonly double[] one;
    private readonly double[] two;
    private readonly double[] three;
    private readonly double[] four;

    public FloodLinearStep(FloodPart part, FloodSystem system, FloodSlopes slopes)
    {
        (this.part, this.system, Slopes) = (part, system, slopes);
        (third, fourth, Flows) = (New(), New(), New());
        (none, at) = (new double[part.Count], new double[part.Count]);
        (one, two, three, four) = (new double[part.Count], new double[part.Count], new double[part.Count], new double[part.Count]);
    }

    /// <summary>Slopes at the step's start, where whoever asks for a step has taken them.</summary>
    public FloodSlopes Slopes { get; }

    /// <summary>Mean flows over the step tried last.</summary>
    public FloodFlows Flows { get; }

    /// <summary>Tries a step; tells its worst error, m over a whole check.</summary>
    /// <param name="h">Its length, s.</param>
    /// <param name="held">Held at its start, m³.</param>
    /// <param name="first">Rates there.</param>
    /// <param name="after">Where what is held at its end is put.</param>
    [Source(nameof(Sources.Sandu1997), "RODAS3: γ 1/2; 2 k1; 2 k1 + k3; 4 k1, k1 − k2, k1 − k2 − 8/3 k3; what the fourth moves is the error")]
    public double Try(double h, double[] held, FloodFlows first, double[] after)
    {
        var matrix = Slopes.Matrix(h / 2);
        for (var i = 0; i < one.Length; i++) one[i] = h / 2 * first.Net[i];
        matrix.Solve(one);
        for (var i = 0; i < one.Length; i++)
        {
            two[i] = (h / 2 * first.Net[i]) + (2 * one[i]);
            at[i] = held[i] + (2 * one[i]);
        }

        matrix.Solve(two);
        system.Rates(at, none, third);
        for (var i = 0; i < one.Length; i++) three[i] = (h / 2 * third.Net[i]) + ((one[i] - two[i]) / 2);
        matrix.Solve(three);
        for (var i = 0; i < one.Length; i++) at[i] += three[i];
        system.Rates(at, none, fourth);
        for (var i = 0; i < one.Length; i++) four[i] = (h / 2 * fourth.Net[i]) + ((one[i] - two[i]) / 2) - (4.0 / 3 * three[i]);
        matrix.Solve(four);
        return Gather(h, held, first, after);
    }

    private double Gather(double h, double[] held, FloodFlows first, double[] after)
    {
        var worst = 0.0;
        for (var i = 0; i < four.Length; i++)
        {
            // What the fourth moves is all that the two orders differ by.
            worst = Math.Max(worst, Math.Abs(four[i]) / part.Area[i]);
            at[i] = (((5 * one[i]) - two[i] - three[i]) / 6) + (four[i] / 2);
        }

        Flows.Mix(first, 2.0 / 3, third, -1.0 / 6, fourth, 1.0 / 2);
        Slopes.Carry(at, Flows);
        for (var i = 0; i < after.Length; i++) after[i] = held[i] + (h * Flows.Net[i]);
        return worst;
    }

    private FloodFlows New() => new(part.Count, part.BoxFrom.Length);
}
