using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

public sealed class SheetSetTests
{
    [Fact]
    public void Without_a_choice_everybody_gets_his_sheet_in_his_language()
    {
        var set = Set(new SheetChoice());
        Assert.Equal(23, set.Pages.Count(p => p.Key.StartsWith("flight-", StringComparison.Ordinal)));
        foreach (var key in new[] { "day-2026-05-08-en", "seed-2026-05-08-en", "water-2026-05-08-tamsin-wexcombe-en", "water-2026-05-08-lucero-quintabar-es", "flight-2026-05-09-s2-en", "flight-2026-05-27-h6-2-en" })
            Assert.Contains(key, set.Pages.Select(p => p.Key));
    }

    [Fact]
    public void A_day_has_only_its_own_flights() =>
        Assert.Equal(["flight-2026-05-10-r4-en", "flight-2026-05-10-n3-en", "flight-2026-05-10-n4-en"],
            Set(new SheetChoice { Day = new(2026, 5, 10) }).Pages.Select(p => p.Key).Where(k => k.StartsWith("flight-", StringComparison.Ordinal)));

    [Fact]
    public void A_field_has_only_its_flights_and_no_texts()
    {
        var set = Set(new SheetChoice { Field = "H6", Language = Language.Spanish });
        Assert.Equal(["flight-2026-05-26-h6-1-es", "flight-2026-05-27-h6-2-es"], set.Pages.Select(p => p.Key));
        Assert.Empty(set.Texts);
    }

    [Fact]
    public void A_person_gets_what_is_his_and_nothing_else()
    {
        var set = Set(new SheetChoice { Person = "lucero quintabar" });
        Assert.Equal(["water-2026-05-08-lucero-quintabar-es"], set.Pages.Select(p => p.Key));
        Assert.All(set.Texts, t => Assert.Equal("Lucero Quintabar", t.Name));
        Assert.NotEmpty(set.Texts);
    }

    [Fact]
    public void Where_no_irrigator_is_named_the_water_sheet_is_in_both_languages()
    {
        var plan = PlannedMorning.Plan();
        var set = SheetSet.Of(plan with { State = plan.State with { People = [] } }, new SheetChoice()).Value;
        Assert.Equal(["water-2026-05-08-en", "water-2026-05-08-es"], set.Pages.Select(p => p.Key).Where(k => k.StartsWith("water", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_pilot_and_a_loader_of_two_languages_get_a_sheet_each()
    {
        var plan = PlannedMorning.Plan();
        var set = SheetSet.Of(plan with { State = plan.State with { People = [.. plan.State.People, new Person("Itzel", "loader") { Speaks = Language.Spanish }] } }, new SheetChoice { Field = "S2" }).Value;
        Assert.Equal(["flight-2026-05-09-s2-en", "flight-2026-05-09-s2-es"], set.Pages.Select(p => p.Key));
    }

    [Fact]
    public void Codes_that_look_alike_in_a_file_name_still_get_files_of_their_own()
    {
        var plan = PlannedMorning.Plan();
        var twin = plan.State.Farm.Field("N4") with { Code = "s-2" };
        var farm = plan.State.Farm with { Fields = [.. plan.State.Farm.Fields.Select(f => f.Code == "N4" ? twin : f.Code == "S2" ? f with { Code = "S 2" } : f)] };
        string Code(string old) => old switch { "N4" => "s-2", "S2" => "S 2", _ => old };
        var odd = plan with
        {
            Tasks = [.. plan.Tasks.Select(t => t with { Field = Code(t.Field), Start = t.Kind == PlanTaskKind.Sow && t.Field == "N4" ? PlannedMorning.At(9, 8) : t.Start })],
            State = plan.State with { Farm = farm, Fields = [.. plan.State.Fields.Select(f => f with { Code = Code(f.Code) })] },
        };
        var keys = SheetSet.Of(odd, new SheetChoice()).Value.Pages.Select(p => p.Key).ToList();
        Assert.Equal(keys.Count, keys.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.Contains("flight-2026-05-09-s-2-en-2", keys);
        Assert.All(keys, k => Assert.Matches("^[a-z0-9-]+$", k));
    }

    [Fact]
    public void A_wrong_choice_is_told_all_at_once()
    {
        var faults = SheetSet.Of(PlannedMorning.Plan(), new SheetChoice { Field = "ZZ", Person = "Nobody", Day = new(2027, 1, 1) });
        Assert.True(faults.IsRefused);
        Assert.Equal([SheetsProblems.UnknownField, SheetsProblems.UnknownPerson, SheetsProblems.DayOutsidePlan], faults.Problems.Select(p => p.Kind));
        Said(faults.Problems);
    }

    [Fact]
    public void A_field_without_a_flight_says_when_flights_are()
    {
        var none = SheetSet.Of(PlannedMorning.Plan(), new SheetChoice { Field = "S2", Day = new(2026, 5, 10) });
        Assert.Equal(SheetsProblems.NoFlight, Assert.Single(none.Problems).Kind);
        Assert.Contains("2026-05-09", Say.Problem(none.Problems[0], Language.English), StringComparison.Ordinal);
        Said(none.Problems);
    }

    [Fact]
    public void A_person_with_nothing_to_read_is_told()
    {
        var plan = PlannedMorning.Plan();
        var none = SheetSet.Of(plan with { State = plan.State with { People = [new Person("Bly Hartshaw", "driver")] } }, new SheetChoice { Person = "Bly Hartshaw" });
        Assert.Equal(SheetsProblems.NothingForPerson, Assert.Single(none.Problems).Kind);
        Said(none.Problems);
    }

    private static SheetSet Set(SheetChoice choice) => SheetSet.Of(PlannedMorning.Plan(), choice).Value;

    private static void Said(ImmutableArray<Problem> problems)
    {
        foreach (var problem in problems)
        {
            Assert.DoesNotContain('{', Say.Problem(problem, Language.English));
            Assert.DoesNotContain('{', Say.Problem(problem, Language.Spanish));
        }
    }
}
