namespace Watersown.Water.Flood;

/// <summary>
/// The rates of change of one part of a network that hangs together, in m, m³ and s. What a check holds is one number: water
/// in its pond and in the soil that took it up. How much ground is covered follows from it, and never shrinks: soil that got
/// wet stays wet.
/// </summary>
internal sealed class FloodSystem
{
    // Below a millimeter of pond the losses fade out, so that a field that dries does not owe water.
    public const double Film = 0.001;

    // What is covered was reckoned from what is held, and may differ in the last digit.
    private const double Nearly = 1 - 1e-12;
    private readonly FloodPart part;
    private readonly double[] stage;
    private readonly double[] ditch;

    public FloodSystem(FloodPart part)
    {
        this.part = part;
        stage = new double[part.Count];
        ditch = new double[part.DitchTo.Length];
        Covered = new double[part.Count];
    }

    /// <summary>Ground covered so far, m².</summary>
    public double[] Covered { get; }

    /// <summary>Tops of boards now, m over the common level.</summary>
    public double[] Crest => part.Crest;

    /// <summary>Ground covered when a check holds so much, m².</summary>
    public double CoveredAt(int check, double held) => Math.Max(Covered[check], Math.Clamp(held / part.Full[check], 0, 1) * part.Area[check]);

    /// <summary>Pond spread over the whole check, m.</summary>
    public double Pond(int check, double held) => Math.Max(0, held - (part.TakeUp[check] * CoveredAt(check, held))) / part.Area[check];

    /// <summary>How the stage, m, and the ground that loses water, m², of a check move with what it holds, 1/m² and 1/m.</summary>
    /// <param name="check">Of the part.</param>
    /// <param name="held">What it holds, m³.</param>
    /// <param name="rising">More comes than goes: only then the ground covered moves too.</param>
    public (double Stage, double StageSlope, double WetSlope) Stages(int check, double held, bool rising)
    {
        var covered = CoveredAt(check, held);
        var pond = Math.Max(0, held - (part.TakeUp[check] * covered));
        var coming = rising && held < part.Full[check] && held * part.Area[check] >= Covered[check] * part.Full[check] * Nearly ? part.Area[check] / part.Full[check] : 0;
        var slope = pond > 0 || coming > 0 ? 1 - (part.TakeUp[check] * coming) : 0;
        return (part.Ground[check] + (pond / part.Area[check]), slope / part.Area[check], pond >= covered * Film ? coming : slope / Film);
    }

    /// <summary>Rates at one state.</summary>
    /// <param name="held">Held by each check, m³.</param>
    /// <param name="soaked">Drunk besides by each check, m³.</param>
    /// <param name="flows">Where the rates are put.</param>
    public void Rates(double[] held, double[] soaked, FloodFlows flows)
    {
        flows.Clear();
        for (var i = 0; i < part.Count; i++)
        {
            var covered = CoveredAt(i, held[i]);
            var pond = Math.Max(0, held[i] - (part.TakeUp[i] * covered));
            stage[i] = part.Ground[i] + (pond / part.Area[i]);
            var wet = covered <= 0 ? 0 : covered * Math.Min(1, pond / covered / Film);
            var (evaporated, percolated) = (part.Evaporation * wet, part.Percolation[i] * wet);
            var drunk = Soaking(i, covered, wet, soaked[i]);
            var rain = part.Rain * part.Area[i];
            flows.Soak[i] = drunk;
            flows.Net[i] = part.Inflow[i] + rain - evaporated - percolated - drunk;
            flows.In += part.Inflow[i];
            flows.Rain += rain;
            flows.Evaporated += evaporated;
            flows.Percolated += percolated + drunk;
        }

        OverBoxes(flows);
        ThroughLevees(flows);
        ThroughDitches(flows);
    }

    private double Soaking(int i, double covered, double wet, double soaked)
    {
        if (part.Conductivity[i] <= 0 || wet <= 0) return 0;
        // Ground that just got wet has drunk its take-up; less than a millimeter would make the law run away.
        var drunk = Math.Max(0.001, part.TakeUp[i] + (soaked / covered));
        return wet * part.Conductivity[i] * (1 + (part.Suction[i] / drunk));
    }

    private void OverBoxes(FloodFlows flows)
    {
        Array.Clear(ditch);
        for (var b = 0; b < part.BoxFrom.Length; b++)
        {
            var (from, to, crest) = (part.BoxFrom[b], part.BoxTo[b], part.Crest[b]);
            var flow = part.Laws[b].At(stage[from] - crest, to < 0 ? -1 : stage[to] - crest);
            flows.Box[b] = flow;
            flows.Net[from] -= flow;
            if (to >= 0) flows.Net[to] += flow;
            else if (part.BoxDitch[b] >= 0) ditch[part.BoxDitch[b]] += flow;
            else flows.Left += flow;
        }
    }

    private void ThroughLevees(FloodFlows flows)
    {
        foreach (var levee in part.Levees)
        {
            var (near, far) = levee.Depths(part, stage[levee.From], levee.To < 0 ? 0 : stage[levee.To]);
            var flow = levee.Rate * ((near * near) - (far * far)) / 2;
            flows.Net[levee.From] -= flow;
            if (levee.To >= 0) flows.Net[levee.To] += flow;
            else flows.Left += flow;
        }
    }

    private void ThroughDitches(FloodFlows flows)
    {
        for (var d = 0; d < ditch.Length; d++)
        {
            var lifted = Math.Min(part.DitchCap[d], ditch[d]);
            flows.Left += ditch[d] - lifted;
            if (part.DitchTo[d] >= 0) flows.Net[part.DitchTo[d]] += lifted;
            else if (part.DitchNext[d] >= 0) ditch[part.DitchNext[d]] += lifted;
            else flows.Left += lifted;
        }
    }
}

/// <summary>A levee between two checks of a part, or to the outside (below zero).</summary>
/// <param name="From">Check on one side.</param>
/// <param name="To">Check on the other.</param>
/// <param name="Rate">Conductivity × length / width, m/s.</param>
internal readonly record struct LeveeLaw(int From, int To, double Rate)
{
    /// <summary>Depths on its two sides, m, both over the lower of the two grounds: that is where the water comes out.</summary>
    public (double Near, double Far) Depths(FloodPart part, double above, double below)
    {
        var foot = To < 0 ? part.Ground[From] : Math.Min(part.Ground[From], part.Ground[To]);
        return (above > part.Ground[From] ? above - foot : 0, To >= 0 && below > part.Ground[To] ? below - foot : 0);
    }
}

/// <summary>Rates of one state, or their sums over time: m³/s or m³.</summary>
internal sealed class FloodFlows(int checks, int boxes)
{
    public double[] Net { get; } = new double[checks];

    public double[] Soak { get; } = new double[checks];

    public double[] Box { get; } = new double[boxes];

    public double In { get; set; }

    public double Rain { get; set; }

    public double Evaporated { get; set; }

    public double Percolated { get; set; }

    public double Left { get; set; }

    public void Clear() => (In, Rain, Evaporated, Percolated, Left) = (0, 0, 0, 0, 0);

    /// <summary>The rates of three stages of one step, each with its weight, in one.</summary>
    public void Mix(FloodFlows a, double first, FloodFlows b, double second, FloodFlows c, double third)
    {
        for (var i = 0; i < Net.Length; i++) Net[i] = (a.Net[i] * first) + (b.Net[i] * second) + (c.Net[i] * third);
        Clear();
        Array.Clear(Box);
        Add(a, first);
        Add(b, second);
        Add(c, third);
    }

    /// <summary>Adds a step's share of a stage to the sums; what the checks hold is added by the integrator.</summary>
    public void Add(FloodFlows rates, double seconds)
    {
        for (var i = 0; i < Box.Length; i++) Box[i] += rates.Box[i] * seconds;
        In += rates.In * seconds;
        Rain += rates.Rain * seconds;
        Evaporated += rates.Evaporated * seconds;
        Percolated += rates.Percolated * seconds;
        Left += rates.Left * seconds;
    }
}
