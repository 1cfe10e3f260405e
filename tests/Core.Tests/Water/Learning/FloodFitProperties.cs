namespace Watersown.Water.Learning;

public sealed class FloodFitProperties
{
    private const int Fields = 400;

    // Nine of ten, within what chance does to 400 draws (three deviations are 4.5 in a hundred).
    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    [InlineData(4)]
    public void The_truth_lies_between_the_ends_in_nine_cases_of_ten(int seenWet)
    {
        var (full, fill, seep, count) = (0, 0, 0, 0);
        for (var seed = 1; seed <= Fields; seed++)
        {
            var truth = new Truth(seed);
            if (truth.Full is not { } ends) continue;
            var fit = FloodFit.Of(truth.Case(truth.Wet(seenWet)));
            count++;
            if (fit.Full.Low <= ends && (fit.Full.High is not { } high || ends <= high)) full++;
            if (fit.Fill.Low <= truth.TakeUp + truth.Pond && truth.TakeUp + truth.Pond <= fit.Fill.High) fill++;
            if (fit.Seepage.Low <= truth.Seepage && truth.Seepage <= fit.Seepage.High) seep++;
        }

        Assert.True(count > 0.9 * Fields);
        Assert.InRange((double)full / count, 0.855, 0.945);
        Assert.InRange((double)fill / count, 0.855, 0.945);
        Assert.InRange((double)seep / count, 0.855, 0.945);
    }

    [Fact]
    public void So_it_does_with_readings_at_stick_and_gate()
    {
        var (full, fill, count) = (0, 0, 0);
        for (var seed = 1; seed <= Fields; seed++)
        {
            var truth = new Truth(seed);
            if (truth.Full is not { } ends || truth.Wet(4).Length < 4) continue;
            var fit = FloodFit.Of(truth.Case([.. truth.Wet(4), truth.Stick(1), truth.Stick(2), truth.Gate()]));
            count++;
            if (fit.Full.Low <= ends && (fit.Full.High is not { } high || ends <= high)) full++;
            if (fit.Fill.Low <= truth.TakeUp + truth.Pond && truth.TakeUp + truth.Pond <= fit.Fill.High) fill++;
        }

        Assert.InRange((double)full / count, 0.855, 0.945);
        Assert.InRange((double)fill / count, 0.855, 0.945);
    }

    [Fact]
    public void Every_mark_brings_the_ends_of_the_finish_nearer_together()
    {
        double[] mean = new double[6];
        foreach (var truth in Some())
        {
            for (var seen = 0; seen < mean.Length; seen++) mean[seen] += Width(FloodFit.Of(truth.Case(truth.Wet(seen))).Full);
        }

        for (var seen = 1; seen < mean.Length; seen++) Assert.True(mean[seen] < mean[seen - 1], $"{seen} marks: {mean[seen]:0.0} against {mean[seen - 1]:0.0}");
        Assert.True(mean[^1] < 0.5 * mean[0]);
    }

    [Fact]
    public void The_gate_and_the_stick_bring_the_ends_of_the_fill_nearer_together() => Assert.All(Some(), truth =>
    {
        double Wide(FloodCase flood) => FloodFit.Of(flood).Fill is var fill ? Math.Log(fill.High / fill.Low) : 0;
        var wet = truth.Wet(5);
        Assert.True(Wide(truth.Case([.. wet, truth.Gate()])) < Wide(truth.Case(wet)));
        Assert.True(Wide(truth.Case([.. wet, truth.Stick(0), truth.Stick(1)])) <= Wide(truth.Case(wet)) * 1.02);
    });

    [Fact]
    public void The_order_of_marks_does_not_matter() => Assert.All(Some(), truth =>
    {
        ImmutableArray<FloodSighting> seen = [.. truth.Wet(4), truth.Stick(0), truth.Stick(2)];
        var (one, other) = (FloodFit.Of(truth.Case(seen)), FloodFit.Of(truth.Case(seen.Reverse())));
        Assert.Equal(one.Fill.Middle.Feet, other.Fill.Middle.Feet, 1e-9);
        Assert.Equal(one.Full.Middle!.Value.TotalHours, other.Full.Middle!.Value.TotalHours, 1e-6);
    });

    // Told two days early or late: the finish moves by less than half of one of its own spreads, and the mark is named.
    [Theory]
    [InlineData(48)]
    [InlineData(-48)]
    public void A_wild_mark_barely_moves_it(double hours) => Assert.All(Some(), truth =>
    {
        var seen = truth.Wet(5);
        var calm = FloodFit.Of(truth.Case(seen));
        var wild = seen[2] with { At = TimeSpan.FromHours(Math.Max(0, seen[2].At.TotalHours + hours)) };
        var moved = FloodFit.Of(truth.Case([.. seen[..2], wild, .. seen[3..]]));
        var spread = Width(calm.Full) / (2 * LearningSpreads.NineOfTen);
        Assert.InRange(Math.Abs((moved.Full.Middle - calm.Full.Middle)!.Value.TotalHours), 0, 0.75 * spread);
        Assert.True(moved.Verdicts[2].Disagrees);
    });

    private static IEnumerable<Truth> Some() => Enumerable.Range(1, 40).Select(s => new Truth(s)).Where(t => t.Full < TimeSpan.FromDays(15));

    private static double Width(LikelyMoment moment) => ((moment.High ?? TimeSpan.FromDays(60)) - moment.Low!.Value).TotalHours;
}
