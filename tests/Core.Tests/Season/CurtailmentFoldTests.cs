using Watersown.Land;
using Watersown.Schedule;
using static Watersown.PlannedMorning;

namespace Watersown.Season;

/// <summary>Curtailments told by marks.</summary>
public sealed class CurtailmentFoldTests
{
    private static readonly DateTimeOffset Six = At(8, 6);

    private static readonly WaterCurtailed Told = new("NT-1", At(9, 7)) { Left = Cfs(14) };

    [Fact]
    public void A_curtailment_told_today_holds_from_its_own_moment_until_further_notice()
    {
        var source = Source(Marks.At(1, Six, Told));
        Assert.Equal([new Curtailment(At(9, 7)) { Flow = Cfs(14) }], source.Curtailments);
        Assert.Equal(14, SourceSupply.MostAt(source, At(30, 7)).CubicFeetPerSecond, 9);
        Assert.Equal(20, SourceSupply.MostAt(source, At(9, 6)).CubicFeetPerSecond, 9);
    }

    [Fact]
    public void Curtailed_no_longer_ends_all_that_was_told_before_and_none_that_is_told_after()
    {
        var over = Marks.At(2, Six.AddHours(2), new WaterCurtailed("nt-1", At(12, 7)));
        var again = Marks.At(3, Six.AddHours(3), new WaterCurtailed("NT-1", At(13, 7)) { Left = Cfs(10), Until = At(14, 7) });
        var source = Source(Marks.At(1, Six, Told), over, again);
        Assert.Equal([14, 20, 10, 20], new[] { At(11, 7), At(12, 7), At(13, 7), At(14, 7) }.Select(at => Math.Round(SourceSupply.MostAt(source, at).CubicFeetPerSecond, 9)));
    }

    [Fact]
    public void A_curtailment_of_the_farm_document_ends_by_a_mark_of_after_its_moment_only()
    {
        var ground = State();
        ground = ground with { Farm = ground.Farm with { Sources = [.. ground.Farm.Sources.Select(s => s.Code == "NT-1" ? s with { Curtailments = [new Curtailment(At(1, 7)) { Flow = Cfs(5) }] } : s)] } };
        WaterSource After(DateTimeOffset happened) => SeasonFold.Fold(ground, Logbook.Empty.With([Marks.At(1, happened, new WaterCurtailed("NT-1", At(7, 7)))]), At(9, 6)).State.Farm.Source("NT-1")!;
        Assert.Equal(At(7, 7), Assert.Single(After(Six).Curtailments).Until);
        Assert.Null(Assert.Single(After(ground.Now.AddDays(-2)).Curtailments).Until);
    }

    [Fact]
    public void The_same_marks_in_any_order_give_the_same_source()
    {
        Mark[] marks = [Marks.At(1, Six, Told), Marks.At(2, Six.AddHours(1), new WaterCurtailed("NT-1", At(10, 7)) { Left = Cfs(6), Until = At(11, 7) }), Marks.At(3, Six.AddHours(2), new WaterCurtailed("NT-1", At(12, 7)))];
        var first = Source(marks).Curtailments;
        foreach (var order in new[] { new[] { 2, 0, 1 }, [1, 2, 0], [2, 1, 0] }) Assert.Equal(first, Source([.. order.Select(i => marks[i])]).Curtailments);
    }

    [Fact]
    public void One_that_ends_before_it_begins_is_refused_and_one_that_takes_nothing_away_is_warned_of()
    {
        Assert.Equal([LandProblems.CurtailedBackward], Kinds(Told with { Until = At(9, 6) }));
        Assert.Equal([LandProblems.NothingCurtailed], Kinds(Told with { Left = Cfs(20) }));
        Assert.Empty(Kinds(Told));
        Assert.Empty(Kinds(new WaterCurtailed("NT-1", At(12, 7))));
    }

    private static IEnumerable<ProblemKind> Kinds(MarkFact fact) => MarkChecks.Check(Marks.At(1, Six, fact), State(), Six).Select(p => p.Kind);

    private static WaterSource Source(params Mark[] marks) => SeasonFold.Fold(State(), Logbook.Empty.With(marks), At(9, 6)).State.Farm.Source("NT-1")!;
}
