namespace Watersown.Schedule.Replan;

/// <summary>One field that wants the aeroplane on a morning.</summary>
/// <param name="Field">Index of the field.</param>
/// <param name="From">Not before: field full, seed drained enough.</param>
/// <param name="Until">Done by: seed still good.</param>
internal readonly record struct AirJob(int Field, DateTimeOffset From, DateTimeOffset Until);

/// <summary>Where a field was put.</summary>
internal readonly record struct AirPlace(int Field, string Aeroplane, DateTimeOffset Start, DateTimeOffset End);

/// <summary>Puts the fields of one morning one after another into the open spans, trying every order that could fit.</summary>
internal static class AirOrder
{
    /// <summary>People say and pin hours in steps of five minutes.</summary>
    public static readonly TimeSpan Step = TimeSpan.FromMinutes(5);

    /// <summary>The first order that fits, in the order of the fields given; none where none fits.</summary>
    public static ImmutableArray<AirPlace>? Fit(Weighing weighing, OpenMorning morning, ImmutableArray<AirJob> jobs)
    {
        var places = new AirPlace[jobs.Length];
        var free = morning.Spans.Select(s => s.From).ToArray();
        return Place(weighing, morning, jobs, new bool[jobs.Length], free, places, 0) ? [.. places.OrderBy(p => p.Start).ThenBy(p => p.Field)] : null;
    }

    private static bool Place(Weighing weighing, OpenMorning morning, ImmutableArray<AirJob> jobs, bool[] done, DateTimeOffset[] free, AirPlace[] places, int count)
    {
        if (count == jobs.Length) return true;
        for (var j = 0; j < jobs.Length; j++)
        {
            if (done[j]) continue;
            for (var s = 0; s < morning.Spans.Length; s++)
            {
                var (span, job) = (morning.Spans[s], jobs[j]);
                var start = Up(free[s] > job.From ? free[s] : job.From);
                var end = start + weighing.Times[job.Field][span.Aeroplane.Name];
                if (end > span.Until || end > job.Until) continue;
                var before = free[s];
                (done[j], free[s], places[count]) = (true, end, new AirPlace(job.Field, span.Aeroplane.Name, start, end));
                if (Place(weighing, morning, jobs, done, free, places, count + 1)) return true;
                (done[j], free[s]) = (false, before);
            }
        }

        return false;
    }

    /// <summary>The next whole step.</summary>
    public static DateTimeOffset Up(DateTimeOffset moment) => moment.AddTicks((Step.Ticks - (moment.Ticks % Step.Ticks)) % Step.Ticks);

    /// <summary>As many whole steps as a span begins.</summary>
    public static TimeSpan Up(TimeSpan span) => TimeSpan.FromTicks((span.Ticks + Step.Ticks - 1) / Step.Ticks * Step.Ticks);
}
