using System.Text;
using System.Text.Json.Nodes;
using Watersown.Documents.Farms;
using Watersown.Documents.Json;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Farms;

public sealed class FarmReadingTests
{
    [Fact]
    public void A_month_without_figures_is_said_and_the_others_are_read()
    {
        var read = SmallFarm.WithKey("normals", """{"source":"mine","months":[{"month":5,"mean_f":66.5},{"month":6},{"month":7,"high_f":95,"low_f":59}]}""");
        Assert.Equal(("FARM-009", "normals.months[1]"), (Assert.Single(read.Problems).Kind.Code, read.Problems[0].Where[..17]));
        Assert.Equal(([66.5, 77.0], "mine"), (read.Value.Normals.Months.Select(m => Math.Round(m.Mean.Fahrenheit, 9)), read.Value.Normals.Source), EqualityComparer<(IEnumerable<double>, string)>.Create((a, b) => a.Item1.SequenceEqual(b.Item1) && a.Item2 == b.Item2, _ => 0));
    }

    [Fact]
    public void Name_acres_and_rate_are_enough_for_a_field()
    {
        var read = SmallFarm.Read("""
            { "watersown_farm": 1, "name": "Small", "time_zone": "America/Los_Angeles",
              "fields": [ { "name": "Two Gates", "net_ac": 118, "rate_dry_lb_ac": 150 }, { "name": "Tin Barn", "net_ac": 96, "rate_dry_lb_ac": 155 }, { "name": "Top Gully", "net_ac": 50, "rate_dry_lb_ac": 150 } ] }
            """);
        Assert.Equal("FARM-004 fields", SmallFarm.Said(read));
        var state = read.Value;
        Assert.Equal("TG TB TGUL", string.Join(' ', state.Farm.Fields.Select(f => f.Code)));
        Assert.All(state.Fields, f => Assert.Equal(FieldStage.Unworked, f.Stage));
        Assert.Equal(new DateTimeOffset(2026, 5, 8, 4, 50, 0, TimeSpan.FromHours(-7)), state.Now);
        Assert.Equal(2026, state.Farm.SeasonYear);
        Assert.Null(state.Farm.Fields[0].Gross);
        Assert.Null(state.Fields[0].Variety);
        Assert.Empty(state.Farm.Fields[0].Sources);
    }

    [Fact]
    public void The_three_acre_figures_stand_side_by_side()
    {
        var read = SmallFarm.With(f =>
        {
            f["fields"]![0]!["gross_ac"] = 124.5;
            f["fields"]![0]!["certified_ac"] = 116.2;
        });
        var field = read.Value.Farm.Fields[0];
        Assert.Equal((118, 124.5, 116.2), (Math.Round(field.Net.Acres, 9), Math.Round(field.Gross!.Value.Acres, 9), Math.Round(field.Certified!.Value.Acres, 9)));
    }

    [Fact]
    public void Everything_wrong_is_said_at_once_each_with_its_place()
    {
        var read = SmallFarm.With(f =>
        {
            f["time_zone"] = "Ossel/Valley";
            f["fields"]![0]!["net_ac"] = 0;
            f["fields"]![0]!["rate_dry_lb_ac"] = "lots";
            f["fields"]![1]!["stage"] = "ful";
            f["fields"]![1]!["soil"] = "HC";
            f["wet_factr"] = 1.25;
            ((JsonObject)f["fields"]![1]!).Remove("net_ac");
        });
        Assert.True(read.IsRefused);
        Assert.Equal(
            """
            DOC-007 fields[1].net_ac (Split Oak)
            DOC-008 wet_factr (Small)
            DOC-010 fields[0].rate_dry_lb_ac (Two Gates)
            DOC-011 fields[1].stage (Split Oak)
            FARM-001 time_zone
            LAND-011 fields[1].soil (Split Oak)
            LIMIT-001 fields[0].net_ac (Two Gates)
            """,
            SmallFarm.Said(read));
    }

    [Theory]
    [InlineData("net_ac", "-3", "LIMIT-001 · fields[0].net_ac (Two Gates): -3 ac must be above 0 ac. Give a value above 0 ac.")]
    [InlineData("net_ac", "2500", "LIMIT-003 · fields[0].net_ac (Two Gates): 2,500 ac is above 2,000 ac, the most that can be. Give 2,000 ac or less.")]
    [InlineData("net_ac", "\"118 ac\"", "DOC-010 · fields[0].net_ac (Two Gates): '118 ac' is not a number (ac). Give a number (ac), or leave the key out where it is not known.")]
    [InlineData("rate_dry_lb_ac", "260", "LIMIT-005 · fields[0].rate_dry_lb_ac (Two Gates): 260 lb/ac dry is unusually high; 200 lb/ac dry or less is usual. Correct it, or leave it if it is true.")]
    [InlineData("stage", "\"flooded\"", "DOC-011 · fields[0].stage (Two Gates): 'flooded' is none of too-wet, unworked, chiseled, disced, planed, aqua-on, rolled, flooding, full, sown. 'flooding'? Choose one of them.")]
    [InlineData("net_acres", "118", "DOC-008 · fields[0].net_acres (Two Gates): the key is not known and is left out of account. 'net_ac'? Correct it or take it out.")]
    [InlineData("sown_at", "\"yesterday\"", "DOC-010 · fields[0].sown_at (Two Gates): 'yesterday' is not a moment such as \"2026-05-08T04:50\". Give a moment such as \"2026-05-08T04:50\", or leave the key out where it is not known.")]
    [InlineData("no_spill", "\"yes\"", "DOC-010 · fields[0].no_spill (Two Gates): 'yes' is not true or false. Give true or false, or leave the key out where it is not known.")]
    [InlineData("checks", "2.5", "DOC-010 · fields[0].checks (Two Gates): 2.5 is not a whole number. Give a whole number, or leave the key out where it is not known.")]
    [InlineData("note", "\"  \"", "DOC-012 · fields[0].note (Two Gates): the text is empty. Write something, or leave the key out where it is not known.")]
    [InlineData("code", "\"GATES\"", "DOC-013 · fields[0].code (Two Gates): 5 letters are above 4, the most that are kept. Shorten it.")]
    [InlineData("net_ac", "1e300", "DOC-010 · fields[0].net_ac (Two Gates): 1e300 is not a number (ac). Give a number (ac), or leave the key out where it is not known.")]
    public void A_wrong_value_is_told_with_what_was_found_what_can_be_and_what_to_do(string key, string json, string sentence) =>
        Assert.True(SmallFarm.WithField(key, json).Problems.Select(p => Say.Problem(p, Language.English)).Contains(sentence, StringComparer.Ordinal), SmallFarm.Said(SmallFarm.WithField(key, json)));

    [Theory]
    [InlineData("net_ac", "\"x\"", "DOC-010 · fields[0].net_ac (Two Gates): 'x' no es un número (ac). Escriba un número (ac), o quite la clave si no se sabe.")]
    [InlineData("soil", "\"HC\"", "LAND-011 · fields[0].soil (Two Gates): 'HC' no es ninguno de los del rancho. Corríjalo, o agréguelo al rancho.")]
    public void It_is_told_in_Spanish_too(string key, string json, string sentence) =>
        Assert.Equal(sentence, Say.Problem(Assert.Single(SmallFarm.WithField(key, json).Problems), Language.Spanish));

    [Theory]
    [InlineData("", "DOC-001 ")]
    [InlineData(" \n\t", "DOC-001 ")]
    [InlineData("{", "DOC-004 line 1, column 2")]
    [InlineData("[", "DOC-004 line 1, column 2")]
    [InlineData("7", "DOC-004 line 1, column 2")]
    [InlineData("\"watersown_farm\"", "DOC-016 ")]
    [InlineData("{ \"watersown_farm\": 1,\n  \"name\": \"Sm", "DOC-004 line 2, column 14")]
    [InlineData("{ \"watersown_farm\": 1, \"fields\": [", "DOC-004 line 1, column 35")]
    [InlineData("{ \"watersown_farm\": 1,\n  \"na—me\": nope }", "DOC-003 line 2, column 13")]
    [InlineData("{ \"watersown_farm\": NaN }", "DOC-003 line 1, column 21")]
    [InlineData("{ \"watersown_farm\": Infinity }", "DOC-003 line 1, column 21")]
    [InlineData("{ \"watersown_farm\": 1 } {", "DOC-003 line 1, column 25")]
    [InlineData("{ \"name\": \"\\ud800\" }", "DOC-015 line 1, column 11")]
    [InlineData("{ \"name\": \"Small\" }", "DOC-016 ")]
    [InlineData("[1, 2]", "DOC-016 ")]
    [InlineData("{ \"watersown_farm\": 2, \"fields\": {} }", "DOC-017 watersown_farm")]
    public void A_text_that_is_no_document_is_told_with_line_and_column(string text, string said) => Assert.Equal(said, SmallFarm.Said(SmallFarm.Read(text)));

    [Fact]
    public void Bytes_that_are_not_UTF_8_are_told_with_their_place()
    {
        byte[] broken = [.. "{ \"name\":\n \""u8, 0xE9, .. "\" }"u8];
        Assert.Equal("DOC-002 line 2, column 3", SmallFarm.Said(FarmReading.Read(broken, SmallFarm.Context)));
        byte[] wide = [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("{}")];
        Assert.Equal("DOC-002 line 1, column 1", SmallFarm.Said(FarmReading.Read(wide, SmallFarm.Context)));
        byte[] marked = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(SmallFarm.Json.ToJsonString())];
        Assert.Empty(FarmReading.Read(marked, SmallFarm.Context).Problems);
    }

    [Fact]
    public void Too_deep_too_large_and_too_many_are_refused_not_worked_through()
    {
        Assert.StartsWith("DOC-005 line 1", SmallFarm.Said(SmallFarm.Read(string.Concat(Enumerable.Repeat("{\"a\":", 5000)))), StringComparison.Ordinal);
        Assert.Equal("DOC-006 ", SmallFarm.Said(FarmReading.Read(new byte[JsonText.MaxBytes + 1], SmallFarm.Context)));
        var many = SmallFarm.WithField("work_left", "[" + string.Join(',', Enumerable.Repeat("\"disc\"", 21)) + "]");
        Assert.Equal("DOC-014 fields[0].work_left (Two Gates)", SmallFarm.Said(many));
    }

    [Fact]
    public void A_key_given_twice_is_refused()
    {
        var read = SmallFarm.Read(SmallFarm.Json.ToJsonString().Replace("\"net_ac\":118", "\"net_ac\":118,\"net_ac\":181", StringComparison.Ordinal));
        Assert.Equal("DOC-009 fields[0].net_ac (Two Gates)", SmallFarm.Said(read));
    }

    [Fact]
    public void A_pump_is_told_in_gallons_or_cubic_feet_but_not_both()
    {
        static string Source(string cap) => $$"""[ { "code": "W-1", "kind": "well"{{cap}} } ]""";
        var gallons = SmallFarm.WithKey("sources", Source(", \"cap_gpm\": 1885")).Value.Farm.Sources[0].Cap;
        Assert.Equal(4.2, gallons.CubicFeetPerSecond, 0.001); // 448.8 gpm make 1 cfs
        Assert.Equal("DOC-018 sources[0].cap_cfs (W-1)", SmallFarm.Said(SmallFarm.WithKey("sources", Source(string.Empty))));
        Assert.Equal("DOC-019 sources[0].cap_gpm (W-1)", SmallFarm.Said(SmallFarm.WithKey("sources", Source(", \"cap_gpm\": 1885, \"cap_cfs\": 4.2"))));
    }

    [Fact]
    public void A_number_of_checks_means_equal_checks()
    {
        var field = SmallFarm.WithField("checks", "6").Value.Farm.Fields[0];
        Assert.Equal(6, field.Basins.Length);
        Assert.All(field.Basins, b => Assert.Equal(118 / 6.0, b.Area.Acres, 1e-9));
        var own = SmallFarm.WithField("checks", """[ { "ac": 60, "drop_ft": 0.2 }, { "ac": 58, "high_spot_in": 1.2 } ]""").Value.Farm.Fields[0];
        Assert.Equal("1:60 2:58", string.Join(' ', own.Basins.Select(b => $"{b.Number}:{b.Area.Acres:0}")));
        Assert.Equal(0.2, own.Basins[0].Drop!.Value.Feet, 1e-12);
    }

    [Fact]
    public void Times_are_the_farms_own_unless_an_offset_says_otherwise()
    {
        DateTimeOffset Water(string text) => SmallFarm.WithField("first_water", $"\"{text}\"").Value.Fields[0].FirstWater!.Value;
        var expected = new DateTimeOffset(2026, 5, 1, 6, 0, 0, TimeSpan.FromHours(-7));
        Assert.Equal(expected, Water("2026-05-01T06:00"));
        Assert.Equal(expected, Water("2026-05-01 06:00:00"));
        Assert.Equal(expected, Water("2026-05-01T13:00Z"));
        Assert.Equal(TimeSpan.FromHours(-7), Water("2026-05-01T08:00-05:00").Offset);
        Assert.Equal(expected, Water("2026-05-01T08:00-05:00"));
        Assert.Equal(TimeSpan.FromHours(-8), Water("2026-02-01T06:00").Offset);
        Assert.Equal(new DateTimeOffset(2026, 5, 1, 12, 0, 0, TimeSpan.FromHours(-7)), Water("2026-05-01"));
    }

    [Fact]
    public void An_hour_that_the_clock_skips_or_doubles_is_told()
    {
        // The clock of this zone went from 02:00 to 03:00 on 8 March 2026 and back from 02:00 to 01:00 on 2 November 2025.
        var skipped = SmallFarm.WithField("first_water", "\"2026-03-08T02:30\"");
        Assert.Equal("FARM-002 fields[0].first_water (Two Gates)", SmallFarm.Said(skipped));
        Assert.Equal(new DateTimeOffset(2026, 3, 8, 3, 30, 0, TimeSpan.FromHours(-7)), skipped.Value.Fields[0].FirstWater);
        var doubled = SmallFarm.WithField("first_water", "\"2025-11-02T01:30\"");
        Assert.Equal("FARM-003 fields[0].first_water (Two Gates)", SmallFarm.Said(doubled));
        Assert.Equal(TimeSpan.FromHours(-7), doubled.Value.Fields[0].FirstWater!.Value.Offset);
        Assert.Empty(SmallFarm.WithField("first_water", "\"2025-11-02T01:30-08:00\"").Problems);
    }

    [Fact]
    public void A_stage_that_nobody_said_is_told_by_the_marks()
    {
        FieldStage Stage(string key, string json) => SmallFarm.With(f =>
        {
            ((JsonObject)f["fields"]![0]!).Remove("stage");
            f["fields"]![0]![key] = JsonNode.Parse(json);
        }).Value.Fields[0].Stage;
        Assert.Equal(FieldStage.Sown, Stage("sown_at", "\"2026-05-02\""));
        Assert.Equal(FieldStage.Full, Stage("full_since", "\"2026-05-02\""));
        Assert.Equal(FieldStage.Flooding, Stage("checks_wet", "2"));
        Assert.Equal(FieldStage.Unworked, Stage("checks_wet", "0"));
        Assert.Equal(FieldStage.AquaOn, Stage("aqua_on", "\"2026-05-02\""));
    }

    [Fact]
    public void The_moment_of_planning_can_be_given_from_outside()
    {
        var bytes = Encoding.UTF8.GetBytes(SmallFarm.Json.ToJsonString());
        var state = FarmReading.Read(bytes, SmallFarm.Context with { Now = new DateTimeOffset(2026, 5, 20, 12, 0, 0, TimeSpan.Zero) }).Value;
        Assert.Equal(new DateTimeOffset(2026, 5, 20, 5, 0, 0, TimeSpan.FromHours(-7)), state.Now);
        Assert.Equal(new DateOnly(2026, 7, 19), state.Horizon);
    }

    [Fact]
    public void Wind_and_days_come_in_order_of_time()
    {
        var state = SmallFarm.WithKey("wind", """[ { "at": "2026-05-08T12:00", "sustained_mph": 16, "gust_mph": 24 }, { "at": "2026-05-08T05:00", "sustained_mph": 15, "gust_mph": 22 } ]""").Value;
        Assert.Equal("15 16", string.Join(' ', state.Wind.Select(w => Math.Round(w.Sustained.MilesPerHour))));
    }
}
