namespace Watersown.Flight.Flown;

public sealed class PassFindingTests
{
    private static readonly Length swath = Length.FromMeters(20);

    private static readonly SomeTrack track = new() { Lines = [10, 30, 53, 70, 90] };

    private static FlownPasses Of(IEnumerable<Fix> fixes) => PassFinding.Of(track.Runs(fixes, swath).Runs, swath);

    [Fact]
    public void Passes_are_numbered_as_flown_and_told_there_and_back()
    {
        var passes = Of(track.Fixes());
        Assert.Equal([1, 2, 3, 4, 5], passes.All.Select(p => p.Number));
        Assert.Equal([0, 180, 0, 180, 0], passes.All.Select(p => Math.Round(p.Heading.Degrees) % 360));
        Assert.Equal(0, Math.Sin(passes.Heading!.Value.Radians), 4);
        Assert.All(passes.All, p => Assert.Equal(50, p.Speed!.Value.MetersPerSecond, 0.3));
    }

    [Fact]
    public void Spacing_is_between_mean_lines_of_neighbors()
    {
        var passes = Of(track.Fixes());
        Assert.Equal([20, 23, 17, 20], passes.Spacings.Select(s => Math.Round(s.Apart.Meters, 2)));
        Assert.Equal(20, passes.MeanSpacing!.Value.Meters, 0.001);

        // √((0 + 9 + 9 + 0) / 4)
        Assert.Equal(Math.Sqrt(4.5), passes.SpacingError(swath)!.Value.Meters, 0.005);
    }

    [Fact]
    public void Turning_the_field_turns_the_heading_alone()
    {
        var (sin, cos) = Math.SinCos(Math.PI / 6);
        var runs = track.Runs(track.Fixes(), swath).Runs;
        ImmutableArray<FlownRun> turned = [.. runs.Select(r => r with { Line = [.. r.Line.Select(p => new Shapes.PlanePoint((p.East * cos) + (p.North * sin), (p.North * cos) - (p.East * sin)))] })];
        var passes = PassFinding.Of(turned, swath);
        Assert.Equal(30, passes.Heading!.Value.Degrees, 1e-3);
        Assert.Equal([20, 23, 17, 20], passes.Spacings.Select(s => Math.Round(s.Apart.Meters, 2)));
    }

    [Fact]
    public void A_pass_broken_over_a_hole_is_one_pass()
    {
        var holed = track with { Field = SomeTrack.Box(0, 0, 100, 800, (15, 300, 70, 500)) };
        var runs = holed.Runs(holed.Fixes(gate: false), swath).Runs;
        Assert.Equal(7, runs.Length);
        Assert.Equal(5, PassFinding.Of(runs, swath).All.Length);
    }

    [Fact]
    public void A_run_that_turned_with_the_gate_open_is_two_passes()
    {
        ImmutableArray<Shapes.PlanePoint> there = [new(10, 0), new(10, 800), new(30, 800), new(30, 0)];
        var passes = PassFinding.Of([new FlownRun(there, 0, 33)], swath);
        Assert.Equal(2, passes.All.Length);
    }

    [Fact]
    public void How_far_a_line_strays_is_measured_between_its_places_too()
    {
        // A zigzag of 2 m either way strays by 2 / √3 over its whole way; its corners alone would say 2.
        ImmutableArray<Shapes.PlanePoint> zigzag = [.. Enumerable.Range(0, 81).Select(i => new Shapes.PlanePoint(i % 2 == 0 ? 2 : -2, i * 10.0))];
        Assert.Equal(2 / Math.Sqrt(3), Assert.Single(PassFinding.Of([new FlownRun(zigzag, 0, 16)], swath).All).Strays.Meters, 0.01);
    }

    [Fact]
    public void Nothing_flown_has_no_heading() => Assert.Null(PassFinding.Of([], swath).Heading);
}
