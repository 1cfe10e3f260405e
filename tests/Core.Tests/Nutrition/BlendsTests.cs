using Watersown.Reckon;

namespace Watersown.Nutrition;

public sealed class BlendsTests
{
    [Fact]
    public void A_nutrient_that_nothing_carries_is_named() =>
        Ask.For("blend",
            ("targets", Datum.Row(("n", 60), ("p2o5", 40), ("k2o", 20))),
            ("products", Datum.ListOf([Some.Row("urea", 46, 0, 0, 0.30)]))).Refuses(
            (NutritionProblems.NothingCarries, "products"), (NutritionProblems.NothingCarries, "products"));

    [Fact]
    public void Two_products_of_one_name_are_refused() =>
        Ask.For("blend",
            ("targets", Datum.Row(("n", 60))),
            ("products", Datum.ListOf([Some.Row("urea", 46, 0, 0, 0.30), Some.Row("urea", 45, 0, 0, 0.28)]))).Refuses((NutritionProblems.ProductTwice, "products"));

    [Fact]
    public void More_products_than_can_be_compared_are_refused() =>
        Assert.Equal(NutritionProblems.TooManyProducts, Assert.Single(Blends.Cheapest(Some.Rates(1, 0, 0),
            [.. Enumerable.Range(0, Blends.MostProducts + 1).Select(i => Some.Product("P" + i, 46, 0, 0, 0.3))]).Problems).Kind);

    [Fact]
    public void Dust_on_the_bag_is_no_grade() =>
        Ask.For("blend", ("targets", Datum.Row(("n", 60))), ("products", Datum.ListOf([Some.Row("urea", 1e-300, 0, 0, 0.30)]))).Refuses((NutritionProblems.GradeTooThin, "products"));

    [Fact]
    public void Faults_inside_rows_are_told_at_their_row() =>
        Ask.For("blend",
            ("targets", Datum.Row(("n", -1), ("s", 10))),
            ("products", Datum.ListOf([Datum.Row(("name", "urea"), ("n_pct", 146)), "no row"]))).Refuses(
            (ReckonProblems.TooSmall, "targets n"),
            (ReckonProblems.UnknownKey, "targets s"),
            (ReckonProblems.TooLarge, "products #1 n_pct"),
            (ReckonProblems.MissingKey, "products #1 price_lb"),
            (ReckonProblems.WrongSort, "products #2"));

    [Fact]
    public void A_list_without_rows_is_refused() =>
        Ask.For("blend", ("targets", Datum.Row(("n", 1))), ("products", Datum.ListOf(Enumerable.Empty<Datum>()))).Refuses((ReckonProblems.WrongSort, "products"));
}
