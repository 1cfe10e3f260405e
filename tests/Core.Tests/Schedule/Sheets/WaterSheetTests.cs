using Watersown.Land;
using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

public sealed class WaterSheetTests
{
    private static readonly DateOnly Friday = new(2026, 5, 8);

    [Theory]
    [InlineData(Language.English, "Tamsin Wexcombe")]
    [InlineData(Language.Spanish, "Lucero Quintabar")]
    public void A_water_sheet_reads_as_approved(Language language, string person) =>
        Golden.Matches($"Sheets/water-{Words.In(language).Common.Tag}.golden.txt", Text(PlannedMorning.Plan(), language, person));

    [Fact]
    public void Fields_that_must_not_spill_stand_first_and_in_both_languages()
    {
        foreach (var language in new[] { Language.English, Language.Spanish })
        {
            var alarm = Assert.IsType<Block.Alarm>(WaterPage.Of(PlannedMorning.Plan(), WaterSheets.Of(PlannedMorning.Plan(), Friday, null), language).Arrangements[0][0]);
            Assert.Contains("NO SPILL", alarm.Shout, StringComparison.Ordinal);
            Assert.Contains("NO TIRAR AGUA", alarm.Shout, StringComparison.Ordinal);
            Assert.Equal(["N1 Gander North · N2 Gander South"], alarm.Lines);
        }
    }

    [Theory]
    [InlineData("N4", WaterTask.Fill)]
    [InlineData("H1", WaterTask.Open)]
    [InlineData("S2", WaterTask.HoldForSeed)]
    [InlineData("R1", WaterTask.HoldSown)]
    public void Each_field_has_one_thing_to_do(string field, WaterTask task) =>
        Assert.Equal(task, WaterSheets.Of(PlannedMorning.Plan(), Friday, null).Routes.SelectMany(r => r.Stops).Single(s => s.Field.Code == field).Task);

    // 10.7 cfs into 118 ac, four of six checks wet: (V / m) ln((S − m A0) / (S − m A1)) to the end of check 5 is 0.63 d (derived).
    [Fact]
    public void A_field_that_fills_says_which_check_is_wet_next_and_when()
    {
        var stop = WaterSheets.Of(PlannedMorning.Plan(), Friday, null).Routes.SelectMany(r => r.Stops).Single(s => s.Field.Code == "N4");
        Assert.Equal(6, stop.NextCheck!.Number);
        Assert.Equal(0.63, (stop.NextCheck.At - PlannedMorning.Now).TotalDays, 0.01);
        Assert.Null(WaterSheets.Of(PlannedMorning.Plan(), new(2026, 5, 9), null).Routes.SelectMany(r => r.Stops).Single(s => s.Field.Code == "N4").NextCheck);
    }

    [Fact]
    public void The_next_day_moves_with_the_plan()
    {
        var stops = WaterSheets.Of(PlannedMorning.Plan(), new(2026, 5, 10), null).Routes.SelectMany(r => r.Stops).ToDictionary(s => s.Field.Code, StringComparer.Ordinal);
        Assert.Equal(WaterTask.HoldForSeed, stops["N4"].Task);
        Assert.Equal(WaterTask.HoldSown, stops["S2"].Task);
        Assert.Equal(WaterTask.Open, stops["R6"].Task);
    }

    [Fact]
    public void A_change_of_water_must_be_sent_by_the_notice_before_it()
    {
        // 48 h before Sunday 07:00 (derived).
        var change = WaterSheets.Changes(PlannedMorning.Plan())[0];
        Assert.Equal("NT-1", change.Source.Code);
        Assert.Equal(PlannedMorning.At(8, 7), change.SendBy);
        Assert.Equal((14, 5.8), (Math.Round(change.Before.CubicFeetPerSecond, 6), Math.Round(change.After.CubicFeetPerSecond, 6)));
    }

    [Fact]
    public void A_dust_of_flow_is_not_asked_for()
    {
        var plan = PlannedMorning.Plan();
        var same = plan with { Orders = [new OrderedFlow("NT-1", PlannedMorning.Now, PlannedMorning.At(10, 7), PlannedMorning.Cfs(14)), new OrderedFlow("NT-1", PlannedMorning.At(10, 7), PlannedMorning.At(20, 7), PlannedMorning.Cfs(14.000001))] };
        Assert.Empty(WaterSheets.Changes(same));
    }

    [Fact]
    public void Leaks_and_box_notes_reach_whoever_stands_in()
    {
        var text = Text(PlannedMorning.Plan(), Language.Spanish, null);
        Assert.Contains("caja 4: desagüe del cuadro 5 a dren público, FUGA", text, StringComparison.Ordinal);
        Assert.Contains("Two inlets; the east one sticks", text, StringComparison.Ordinal);
        Assert.Contains("Recorrido por fuente, para el regador", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_arrangements_name_the_same_fields_and_figures()
    {
        var page = WaterPage.Of(PlannedMorning.Plan(), WaterSheets.Of(PlannedMorning.Plan(), Friday, null), Language.English);
        foreach (var said in new[] { "N4 Two Gates", "4 of 6", "10.7 cfs", "Sat 14:41", "OPEN Fri 08:00", "NT-1", "14 cfs to 5.8 cfs", "Fri 07:00" })
            Assert.All(new[] { 0, 1 }, i => Assert.Contains(said, PageText.Of(page, i), StringComparison.Ordinal));
    }

    [Fact]
    public void A_farm_that_knows_no_source_lists_its_fields_all_the_same()
    {
        var plan = PlannedMorning.Plan();
        var bare = plan with { Orders = [], State = plan.State with { Farm = plan.State.Farm with { Sources = [] } } };
        var text = Text(bare, Language.English, null);
        Assert.Contains("Source not told", text, StringComparison.Ordinal);
        Assert.Contains("N4 Two Gates", text, StringComparison.Ordinal);
        Assert.Contains("No change of water has to be asked for in these days.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_source_that_is_down_says_so()
    {
        var plan = PlannedMorning.Plan();
        var down = plan with { State = plan.State with { Farm = plan.State.Farm with { Sources = [.. plan.State.Farm.Sources.Select(s => s.Code == "SP-1" ? s with { Down = true } : s)] } } };
        Assert.Contains("SP-1: OUT OF ORDER", Text(down, Language.English, null), StringComparison.Ordinal);
    }

    [Fact]
    public void Depths_of_a_metric_farm_are_in_centimeters()
    {
        var plan = PlannedMorning.Plan();
        var metric = plan with { State = plan.State with { Farm = plan.State.Farm with { Units = UnitSystem.Metric } } };
        var text = Text(metric, Language.English, null);
        Assert.Contains("5.1 cm", text, StringComparison.Ordinal); // 2 in × 2.54
        Assert.Contains("396 L/s", text, StringComparison.Ordinal); // 14 cfs × 28.3168
    }

    private static string Text(SeasonPlan plan, Language language, string? person) => PageText.Of(WaterPage.Of(plan, WaterSheets.Of(plan, Friday, person), language));
}
