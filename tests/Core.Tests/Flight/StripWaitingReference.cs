namespace Watersown.Flight;

/// <summary>The queue at the loader against textbook examples (inputs read; figures derived and agreeing with the book).</summary>
public sealed class StripWaitingReference
{
    // Anderson, Sweeney, Williams and others, An Introduction to Management Science: six machines, 20 h run, 2 h repair.
    // The same with five: printers, 20 h and 2 h. Five computers, 85 and 15 min.
    [Theory]
    [InlineData(6, 1200, 120, 0.4845, 0.3297, 0.8451, 76.74)]
    [InlineData(5, 1200, 120, 0.564, 0.2035, 0.6395, 55.98)]
    [InlineData(5, 85, 15, 0.3365, 0.5766, 1.2401, 13.04)]
    public void Textbook_machines_wait_for_one_mechanic(int machines, double runMinutes, double repairMinutes, double idle, double waiting, double present, double waitMinutes)
    {
        var state = StripWaiting.Random(new LoaderRound(machines, TimeSpan.FromMinutes(runMinutes), TimeSpan.FromMinutes(repairMinutes)));
        Assert.Equal(idle, state.AtStrip[0].Share, 0.0001);
        Assert.Equal(waiting, state.Waiting, 0.0001);
        Assert.Equal(present, state.Present, 0.0001);
        Assert.Equal(waitMinutes, state.Wait.TotalMinutes, 0.05);
    }

    // Two machines, one mechanic, 12 h and 8 h: 9/29, 12/29, 8/29 (question read, values derived).
    [Fact]
    public void Two_machines_and_one_mechanic_in_exact_shares()
    {
        var state = StripWaiting.Random(new LoaderRound(2, TimeSpan.FromHours(12), TimeSpan.FromHours(8)));
        Assert.Equal(9.0 / 29, state.AtStrip[0].Share, 1e-9);
        Assert.Equal(12.0 / 29, state.AtStrip[1].Share, 1e-9);
        Assert.Equal(8.0 / 29, state.AtStrip[2].Share, 1e-9);
        Assert.Equal(0.9655, state.Present, 0.0001);
        Assert.Equal(0.6897, state.Busy.Share, 0.0001);
    }

    // Derived: flight 3.5 min, loading 1.5 min.
    [Theory]
    [InlineData(1, 12.00, 0, 0.300, 12.00)]
    [InlineData(2, 22.02, 0.45, 0.550, 24.00)]
    [InlineData(3, 29.64, 1.07, 0.741, 36.00)]
    [InlineData(4, 34.75, 1.91, 0.869, 40.00)]
    [InlineData(5, 37.69, 2.96, 0.942, 40.00)]
    public void Aeroplanes_on_one_loader(int aircraft, double random, double wait, double busy, double clockwork)
    {
        var answer = Ask.For("strip-queue", ("aircraft", aircraft), ("flight_min", 3.5), ("load_min", 1.5));
        Assert.Equal(random, answer.Number("loads_per_h_random"), 0.01);
        Assert.Equal(clockwork, answer.Number("loads_per_h_clockwork"), 0.005);
        Assert.Equal(wait, answer.Number("wait_min"), 0.005);
        Assert.Equal(busy, answer.Number("loader_busy"), 0.001);
    }

    [Fact]
    public void A_single_aeroplane_never_waits() =>
        Assert.Equal(0, Ask.For("strip-queue", ("aircraft", 1), ("flight_min", 3.5), ("load_min", 1.5)).Number("wait_min"));
}
