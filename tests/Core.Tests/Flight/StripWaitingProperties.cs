using CsCheck;

namespace Watersown.Flight;

public sealed class StripWaitingProperties
{
    private static readonly Gen<LoaderRound> Rounds = Gen.Select(Gen.Int[1, 50], Gen.Double[0.05, 1440], Gen.Double[0.05, 1440])
        .Select((n, flight, load) => new LoaderRound(n, TimeSpan.FromMinutes(flight), TimeSpan.FromMinutes(load)));

    [Fact]
    public void Clockwork_is_never_slower_than_chance_and_both_keep_the_loader_within_its_hours() => Rounds.Sample(round =>
    {
        var random = StripWaiting.Random(round);
        var most = 1 / round.Load.TotalHours;
        Assert.InRange(random.LoadsPerHour, 0, most * (1 + 1e-9));
        Assert.True(random.LoadsPerHour <= StripWaiting.Clockwork(round) * (1 + 1e-9));
        Assert.Equal(1, random.AtStrip.Sum(s => s.Share), 1e-9);
    });

    // Little's law and the round of one aeroplane: N = loads an hour × (flight + wait + loading).
    [Fact]
    public void Every_aeroplane_is_flying_waiting_or_loading() => Rounds.Sample(round =>
    {
        var state = StripWaiting.Random(round);
        Assert.Equal(round.Aircraft, state.LoadsPerHour * (round.Flight + state.Wait + round.Load).TotalHours, 1e-5 * round.Aircraft);
    });

    [Fact]
    public void One_more_aeroplane_never_brings_fewer_loads() => Rounds.Sample(round =>
    {
        var more = round with { Aircraft = round.Aircraft + 1 };
        Assert.True(StripWaiting.Random(more).LoadsPerHour >= StripWaiting.Random(round).LoadsPerHour * (1 - 1e-12));
        Assert.True(StripWaiting.Clockwork(more) >= StripWaiting.Clockwork(round));
    });

    [Fact]
    public void No_aeroplane_no_flight_or_no_loading_is_a_fault_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StripWaiting.Random(new LoaderRound(0, TimeSpan.FromMinutes(3), TimeSpan.FromMinutes(1))));
        Assert.Throws<ArgumentOutOfRangeException>(() => StripWaiting.Clockwork(new LoaderRound(1, TimeSpan.Zero, TimeSpan.FromMinutes(1))));
        Assert.Throws<ArgumentOutOfRangeException>(() => StripWaiting.Random(new LoaderRound(1, TimeSpan.FromMinutes(3), TimeSpan.Zero)));
    }
}
