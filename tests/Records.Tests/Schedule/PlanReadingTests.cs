using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Watersown.Documents.Json;
using Watersown.Documents.Plan;
using Watersown.Records.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;

namespace Watersown.Records.Schedule;

public sealed class PlanReadingTests
{
    private static readonly Lazy<SeasonPlan> Searched = new(() => PlanSeason.Run(
        OpenFarm.Run(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")).Value,
        new PlanOptions { Budget = TimeSpan.FromSeconds(0.5) }));

    private static SeasonPlan Back(SeasonPlan plan) => Read(PlanDocument.Write(plan), plan.State).Value;

    private static Outcome<SeasonPlan> Read(string text, SeasonState state) => PlanReading.Read(Encoding.UTF8.GetBytes(text), state);

    [Fact]
    public void A_searched_plan_written_read_and_written_again_is_the_same_byte_for_byte()
    {
        var written = PlanDocument.Write(Searched.Value);
        var read = Read(written, Searched.Value.State);
        Assert.Empty(read.Problems);
        Assert.Equal(written, PlanDocument.Write(read.Value));
    }

    [Fact]
    public void Everything_a_morning_shows_is_the_same_from_the_saved_plan()
    {
        var (plan, back) = (PlannedMorning.Plan(), Back(PlannedMorning.Plan()));
        var day = new DateOnly(2026, 5, 8);
        Assert.Equal(Messages.Of(plan, day), Messages.Of(back, day));
        Assert.Equal(DaySheets.Of(plan, day).Decisions.Select(d => (d.By, d.What, d.Cost)), DaySheets.Of(back, day).Decisions.Select(d => (d.By, d.What, d.Cost)));
        Assert.Equal(
            SowingBoard.Of(plan, day, 7).SelectMany(r => r.Cells.Select(c => (r.Field.Code, c.Day, c.Planned, string.Join(',', c.Blocks)))),
            SowingBoard.Of(back, day, 7).SelectMany(r => r.Cells.Select(c => (r.Field.Code, c.Day, c.Planned, string.Join(',', c.Blocks)))));
        var (sheets, again) = (SheetSet.Of(plan, new SheetChoice()).Value, SheetSet.Of(back, new SheetChoice()).Value);
        Assert.Equal(sheets.Pages.Length, again.Pages.Length);
        Assert.Equal(sheets.Texts, again.Texts);
    }

    [Fact]
    public void Any_plan_comes_back_as_it_was_written()
    {
        var moments = Gen.Int[0, 60 * 24 * 60].Select(m => PlannedMorning.Now.AddMinutes(m));
        var task = Gen.Select(Gen.Int[0, 3].Select(i => new[] { "N1", "N3", "R4", "H6" }[i]), Gen.Enum<PlanTaskKind>(), moments, Gen.Int[0, 5000], Gen.Double[0, 60], Gen.Double[1, 40_000], Gen.Int[1, 40], Gen.Bool)
            .Select((field, kind, start, minutes, cfs, pounds, loads, flag) => new PlanTask(field, kind, start, start.AddMinutes(minutes), flag ? string.Empty : "Heron's Elbow \u00d7 \"2\"")
            {
                Implement = kind == PlanTaskKind.Ground ? GroundWork.Plane : null,
                Flow = flag ? FlowRate.FromCubicFeetPerSecond(cfs) : null,
                From = flag ? [("NT-1", FlowRate.FromCubicFeetPerSecond(cfs / 3)), ("ST-2", FlowRate.FromCubicFeetPerSecond(cfs * 2 / 3))] : [],
                Batch = flag ? "B-08" : null,
                Dry = DrySeed.FromPounds(pounds),
                Soaked = flag ? SoakedSeed.FromPounds(pounds * 1.25) : null,
                Trailers = flag ? loads : null,
                Loads = loads,
                Fixed = !flag,
                Pinned = flag,
                Reasons = flag ? ["Porque sí, \u00bd d\u00eda.", string.Empty] : [],
                Working = Working.Empty.Given("A", "acres", cfs, "ac", flag ? "field N1" : null, flag ? start : null)
                    .Constant("c", "a constant", flag, string.Empty, Sources.FarmDefault.At("by hand"))
                    .Step("t", "a table", Datum.ListOf([Datum.Row(("x", pounds), ("y", Datum.None))]), string.Empty, "A × c", Sources.Villemonte1947.At("fig. 2")),
            });
        var money = Gen.Int[0, 100_000_000].Select(t => Money.FromDollars(t / 1000m));
        Gen.Select(task.Array[0, 12], money.Array[7], Gen.Double[0, 100]).Sample((tasks, m, seconds) =>
        {
            var plan = PlannedMorning.Plan() with
            {
                Tasks = [.. tasks],
                Cost = new PlanCost(m[0], m[1], m[2], m[3], m[4], m[5]),
                Bound = m[6],
                SolveTime = TimeSpan.FromSeconds(seconds),
            };
            var written = PlanDocument.Write(plan);
            Assert.Equal(written, PlanDocument.Write(Read(written, plan.State).Value));
        }, iter: 200);
    }

    [Fact]
    public void A_plan_of_another_farm_is_refused()
    {
        var read = Read(PlanDocument.Write(PlannedMorning.Plan()).Replace("Marrowfen Farm", "Another Farm", StringComparison.Ordinal), PlannedMorning.State());
        Assert.Equal(PlanProblems.OtherFarm, Assert.Single(read.Problems).Kind);
        Assert.True(read.IsRefused);
    }

    [Fact]
    public void What_the_farm_no_longer_has_is_left_out_and_said_once()
    {
        var plan = PlannedMorning.Plan() with { LostBatches = ["B-07a"], Orders = [new OrderedFlow("NT-1", PlannedMorning.Now, PlannedMorning.Now.AddDays(2), FlowRate.FromCubicFeetPerSecond(14))] };
        var state = plan.State;
        state = state with
        {
            Farm = state.Farm with { Fields = [.. state.Farm.Fields.Where(f => f.Code != "N3")], Sources = [.. state.Farm.Sources.Where(s => s.Code != "NT-1")] },
            Fields = [.. state.Fields.Where(f => f.Code != "N3")],
            Batches = [.. state.Batches.Where(b => b.Code != "B-07a")],
        };
        var read = Read(PlanDocument.Write(plan), state);
        Assert.Equal([PlanProblems.FieldGone, PlanProblems.SourceGone, PlanProblems.BatchGone], read.Problems.Select(p => p.Kind));
        Assert.DoesNotContain(read.Value.Tasks, t => t.Field == "N3");
        Assert.Equal(plan.Tasks.Count(t => t.Field != "N3"), read.Value.Tasks.Length);
        Assert.Empty(read.Value.Orders);
        Assert.Empty(read.Value.LostBatches);
        Assert.NotEmpty(DaySheets.Of(read.Value, new DateOnly(2026, 5, 8)).Decisions);
    }

    [Fact]
    public void Whatever_is_wrong_with_the_form_is_said_at_once_with_its_place()
    {
        var node = JsonNode.Parse(PlanDocument.Write(PlannedMorning.Plan()))!.AsObject();
        node.Remove("orders");
        node["tasks"]![0]!["start"] = "tomorrow";
        node["tasks"]![1]!["task"] = "dig";
        node["number"] = 1.5;
        var read = Read(node.ToJsonString(), PlannedMorning.State());
        Assert.True(read.IsRefused);
        Assert.Equal(["number", "orders", "tasks[0].start", "tasks[1].task"], read.Problems.Select(p => p.Where).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_farm_document_and_a_newer_plan_are_told_from_a_plan()
    {
        Assert.Equal(JsonProblems.NotThisDocument, Assert.Single(Read("{\"watersown_farm\": 1}", PlannedMorning.State()).Problems).Kind);
        Assert.Equal(JsonProblems.NewerVersion, Assert.Single(Read("{\"watersown_plan\": 2}", PlannedMorning.State()).Problems).Kind);
        Assert.Equal(JsonProblems.Empty, Assert.Single(Read(string.Empty, PlannedMorning.State()).Problems).Kind);
    }

    [Fact]
    public void No_bytes_make_it_throw()
    {
        var whole = PlanDocument.Write(PlannedMorning.Plan());
        Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Char[' ', '~']).Sample((at, letter) =>
        {
            _ = Read(whole[..at] + letter + whole[(at + 1)..], PlannedMorning.State());
            _ = Read(whole[..at], PlannedMorning.State());
        }, iter: 300);
    }

    [Fact]
    public void Schema_and_reader_know_the_same_keys()
    {
        var schema = JsonNode.Parse(File.ReadAllText(Path.Combine(ReferenceFile.RepositoryRoot, "docs", "plan.schema.json")))!;
        var things = OutlineSchema.Things(PlanOutline.Root).ToDictionary(t => t.Name, StringComparer.Ordinal);
        Assert.Equal(Keys(schema), things["plan"].Keys.Select(k => k.Name));
        Assert.Equal(Keys(schema["$defs"]!["task"]!), things["task"].Keys.Select(k => k.Name));
        Assert.Equal(Keys(schema["$defs"]!["working"]!["items"]!), things["working line"].Keys.Select(k => k.Name));
        foreach (var (list, thing) in new[] { ("orders", "order"), ("decisions", "decision"), ("conflicts", "conflict") })
            Assert.Equal(Keys(schema["properties"]![list]!["items"]!), things[thing].Keys.Select(k => k.Name));
    }

    private static IEnumerable<string> Keys(JsonNode thing) => thing["properties"]!.AsObject().Select(p => p.Key);
}
