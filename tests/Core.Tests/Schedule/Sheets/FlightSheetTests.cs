using Watersown.Flight;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

public sealed class FlightSheetTests
{
    // The trade's own arithmetic worked by hand on the invented farm's table (common practice, no source): 83 ac × 155 lb
    // dry, × 1.25 wet, 2,800 lb loads; hours from reload, ground, ferry and whole passes.
    [Theory]
    [InlineData("S2", 155, 194, 12865, 16081, 6, 0.88)]
    [InlineData("R4", 150, 188, 15450, 19313, 7, 1.11)]
    [InlineData("N3", 155, 194, 14880, 18600, 7, 0.96)]
    [InlineData("N4", 150, 188, 17700, 22125, 8, 1.08)]
    [InlineData("S3", 150, 188, 20550, 25688, 10, 1.45)]
    public void A_flight_has_the_figures_worked_by_hand(string field, double dryRate, double wetRate, double dry, double wet, int loads, double hours)
    {
        var sheet = Sheet(field);
        Assert.Equal(dryRate, sheet.DryRate.PoundsPerAcre, 0.5);
        Assert.Equal(wetRate, sheet.WetRate.PoundsPerAcre, 0.5);
        Assert.Equal(dry, sheet.Dry.Pounds, 0.5);
        Assert.Equal(wet, sheet.Soaked.Pounds, 0.6);
        Assert.Equal(loads, sheet.Loads.Count);
        Assert.Equal(hours, sheet.FlyingTime.TotalHours, 0.011);
        Assert.NotEmpty(sheet.Working.Lines);
    }

    [Fact]
    public void Distance_and_direction_from_the_strip_are_those_of_the_farms_table()
    {
        // 1.04 mi west and 1.61 mi south: 1.92 mi toward 212.9 degrees (derived).
        Assert.Equal(1.92, Sheet("S2").Distance!.Value.Miles, 0.01);
        Assert.Equal(212.9, Sheet("S2").Direction!.Value.Degrees, 0.2);
    }

    [Fact]
    public void A_scale_ticket_beats_the_lot_and_the_lot_beats_the_farm()
    {
        var plan = PlannedMorning.Plan();
        Assert.Equal((1.25, WetFactorBasis.Farm), Basis(Sheet("S2")));
        Assert.Equal((1.27, WetFactorBasis.Lot), Basis(Sheet("N8")));
        var weighed = plan with { State = plan.State with { Batches = [.. plan.State.Batches.Select(b => b.Code == "B-08" ? b with { Weighed = SoakedSeed.FromPounds(18898) } : b)] } };
        Assert.Equal((1.27, WetFactorBasis.ScaleTicket), Basis(FlightSheets.Of(weighed).Single(f => f.Field.Code == "S2")));
    }

    [Fact]
    public void A_field_sown_in_two_flights_gets_two_sheets_that_share_its_acres()
    {
        var sheets = FlightSheets.Of(PlannedMorning.Plan()).Where(f => f.Field.Code == "H6").ToList();
        Assert.Equal([(1, 2), (2, 2)], sheets.Select(s => s.Part));
        Assert.Equal(121, sheets.Sum(s => s.Land.Acres), 0.01);
        Assert.Contains("flight 1 of 2", Text(sheets[0], Language.English), StringComparison.Ordinal);
        Assert.Contains("about 60.5 ac of 121 ac net", Text(sheets[0], Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Hazards_are_told_nearest_first_and_what_is_elsewhere_is_counted()
    {
        var sheet = Sheet("R4");
        Assert.Equal(["ditch-bank line", "prune orchard", "hatchery pond"], sheet.Hazards.Select(h => h.Hazard.Name));
        Assert.Equal(["A", "B", "C"], sheet.Hazards.Select(h => h.Mark));
        Assert.Equal(2, sheet.HazardsElsewhere);
        Assert.Contains("Wires: more may stand than the farm has marked. Look. 2 more known elsewhere.", Text(sheet, Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void A_hazard_that_nobody_has_looked_at_is_unconfirmed_and_no_wire_is_unknown_not_none()
    {
        var text = Text(Sheet("N3"), Language.English);
        Assert.Contains("new mast, unlit, on no chart, tower | 110 ft |", text, StringComparison.Ordinal);
        Assert.Contains("hatchery pond, pond | not told | 1.8 mi, 117° | unconfirmed", text, StringComparison.Ordinal);
        Assert.Contains("Wires: nobody has marked any here. Unknown, not none. Look.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hazard_inside_the_field_says_so()
    {
        var plan = PlannedMorning.Plan();
        var middle = FieldPlace.Middle(plan.State.Farm.Field("S2"))!.Value;
        var farm = plan.State.Farm with { Hazards = [new Hazard(HazardKind.Pole, "well pole") { Points = [middle] }] };
        var sheet = FlightSheets.Of(plan with { State = plan.State with { Farm = farm } }).Single(f => f.Field.Code == "S2");
        Assert.True(sheet.Hazards.Single().Inside);
        Assert.Contains("in the field", Text(sheet, Language.English), StringComparison.Ordinal);
        Assert.Contains("Wires: more may stand than the farm has marked.", Text(sheet, Language.English), StringComparison.Ordinal); // a pole carries a wire
    }

    [Fact]
    public void One_load_fewer_is_told_with_what_it_would_weigh_against_the_top_load()
    {
        Assert.Contains("5 would be 3,216 wet each, over that top.", Text(Sheet("S2"), Language.English), StringComparison.Ordinal);
        Assert.Contains("9 would be 2,854 wet each, within that top: pilot's choice.", Text(Sheet("S3"), Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Seed_that_does_not_make_the_rate_says_what_it_makes()
    {
        var plan = PlannedMorning.Plan();
        var little = plan with { Tasks = [.. plan.Tasks.Select(t => t.Field == "R4" ? t with { Dry = DrySeed.FromPounds(14480), Soaked = SoakedSeed.FromPounds(18100) } : t)] };
        // 14,480 lb over 103 ac (derived).
        Assert.Contains("is 140.6 lb/ac dry; 150 was asked", Text(FlightSheets.Of(little).Single(f => f.Field.Code == "R4"), Language.English), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("S2", Language.English)]
    [InlineData("S2", Language.Spanish)]
    [InlineData("H6", Language.English)] // neither edge nor middle
    [InlineData("H5", Language.Spanish)] // middle only, direction not known
    [InlineData("S5", Language.English)] // a patch left bare
    public void A_flight_sheet_reads_as_approved(string field, Language language) =>
        Golden.Matches($"Sheets/flight-{field.ToLowerInvariant()}-{Words.In(language).Common.Tag}.golden.txt", Text(Sheet(field), language));

    [Fact]
    public void Every_arrangement_of_a_sheet_holds_the_same_figures()
    {
        foreach (var sheet in FlightSheets.Of(PlannedMorning.Plan()))
        {
            var page = FlightPage.Of(PlannedMorning.Plan(), sheet, Language.English);
            var first = Figures(page, 0);
            for (var i = 1; i < page.Arrangements.Length; i++) Assert.Equal(first, Figures(page, i));
        }
    }

    [Fact]
    public void A_metric_farm_reads_kilograms_hectares_and_meters()
    {
        var plan = PlannedMorning.Plan();
        var metric = plan with { State = plan.State with { Farm = plan.State.Farm with { Units = UnitSystem.Metric } } };
        var text = PageText.Of(FlightPage.Of(metric, FlightSheets.Of(metric)[0], Language.English));
        // 83 ac = 33.6 ha; 12,865 lb = 5,835 kg; 155 lb/ac = 174 kg/ha (definition of the pound and the acre).
        Assert.Contains("33.6 ha", text, StringComparison.Ordinal);
        Assert.Contains("5,835 kg dry", text, StringComparison.Ordinal);
        Assert.Contains("174 kg/ha dry", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" lb", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" ft", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" mi,", text, StringComparison.Ordinal);
    }

    private static string[] Figures(SheetPage page, int arrangement) =>
        [.. PageText.Words(page, arrangement).Select(w => w.Trim('.', ',', ';')).Where(w => w.Any(char.IsAsciiDigit)).Order(StringComparer.Ordinal)];

    private static (double, WetFactorBasis) Basis(FlightSheet sheet) => (Math.Round(sheet.WetFactor, 4), sheet.FactorBasis);

    private static FlightSheet Sheet(string field) => FlightSheets.Of(PlannedMorning.Plan()).First(f => f.Field.Code == field);

    private static string Text(FlightSheet sheet, Language language) => PageText.Of(FlightPage.Of(PlannedMorning.Plan(), sheet, language));
}
