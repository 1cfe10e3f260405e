using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

public sealed class FloodLinearStepTests
{
    // dh/dt = −c L h^1.5 / A, so h = (h0^−0.5 + c L t / 2A)^−2: by hand. Half the step leaves an eighth of the error: third order.
    [Fact]
    public void Half_the_step_leaves_an_eighth_of_the_error()
    {
        const double Start = 0.10, Width = 1.2, Ground = 80_000, Seconds = 200_000;
        var truth = Math.Pow(Math.Pow(Start, -0.5) + (3.33 * Math.Sqrt(0.3048) * Width * Seconds / (2 * Ground)), -2);
        var errors = ((int[])[5, 10, 20, 40]).Select(steps => Math.Abs(Pond(Sill(Start, Width, Ground), steps, Seconds) - truth)).ToList();
        Assert.All(errors.Zip(errors.Skip(1)), e => Assert.InRange(Math.Log2(e.First / e.Second), 2.7, 3.4));
        Assert.InRange(errors[^1], 0, 2e-6);
    }

    // A sheet over 10 km of boards runs out in a minute or so; at 0.2 m³/s it stands Francis's head over them: 0.2 = c L h^1.5.
    [Fact]
    public void A_step_a_hundred_times_too_long_for_plain_ones_stays_on_the_sheet()
    {
        var sill = Sill(0.0006, 10_000, 80_000);
        var network = sill with { Inlets = [new FloodInlet("source", 0, [new FlowStep(TimeSpan.Zero, FlowRate.FromCubicMetersPerSecond(0.2))])] };
        var head = Math.Pow(0.2 / (3.33 * Math.Sqrt(0.3048) * 10_000), 2.0 / 3);
        Assert.Equal(head * 1000, Pond(network, 6, 6 * 7200) * 1000, 0.001);
    }

    [Fact]
    public void The_steps_of_a_thin_sheet_are_as_long_as_those_of_any_pond()
    {
        var run = Flooding.Run(Sheets(6), TimeSpan.FromDays(31));
        Assert.Equal(6, run.Checks.Count(c => c.Full is not null));
        // 372 steps of two hours are the least; plain ones would be some 20,000.
        Assert.InRange(run.Steps, 372, 900);
    }

    // A general solver of another library, at steps far below the time in which the sheet runs out.
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.05)]
    public void A_general_solver_comes_to_the_same_depths_over_sheets(double drop)
    {
        var network = Sheets(4, drop);
        var (general, run) = (GeneralFlood.Depths(network, TimeSpan.FromHours(60), 10), Flooding.Run(network, TimeSpan.FromHours(60)));
        for (var i = 0; i < general.Length; i++) Assert.Equal(general[i] * 1000, run.Checks[i].Depth.Millimeters, 0.01);
        Assert.True(run.Checks[3].Depth > WaterDepth.Zero, "water never came to the last check");
    }

    [Fact]
    public void Half_the_step_changes_nothing_that_prints()
    {
        var network = Sheets(8);
        var coarse = Flooding.Run(network, TimeSpan.FromDays(20));
        foreach (var finer in (double[])[5e-6 / 8, 5e-6 / 1000])
        {
            foreach (var (a, b) in coarse.Checks.Zip(Flooding.Run(network, TimeSpan.FromDays(20), new FloodOptions { StepError = WaterDepth.FromMeters(finer) }).Checks))
            {
                Assert.Equal(b.Full!.Value.TotalSeconds, a.Full!.Value.TotalSeconds, 10.0);
                Assert.Equal(b.Depth.Millimeters, a.Depth.Millimeters, 0.01);
                foreach (var (x, y) in a.Depths.Zip(b.Depths)) Assert.Equal(y.Depth.Millimeters, x.Depth.Millimeters, 0.05);
            }
        }
    }

    [Fact]
    public void Water_over_a_season_adds_up_to_a_litre()
    {
        var balance = Flooding.Run(Sheets(12), TimeSpan.FromDays(150)).Balance;
        Assert.Equal(0, balance.Residual.CubicMeters, 1e-3);
        Assert.True(balance.In.CubicMeters > 1e6);
    }

    // Checks of eight hectares in a row under boards of ten kilometers, as boards are laid that nobody has told of.
    internal static FloodNetwork Sheets(int count, double drop = 0.2)
    {
        var row = FloodingTests.Row(count, DepthRate.FromInchesPerDay(0.3), 33_000, 12);
        return row with { Air = [new FloodAir(TimeSpan.Zero, DepthRate.Zero, DepthRate.Zero)], Checks = [.. row.Checks.Select((c, i) => c with { Ground = WaterDepth.FromFeet(-drop * i) })] };
    }

    private static FloodNetwork Sill(double depth, double width, double ground) => new()
    {
        Checks = [new FloodCheck("ck", Area.FromSquareMeters(ground), WaterDepth.Zero, WaterDepth.FromMeters(0.05)) { Covered = Fraction.One, Depth = WaterDepth.FromMeters(depth) }],
        Boxes = [new FloodBox("sill", 0, null, Length.FromMeters(width), WaterDepth.Zero) { Kind = WeirKind.Suppressed }],
    };

    private static double Pond(FloodNetwork network, int steps, double seconds)
    {
        var part = FloodParts.Of(network)[0];
        foreach (var change in part.Changes) part.Apply(change);
        var system = new FloodSystem(part);
        part.StartCovered.CopyTo(system.Covered, 0);
        var step = new FloodLinearStep(part, system, new FloodSlopes(part, system));
        var (held, after, rates) = ((double[])[.. part.StartHeld], new double[part.Count], new FloodFlows(part.Count, part.BoxFrom.Length));
        for (var i = 0; i < steps; i++)
        {
            system.Rates(held, new double[part.Count], rates);
            step.Slopes.At(held, rates);
            step.Try(seconds / steps, held, rates, after);
            (held, after) = (after, held);
        }

        return system.Pond(0, held[0]);
    }
}
