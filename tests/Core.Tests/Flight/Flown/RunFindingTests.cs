namespace Watersown.Flight.Flown;

public sealed class RunFindingTests
{
    private static readonly Length swath = Length.FromMeters(20);

    private static readonly SomeTrack track = new() { Lines = [10, 30, 50, 70, 90] };

    [Fact]
    public void A_told_gate_gives_runs_from_edge_to_edge()
    {
        var runs = track.Runs(track.Fixes(), swath);
        Assert.Equal(GateKnown.Told, runs.Gate);
        Assert.Equal(5, runs.Runs.Length);
        Assert.All(runs.Runs, r => Assert.Equal(800, r.Length.Meters, 0.5));
        Assert.Equal(50, runs.Runs[0].Speed!.Value.MetersPerSecond, 0.2);

        // V dt / 2 = 50 m/s × 0.2 s / 2
        Assert.Equal(5, runs.EndError!.Value.Meters, 0.05);
    }

    [Theory]
    [InlineData(0.9)]
    [InlineData(1.0)]
    [InlineData(1.1)]
    public void Between_two_places_the_gate_turns_at_the_edge(double every)
    {
        var runs = (track with { Every = every }).Runs((track with { Every = every }).Fixes(), swath);
        Assert.All(runs.Runs, r => Assert.Equal(800, r.Length.Meters, 0.5));
        Assert.Equal(25 * every, runs.EndError!.Value.Meters, 0.5);
    }

    [Fact]
    public void A_gate_that_opens_early_and_shuts_late_is_believed()
    {
        var late = track with { Field = SomeTrack.Box(0, 100, 100, 700) };
        var runs = late.Runs(track.Fixes(), swath);
        Assert.All(runs.Runs, r => Assert.Equal(800, r.Length.Meters, 10.5));
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(1)]
    public void Without_a_gate_runs_are_worked_out_over_the_field(double every)
    {
        var slow = track with { Every = every };
        var runs = slow.Runs(slow.Fixes(gate: false), swath);
        Assert.Equal(GateKnown.WorkedOut, runs.Gate);
        Assert.Equal(5, runs.Runs.Length);
        Assert.All(runs.Runs, r => Assert.Equal(800, r.Length.Meters, 0.5));
    }

    [Fact]
    public void Without_a_gate_or_time_runs_are_worked_out_all_the_same()
    {
        var runs = track.Runs(track.Fixes(gate: false).Select(f => f with { Seconds = double.NaN }), swath);
        Assert.Equal(5, runs.Runs.Length);
        Assert.All(runs.Runs, r => Assert.Equal(800, r.Length.Meters, 0.5));
        Assert.Null(runs.EndError);
    }

    [Fact]
    public void A_turn_over_the_field_is_no_run()
    {
        var inside = track with { Field = SomeTrack.Box(0, 0, 100, 800), Beyond = 0, To = 600 };
        var runs = inside.Runs(inside.Fixes(gate: false), swath);
        Assert.Equal(5, runs.Runs.Length);

        // The ellipse of the turn starts out along the heading: some of it cannot be told from a pass.
        Assert.All(runs.Runs, r => Assert.InRange(r.Length.Meters, 590, 800));
    }

    [Fact]
    public void A_ferry_high_above_the_field_is_no_run()
    {
        var high = track.Fixes(gate: false).Select(f => f with { Seconds = f.Seconds + 2000, Height = 200, Begins = f.Seconds == SomeTrack.Morning });
        Assert.Equal(5, track.Runs(track.Fixes(gate: false).Concat(high), swath).Runs.Length);
    }

    [Fact]
    public void The_gate_is_taken_as_shut_over_a_hole_wider_than_the_swath()
    {
        var holed = track with { Field = SomeTrack.Box(0, 0, 100, 800, (20, 300, 60, 500)) };
        var runs = holed.Runs(holed.Fixes(gate: false), swath).Runs;

        // Lines at 30 and 50 lie with all of their swath over the hole; those at 10 and 70 do not.
        Assert.Equal([800, 300, 300, 300, 300, 800, 800], runs.Select(r => Math.Round(r.Length.Meters)));
    }

    [Fact]
    public void Straight_lines_drawn_apart_are_runs_from_end_to_end()
    {
        var drawn = track.Lines.SelectMany(l => new[] { (l, -50.0), (l, 850.0) }).Select((p, i) =>
        {
            var at = SomeTrack.Place(p.Item1, p.Item2);
            return new Fix(at.Latitude, at.Longitude) { Begins = i % 2 == 0 };
        });
        var runs = track.Runs(drawn, swath);
        Assert.Equal(GateKnown.DrawnApart, runs.Gate);
        Assert.Equal(5, runs.Runs.Length);
        Assert.All(runs.Runs, r => Assert.Equal(900, r.Length.Meters, 0.1));
    }

    [Fact]
    public void A_gate_that_never_changes_on_a_track_with_turns_says_nothing()
    {
        var runs = track.Runs(track.Fixes(gate: false).Select(f => f with { Gate = GateSign.Open }), swath);
        Assert.True(runs.SignalStuck);
        Assert.Equal(GateKnown.WorkedOut, runs.Gate);
        Assert.Equal(5, runs.Runs.Length);
    }

    [Fact]
    public void A_trembling_receiver_does_not_cut_runs_up()
    {
        var noise = new Random(7);
        double Aside() => (noise.NextDouble() + noise.NextDouble() + noise.NextDouble() - 1.5) * 2; // SD 1 m
        var trembling = track.Fixes(gate: false).Select(f => f with { Longitude = f.Longitude + (Aside() / 86_300), Latitude = f.Latitude + (Aside() / 111_000) }).ToList();
        var runs = track.Runs(trembling, swath).Runs;
        Assert.Equal(5, runs.Length);
        Assert.All(runs, r => Assert.InRange(r.Line[^1].North - r.Line[0].North is var d ? Math.Abs(d) : 0, 795, 805));
    }

    [Fact]
    public void Another_field_near_by_is_named_and_not_counted()
    {
        var beside = track.Fixes().Select(f => f with { Latitude = f.Latitude + 0.012, Seconds = f.Seconds + 3000 });
        var runs = track.Runs(track.Fixes().Concat(beside), swath);
        Assert.Equal((5, 5), (runs.Runs.Length, runs.Elsewhere.Length));
    }

    [Fact]
    public void Time_missing_on_a_pass_is_told_as_unknown_ground()
    {
        var fixes = track.Fixes().ToList();
        fixes.RemoveRange(30, 20);
        var runs = track.Runs(fixes, swath);
        Assert.Equal(6, runs.Runs.Length);
        Assert.Single(runs.Unknown);
    }
}
