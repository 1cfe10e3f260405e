using Watersown.Growth;
using Watersown.Schedule;
using Watersown.Season.Crop;
using Watersown.Seed;
using Watersown.Weather;

namespace Watersown.Season;

/// <summary>Saturday 25 July: three nights of 55 °F are forecast, and the intermediate fields R1 to R3 head in ten to fourteen days.</summary>
public sealed class SeasonStagesTests
{
    private static readonly DateTimeOffset Saturday = new(2026, 7, 25, 5, 0, 0, TimeSpan.FromHours(-7));

    private static readonly string[] Fields = ["R1", "R2", "R3"];

    // Warmth above 50 °F a day: April 10, May 16.5, June 23.5, July 27, August 25.5.
    private static readonly FarmNormals Normals = new([.. new[] { (4, 60), (5, 66.5), (6, 73.5), (7, 77), (8, 75.5), (9, 72) }.Select(n => new MonthNormal(n.Item1, Temperature.FromFahrenheit(n.Item2), Temperature.FromFahrenheit(n.Item2)))], "typed");

    private static SeasonState Ground(DateOnly[] sown)
    {
        var state = PlannedMorning.State();
        return state with
        {
            Now = Saturday,
            Warmth = [],
            Normals = Normals,
            Evaporation = DepthRate.FromInchesPerDay(0.3),
            Lots = [new SeedLot("I-1 lot 1", "I-1") { Maturity = Maturity.Intermediate }],
            Farm = state.Farm with { Sources = [.. state.Farm.Sources.Select(s => s.Code == "SP-1" ? s with { Running = FlowRate.FromCubicFeetPerSecond(14) } : s)] },
            Fields =
            [
                .. state.Fields.Select(f => Array.IndexOf(Fields, f.Code) is >= 0 and var i
                    ? f with { Stage = FieldStage.Sown, SownAt = new DateTimeOffset(sown[i].Year, sown[i].Month, sown[i].Day, 6, 0, 0, state.Offset), Depth = WaterDepth.FromInches(3) }
                    : f with { SownAt = null, Stage = f.Code[0] == 'R' ? FieldStage.Full : FieldStage.Planed, Depth = WaterDepth.FromInches(3), ChecksWet = null }),
            ],
        };
    }

    private static SeasonBook Book(params MarkFact[] facts) => SeasonFold.Fold(Ground([new(2026, 4, 30), new(2026, 5, 1), new(2026, 5, 5)]), Logbook.Empty.With([.. facts.Select((f, i) => Marks.At(i + 1, Saturday.AddMinutes(i), f))]), Saturday.AddHours(1));

    [Fact]
    public void The_fields_head_ten_to_fourteen_days_after_that_Saturday()
    {
        var stages = SeasonStages.All(Book());
        Assert.Equal(Fields, stages.Select(s => s.Field.Code));
        Assert.All(stages, s => Assert.InRange(s.Calendar.Of(CropStage.Heading)!.Day.DayNumber - new DateOnly(2026, 7, 25).DayNumber, 10, 14));
        Assert.All(stages, s => Assert.Equal((TargetBasis.Usual, false), (s.Targets.Basis, s.ClassUnknown)));
    }

    // 433 ac × 5 in / 12 = 180.4 ac-ft; 14 cfs less 12.66 to hold leave 1.34, 67.7 days.
    [Fact]
    public void Their_deep_water_cannot_be_had_in_three_days_and_begins_at_panicle_initiation_another_time()
    {
        var raise = Assert.Single(TenderRaises.Of(Book(), plan: null, Saturday.AddHours(1).AddDays(3)));
        Assert.Equal(("SP-1", 433), (raise.Source.Code, Math.Round(raise.Land.Acres, 6)));
        Assert.Equal(180.4, raise.Raise.Raise.Volume.AcreFeet, 0.05);
        Assert.InRange(raise.Raise.Raise.Time!.Value.TotalDays, 60, 70);
        Assert.False(raise.Raise.Raise.InTime);
        Assert.Equal("Tulehead", raise.Raise.Raise.Parts[0].Land.Name);
        // 1,180 °F·d: 10 of April, 511.5 of May and 28.02 June days of R1.
        Assert.Equal(new DateOnly(2026, 6, 30), raise.Initiation);
    }

    [Fact]
    public void Cold_nights_told_ahead_are_counted_where_they_may_be_tender()
    {
        MarkFact Night(int day, double low) => new WarmthRead(new DateOnly(2026, 7, day), Temperature.FromFahrenheit(88), Temperature.FromFahrenheit(low));
        var book = Book(Night(25, 55), Night(26, 54), Night(27, 55), Night(28, 60));
        Assert.Equal([25, 26, 27], TenderRaises.ColdNights(book, SeasonStages.Of(book, "R1")!.Tender!).Select(d => d.Day));
    }

    [Fact]
    public void A_stage_seen_in_the_field_beats_the_count_and_a_target_of_the_farm_the_usual_one()
    {
        var seen = SeasonStages.Of(Book(new StageSeen("R1", new StagePoint(CropStage.Heading))), "R1")!;
        Assert.Equal((new DateOnly(2026, 7, 25), true), (seen.Calendar.Of(CropStage.Heading)!.Day, seen.Calendar.Of(CropStage.Heading)!.Seen));
        var own = SeasonStages.Of(Book(new StageTargetsSet(Maturity.Intermediate, StageTargets.Early)), "R1")!;
        Assert.Equal(TargetBasis.Farm, own.Targets.Basis);
        Assert.True(own.Calendar.Of(CropStage.Heading)!.Day < SeasonStages.Of(Book(), "R1")!.Calendar.Of(CropStage.Heading)!.Day);
    }

    [Fact]
    public void A_variety_that_no_lot_tells_of_is_said_to_be_taken_as_early()
    {
        var state = Ground([new(2026, 4, 30), new(2026, 5, 1), new(2026, 5, 5)]) with { Lots = [] };
        var stages = SeasonStages.Of(SeasonFold.Fold(state, Logbook.Empty, Saturday), "R1")!;
        Assert.Equal((true, TargetBasis.Borrowed), (stages.ClassUnknown, stages.Targets.Basis));
        foreach (var words in new[] { Watersown.Wording.Words.English, Watersown.Wording.Words.Spanish }) Assert.Equal(words.Crop.TargetsUnknown, StageSpeech.Basis(stages.Targets, stages.ClassUnknown, words.Crop));
    }

    [Fact]
    public void A_field_that_is_not_sown_can_be_asked_about()
    {
        var book = Book();
        Assert.Null(SeasonStages.Of(book, "S7"));
        var early = SeasonStages.If(book, book.State.Farm.Field("S7"), new DateOnly(2026, 6, 4));
        // 634.5 of June, 837 of July, 438.5 of August: 17.2 days.
        Assert.Equal(new DateOnly(2026, 8, 19), early.Calendar.Of(CropStage.Heading)!.Day);
    }

    [Fact]
    public void Targets_that_do_not_rise_are_refused_and_a_flood_colder_than_its_low()
    {
        var wrong = Marks.At(1, Saturday, new StageTargetsSet(Maturity.Early, new StageTargets(DegreeDays.FromFahrenheit(2000), DegreeDays.FromFahrenheit(1900), DegreeDays.FromFahrenheit(2500))));
        Assert.Contains(MarkChecks.Check(wrong, ground: null, Saturday), p => p.Kind == CropProblems.TargetsNotRising);
        var flood = Marks.At(2, Saturday, new FloodWarmth("R1", new DateOnly(2026, 7, 24), Temperature.FromFahrenheit(60), Temperature.FromFahrenheit(70)));
        Assert.Contains(MarkChecks.Check(flood, ground: null, Saturday), p => p.Kind == StateProblems.LowAboveHigh);
    }
}
