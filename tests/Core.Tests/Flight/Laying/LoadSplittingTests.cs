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

    // Every order of a few passes, every way of breaking it, every way round: no order found may be quicker, nor ferry less than the least.
    [Fact]
    public void An_order_found_is_no_worse_than_the_order_laid_and_no_better_than_the_best_of_all() => Jobs.Where(job => job.Lines.Length is > 2 and < 7).Sample(
        job =>
        {
            var (found, laid) = (OrderSearch.Best(job.Lines, 0, job.Pace), LoadSplitting.Whole(job.Lines, job.Pace)!);
            var split = LoadSplitting.Whole(found, job.Pace)!;
            Assert.Equal(job.Lines.Select(l => l.Number), found.Select(l => l.Number).Order());
            Assert.True(split.Time <= laid.Time + TimeSpan.FromMilliseconds(0.01));
            Assert.True(split.Time.TotalSeconds >= Orders([.. job.Lines]).Min(order => Try([.. order], job.Pace, 0)) - 1e-6);
            Assert.All([laid, split, LoadSplitting.FilledUp(job.Lines, job.Pace)!], s => Assert.True(s.Ferry >= LoadSplitting.LeastFerry(job.Lines, job.Pace) - TimeSpan.FromMilliseconds(0.01)));
            Assert.Equal(found, OrderSearch.Best(job.Lines, 0, job.Pace));
        },
        iter: 30);

    // By hand: six passes of 300, 200 and 100 kg, two of each in this order, at most 400 kg a load. As laid no three loads hold them
    // (300, then 300 again is too much); 300 + 100 twice and 200 + 200 do.
    [Fact]
    public void Another_order_saves_a_load()
    {
        ImmutableArray<FlownLine> lines = [.. new[] { 300.0, 300, 200, 200, 100, 100 }.Select((kg, i) => Line(i + 1, kg, 600))];
        var pace = Pace(400, new PlanePoint(0, -3000));
        Assert.Equal(4, LoadSplitting.Whole(lines, pace)!.Loads.Length);
        Assert.Equal(3, LoadSplitting.Whole(OrderSearch.Best(lines, 0, pace), pace)!.Loads.Length);
    }

    // By hand: four passes of 400 kg, at most 600 kg a load: whole passes take four loads; stopped half way along, 1,600 / 600 makes three.
    [Fact]
    public void A_load_that_may_stop_within_a_pass_saves_one()
    {
        ImmutableArray<FlownLine> lines = [.. Enumerable.Range(1, 4).Select(i => Line(i, 400, 800))];
        var pace = Pace(600, new PlanePoint(0, -3000));
        var parted = PartLoads.Of(lines, pace, TimeSpan.FromSeconds(30))!;
        Assert.Equal(4, LoadSplitting.Whole(lines, pace)!.Loads.Length);
        Assert.Equal(3, parted.Loads.Length);
        Assert.Equal(1600, parted.Loads.Sum(l => l.Seed.Kilograms), 1e-6);
        Assert.All(parted.Loads, l => Assert.True(l.Seed.Kilograms <= 600 * (1 + 1e-8)));
        Assert.Null(PartLoads.Of(lines, pace with { Limit = SoakedSeed.FromKilograms(99) }, TimeSpan.Zero));
        Assert.NotNull(PartLoads.Of(lines, pace with { Limit = SoakedSeed.FromKilograms(101) }, TimeSpan.Zero));
    }

    [Fact]
    public void No_other_stops_at_quarters_are_quicker() => Gen.Select(Jobs, Gen.Double[0, 60]).Where(asked => asked.Item1.Lines.Length < 4).Sample(
        (job, lineUp) =>
        {
            var parted = PartLoads.Of(job.Lines, job.Pace, TimeSpan.FromSeconds(lineUp))!;
            Assert.Equal(TryParts(job.Lines, job.Pace, lineUp, 0, null), parted.Time.TotalSeconds, 1e-5);
            Assert.True(parted.Time <= LoadSplitting.Whole(job.Lines, job.Pace)!.Time + TimeSpan.FromMilliseconds(0.01));
        },
        iter: 200);

    // Load after load, pass by pass and quarter by quarter, the way of a pass begun by another load kept.
    private static double TryParts(ImmutableArray<FlownLine> lines, LoadPace pace, double lineUp, int sown, bool? begun)
    {
        if (sown == 4 * lines.Length) return 0;
        return new[] { false, true }.Where(way => begun is null || begun == way).Min(first =>
        {
            var (best, seed, turns, way) = (double.PositiveInfinity, 0.0, 0.0, first);
            for (var quarter = sown; quarter < 4 * lines.Length; quarter++)
            {
                var line = lines[quarter / 4];
                if (quarter > sown && quarter % 4 == 0) (way, turns) = (!way, turns + 30 + (Math.Max(0, Math.Abs(line.From.East - lines[(quarter / 4) - 1].From.East) - 27) / 53.6448));
                seed += line.Seed.Kilograms / 4;
                if (seed > pace.Limit.Kilograms * (1 + 1e-9)) break;
                var rest = TryParts(lines, pace, lineUp, quarter + 1, quarter % 4 == 3 ? null : way);
                best = Math.Min(best, rest + turns + pace.Turnaround.TotalSeconds + (begun is null ? 0 : lineUp)
                    + ((Far(At(lines[sown / 4], sown % 4, first)) + Far(At(line, (quarter % 4) + 1, way))) / pace.Ferry.MetersPerSecond));
            }

            return best;
        });

        PlanePoint At(FlownLine line, int quarters, bool turned)
        {
            var share = turned ? 1 - (quarters / 4.0) : quarters / 4.0;
            return new PlanePoint(line.From.East + (share * (line.To.East - line.From.East)), line.From.North + (share * (line.To.North - line.From.North)));
        }

        double Far(PlanePoint p) => Math.Sqrt(Math.Pow(p.East - pace.Strip.East, 2) + Math.Pow(p.North - pace.Strip.North, 2));
    }

    private static IEnumerable<List<FlownLine>> Orders(List<FlownLine> left) => left.Count == 0
        ? [[]]
        : left.SelectMany(line => Orders([.. left.Where(l => l != line)]).Select(rest => rest.Prepend(line).ToList()));

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
