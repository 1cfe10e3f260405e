namespace Watersown.Water.Flood;

/// <summary>
/// Carries one part through time with steps of Bogacki and Shampine's third order, its second-order companion telling the
/// error. Sums of flows are taken with the step's own weights from the very flows that move the water, so that they add up
/// to the last digits whatever the step. Where checks run out so fast that those steps could not be longer than it takes, it goes on
/// with <see cref="FloodLinearStep"/> until they no longer do.
/// </summary>
internal sealed class FloodStepper
{
    public const double FirstWetShare = 0.001;

    // Plain steps between two looks at how fast checks run out; steps, as parts of the time that they take to, from and until which it is hard.
    private const int Look = 8;
    private const double Hard = 1.25;
    private const double Easy = 0.25;
    private readonly FloodPart part;
    private readonly FloodSystem system;
    private readonly FloodOptions options;
    private readonly FloodFlows[] rates;
    private readonly FloodMarks marks;
    private readonly double[] trialSoaked;
    private double[] held;
    private double[] trial;
    private double[] soaked;
    private double now;
    private double step = 60;
    private FloodLinearStep? linear;
    private bool stiff;

    public FloodStepper(FloodPart part, FloodOptions options)
    {
        (this.part, this.options) = (part, options);
        system = new FloodSystem(part);
        part.StartCovered.CopyTo(system.Covered, 0);
        held = [.. part.StartHeld];
        (trial, soaked, trialSoaked) = (new double[part.Count], new double[part.Count], new double[part.Count]);
        rates = [NewFlows(), NewFlows(), NewFlows(), NewFlows()];
        Sums = NewFlows();
        marks = new FloodMarks(part, system, options, held);
    }

    public FloodFlows Sums { get; }

    public int Steps { get; private set; }

    /// <summary>More held at the end than at the start, m³.</summary>
    public double Stored => held.Sum() - part.StartHeld.Sum();

    public static double FirstWetHeld(FloodPart part, int check) => part.Full[check] * FirstWetShare;

    public void To(double end)
    {
        var next = 0;
        while (now < end)
        {
            while (next < part.Changes.Count && part.Changes[next].At <= now) part.Apply(part.Changes[next++]);
            Stretch(next < part.Changes.Count ? Math.Min(end, part.Changes[next].At) : end);
        }

    }

    public FloodStory Story(int check) => marks.Story(check, held[check]);

    public BoxStory BoxStory(int box, string name) => marks.BoxStory(box, name, Sums.Box[box]);

    private FloodFlows NewFlows() => new(part.Count, part.BoxFrom.Length);

    // Nothing changes from outside until its end.
    private void Stretch(double end)
    {
        system.Rates(held, soaked, rates[0]);
        if (stiff) linear!.Slopes.At(held, rates[0]);
        step = Math.Min(step, 600);
        while (now < end)
        {
            var last = end - now;
            var seconds = Math.Min(Math.Min(step, options.StepMost.TotalSeconds), last);
            // A stub at the end costs as much as a step.
            if (last - seconds < 0.1 * seconds) seconds = last;
            var error = (stiff ? linear!.Try(seconds, held, rates[0], trial) : Try(seconds)) / options.StepError.Meters;
            if (error > 1 && seconds > 0.01)
            {
                step = seconds * Math.Max(0.2, 0.85 * Math.Cbrt(1 / error));
                continue;
            }

            Take(seconds, seconds == last ? end : now + seconds);
            step = seconds * Math.Clamp(0.85 * Math.Cbrt(1 / Math.Max(error, 1e-6)), 0.3, 4);
        }
    }

    // Leaves the state after the step in trial, its rates in the last place; tells the worst error, m over a whole check.
    private double Try(double h)
    {
        Stage(h * 0.5, rates[0]);
        system.Rates(trial, trialSoaked, rates[1]);
        Stage(h * 0.75, rates[1]);
        system.Rates(trial, trialSoaked, rates[2]);
        for (var i = 0; i < part.Count; i++)
        {
            trial[i] = held[i] + (h * ((2.0 / 9 * rates[0].Net[i]) + (1.0 / 3 * rates[1].Net[i]) + (4.0 / 9 * rates[2].Net[i])));
            trialSoaked[i] = soaked[i] + (h * ((2.0 / 9 * rates[0].Soak[i]) + (1.0 / 3 * rates[1].Soak[i]) + (4.0 / 9 * rates[2].Soak[i])));
        }

        system.Rates(trial, trialSoaked, rates[3]);
        var worst = 0.0;
        for (var i = 0; i < part.Count; i++)
        {
            var error = h * ((-5.0 / 72 * rates[0].Net[i]) + (1.0 / 12 * rates[1].Net[i]) + (1.0 / 9 * rates[2].Net[i]) - (1.0 / 8 * rates[3].Net[i]));
            worst = Math.Max(worst, Math.Abs(error) / part.Area[i]);
        }

        return worst;
    }

    private void Stage(double seconds, FloodFlows flows)
    {
        for (var i = 0; i < part.Count; i++)
        {
            trial[i] = held[i] + (seconds * flows.Net[i]);
            trialSoaked[i] = soaked[i] + (seconds * flows.Soak[i]);
        }
    }

    private void Take(double seconds, double then)
    {
        if (stiff)
        {
            Sums.Add(linear!.Flows, seconds);
            system.Rates(trial, trialSoaked, rates[3]);
        }
        else
        {
            Sums.Add(rates[0], 2.0 / 9 * seconds);
            Sums.Add(rates[1], 1.0 / 3 * seconds);
            Sums.Add(rates[2], 4.0 / 9 * seconds);
        }

        marks.Between(now, then, held, rates[0], trial, rates[3]);
        for (var i = 0; i < part.Count; i++) system.Covered[i] = system.CoveredAt(i, trial[i]);
        (held, trial) = (trial, held);
        Array.Copy(trialSoaked, soaked, soaked.Length);
        // The last rates are the next step's first: the ground covered is the same.
        (rates[0], rates[3]) = (rates[3], rates[0]);
        now = then;
        Steps++;
        Choose(seconds);
    }

    // Plain steps cost less, but are no longer than about the time in which the fastest check runs out. Soil that goes on drinking is stepped
    // plainly: nothing in it is fast.
    private void Choose(double seconds)
    {
        if (part.Soaks || (!stiff && (Steps % Look != 0 || seconds >= options.StepMost.TotalSeconds))) return;
        linear ??= new FloodLinearStep(part, system, new FloodSlopes(part, system));
        linear.Slopes.At(held, rates[0]);
        stiff = linear.Slopes.Fastest * seconds > (stiff ? Easy : Hard);
    }
}
