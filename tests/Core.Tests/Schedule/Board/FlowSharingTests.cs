using CsCheck;

namespace Watersown.Schedule.Board;

/// <summary>Water shared among fields, against trying out every way of cutting the farm in two (the least cut equals the greatest flow).</summary>
public sealed class FlowSharingTests
{
    [Fact]
    public void Joined_wells_help_each_other_and_the_first_choice_goes_first()
    {
        // W-1 4.2 and W-2 3.2; one field on both wants 6, one on W-1 alone wants 1.
        var sharing = new FlowSharing([Cfs(4.2), Cfs(3.2)], [], [([0, 1], Cfs(6)), ([0], Cfs(1))]);
        Assert.Equal(2.8, sharing.Flow(0, 1).CubicFeetPerSecond, 9);
        Assert.Equal(3.2, sharing.Flow(0, 0).CubicFeetPerSecond, 9);
        Assert.Equal(1, sharing.Flow(1, 0).CubicFeetPerSecond, 9);
        Assert.Equal(FlowRate.Zero, sharing.Missing(0));
    }

    [Fact]
    public void A_shared_cap_binds_both_turnouts()
    {
        var sharing = new FlowSharing([Cfs(20), Cfs(16)], [(Cfs(30), [0, 1])], [([0], Cfs(20)), ([1], Cfs(16))]);
        Assert.Equal(6, sharing.Missing(0).CubicFeetPerSecond + sharing.Missing(1).CubicFeetPerSecond, 9);
    }

    [Fact]
    public void What_is_given_is_the_least_cut()
    {
        Gen.Select(Gen.Int[0, 8].Array[3], Gen.Select(Gen.Int[1, 7], Gen.Int[0, 9]).Array[1, 5], Gen.Int[0, 12]).Sample((given, wants, cap) =>
        {
            var fields = wants.Select(w => (Sources: Enumerable.Range(0, 3).Where(s => (w.Item1 >> s & 1) == 1).ToImmutableArray(), Want: Cfs(w.Item2))).ToImmutableArray();
            var sharing = new FlowSharing([.. given.Select(g => Cfs(g))], [(Cfs(cap), [0, 1])], fields);
            var served = wants.Sum(w => w.Item2) - Enumerable.Range(0, wants.Length).Sum(f => sharing.Missing(f).CubicFeetPerSecond);
            Assert.Equal(LeastCut(given, wants, cap), served, 6);
            for (var s = 0; s < 3; s++) Assert.True(Enumerable.Range(0, wants.Length).Sum(f => sharing.Flow(f, s).CubicFeetPerSecond) <= given[s] + 1e-6);
        });
    }

    // For each set of fields that is served in full reach, all their sources must be cut, singly or by the shared cap.
    private static double LeastCut(int[] given, (int Mask, int Want)[] wants, int cap)
    {
        var least = double.MaxValue;
        for (var reach = 0; reach < 8; reach++)
        {
            var wanted = wants.Sum(w => (w.Mask & ~reach) == 0 ? 0 : w.Want);
            double pair = ((reach & 1) == 0 ? 0 : given[0]) + ((reach & 2) == 0 ? 0 : given[1]);
            least = Math.Min(least, wanted + Math.Min(pair, cap) + ((reach & 4) == 0 ? 0 : given[2]));
        }

        return least;
    }

    private static FlowRate Cfs(double value) => FlowRate.FromCubicFeetPerSecond(value);
}
