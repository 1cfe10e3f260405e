namespace Watersown.Flight.AtStrip;

/// <summary>Adds up a morning at the strip, and tries one change at a time.</summary>
public static class StripSums
{
    private const double RatesAlike = 0.005;

    /// <summary>The sum of the fields at least one of which there is.</summary>
    [Source(nameof(Sources.FiniteQueue), "loads ÷ loads an hour, at random and like clockwork")]
    public static StripSum Of(ImmutableArray<StripJob> jobs, Aeroplane aeroplane, StripCrew crew)
    {
        if (jobs.IsEmpty) throw new ArgumentException("A morning has a field.", nameof(jobs));
        var flown = jobs.Select(j => (Job: j, Loads: j.LoadsAt(aeroplane.WorkingLoad))).ToList();
        var loads = flown.Sum(f => f.Loads);
        var flight = TimeSpan.FromSeconds(flown.Sum(f => f.Loads * AirTime(f.Job, f.Loads, aeroplane).TotalSeconds) / loads);
        var round = new LoaderRound(crew.Aeroplanes, flight, aeroplane.Reload) { Loaders = crew.Loaders };
        var state = StripWaiting.Random(round);
        var sum = new StripSum
        {
            Crew = crew,
            Aeroplane = aeroplane,
            Loads = loads,
            Land = Area.FromSquareMeters(jobs.Sum(j => j.Land.SquareMeters)),
            Wet = SoakedSeed.FromKilograms(jobs.Sum(j => j.Wet.Kilograms)),
            Flight = flight,
            LoadsPerHour = (state.LoadsPerHour, StripWaiting.Clockwork(round)),
            LoaderBusy = state.Busy,
            Wait = state.Wait,
            Working = Working.Empty,
        };
        return sum with { Working = Show(sum) };
    }

    /// <summary>One change at a time, all else as it is.</summary>
    public static ImmutableArray<StripChange> Changes(ImmutableArray<StripJob> jobs, Aeroplane aeroplane, StripCrew crew) =>
    [
        new(StripChangeKind.OneMoreAeroplane, Of(jobs, aeroplane, crew with { Aeroplanes = crew.Aeroplanes + 1 })),
        new(StripChangeKind.OneMoreLoader, Of(jobs, aeroplane, crew with { Loaders = crew.Loaders + 1 })),
        new(StripChangeKind.HundredPoundsMore, Of(jobs, aeroplane with { WorkingLoad = aeroplane.WorkingLoad + SoakedSeed.FromPounds(100) }, crew)),
        new(StripChangeKind.OneFootMore, Of(jobs, aeroplane with { Swath = aeroplane.Swath + Length.FromFeet(1) }, crew)),
    ];

    /// <summary>
    /// Pairs of neighboring fields whose remainders fit one load: never across varieties, lots, batches or rates. Each field stands in
    /// one pair at most, in the order flown.
    /// </summary>
    [Source(nameof(Sources.Arithmetic), "ceil(a) + ceil(b) against ceil(a + b)")]
    public static ImmutableArray<SharedLoad> Shared(ImmutableArray<StripJob> jobs, Aeroplane aeroplane)
    {
        var found = ImmutableArray.CreateBuilder<SharedLoad>();
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < jobs.Length; i++)
        {
            for (var j = i + 1; j < jobs.Length && !taken.Contains(jobs[i].Field); j++)
            {
                if (taken.Contains(jobs[j].Field) || Pair(jobs[i], jobs[j], aeroplane) is not { } pair) continue;
                found.Add(pair);
                taken.Add(jobs[i].Field);
                taken.Add(jobs[j].Field);
            }
        }

        return found.ToImmutable();
    }

    private static SharedLoad? Pair(StripJob first, StripJob second, Aeroplane aeroplane)
    {
        if (!first.Beside.Contains(second.Field, StringComparer.OrdinalIgnoreCase) || !first.Seed.IsSame(second.Seed)) return null;
        if (Math.Abs((first.Rate / second.Rate) - 1) > RatesAlike) return null;
        var limit = aeroplane.WorkingLoad;
        int apart = first.LoadsAt(limit) + second.LoadsAt(limit), together = Math.Max(1, (int)Math.Ceiling(((first.Wet + second.Wet) / limit) - 1e-9));
        if (together >= apart) return null;
        var each = (first.Wet + second.Wet) / together;
        var onFirst = first.Wet - (each * Math.Floor((first.Wet / each) + 1e-9));
        var nearer = first.Ferry < second.Ferry ? first.Ferry : second.Ferry;
        return new SharedLoad(first.Field, second.Field, apart, together, each, onFirst, (apart - together) * (aeroplane.Reload + aeroplane.GroundAndAir + (2 * (nearer / aeroplane.Ferry))));
    }

    private static TimeSpan AirTime(StripJob job, int loads, Aeroplane aeroplane) =>
        FlyingTime.PerLoad(new FlyingJob(job.Land, loads, job.PassLength, job.Ferry), aeroplane) - aeroplane.Reload;

    private static Working Show(StripSum sum) => Working.Empty
        .Given("A", "acres to sow", sum.Land.Acres, "ac", "plan")
        .Given("W", "soaked seed", sum.Wet.Pounds, "lb wet", "plan")
        .Given("H", "most in a load", sum.Aeroplane.WorkingLoad.Pounds, "lb wet", "flying service, or this morning's pilot")
        .Given("N", "aeroplanes", sum.Crew.Aeroplanes, string.Empty, "asked")
        .Given("c", "loaders", sum.Crew.Loaders, string.Empty, "asked")
        .Given("s", "loading", sum.Aeroplane.Reload.TotalMinutes, "min", "flying service")
        .Step("n", "loads", sum.Loads, string.Empty, "Σ ceil(W of a field / H)", Sources.Arithmetic)
        .Step("F", "flight for one load, mean", sum.Flight.TotalMinutes, "min", "ground and air + 2 ferry + passes (length / speed + turn), mean over the loads", Sources.Arithmetic)
        .Step("X", "loads in an hour, times at random", sum.LoadsPerHour.Random, "loads/h", "finite source of N, c servers: Σ min(n, c) P(n) / s", Sources.FiniteQueue)
        .Step("Xc", "loads in an hour, like clockwork", sum.LoadsPerHour.Clockwork, "loads/h", "the smaller of N / (F + s) and c / s", Sources.Arithmetic)
        .Step("T", "hours at random", sum.Hours.Most.TotalHours, "h", "n / X", Sources.Arithmetic)
        .Step("Tc", "hours like clockwork", sum.Hours.Least.TotalHours, "h", "n / Xc", Sources.Arithmetic);
}
