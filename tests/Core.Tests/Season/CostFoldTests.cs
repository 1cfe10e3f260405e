using Watersown.Costs;

namespace Watersown.Season;

public sealed class CostFoldTests
{
    [Fact]
    public void The_newest_plan_of_a_category_stands_and_keeps_what_it_does_not_say()
    {
        var book = Fold(new CostPlanned(CostCategory.Drying) { PerAcre = Money.FromDollars(5m) }, new CostPlanned(CostCategory.Drying) { PerHundredweight = Money.FromDollars(1.5m) }, new CostPlanned(CostCategory.Drying) { Field = "N3", PerAcre = Money.FromDollars(9m) });
        Assert.Equal(
            [new PlannedCost(CostCategory.Drying) { PerAcre = Money.FromDollars(5m), PerHundredweight = Money.FromDollars(1.5m) }, new PlannedCost(CostCategory.Drying) { Field = "N3", PerAcre = Money.FromDollars(9m) }],
            book.Costs.Planned);
    }

    [Fact]
    public void What_is_spent_on_fields_is_what_the_bills_say_to_the_cent()
    {
        var book = Fold(Bill(CostCategory.Water, 10_000.01m), Bill(CostCategory.Seed, 777.77m, "N3", "N4", "S2"), Bill(CostCategory.Seed, -12.34m, "N3"));
        Assert.Equal(10_000.01m + 777.77m - 12.34m, book.Costs.ByField(book.State.Farm, book.Harvest).Sum(f => f.Spent.Amount));
    }

    [Fact]
    public void A_bill_told_twice_is_asked_about_and_so_is_one_far_above_its_plan()
    {
        var twice = Bill(CostCategory.Seed, 100m) with { Invoice = "7781" };
        Assert.Contains(Fold(twice, twice).Doubts, d => d.Problem.Kind == CostProblems.BillTwice);
        Assert.Contains(Fold(new CostPlanned(CostCategory.Seed) { PerAcre = Money.FromDollars(1m) }, Bill(CostCategory.Seed, 1_000_000m)).Doubts, d => d.Problem.Kind == CostProblems.FarAbovePlan);
        Assert.DoesNotContain(Fold(new CostPlanned(CostCategory.Seed) { PerAcre = Money.FromDollars(50m) }, Bill(CostCategory.Seed, 1000m)).Doubts, d => d.Problem.Kind == CostProblems.FarAbovePlan);
    }

    private static CostPaid Bill(CostCategory category, decimal dollars, params string[] fields) => new(category, Money.FromDollars(dollars)) { Fields = [.. fields] };

    private static SeasonBook Fold(params MarkFact[] facts) =>
        SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With(facts.Select((f, i) => Marks.At(i + 1, PlannedMorning.At(8, 5).AddMinutes(i), f))), PlannedMorning.At(9, 4));
}
