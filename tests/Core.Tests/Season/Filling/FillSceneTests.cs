using Watersown.Schedule;
using Watersown.Water;

namespace Watersown.Season.Filling;

/// <summary>How a field goes on filling, as it is drawn.</summary>
public sealed class FillSceneTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.Now;

    [Fact]
    public void The_checks_are_done_when_the_closed_form_of_the_whole_field_says_so()
    {
        // A12: t = (V / m) ln((S − m A0) / (S − m (A0 + A))), a water balance; Two Gates with four of six checks wet at 14 cfs.
        var scene = Scene("N4", FlowRate.FromCubicFeetPerSecond(14));
        var job = FieldWater.Of(PlannedMorning.State(), "N4").Job;
        var closed = Ponding.FillTime(job, FlowRate.FromCubicFeetPerSecond(14))!.Value;
        Assert.InRange((scene.FullAt!.Value - Now) / closed, 0.99, 1.01);
        Assert.Equal(6, scene.Checks.Length);
        Assert.InRange(Math.Abs(scene.Residual.CubicMeters), 0, 1e-3);
    }

    [Fact]
    public void Water_comes_to_each_check_after_the_one_above_and_never_leaves_its_ground_again()
    {
        var scene = Scene("N4", FlowRate.FromCubicFeetPerSecond(8));
        var due = scene.Checks.Where(c => c.WetAt is not null).Select(c => c.WetAt!.Value).ToList();
        Assert.Equal(2, due.Count);
        Assert.True(due[0] < due[1]);
        foreach (var check in scene.Checks)
        {
            for (var h = 0; h < scene.Reach.TotalHours; h++) Assert.True(check.After(TimeSpan.FromHours(h + 1)).Covered.Share >= check.After(TimeSpan.FromHours(h)).Covered.Share - 1e-12);
        }
    }

    [Fact]
    public void Between_two_hours_it_stands_between_them()
    {
        var check = Scene("N4", FlowRate.FromCubicFeetPerSecond(8)).Checks[4];
        for (var m = 0; m < 60 * 40; m += 17)
        {
            var (low, at, high) = (check.After(TimeSpan.FromHours(m / 60)), check.After(TimeSpan.FromMinutes(m)), check.After(TimeSpan.FromHours((m / 60) + 1)));
            Assert.InRange(at.Covered.Share, low.Covered.Share - 1e-12, high.Covered.Share + 1e-12);
        }
    }

    [Fact]
    public void A_flow_that_its_covered_land_takes_up_never_fills_it_and_says_so()
    {
        // 118 ac losing 0.32 in a day take 118 × 0.32 / 12 = 3.147 ac-ft a day = 1.587 cfs.
        var scene = Scene("N4", FlowRate.FromCubicFeetPerSecond(1.55));
        Assert.Null(scene.FullAt);
        Assert.Contains(scene.Checks, c => c.Never);
        Assert.NotNull(Scene("N4", FlowRate.FromCubicFeetPerSecond(1.8)).FullAt);
    }

    [Fact]
    public void Without_a_flow_tried_it_gets_what_its_source_has_left_and_its_own_holding()
    {
        var (state, field) = (PlannedMorning.State(), PlannedMorning.State().Farm.Field("N4"));
        var scene = FillScenes.Of(Book(), PlannedMorning.Plan(), field);
        var balance = Boards.SourceBalances.Of(state, PlannedMorning.Plan()).Single(b => b.Source.Code == "NT-1");
        var own = FieldWater.Of(state, "N4").HoldingNow;
        Assert.Equal((balance.Gives!.Value - balance.Holds + own).CubicFeetPerSecond, scene.Flow.CubicFeetPerSecond, 9);
        // The grower's own sum at 14 cfs: 1.41 days, Saturday 14:41.
        Assert.InRange((scene.FullAt!.Value - new DateTimeOffset(2026, 5, 9, 14, 41, 0, TimeSpan.FromHours(-7))).TotalMinutes, -25, 25);
        Assert.Equal("NT-1", scene.Source);
        Assert.False(scene.Working.Lines.IsEmpty);
    }

    [Fact]
    public void What_was_seen_at_the_stick_stands_where_and_when_it_was_seen()
    {
        var book = Book(Marks.At(1, Now.AddHours(-20), new CheckWater("N4", 3, WaterSeen.Wet)), Marks.At(2, Now.AddHours(-5), new DepthRead("N4", 3, WaterDepth.FromInches(1.5))));
        var scene = FillScenes.Of(book, PlannedMorning.Plan(), book.State.Farm.Field("N4"));
        var third = scene.Checks[2];
        Assert.Equal(Now.AddHours(-20), third.SeenWet);
        var paper = FillPaper.Of(scene, third);
        Assert.Equal(paper.Paper.At(Now.AddHours(-5)), Assert.Single(paper.Readings).X);
        Assert.Equal(paper.Paper.Ground, paper.Seen[0].Y);
        Assert.True(paper.Seen.Zip(paper.Seen.Skip(1)).All(p => p.First.X <= p.Second.X));
    }

    [Fact]
    public void The_cut_keeps_water_within_its_check_and_boards_above_the_ground()
    {
        var scene = Scene("N4", FlowRate.FromCubicFeetPerSecond(14));
        for (var h = 0.0; h <= scene.Reach.TotalHours; h += 2.5)
        {
            var section = FillSection.Of(scene, Now.AddHours(h));
            Assert.All(section.Steps, s => Assert.True(s.Left <= s.WaterTo && s.WaterTo <= s.Right + 0.01 && s.Level <= s.Ground && s.Boards < s.Ground && s.Level >= 0, s.ToString()));
            // A step down from each to the next, side by side without a gap.
            Assert.All(section.Steps.Zip(section.Steps.Skip(1)), p => Assert.True(p.First.Ground < p.Second.Ground && Math.Abs(p.First.Right - p.Second.Left) < 0.011));
        }
    }

    [Fact]
    public void A_source_over_a_week_stacks_all_that_is_given_and_shows_what_was_read()
    {
        var book = Book(Marks.At(1, Now.AddHours(-7), new FlowSeen("NT-1", FlowRate.FromCubicFeetPerSecond(13.5), null)));
        var papers = SourcePaper.Of(book, PlannedMorning.Plan());
        Assert.Equal(book.State.Farm.Sources.Select(s => s.Code), papers.Select(p => p.Source.Code));
        var north = papers.Single(p => p.Source.Code == "NT-1");
        Assert.Equal(north.Paper.At(Now.AddHours(-7)), Assert.Single(north.Read).X);
        Assert.All(north.Waters, w => Assert.True(w.Box.Y >= 0 && w.Box.Y + w.Box.Height <= north.Paper.Ground + 0.02));
        Assert.NotEmpty(north.Given);
    }

    [Fact]
    public void A_box_of_four_feet_passes_little_at_the_depth_for_seed_and_stands_as_deep_as_the_handbook_says()
    {
        // Bureau of Reclamation, Water Measurement Manual, ch. 7 (Francis): 4 ft contracted, 5 cfs at 6.36 in of head, 8 cfs at 8.76 in; 2 in pass 0.9 cfs.
        var scene = Scene("N4", FlowRate.FromCubicFeetPerSecond(8));
        var boxes = BoxAdvice.Of(PlannedMorning.State(), scene);
        Assert.Equal([1, 2, 3, 4, 5], boxes.Select(b => b.Check));
        Assert.All(boxes, b => Assert.Equal(0.9, b.Most.CubicFeetPerSecond, 0.02));
        // Two inlets: half of it comes to the first check, which keeps 0.22 in a day to the air and 0.10 into clay; 3 cfs stand at 4.50 in, 5 cfs at 6.36.
        Assert.Equal(4 - (scene.Checks[0].Land.Acres * 0.32 / 12 / 1.983471), boxes[0].Flow.CubicFeetPerSecond, 0.002);
        Assert.InRange(boxes[0].Open!.Value.Inches, 4.50, 6.36);
        Assert.Null(boxes[0].Boards);
        // The second inlet comes to check 4.
        Assert.True(boxes[0].Flow > boxes[1].Flow && boxes[1].Flow > boxes[2].Flow && boxes[3].Flow > boxes[2].Flow && boxes[3].Flow > boxes[4].Flow);
        var little = BoxAdvice.Of(PlannedMorning.State(), Scene("N4", FlowRate.FromCubicFeetPerSecond(1.6)))[0];
        Assert.InRange(little.Boards!.Value.Inches, 0.1, 1.9);
    }

    private static SeasonBook Book(params Mark[] marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(marks), Now);

    private static FillScene Scene(string field, FlowRate flow) => FillScenes.Of(Book(), PlannedMorning.Plan(), PlannedMorning.State().Farm.Field(field), flow);
}
