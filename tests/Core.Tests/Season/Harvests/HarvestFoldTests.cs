using Watersown.Growth;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season.Harvests;

public sealed class HarvestFoldTests
{
    private static readonly DateTimeOffset Day = new(2026, 9, 25, 9, 0, 0, TimeSpan.FromHours(-7));

    [Fact]
    public void The_last_word_on_each_figure_stands_and_the_others_stay()
    {
        var book = Fold(new HarvestMeansTold { Combines = 2, EachDay = Area.FromAcres(45), Sets = 15 }, new HarvestMeansTold { Sets = 12, Expected = GrainYield.FromHundredweightsPerAcre(95) });
        Assert.Equal((2, 12), (book.Harvest.Means.Combines, book.Harvest.Means.Sets));
        Assert.Equal(90, book.Harvest.Means.Combining!.Value.Acres, 1e-9);
        Assert.Equal(50_000, book.Harvest.Means.SetWeight.Pounds, 1e-6);
    }

    [Fact]
    public void Land_cut_adds_up_and_the_word_that_all_is_cut_ends_it()
    {
        Assert.Equal(56, Fold(Cut("N3", 40)).Harvest.Field("N3").Left(Area.FromAcres(96)).Acres, 1e-9);
        var done = Fold(Cut("N3", 40), new FieldCut("N3")).Harvest.Field("N3");
        Assert.Equal(Area.Zero, done.Left(Area.FromAcres(96)));
        Assert.Equal(96, done.Cut!.Value.Acres, 1e-6);
    }

    [Fact]
    public void A_ticket_told_twice_is_counted_once_and_another_dryers_number_is_another_ticket()
    {
        var twice = Fold(Ticket("88", "N3"), Ticket("88", "N3"));
        Assert.Single(twice.Harvest.Tickets);
        Assert.Single(twice.Doubts, d => d.Problem.Kind == HarvestProblems.TicketTwice);
        Assert.Equal(2, Fold(Ticket("88", "N3"), Ticket("88", "N3") with { Dryer = "cooperative" }).Harvest.Tickets.Length);
    }

    [Fact]
    public void What_does_not_agree_is_asked_about()
    {
        var land = Fold().State.Farm.Field("N3").Net;
        Assert.Contains(Fold(Cut("N3", land.Acres * 1.1)).Doubts, d => d.Problem.Kind == HarvestProblems.CutTooMuch);
        Assert.Contains(Fold(Ticket("1", "N3") with { Variety = "Z-9" }).Doubts, d => d.Problem.Kind == HarvestProblems.VarietyDiffers && d.Field == "N3");
        Assert.Contains(Fold(new CropShareTold("N3", "estate", Fraction.FromPercent(60)), new CropShareTold("N3", "widow", Fraction.FromPercent(50))).Doubts, d => d.Problem.Kind == HarvestProblems.SharesTooMuch);
        Assert.Contains(Fold(new FieldCut("N3"), Ticket("1", "N3")).Doubts, d => d.Problem.Kind == HarvestProblems.YieldOdd);
        Assert.DoesNotContain(Fold(Cut("N3", 10), Ticket("1", "N3")).Doubts, d => d.Problem.Kind == HarvestProblems.YieldOdd);
    }

    [Fact]
    public void What_cannot_be_is_refused_when_it_is_put_down()
    {
        Assert.Equal([HarvestProblems.TruckHeavier], Kinds(Ticket("1", "N3") with { Gross = Mass.FromPounds(27_000) }));
        Assert.Equal([HarvestProblems.PartsNotWhole], Kinds(Ticket("1", "N3") with { Parts = [new("N3", Fraction.FromPercent(40)), new("N4", Fraction.FromPercent(40))] }));
        Assert.Equal([HarvestProblems.RangeReversed], Kinds(new HarvestMeansTold { CutFrom = Fraction.FromPercent(18), CutTo = Fraction.FromPercent(20) }));
        Assert.Equal([HarvestProblems.DaysReversed], Kinds(new DryerRoomGiven(new(2026, 9, 28), new(2026, 9, 27), 3)));
        Assert.Equal([LimitProblems.High], Kinds(Ticket("1", "N3") with { Gross = Mass.FromPounds(86_000) }));
    }

    // Two combines of 45 ac, 95 cwt at 14 %, 20 % moisture, 15 sets of 50,000 lb: worked by hand, 73 ac a day and 18.4 sets possible.
    [Fact]
    public void The_dryer_holds_the_combines_back_and_another_dryer_brings_the_end_forward()
    {
        MarkFact[] told =
        [
            new HarvestMeansTold { Combines = 2, EachDay = Area.FromAcres(45), Sets = 15, Expected = GrainYield.FromHundredweightsPerAcre(95) },
            .. Fold().State.Farm.Fields.Select(f => new MoistureSampled(f.Code, Fraction.FromPercent(20))),
        ];
        var board = HarvestBoard.Of(Fold(told));
        Assert.Equal(73, board.Rate!.Value.InADay.Acres, 1.0);
        Assert.Equal(18.4, board.Rate.Value.SetsPossible, 0.2);
        Assert.Null(board.Alone);
        var helped = HarvestBoard.Of(Fold([.. told, new DryerRoomGiven(new(2026, 9, 25), new(2026, 11, 30), 3) { Dryer = "cooperative" }]));
        Assert.Equal(board.Plan!.Finish, helped.Alone!.Finish);
        Assert.True(helped.Plan!.Finish <= helped.Alone.Finish);
        Assert.Equal(board.Standing.Sum(f => f.Left.Acres), board.Plan.Days.Sum(d => d.Cuts.Sum(c => c.Land.Acres)), 0.01);
        Assert.All(board.Plan.Days, d => Assert.True(d.Sets.Sum(s => s.Count) <= 15));
    }

    [Fact]
    public void A_field_whose_boards_came_out_yesterday_is_not_cut_before_its_ground_carries()
    {
        MarkFact[] told =
        [
            new HarvestMeansTold { Combines = 2, EachDay = Area.FromAcres(45), Sets = 15, Expected = GrainYield.FromHundredweightsPerAcre(95) },
            new MoistureSampled("N3", Fraction.FromPercent(19)), new BoardsOut("N3"), new MoistureSampled("R4", Fraction.FromPercent(20)), new StageSeen("N1", new StagePoint(CropStage.Heading)),
        ];
        var book = Fold(told);
        var board = HarvestBoard.Of(book);
        // Clay at 0.10 in/day is heavy ground: 14 days at least.
        Assert.Equal(new DateOnly(2026, 10, 9), board.Standing.Single(f => f.Code == "N3").Carries);
        Assert.True(board.Plan!.Of("N3").First().Day >= new DateOnly(2026, 10, 9));
        Assert.True(board.Plan.Of("R4").First().Day < new DateOnly(2026, 10, 9));
        var lines = DrainBoard.Of(book, board.Plan);
        Assert.All(lines, l => Assert.True(l.Dates.Value.Earliest > l.Heading.Day));
        Assert.Equal(lines.Select(l => l.Dates.Value.Earliest).Order(), lines.Select(l => l.Dates.Value.Earliest));
        Assert.Contains(lines, l => l.Field.Code == "N1");
    }

    [Fact]
    public void Facts_are_told_again_in_words()
    {
        var say = new MarkTelling(new Telling(PlannedMorning.State(), Language.English));
        Assert.Equal("Moisture 21.5 %", say.Say(new MoistureSampled("N3", Fraction.FromPercent(21.5))));
        Assert.Equal("Ticket 88, 50,000 lb at 20 %, E-1", say.Say(Ticket("88", "N3") with { Variety = "E-1" }));
        Assert.Equal("Harvest, 2 combines, 90 ac a day each", say.Say(new HarvestMeansTold { Combines = 2, EachDay = Area.FromAcres(90) }));
        Assert.Equal("All cut", say.Say(new FieldCut("N3")));
    }

    private static FieldCut Cut(string field, double acres) => new(field) { Land = Area.FromAcres(acres) };

    private static GrainTicketed Ticket(string number, string field) => new(number, Mass.FromPounds(77_000), Mass.FromPounds(27_000), Fraction.FromPercent(20)) { Parts = [new(field, Fraction.One)] };

    private static IEnumerable<ProblemKind> Kinds(MarkFact fact) => MarkChecks.Check(Marks.At(1, Day, fact), PlannedMorning.State(), Day).Select(p => p.Kind);

    private static SeasonBook Fold(params MarkFact[] facts) =>
        SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(facts.Select((f, i) => Marks.At(i + 1, Day.AddMinutes(i), f))), Day.AddHours(3));
}
