using Watersown.Flight;

namespace Watersown.Season.Troubles;

public sealed class SeedTroubleTests
{
    private static readonly DateTimeOffset Sunday = PlannedMorning.At(10, 5, 30);

    [Fact]
    public void The_short_ticket_of_R4_is_read_with_the_factor_known_before_it()
    {
        var reading = ScaleTickets.Read(Book(Short), PlannedMorning.Plan(), "1")!;
        Assert.Equal(["R4"], reading.Fields.Select(f => f.Code));
        Assert.Equal((970, 14480), (reading.Answer.Whole.Short, reading.Answer.Whole.Dry));
        Assert.Equal(1.25, reading.Answer.Seed.WetFactor);
        Assert.Equal(("1", 18100.0, "Tamsin Wexcombe"), (reading.Tickets[0].Trailer, Math.Round(reading.Tickets[0].Soaked.Pounds, 6), reading.Tickets[0].By));
    }

    [Fact]
    public void What_is_left_of_another_batch_is_shown_with_its_age_and_nothing_still_waited_for()
    {
        MarkFact[] saturday = [new BatchDrained("B-08"), new FieldSown("S2") { Batch = "B-08", Dry = DrySeed.FromPounds(12865) }];
        var log = Logbook.Empty.With(
        [
            Marks.At(1, PlannedMorning.At(8, 6, 30), saturday[0]), Marks.At(2, PlannedMorning.At(9, 7, 23), saturday[1]), Marks.At(3, PlannedMorning.At(10, 5, 20), new BatchInSoak("B-10") { Lot = "E-1 lot 2", Variety = "E-1", Dry = DrySeed.FromPounds(15450), MeantFor = ["R4"] }),
            Marks.At(4, PlannedMorning.At(10, 5, 25), new TrailerSeen("4") { Batch = "B-10", Field = "R4", Weighed = SoakedSeed.FromPounds(18100) }),
        ]);
        var book = SeasonFold.Fold(PlannedMorning.State(), log, Sunday);
        var spare = ScaleTickets.Read(book, PlannedMorning.Plan(), "4")!.Spare.Single(s => s.Batch == "B-08");
        Assert.Equal((2015.0, 47.0), (Math.Round(spare.Dry.Pounds, 6), spare.OffWater.TotalHours));
    }

    [Fact]
    public void A_trailer_that_nobody_weighed_or_placed_gives_no_answer_and_other_seed_needs_its_own_ticket()
    {
        Assert.Null(ScaleTickets.Read(Book(), PlannedMorning.Plan(), "1"));
        Assert.Null(ScaleTickets.Read(Book(new TrailerSeen("9") { Weighed = SoakedSeed.FromPounds(18100) }), null, "9"));
        Assert.Null(ScaleTickets.Of(Book(Short with { Batch = "B-07a" }, new TrailerSeen("1") { Batch = "B-09" }), "1"));
    }

    [Fact]
    public void Seed_left_on_S3_asks_for_a_look_ten_days_after_along_the_runs()
    {
        var check = SownChecks.Of(Sown(1900), "S3")!;
        Assert.Equal((138.9, 10.13), (Math.Round(check.Answer.Rate.PoundsPerAcre, 1), Math.Round(check.Answer.Missed.Acres, 2)));
        Assert.Equal(new DateOnly(2026, 5, 21), check.Look);
        Assert.Equal(0, Math.Sin(check.Run!.Value.Radians), 2);
        var due = ScoutList.Of(Sown(1900), null).Single(d => d.Reason == ScoutReason.SeedLeft);
        Assert.Equal(("S3", new DateOnly(2026, 5, 21)), (due.Field.Code, due.Due));
    }

    [Fact]
    public void Nothing_left_or_nothing_told_asks_for_nothing()
    {
        Assert.Equal(SownVerdict.AsMeant, SownChecks.Of(Sown(0), "S3")!.Answer.Verdict);
        Assert.DoesNotContain(ScoutList.Of(Sown(0), null), d => d.Reason == ScoutReason.SeedLeft);
        Assert.Null(SownChecks.Of(Book(), "S3"));
    }

    private static TrailerSeen Short => new("1") { Field = "R4", Weighed = SoakedSeed.FromPounds(18100) };

    private static SeasonBook Sown(double left)
    {
        var now = PlannedMorning.At(11, 10);
        MarkFact[] facts = [new TrailerSeen("6") { Field = "S3", Weighed = SoakedSeed.FromPounds(25687) }, new FieldSown("S3") { Dry = DrySeed.FromPounds(20550) }, new SeedLeft("6", SoakedSeed.FromPounds(left)) { Field = "S3" }];
        return SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(facts.Select((f, i) => Marks.At(i + 1, PlannedMorning.At(11, 9, i), f))), now);
    }

    private static SeasonBook Book(params MarkFact[] facts) =>
        SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(facts.Select((f, i) => Marks.At(i + 1, Sunday.AddMinutes(i - 9), f))), Sunday);
}
