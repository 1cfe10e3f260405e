using Watersown.Schedule;

namespace Watersown.Season.Learning;

/// <summary>The farm of Friday 8 May: Two Gates (N4) fills from the north turnout at 14 cfs with four of six checks wet, Schoolhouse (N5) is dry.</summary>
public sealed class FieldLearningTests
{
    private static readonly DateTimeOffset Six = PlannedMorning.At(8, 6);

    // Hand sums of the closed form at the farm's figures, from 04:50: N4 at 14 cfs Sat 14:41, S3 at 16 cfs Sat 18:18, R5 at 14 cfs Sun 04:03.
    // Here the fields are as of 04:30, twenty minutes sooner. Two gates fill two places at once, which loses a little more.
    [Theory]
    [InlineData("N4", 9, 14, 21, 25)]
    [InlineData("S3", 9, 17, 58, 2)]
    [InlineData("R5", 10, 3, 43, 2)]
    public void Before_any_mark_a_field_is_full_when_the_farm_says(string code, int day, int hour, int minute, int within)
    {
        var told = Fold(Six).Field(code).Learning!;
        Assert.True(told.Filling);
        Assert.Null(told.Learned);
        Assert.InRange(Math.Abs((told.Full!.Middle - PlannedMorning.At(day, hour, minute)).TotalMinutes), 0, within);
        Assert.True(told.Full.Low < told.Full.Middle && told.Full.Middle < told.Full.High);
    }

    [Fact]
    public void Every_mark_is_counted_and_brings_the_ends_nearer()
    {
        var now = PlannedMorning.At(9, 12);
        double Hours(SeasonBook book) => (book.Field("R5").Learning!.Full is { High: { } high } full ? high - full.Low : TimeSpan.FromDays(30)).TotalHours;
        var (none, one) = (Fold(now), Fold(now, Wet(1, "R5", 3, PlannedMorning.At(8, 4, 40))));
        var two = Fold(now, Wet(1, "R5", 3, PlannedMorning.At(8, 4, 40)), Wet(2, "R5", 4, PlannedMorning.At(9, 4)));
        Assert.True(Hours(one) < Hours(none));
        Assert.True(Hours(two) < Hours(one));
        Assert.Equal((1, 2), (one.State.Season("R5").Learned!.Marks, two.State.Season("R5").Learned!.Marks));
        Assert.Equal((1, PlannedMorning.At(9, 4)), (two.State.Season("R5").Learned!.Floods, two.State.Season("R5").Learned!.Newest));
    }

    [Fact]
    public void Plans_and_pages_take_what_was_learned_before_what_the_farm_says()
    {
        var book = Flooded(2026, hoursEach: 11);
        var learned = book.State.Season("N5").Learned!;
        Assert.True(learned.Fill.Middle < WaterDepth.FromFeet(0.5));
        Assert.Equal(learned.Fill.Middle, FieldWater.Of(book.State, "N5").Job.Fill);
        Assert.Equal((book.State.Evaporation + learned.Seepage.Middle).InchesPerDay, FieldWater.Of(book.State, "N5").Job.Loss.InchesPerDay, 1e-12);
        Assert.Equal(WaterDepth.FromFeet(0.5), FieldWater.Of(book.State, "N1").Job.Fill);
    }

    [Fact]
    public void The_next_spring_begins_with_what_this_one_taught()
    {
        var first = Flooded(2026, hoursEach: 11).State.Season("N5").Learned!;
        var next = Fold(new DateTimeOffset(2027, 5, 20, 0, 0, 0, TimeSpan.FromHours(-7)), [.. Flood(2026, 11), .. Flood(2027, 11)]);
        var told = next.State.Season("N5").Learned!;
        Assert.Equal(2, told.Floods);
        Assert.Equal(2 * first.Marks, told.Marks);
        Assert.True(told.Fill.Middle < first.Fill.Middle);
        Assert.True(told.Fill.High / told.Fill.Low < first.Fill.High / first.Fill.Low);
    }

    [Fact]
    public void What_is_only_guessed_counts_less()
    {
        double Fill(Sureness sure) => Fold(PlannedMorning.At(20, 0), [.. Flood(2026, 11).Select(m => m with { Sure = sure })]).State.Season("N5").Learned!.Fill.Middle.Feet;
        Assert.True(Fill(Sureness.Measured) < Fill(Sureness.Told));
        Assert.True(Fill(Sureness.Told) < Fill(Sureness.Guessed));
    }

    [Fact]
    public void A_mark_that_does_not_agree_is_named_and_not_counted()
    {
        ImmutableArray<Mark> flood = Flood(2026, 13);
        var wild = flood[2] with { Happened = flood[2].Happened.AddHours(22) };
        var (calm, odd) = (Fold(PlannedMorning.At(20, 0), [.. flood]), Fold(PlannedMorning.At(20, 0), [.. flood.Select(m => m.Id == wild.Id ? wild : m)]));
        Assert.Equal([wild.Id], odd.Field("N5").Learning!.Marks.Where(m => m.Verdict.Disagrees).Select(m => m.Mark.Id));
        Assert.Equal(calm.State.Season("N5").Learned!.Marks - 1, odd.State.Season("N5").Learned!.Marks);
        Assert.Equal(1, odd.State.Season("N5").Learned!.Fill.Middle / calm.State.Season("N5").Learned!.Fill.Middle, 0.05);
        Assert.Contains("does not agree with the rest", Wording.Say.Working(odd.Field("N5").Learning!.Working), StringComparison.Ordinal);
    }

    [Fact]
    public void A_flow_read_at_the_gate_is_what_comes_from_then_on()
    {
        var gate = Marks.At(1, Six, new FlowSeen("NT-1", PlannedMorning.Cfs(9), "weir"));
        var (plain, read) = (Fold(Six.AddHours(1)).Field("N4").Learning!, Fold(Six.AddHours(1), gate).Field("N4").Learning!);
        Assert.True(read.Full!.Middle > plain.Full!.Middle.AddHours(12));
        Assert.Equal(Water.Learning.SightingKind.Flow, SightingOf(read));
        Assert.True(read.Newest.Inflow.High < plain.Newest.Inflow.High);
    }

    [Fact]
    public void A_stopped_source_teaches_the_seepage_by_the_stick()
    {
        // 2.0 in in four days at 0.22 in a day to the air: 0.28 a day into the ground, where the farm says 0.06.
        var book = Fold(PlannedMorning.At(14, 0),
            Marks.At(1, Six, new SourceSwitched("SP-1", Up: false)),
            Marks.At(2, Six.AddHours(1), new DepthRead("R1", 2, WaterDepth.FromInches(4))),
            Marks.At(3, Six.AddHours(97), new DepthRead("R1", 2, WaterDepth.FromInches(2))));
        var learned = book.State.Season("R1").Learned!;
        Assert.InRange(learned.Seepage.Middle.InchesPerDay, 0.09, 0.28);
        Assert.Equal(0.55, learned.Fill.Middle.Feet, 1e-6);
        Assert.Null(Fold(PlannedMorning.At(14, 0), book.Log.Marks[1], book.Log.Marks[2]).State.Season("R1").Learned);
    }

    [Fact]
    public void Ground_flooded_again_tells_nothing_of_what_dry_ground_takes()
    {
        ImmutableArray<Mark> again = [.. Flood(2026, 11).Select((m, i) => i == 0 ? m with { Fact = new CheckWater("N5", 1, WaterSeen.Reflooded) } : m)];
        Assert.Null(Fold(PlannedMorning.At(20, 0), [.. again]).State.Season("N5").Learned);
    }

    [Fact]
    public void The_sum_shows_every_mark_with_who_and_when()
    {
        var told = Flooded(2026, 12).Field("N5").Learning!;
        foreach (var mark in told.Marks) Assert.Contains(told.Working.Lines, l => l.At == mark.Mark.Happened && l.From == mark.Mark.By);
        Assert.Contains(told.Working.Lines, l => l.Symbol == "V" && l.Source is not null && l.Formula is not null);
    }

    private static Water.Learning.SightingKind SightingOf(FieldLearning told) => Assert.Single(told.Marks).Verdict.Sighting.Kind;

    // First water on 10 May at six, then the next of four checks wet every so many hours, all of it full after four.
    private static ImmutableArray<Mark> Flood(int year, double hoursEach)
    {
        var start = new DateTimeOffset(year, 5, 10, 6, 0, 0, TimeSpan.FromHours(-7));
        return
        [
            .. Enumerable.Range(1, 4).Select(c => Wet((year * 10) + c, "N5", c, start.AddHours(hoursEach * (c - 1)))),
            Marks.At((year * 10) + 5, start.AddHours(hoursEach * 4), new StageReached("N5", FieldStage.Full)),
        ];
    }

    private static SeasonBook Flooded(int year, double hoursEach) => Fold(PlannedMorning.At(20, 0), [.. Flood(year, hoursEach)]);

    private static Mark Wet(int id, string field, int check, DateTimeOffset at) => Marks.At(id, at, new CheckWater(field, check, WaterSeen.Wet));

    // Two Gates is full on 9 May, so that Schoolhouse fills alone.
    private static SeasonBook Fold(DateTimeOffset now, params Mark[] marks) =>
        SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With([.. marks, Marks.At(9000, PlannedMorning.At(9, 15), new StageReached("N4", FieldStage.Full))]), now);
}
