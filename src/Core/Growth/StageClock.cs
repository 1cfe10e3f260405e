using Watersown.Weather;

namespace Watersown.Growth;

/// <summary>A stage that somebody saw.</summary>
public sealed record StageSighting(StagePoint Point, DateOnly Day);

/// <summary>What the stages of a crop are reckoned from.</summary>
/// <param name="Sown">The day it was sown; its warmth counts.</param>
/// <param name="Days">Days on end from that day.</param>
/// <param name="Targets">Warmth to each stage.</param>
public sealed record StageQuestion(DateOnly Sown, ImmutableArray<SeriesDay> Days, StageTargets Targets)
{
    public WarmthRule Rule { get; init; } = StageTargets.Rule;

    /// <summary>What was seen; one that goes back behind an earlier one is passed over.</summary>
    public ImmutableArray<StageSighting> Seen { get; init; } = [];

    /// <summary>The flood's own high and low where somebody measured it.</summary>
    public ImmutableArray<DayWarmth> Water { get; init; } = [];
}

/// <summary>A stage with its day.</summary>
/// <param name="Point">Which.</param>
/// <param name="Day">The morning on which it shows.</param>
public sealed record StageDate(StagePoint Point, DateOnly Day)
{
    /// <summary>Somebody saw it; otherwise it is reckoned.</summary>
    public bool Seen { get; init; }

    /// <summary>How far it can be off either way, two times out of three; none for what was seen.</summary>
    [PlainNumber("days")]
    public double Error { get; init; }

    /// <summary>The error in whole days, never less than it is.</summary>
    public int ErrorDays => (int)Math.Ceiling(Error - 1e-9);

    public DateOnly Earliest => Day.AddDays(-ErrorDays);

    public DateOnly Latest => Day.AddDays(ErrorDays);
}

/// <summary>The stages of one crop.</summary>
/// <param name="Question">What they were reckoned from.</param>
/// <param name="Stages">In the order of the season; those that the days do not reach are not among them.</param>
public sealed record StageCalendar(StageQuestion Question, ImmutableArray<StageDate> Stages)
{
    /// <summary>Warmth since sowing at the end of each day, as the clock was set by what was seen.</summary>
    public required ImmutableArray<(DateOnly Day, DegreeDays Sum)> Course { get; init; }

    /// <summary>What was seen but goes back behind an earlier sighting.</summary>
    public ImmutableArray<StageSighting> PassedOver { get; init; } = [];

    public StageDate? Of(StagePoint point) => Stages.FirstOrDefault(s => s.Point == point);

    public StageDate? Of(CropStage stage) => Of(new StagePoint(stage));

    /// <summary>The last stage that has come by a day.</summary>
    public StageDate? At(DateOnly day) => Stages.LastOrDefault(s => s.Day <= day);

    /// <summary>Warmth since sowing on the morning of a day.</summary>
    public DegreeDays SumOn(DateOnly day) => Course.LastOrDefault(c => c.Day < day).Sum;
}

/// <summary>Turns days into stages. A stage shows on the morning after the day whose warmth completes it; the day of sowing counts.</summary>
public static class StageClock
{
    /// <summary>The flood is so much warmer than the air between sowing and booting; targets in warmth of the air hold for such a flood.</summary>
    [Source(nameof(Sources.WaterWarmth2018), "+2.6 °C, planting to booting, six sites")]
    [PlainNumber("°C")]
    public const double UsualWaterOverAir = 2.6;

    /// <summary>The stages of a crop.</summary>
    [Source(nameof(Sources.StageTargetsFitted), "first morning with the target behind it")]
    [Source(nameof(Sources.Yoshida1981), "p. 21, leaves")]
    public static StageCalendar Of(StageQuestion question)
    {
        var walk = new Walk(question);
        var sown = StagePoint.All.Select(p => walk.From(walk.Start, p)).OfType<StageDate>().ToImmutableArray();
        var (start, last, stages, passed) = (walk.Start, (StageSighting?)null, sown, ImmutableArray.CreateBuilder<StageSighting>());
        foreach (var seen in question.Seen.OrderBy(s => s.Day).ThenBy(s => s.Point))
        {
            if (seen.Day < question.Sown || (last is not null && seen.Point <= last.Point))
            {
                passed.Add(seen);
                continue;
            }

            (start, last) = (walk.Reset(sown, seen), seen);
            stages =
            [
                .. stages.Where(s => s.Point < seen.Point).Select(s => s.Seen || s.Day <= seen.Day ? s : s with { Day = seen.Day }),
                new StageDate(seen.Point, seen.Day) { Seen = true },
                .. StagePoint.All.Where(p => p > seen.Point).Select(p => walk.From(start, p)).OfType<StageDate>(),
            ];
        }

        return new StageCalendar(question, stages) { Course = walk.Course(start), PassedOver = passed.ToImmutable() };
    }

    /// <summary>Where the count stands on a morning.</summary>
    private sealed record Standing(DateOnly Morning, double Warmth, double Leaves);

    private sealed class Walk
    {
        private readonly StageQuestion question;
        private readonly Dictionary<DateOnly, DayWarmth> water;
        private readonly double booting;

        public Walk(StageQuestion question)
        {
            this.question = question;
            water = question.Water.GroupBy(w => w.Day).ToDictionary(g => g.Key, g => g.Last());
            booting = question.Targets.Booting.Celsius;
            Start = new Standing(question.Sown, 0, 0);
        }

        public Standing Start { get; }

        /// <summary>The stage reckoned on from where the count stands; none where the days end before.</summary>
        public StageDate? From(Standing start, StagePoint point)
        {
            var target = Target(point);
            var (warmth, leaves, unmeasured, pace) = (start.Warmth, start.Leaves, 0, DegreeDays.Zero);
            foreach (var day in question.Days.Where(d => d.Day >= start.Morning))
            {
                (var counted, var leafing) = Count(day, warmth);
                (warmth, leaves, pace) = (warmth + counted, leaves + leafing, DegreeDays.FromCelsius(counted));
                if (day.Basis == DayBasis.Normal) unmeasured++;
                if ((point.ByLeaf ? leaves : warmth) < target) continue;
                var share = point.ByLeaf ? Math.Max(0, warmth - start.Warmth) / question.Targets.Heading.Celsius : (target - start.Warmth) / target;
                return new StageDate(point, day.Day.AddDays(1)) { Error = StageError.Of(point, Fraction.FromShare(Math.Clamp(share, 0, 1)), unmeasured, pace) };
            }

            return null;
        }

        /// <summary>The count on the morning on which a stage was seen: what it is at that stage as reckoned from sowing.</summary>
        public Standing Reset(ImmutableArray<StageDate> sown, StageSighting seen)
        {
            var reckoned = sown.FirstOrDefault(s => s.Point == seen.Point);
            var (warmth, leaves) = Sums(reckoned?.Day ?? seen.Day);
            return new Standing(seen.Day, seen.Point.ByLeaf ? warmth : Target(seen.Point), seen.Point.ByLeaf ? Target(seen.Point) : leaves);
        }

        public ImmutableArray<(DateOnly Day, DegreeDays Sum)> Course(Standing last)
        {
            var course = ImmutableArray.CreateBuilder<(DateOnly, DegreeDays)>();
            double warmth = 0;
            foreach (var day in question.Days)
            {
                if (day.Day == last.Morning) warmth = last.Warmth;
                warmth += Count(day, warmth).Warmth;
                course.Add((day.Day, DegreeDays.FromCelsius(warmth)));
            }

            return course.ToImmutable();
        }

        private (double Warmth, double Leaves) Sums(DateOnly morning)
        {
            double warmth = 0, leaves = 0;
            foreach (var day in question.Days.TakeWhile(d => d.Day < morning))
            {
                var (counted, leafing) = Count(day, warmth);
                (warmth, leaves) = (warmth + counted, leaves + leafing);
            }

            return (warmth, leaves);
        }

        // Until booting the growing point stands in the flood; where its warmth is known it counts, less what targets in air allow for.
        private (double Warmth, double Leaves) Count(SeriesDay day, double sofar)
        {
            var (low, high) = (day.Warmth.Low, day.Warmth.High);
            if (sofar < booting && water.TryGetValue(day.Day, out var flood))
                (low, high) = (Temperature.FromCelsius(flood.Low.Celsius - UsualWaterOverAir), Temperature.FromCelsius(flood.High.Celsius - UsualWaterOverAir));
            var next = question.Rule.NeedsNextMorning ? NextLow(day) ?? low : (Temperature?)null;
            var leaf = Warmth.OfDay(low, high, null, LeafPace.Rule).Celsius;
            // Past panicle initiation leaves come slower.
            if (sofar >= question.Targets.Initiation.Celsius) leaf *= LeafPace.Leaf.Celsius / LeafPace.LeafAfterInitiation.Celsius;
            return (Warmth.OfDay(low, high, next, question.Rule).Celsius, leaf);
        }

        private Temperature? NextLow(SeriesDay day)
        {
            var at = day.Day.DayNumber - question.Days[0].Day.DayNumber + 1;
            return at < question.Days.Length ? question.Days[at].Warmth.Low : null;
        }

        private double Target(StagePoint point) => point.ByLeaf ? LeafPace.To(point.Stage == CropStage.Tillering ? StagePoint.TilleringLeaf : point.Leaf).Celsius : question.Targets.To(point.Stage).Celsius;
    }
}
