using CsCheck;
using Watersown.Shapes;

namespace Watersown.Flight.Laying;

public sealed class LoadSplittingTests
{
    private static readonly PassPace Passes = new(Length.FromMeters(18), Speed.FromMetersPerSecond(53.6448), TimeSpan.FromSeconds(30));

    private static readonly Gen<(ImmutableArray<FlownLine> Lines, LoadPace Pace)> Jobs = Gen.Select(
        Gen.Double[40, 400].Array[1, 9], Gen.Double[400, 1500], Gen.Double[-3000, 3000], Gen.Double[-3000, 3000]).Select((seeds, limit, east, north) =>
            (seeds.Select((s, i) => Line(i + 1, s, s * 2)).ToImmutableArray(), Pace(limit, new PlanePoint(east, north))));

    // Whole field of the published counting (rectangle 800 × 500 m, swath 18 m, 210 kg/ha soaked, strip 3,000 m off; derived):
    // 900 kg make two whole passes, 910 kg three. The strip is so placed that either end of a pass is as far.
    [Theory]
    [InlineData(900, 14, 4083.4)]
    [InlineData(910, 10, 3276.0)]
    public void Ten_kilograms_more_save_four_loads(double limit, int loads, double seconds)
    {
        // Passes of no width on the ground, a strip on the line square through their middles: ferry 3,000 m to either end.
        ImmutableArray<FlownLine> lines = [.. Enumerable.Range(1, 28).Select(i => new FlownLine(i, new PlanePoint(0, -400), new PlanePoint(0, 400), Length.FromMeters(800), SoakedSeed.FromKilograms(302.4)))];
        var pace = Pace(limit, new PlanePoint(Math.Sqrt((3000 * 3000) - (400 * 400)), 0)) with { Turnaround = TimeSpan.FromSeconds(120), Ferry = Speed.FromMetersPerSecond(53.6448) };
        var split = LoadSplitting.Whole(lines, pace)!;
        Assert.Equal(loads, split.Loads.Length);
        Assert.Equal(seconds, split.Time.TotalSeconds + (28 * 800 / 53.6448), 0.5);
        Assert.Equal(loads, LoadSplitting.Fewest(lines, SoakedSeed.FromKilograms(limit)));
    }

    [Fact]
    public void It_names_the_limit_at_which_a_load_is_saved()
    {
        ImmutableArray<FlownLine> lines = [.. Enumerable.Range(1, 28).Select(i => Line(i, 302.4, 800))];
        Assert.Equal(907.2, LoadSplitting.ForOneFewer(lines, SoakedSeed.FromKilograms(900))!.Value.Kilograms, 1e-5);
        Assert.Null(LoadSplitting.ForOneFewer(lines, SoakedSeed.FromKilograms(28 * 303)));
        Assert.Null(LoadSplitting.Whole(lines, Pace(302, new PlanePoint(0, 0))));
    }

    [Fact]
    public void No_other_split_is_quicker() => Jobs.Sample(
        job =>
        {
            var split = LoadSplitting.Whole(job.Lines, job.Pace)!;
            Assert.Equal(Try(job.Lines, job.Pace, 0), split.Time.TotalSeconds, 1e-6);
            Assert.True(split.Time <= LoadSplitting.FilledUp(job.Lines, job.Pace)!.Time + TimeSpan.FromMilliseconds(0.01));
            Assert.Equal(job.Lines.Length, split.Loads.Sum(l => l.Passes));
            Assert.All(split.Loads, l => Assert.True(l.Seed <= job.Pace.Limit * (1 + 1e-8)));
        },
        iter: 500);

    // Every way of breaking, every way round: the least of all, worked out one by one.
    private static double Try(ImmutableArray<FlownLine> lines, LoadPace pace, int from)
    {
        if (from == lines.Length) return 0;
        var (best, seed, turns) = (double.PositiveInfinity, 0.0, 0.0);
        for (var past = from + 1; past <= lines.Length; past++)
        {
            seed += lines[past - 1].Seed.Kilograms;
            if (seed > pace.Limit.Kilograms) break;
            if (past - from > 1) turns += 30 + (Math.Max(0, Math.Abs(lines[past - 1].From.East - lines[past - 2].From.East) - 27) / 53.6448);
            var rest = Try(lines, pace, past);
            foreach (var turned in new[] { false, true })
            {
                var (start, end) = turned ? (lines[from].To, lines[from].From) : (lines[from].From, lines[from].To);
                var sameWay = (past - 1 - from) % 2 == 0;
                var last = sameWay != turned ? lines[past - 1].To : lines[past - 1].From;
                best = Math.Min(best, rest + turns + pace.Turnaround.TotalSeconds + ((Far(start) + Far(last)) / pace.Ferry.MetersPerSecond));
            }
        }

        return best;
        double Far(PlanePoint p) => Math.Sqrt(Math.Pow(p.East - pace.Strip.East, 2) + Math.Pow(p.North - pace.Strip.North, 2));
    }

    private static FlownLine Line(int number, double kilograms, double meters) =>
        new(number, new PlanePoint(number * 18, -meters / 2), new PlanePoint(number * 18, meters / 2), Length.FromMeters(meters), SoakedSeed.FromKilograms(kilograms));

    private static LoadPace Pace(double limit, PlanePoint strip) => new()
    {
        Limit = SoakedSeed.FromKilograms(limit),
        Strip = strip,
        Ferry = Speed.FromMetersPerSecond(58),
        Turnaround = TimeSpan.FromSeconds(190),
        Passes = Passes,
    };
}
