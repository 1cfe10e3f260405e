using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

public sealed class SeedSheetTests
{
    private static readonly DateOnly Friday = new(2026, 5, 8);

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public void A_seed_sheet_reads_as_approved(Language language) =>
        Golden.Matches($"Sheets/seed-{Words.In(language).Common.Tag}.golden.txt", Text(PlannedMorning.Plan(), language));

    [Fact]
    public void Every_batch_not_yet_drained_is_on_hold_until_the_farm_calls()
    {
        var sheet = SeedSheets.Of(PlannedMorning.Plan(), Friday);
        var text = Text(PlannedMorning.Plan(), Language.English);
        Assert.Equal(sheet.Jobs.Count(j => !j.Drained), text.Split("HOLD until we call").Length - 1);
        Assert.Contains("B-08 | S2 | Fri 06:30 | 48.5 | HOLD until we call", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Pounds_say_dry_going_in_and_wet_coming_out()
    {
        // 17,700 lb dry × 1.25 (mass balance).
        var job = SeedSheets.Of(PlannedMorning.Plan(), Friday).Jobs.Single(j => j.Batch == "B-09");
        Assert.Equal(17700, job.Dry.Pounds, 0.5);
        Assert.Equal(22125, job.Soaked.Pounds, 0.5);
        var text = Text(PlannedMorning.Plan(), Language.English);
        Assert.Contains("lb dry", text, StringComparison.Ordinal);
        Assert.Contains("lb wet, expected", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_batch_that_was_weighed_shows_the_scale_and_not_the_factor()
    {
        var plan = PlannedMorning.Plan();
        var weighed = plan with { State = plan.State with { Batches = [.. plan.State.Batches.Select(b => b.Code == "B-08" ? b with { Weighed = SoakedSeed.FromPounds(18100) } : b)] } };
        Assert.Contains("18,100 weighed", Text(weighed, Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Disinfection_is_left_to_the_supplier_and_the_label() =>
        Assert.Contains("the supplier's and the label's", Text(PlannedMorning.Plan(), Language.English), StringComparison.Ordinal);

    [Fact]
    public void A_farm_without_batches_or_warehouse_still_gets_a_sheet()
    {
        var plan = PlannedMorning.Plan();
        var bare = plan with { Tasks = [], LostBatches = [], State = plan.State with { Batches = [], SoakPlace = null } };
        var text = Text(bare, Language.Spanish);
        Assert.Contains("Bodega de semilla", text, StringComparison.Ordinal);
        Assert.Contains("No se pone nada a remojar en estos días.", text, StringComparison.Ordinal);
        Assert.Contains("No hay nada por escurrir en estos días.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void One_batch_for_two_fields_is_soaked_once()
    {
        var plan = PlannedMorning.Plan();
        var shared = plan with { Tasks = [.. plan.Tasks.Select(t => t.Field == "N3" && t.Batch is not null ? t with { Batch = "B-08" } : t)] };
        Assert.Equal(["S2", "N3"], SeedSheets.All(shared).Single(j => j.Batch == "B-08").Fields);
    }

    private static string Text(SeasonPlan plan, Language language) => PageText.Of(SeedPage.Of(plan, SeedSheets.Of(plan, Friday), language));
}
