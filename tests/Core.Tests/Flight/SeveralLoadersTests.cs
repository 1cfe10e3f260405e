namespace Watersown.Flight;

/// <summary>Several loaders against a closed form and against the balance of states solved by going round and round.</summary>
public sealed class SeveralLoadersTests
{
    // As many loaders as aeroplanes: nobody waits, and each is at its loader a share s / (F + s) of the time (binomial).
    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void A_loader_for_every_aeroplane_leaves_no_waiting(int aircraft)
    {
        var state = StripWaiting.Random(Round(aircraft, aircraft));
        Assert.Equal(TimeSpan.Zero, state.Wait);
        Assert.Equal(aircraft * 12, state.LoadsPerHour, 1e-9);
        Assert.Equal(Math.Pow(0.7, aircraft), state.AtStrip[0].Share, 1e-12);
        Assert.Equal(0.3, state.Busy.Share, 1e-12);
    }

    [Theory]
    [InlineData(3, 2)]
    [InlineData(5, 2)]
    [InlineData(6, 3)]
    public void The_shares_of_time_balance_state_by_state(int aircraft, int loaders)
    {
        double[] shares = [.. Enumerable.Repeat(1.0 / (aircraft + 1), aircraft + 1)];
        for (var step = 0; step < 20_000; step++)
        {
            var next = (double[])shares.Clone();
            for (var n = 0; n <= aircraft; n++)
            {
                double come = (aircraft - n) / 3.5 * 0.05, go = Math.Min(n, loaders) / 1.5 * 0.05;
                if (n < aircraft) (next[n], next[n + 1]) = (next[n] - (shares[n] * come), next[n + 1] + (shares[n] * come));
                if (n > 0) (next[n], next[n - 1]) = (next[n] - (shares[n] * go), next[n - 1] + (shares[n] * go));
            }

            shares = next;
        }

        var state = StripWaiting.Random(Round(aircraft, loaders));
        for (var n = 0; n <= aircraft; n++) Assert.Equal(shares[n], state.AtStrip[n].Share, 1e-9);
        Assert.Equal(Math.Min(aircraft * 12.0, loaders * 40.0), StripWaiting.Clockwork(Round(aircraft, loaders)), 1e-9);
        Assert.True(state.LoadsPerHour < StripWaiting.Clockwork(Round(aircraft, loaders)));
        Assert.True(state.LoadsPerHour > StripWaiting.Random(Round(aircraft, loaders - 1)).LoadsPerHour);
    }

    [Fact]
    public void The_reckoning_takes_several_loaders() =>
        Assert.Equal(24, Ask.For("strip-queue", ("aircraft", 2), ("flight_min", 3.5), ("load_min", 1.5), ("loaders", 2)).Number("loads_per_h_random"), 1e-9);

    private static LoaderRound Round(int aircraft, int loaders) => new(aircraft, TimeSpan.FromMinutes(3.5), TimeSpan.FromMinutes(1.5)) { Loaders = loaders };
}
