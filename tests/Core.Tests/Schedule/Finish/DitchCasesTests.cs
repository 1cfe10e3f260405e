using Watersown.Land;
using Watersown.Season.Boards;

namespace Watersown.Schedule.Finish;

/// <summary>
/// The wells' block by the grower's own sums: on the small well alone never, stopping near 263 ac at 3.75 cfs to hold; both joined give
/// 7.4 against 7.44 and are short by 0.04; with 4.0 of tailwater 23.7 days.
/// </summary>
public sealed class DitchCasesTests
{
    private static SeasonState State
    {
        get
        {
            var state = PlannedMorning.State();
            return state with
            {
                Farm = state.Farm with
                {
                    Sources = [.. state.Farm.Sources, new WaterSource("TR-1", WaterSourceKind.Tailwater, PlannedMorning.Cfs(4)) { Needs = new TailwaterNeed(["N1", "N2", "N3", "N4"], Area.FromAcres(400)) }],
                    SharedCaps = [new SharedCap("both turnouts", ["NT-1", "ST-2"], PlannedMorning.Cfs(30))],
                    Fields = [.. state.Farm.Fields.Select(f => f.Code[0] == 'H' ? f with { Sources = [f.Code[1] < '4' ? "W-1" : "W-2", "TR-1"] } : f)],
                },
            };
        }
    }

    [Fact]
    public void The_wells_are_held_against_each_other_alone_joined_and_with_what_comes_back()
    {
        var cases = DitchCases.Of(State, ["W-1", "W-2", "TR-1"]);
        Assert.Equal([DitchWay.Alone, DitchWay.Alone, DitchWay.Together, DitchWay.WithReturn], cases.Select(c => c.Way));
        var small = cases[1].Block;
        Assert.Null(small.Time);
        Assert.Equal(3.75, small.Holds.CubicFeetPerSecond, 0.005);
        Assert.Equal(263, small.Stops!.Value.Acres, 0.5);
        Assert.Null(cases[2].Block.Time);
        Assert.Equal((7.4, 0.04), (Math.Round(cases[2].Block.Flow.CubicFeetPerSecond, 3), Math.Round(cases[2].Block.Short!.Value.CubicFeetPerSecond, 2)));
        Assert.Equal(23.7, cases[3].Block.Time!.Value.TotalDays, 0.05);
    }

    [Fact]
    public void Tailwater_that_comes_later_fills_later_and_what_waits_forever_is_no_case()
    {
        var state = State;
        // 366 ac are full; the plan has Two Gates full on the ninth at 14:41, and with its 118 the 400 are there.
        var filled = PlannedMorning.At(9, 14, 41);
        var cases = DitchCases.Of(state, ["W-1", "W-2", "TR-1"], PlannedTasks.Plan(state));
        var later = Assert.Single(cases, c => c.Way == DitchWay.ReturnLater);
        Assert.Equal(filled, later.From);
        // A day and a half at 7.4 cover fewer acres than at 11.4: it ends later, by no more than that time itself.
        var now = cases[^1].Block.Time!.Value;
        Assert.InRange(later.Block.Time!.Value, now + TimeSpan.FromHours(1), now + (filled - state.Now));
    }

    [Fact]
    public void Turnouts_under_a_cap_give_no_more_together_than_it()
    {
        var cases = DitchCases.Of(State, ["NT-1", "ST-2"]);
        Assert.Equal([20, 16, 30], cases.Select(c => Math.Round(c.Block.Flow.CubicFeetPerSecond, 6)));
    }

    [Fact]
    public void The_picture_has_every_source_and_field_once_and_a_line_for_each_joint_return_and_cap()
    {
        var state = State;
        var picture = DitchPicture.Of(state, null);
        Assert.Equal(state.Farm.Sources.Select(s => s.Code), picture.Heads.Select(h => h.Balance.Source.Code));
        Assert.Equal(state.Farm.Fields.Select(f => f.Code).Order(StringComparer.Ordinal), picture.Plots.Select(p => p.Field.Code).Order(StringComparer.Ordinal));
        int Count(DitchLineKind kind) => picture.Lines.Count(l => l.Kind == kind);
        Assert.Equal((0, 2, 1, 1), (Count(DitchLineKind.Joint), Count(DitchLineKind.Return), Count(DitchLineKind.Drains), Count(DitchLineKind.Cap)));
        Assert.All(picture.Lines.SelectMany(l => l.Points), p => Assert.True(p.X is >= 0 and <= 370 && p.Y >= 0 && p.Y <= picture.Height));
        Assert.All(picture.Heads.Zip(picture.Heads.Skip(1)), pair => Assert.True(pair.Second.Top >= pair.First.Top + DitchPicture.BoxHeight));
    }
}
