using System.Text.Json.Nodes;

namespace Watersown.Farms;

/// <summary>Facts that are each fine but cannot, or hardly, be true together.</summary>
public sealed class FarmMeaningTests
{
    private const string Sources = """[ { "code": "NT-1", "kind": "district-turnout", "cap_cfs": 20 }, { "code": "ST-2", "kind": "district-turnout", "cap_cfs": 16 } ]""";

    [Theory]
    [InlineData("name", "\"split oak\"", "LAND-001 fields[1].name")]
    [InlineData("code", "\"so\"", "LAND-002 fields[1].code")]
    [InlineData("gross_ac", "117", "LAND-004 fields[0].net_ac (Two Gates)")]
    [InlineData("gross_ac", "118", "LAND-005 fields[0].net_ac (Two Gates)")]
    [InlineData("gross_ac", "135", "LAND-005 fields[0].net_ac (Two Gates)")]
    [InlineData("gross_ac", "124.5", "")]
    [InlineData("certified_ac", "108", "LAND-006 fields[0].certified_ac (Two Gates)")]
    [InlineData("certified_ac", "110", "")]
    [InlineData("checks", """[ { "ac": 60 }, { "ac": 61 } ]""", "LAND-007 fields[0].checks (Two Gates)")]
    [InlineData("checks", """[ { "ac": 60 }, { "ac": 60 } ]""", "")]
    [InlineData("checks", """[ { "ac": 60 }, { "ac": 50 } ]""", "LAND-008 fields[0].checks (Two Gates)")]
    [InlineData("checks", """[ { "number": 1, "ac": 60 }, { "number": 3, "ac": 58 } ]""", "LAND-009 fields[0].checks (Two Gates)")]
    [InlineData("checks", """[ { "number": 2, "ac": 60 }, { "number": 2, "ac": 58 } ]""", "LAND-009 fields[0].checks (Two Gates)")]
    [InlineData("soil", "\"HC\"", "LAND-011 fields[0].soil (Two Gates)")]
    [InlineData("sources", "[\"NT-9\"]", "LAND-011 fields[0].sources (Two Gates)")]
    [InlineData("first_water", "\"2026-05-08T05:01\"", "STATE-001 fields[0].first_water (Two Gates)")]
    [InlineData("first_water", "\"2026-05-08T04:59\"", "")]
    [InlineData("sown_at", "\"2026-05-09T05:00\"", "STATE-001 fields[0].sown_at (Two Gates)\nSTATE-003 fields[0].stage (Two Gates)")]
    [InlineData("aqua_on", "\"2026-05-09\"", "STATE-001 fields[0].aqua_on (Two Gates)")]
    public void A_field_that_cannot_be_so_is_told(string key, string json, string said) => Assert.Equal(said, SmallFarm.Said(SmallFarm.WithField(key, json)));

    [Fact]
    public void Boxes_lead_between_checks_that_are_there()
    {
        var read = SmallFarm.With(f =>
        {
            f["fields"]![0]!["checks"] = 6;
            f["fields"]![0]!["boxes"] = JsonNode.Parse("""[ { "number": 1, "kind": "inlet", "to_check": 1 }, { "number": 2, "kind": "between-checks", "from_check": 6, "to_check": 7 } ]""");
        });
        Assert.Equal("LAND-010 fields[0].boxes[1].to_check (Two Gates)", SmallFarm.Said(read));
    }

    [Fact]
    public void Marks_of_a_field_come_in_the_order_of_the_season()
    {
        var read = SmallFarm.With(f =>
        {
            var field = f["fields"]![0]!;
            field["checks"] = 4;
            field["checks_wet"] = 5;
            field["aqua_on"] = "2026-05-03";
            field["first_water"] = "2026-05-02T06:00";
            field["full_since"] = "2026-05-01T06:00";
        });
        Assert.Equal("STATE-002 fields[0].first_water (Two Gates)\nSTATE-002 fields[0].full_since (Two Gates)\nSTATE-004 fields[0].checks_wet (Two Gates)", SmallFarm.Said(read));
    }

    [Theory]
    [InlineData("flooding", "full_since", "\"2026-05-02\"", "STATE-003 fields[0].stage (Two Gates)")]
    [InlineData("rolled", "checks_wet", "2", "STATE-003 fields[0].stage (Two Gates)")]
    [InlineData("rolled", "first_water", "\"2026-05-02\"", "STATE-003 fields[0].stage (Two Gates)")]
    [InlineData("sown", "full_since", "\"2026-05-02\"", "")]
    public void A_stage_that_its_marks_have_overtaken_is_told(string stage, string key, string json, string said)
    {
        var read = SmallFarm.With(f =>
        {
            f["fields"]![0]!["stage"] = stage;
            f["fields"]![0]![key] = JsonNode.Parse(json);
        });
        Assert.Equal(said, SmallFarm.Said(read));
    }

    [Theory]
    [InlineData("fields", "[]", "LAND-003 fields")]
    [InlineData("season_year", "2029", "LAND-014 season_year")]
    [InlineData("season_year", "2028", "")]
    [InlineData("final_planting", "\"2026-06-16\"", "LAND-013 final_planting")]
    [InlineData("final_planting", "\"2026-06-15\"", "")]
    [InlineData("final_planting", "\"2026-05-14\"", "LAND-013 final_planting")]
    [InlineData("horizon", "\"2026-05-07\"", "STATE-005 horizon")]
    [InlineData("horizon", "\"2026-05-08\"", "")]
    [InlineData("soils", """[ { "code": "HC", "name": "clay", "fill_ft": 0.6, "seep_in_day": 0.1 }, { "code": "HC", "name": "heavy", "fill_ft": 0.6, "seep_in_day": 0.1 } ]""", "LAND-002 soils[1].code")]
    [InlineData("aeroplanes", """[ { "name": "hired", "tested": { "day": "2026-05-01", "spacing_m": 1, "tray_m2": 0.25, "passes_g": [ [1, 2, 3], [1, 2] ] } } ]""", "FARM-008 aeroplanes[0].tested.passes_g (hired)")]
    [InlineData("hazards", """[ { "kind": "wire", "name": "line", "confirmed": "2025-05-01", "near": ["TG", "XX"] } ]""", "LAND-011 hazards[0].near (line)\nLAND-015 hazards[0].confirmed (line)")]
    [InlineData("hazards", """[ { "kind": "wire", "name": "line", "confirmed": "2025-05-10" } ]""", "")]
    [InlineData("sources", """[ { "code": "NT-1", "kind": "district-turnout", "cap_cfs": 20, "running_cfs": 21 } ]""", "LAND-012 sources[0].running_cfs (NT-1)")]
    [InlineData("sources", """[ { "code": "TR-1", "kind": "tailwater", "cap_cfs": 4, "needs_full": { "fields": ["TG", "GT"], "full_ac": 100 } } ]""", "LAND-011 sources[0].needs_full.fields (TR-1)")]
    [InlineData("sources", """[ { "code": "NT-1", "kind": "district-turnout", "cap_cfs": 20, "turns": { "from": "2026-05-09T07:00", "on_h": 72, "every_h": 72 } } ]""", "LAND-017 sources[0].turns.on_h (NT-1)")]
    [InlineData("sources", """[ { "code": "NT-1", "kind": "district-turnout", "cap_cfs": 20, "turns": { "from": "2026-05-09T07:00", "on_h": 72, "every_h": 240, "turn_cfs": 21 } } ]""", "LAND-012 sources[0].turns.turn_cfs (NT-1)")]
    [InlineData("sources", """[ { "code": "NT-1", "kind": "district-turnout", "cap_cfs": 20, "turns": { "from": "2026-05-09T07:00", "on_h": 72, "every_h": 240, "turn_cfs": 16 } } ]""", "")]
    [InlineData("sources", """[ { "code": "NT-1", "kind": "district-turnout", "cap_cfs": 20, "curtailed": [ { "from": "2026-05-09T07:00", "left_cfs": 14 }, { "from": "2026-05-12T07:00", "until": "2026-05-12T07:00", "left_pct": 50 } ] } ]""", "LAND-018 sources[0].curtailed[1].until (NT-1)")]
    [InlineData("sources", """[ { "code": "NT-1", "kind": "district-turnout", "cap_cfs": 20, "curtailed": [ { "from": "2026-05-09T07:00", "left_cfs": 20 } ] } ]""", "LAND-019 sources[0].curtailed[0].left_cfs (NT-1)")]
    [InlineData("sources", """[ { "code": "NT-1", "kind": "district-turnout", "cap_cfs": 20, "curtailed": [ { "from": "2026-05-09T07:00", "until": "2026-05-12T07:00", "left_pct": 70 } ] } ]""", "")]
    [InlineData("shared_caps", """[ { "name": "both", "sources": ["NT-1"], "cap_cfs": 30 } ]""", "LAND-011 shared_caps[0].sources (both)")]
    [InlineData("pins", """[ { "field": "XX", "task": "sow", "start": "2026-05-10T06:00" } ]""", "LAND-011 pins[0].field")]
    [InlineData("pins", """[ { "field": "TG", "task": "sew", "start": "2026-05-10T06:00" } ]""", "DOC-011 pins[0].task (Small)")]
    [InlineData("people", """[ { "name": "Bly", "role": "driver", "phone": "555-0104" } ]""", "STATE-006 people[0].phone (Bly)")]
    [InlineData("people", """[ { "name": "Bly", "role": "driver", "phone": "(555) 555-0104" } ]""", "")]
    [InlineData("crew", """{ "work_from": "18:00", "work_until": "06:00" }""", "STATE-007 crew.work_until")]
    [InlineData("flying_hours", """{ "from": "10:00", "until": "05:00" }""", "STATE-007 flying_hours.until")]
    [InlineData("slots", """[ { "day": "2026-05-09", "from": "10:00", "until": "06:30" } ]""", "STATE-007 slots[0].until (2026-05-09)")]
    [InlineData("slots", """[ { "day": "2026-05-09", "from": "06:30", "until": "10:00", "aeroplane": "hired" } ]""", "LAND-011 slots[0].aeroplane (2026-05-09)")]
    [InlineData("aeroplanes", """[ { "name": "hired", "working_load_wet_lb": 3100, "top_load_wet_lb": 3000 } ]""", "STATE-011 aeroplanes[0].working_load_wet_lb (hired)")]
    [InlineData("aeroplanes", """[ { "name": "hired", "strip": "Elbow" } ]""", "LAND-011 aeroplanes[0].strip (hired)")]
    [InlineData("wind", """[ { "at": "2026-05-08T05:00", "sustained_mph": 15, "gust_mph": 12 } ]""", "STATE-008 wind[0].gust_mph (2026-05-08 05:00)")]
    [InlineData("wind", """[ { "at": "2026-05-08T05:00", "sustained_mph": 5, "gust_mph": 12 }, { "at": "2026-05-08T05:00", "sustained_mph": 6, "gust_mph": 12 } ]""", "STATE-012 wind[1].at")]
    [InlineData("wind", """[ { "at": "2026-05-08T12:00", "sustained_mph": 5, "gust_mph": 12, "issued": "2026-05-07T16:49" } ]""", "STATE-010 wind")]
    [InlineData("wind", """[ { "at": "2026-05-08T12:00", "sustained_mph": 5, "gust_mph": 12, "issued": "2026-05-07T16:51" } ]""", "")]
    [InlineData("warmth", """[ { "day": "2026-05-08", "high_f": 53, "low_f": 78 } ]""", "STATE-009 warmth[0].low_f (2026-05-08)")]
    [InlineData("soak_place", """{ "name": "A", "soak_least_h": 50, "soak_most_h": 48 }""", "SEED-009 soak_place.soak_most_h")]
    [InlineData("soak_place", """{ "name": "A", "soak_lost_h": 40 }""", "SEED-009 soak_place.soak_lost_h")]
    public void A_farm_that_cannot_be_so_is_told(string key, string json, string said) => Assert.Equal(said, SmallFarm.Said(SmallFarm.WithKey(key, json)));

    [Fact]
    public void Sources_under_one_cap_are_added_up()
    {
        var read = SmallFarm.With(f =>
        {
            f["sources"] = JsonNode.Parse(Sources);
            f["sources"]![0]!["running_cfs"] = 15;
            f["sources"]![1]!["running_cfs"] = 15.5;
            f["shared_caps"] = JsonNode.Parse("""[ { "name": "both", "sources": ["NT-1", "ST-2"], "cap_cfs": 30 } ]""");
        });
        Assert.Equal("LAND-012 shared_caps[0].cap_cfs (both)", SmallFarm.Said(read));
    }

    [Theory]
    [InlineData("""{ "variety": "E-2" }""", "SEED-002 batches[0].variety (B-08)")]
    [InlineData("""{ "lot": "E-1 lot 3" }""", "SEED-003 batches[0].lot (B-08)")]
    [InlineData("""{ "code": "B-07" }""", "SEED-001 batches[1].code")]
    [InlineData("""{ "trailers": ["2", "1"] }""", "SEED-004 batches[1].trailers (B-07)")]
    [InlineData("""{ "drained": "2026-05-06T05:00" }""", "SEED-005 batches[0].drained (B-08)")]
    [InlineData("""{ "drained": "2026-05-06T23:00" }""", "SEED-006 batches[0].drained (B-08)")]
    [InlineData("""{ "drained": "2026-05-07T06:00" }""", "")]
    [InlineData("""{ "drained": "2026-05-08T06:00" }""", "STATE-001 batches[0].drained (B-08)")]
    [InlineData("""{ "in_soak": "2026-05-05T06:00", "drained": "2026-05-07T19:00" }""", "SEED-006 batches[0].drained (B-08)")]
    [InlineData("""{ "meant_for": ["SO"] }""", "SEED-007 batches[0].meant_for (B-08)")]
    [InlineData("""{ "meant_for": ["TG"] }""", "")]
    [InlineData("""{ "meant_for": ["XX"] }""", "LAND-011 batches[0].meant_for (B-08)")]
    [InlineData("""{ "weighed_wet_lb": 15000 }""", "SEED-008 batches[0].weighed_wet_lb (B-08)")]
    [InlineData("""{ "weighed_wet_lb": 18600 }""", "")]
    public void Seed_that_cannot_be_so_is_told(string change, string said)
    {
        var read = SmallFarm.With(f =>
        {
            f["fields"]![0]!["variety"] = "E-1";
            f["fields"]![1]!["variety"] = "E-2";
            f["lots"] = JsonNode.Parse("""[ { "code": "E-1 lot 2", "variety": "E-1" } ]""");
            f["batches"] = JsonNode.Parse("""
                [ { "code": "B-08", "lot": "E-1 lot 2", "variety": "E-1", "dry_lb": 14880, "in_soak": "2026-05-06T06:00" },
                  { "code": "B-07", "lot": "E-1 lot 2", "variety": "E-1", "dry_lb": 15450, "in_soak": "2026-05-05T06:00", "trailers": ["1"] } ]
                """);
            foreach (var (key, value) in JsonNode.Parse(change)!.AsObject()) f["batches"]![0]![key] = value!.DeepClone();
        });
        Assert.Equal(said, SmallFarm.Said(read));
    }
}
