namespace Watersown.Water.Filling;

/// <summary>One field while water comes over it, check by check from its head.</summary>
internal sealed class FillGround
{
    // Less of a check than this is rounding, not ground.
    private static readonly Area nothing = Area.FromSquareMeters(0.01);

    private readonly TimeSpan?[] full;
    private readonly TimeSpan?[] firstWet;
    private readonly List<FillGift> given = [];
    private int next;

    /// <summary>A field.</summary>
    /// <param name="job">Its dry and its wet land, its fill and its loss.</param>
    /// <param name="checks">Land of each check from the head, together as much as the job's.</param>
    /// <param name="gate">The most that its gate passes; none known.</param>
    /// <param name="ready">No water before.</param>
    public FillGround(FloodJob job, ImmutableArray<Area> checks, FlowRate? gate = null, TimeSpan ready = default)
    {
        (Job, Gate, Ready, Covered) = (job, gate, ready, job.Wet);
        var end = Area.Zero;
        Ends = [.. checks.Select((c, i) => end = i + 1 == checks.Length ? job.Dry + job.Wet : end + c)];
        (full, firstWet) = (new TimeSpan?[checks.Length], new TimeSpan?[checks.Length]);
        while (next < checks.Length && Ends[next] <= Covered + nothing) next++;
        WetChecks = next;
    }

    /// <summary>As it was at the start.</summary>
    public FloodJob Job { get; }

    public FlowRate? Gate { get; }

    public TimeSpan Ready { get; }

    /// <summary>Land from the head to the end of each check.</summary>
    public ImmutableArray<Area> Ends { get; }

    public Area Covered { get; private set; }

    /// <summary>Checks that were full at the start.</summary>
    public int WetChecks { get; }

    public bool IsFull => next >= Ends.Length;

    public Area Dry => Job.Dry + Job.Wet - Covered;

    /// <summary>What its wet land takes now.</summary>
    public FlowRate Holding => Ponding.HoldingFlow(Covered, Job.Loss);

    /// <summary>What it takes once it is full.</summary>
    public FlowRate HoldingFull => Ponding.HoldingFlow(Job.Dry + Job.Wet, Job.Loss);

    /// <summary>When the last check was full; none where it never was.</summary>
    public TimeSpan? FullAt => IsFull ? full[^1] ?? TimeSpan.Zero : null;

    /// <summary>What was let in, from each moment on.</summary>
    public IReadOnlyList<FillGift> Given => given;

    /// <summary>When a check was first wet; none where it was wet before, or stays dry.</summary>
    public TimeSpan? FirstWet(int check) => firstWet[check];

    public TimeSpan? Full(int check) => full[check];

    /// <summary>How long until the check that water is in now is full; none where this flow never does it.</summary>
    public TimeSpan? ToNext(FlowRate flow) => IsFull ? null : Ponding.FillTime(Rest, flow);

    /// <summary>Lets a flow in for a while.</summary>
    /// <param name="from">From when.</param>
    /// <param name="span">For how long.</param>
    /// <param name="flow">How much.</param>
    /// <param name="ends">The check is full at the end of it, whatever rounding says.</param>
    public void Let(TimeSpan from, TimeSpan span, FlowRate flow, bool ends)
    {
        if (IsFull) return;
        // Less than a liter in a thousand seconds is rounding.
        if (Math.Abs((flow - (given.Count == 0 ? FlowRate.Zero : given[^1].Flow)).CubicMetersPerSecond) > 1e-6) given.Add(new FillGift(from, flow));
        var start = next == 0 ? Area.Zero : Ends[next - 1];
        if (flow > Holding && Covered <= start + nothing) firstWet[next] ??= from;
        Covered = ends ? Ends[next] : Ponding.Covered(Rest, flow, span);
        if (ends) full[next++] = from + span;
    }

    private FloodJob Rest => Job with { Wet = Covered, Dry = Ends[next] - Covered };
}

/// <summary>What is let into a field from a moment on.</summary>
/// <param name="From">Since the start.</param>
/// <param name="Flow">What its own wet land takes included.</param>
internal readonly record struct FillGift(TimeSpan From, FlowRate Flow);
