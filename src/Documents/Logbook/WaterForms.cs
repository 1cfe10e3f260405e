using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Season;
using static Watersown.Documents.Logbooks.FactForm;

namespace Watersown.Documents.Logbooks;

/// <summary>Facts of water.</summary>
internal static class WaterForms
{
    private static OutlineKey Source => Need("source", Text, "source code");

    public static ImmutableArray<FactForm> All { get; } =
    [
        Of<CheckWater>("check-water",
            [OfField, Need(SeasonLimits.Check, "number of the check from the head"), Need("water", new Outline.Word(MarkWords.Water.All), "what the water did")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Number("check", f.Check);
                pen.Text("water", MarkWords.Water.Of(f.Water));
            },
            f => new CheckWater(f.Text("field")!, f.Whole("check")!.Value, MarkWords.Water.Find(f.Text("water"))!.Value)),
        Of<DepthRead>("depth",
            [OfField, May(SeasonLimits.Check, "number of the check; the field as a whole where not given"), Need(ScheduleLimits.Depth, "depth at the stick")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Number("check", f.Check);
                pen.Number("depth_in", f.Depth.Inches);
            },
            f => new DepthRead(f.Text("field")!, f.Whole("check"), WaterDepth.FromInches(f.Number("depth_in")!.Value))),
        Of<BoardsSet>("boards",
            [OfField, Need(SeasonLimits.Box, "number of the box"), Need(SeasonLimits.Boards, "height of its boards")],
            (pen, f) =>
            {
                pen.Text("field", f.Field);
                pen.Number("box", f.Box);
                pen.Number("height_in", f.Height.Inches);
            },
            f => new BoardsSet(f.Text("field")!, f.Whole("box")!.Value, WaterDepth.FromInches(f.Number("height_in")!.Value))),
        Of<FlowSeen>("flow",
            [Source, Need(SeasonLimits.Flow, "what the source gives"), May("how", Text, "how it was measured")],
            (pen, f) =>
            {
                pen.Text("source", f.Source);
                pen.Number("flow_cfs", f.Flow.CubicFeetPerSecond);
                pen.Text("how", f.How);
            },
            f => new FlowSeen(f.Text("source")!, Flow(f), f.Text("how"))),
        Of<WaterOrdered>("order",
            [
                Source,
                Need("from", new Outline.Instant(), "when the flow is to change"),
                Need(SeasonLimits.Flow, "what is to run from then"),
                Need("state", new Outline.Word(MarkWords.Orders.All), "how far the order has come"),
                May("order_no", Text, "the district's number for it"),
                May("by_voice", new Outline.Flag(), "said by voice"),
            ],
            WriteOrder,
            f => new WaterOrdered(f.Text("source")!, f.Instant("from")!.Value, Flow(f), MarkWords.Orders.Find(f.Text("state"))!.Value)
            {
                OrderNumber = f.Text("order_no"),
                ByVoice = f.Flag("by_voice") ?? false,
            }),
        Of<SourceSwitched>("source-state",
            [Source, Need("state", new Outline.Word(["up", "down"]), "running or not")],
            (pen, f) =>
            {
                pen.Text("source", f.Source);
                pen.Text("state", f.Up ? "up" : "down");
            },
            f => new SourceSwitched(f.Text("source")!, f.Text("state") == "up")),
        Of<WaterCurtailed>("curtailed",
            [
                Source,
                Need("from", new Outline.Instant(), "from when"),
                May("until", new Outline.Instant(), "until when; until further notice where not given"),
                May(LandLimits.Left, "the most that is left of it; curtailed no longer where not given"),
            ],
            (pen, f) =>
            {
                pen.Text("source", f.Source);
                pen.Instant("from", f.From);
                pen.Instant("until", f.Until);
                pen.Number("left_cfs", f.Left?.CubicFeetPerSecond);
            },
            f => new WaterCurtailed(f.Text("source")!, f.Instant("from")!.Value)
            {
                Until = f.Instant("until"),
                Left = f.Number(LandLimits.Left) is { } left ? FlowRate.FromCubicFeetPerSecond(left) : null,
            }),
        Of<FaultFound>("fault",
            [
                Need("fault", new Outline.Word(MarkWords.Faults.All), "what is broken"),
                AnyField,
                May("source", Text, "source code"),
                May(SeasonLimits.Check, "check it is at; for a levee, the one above it"),
                May(SeasonLimits.ToCheck, "for a levee, the check below it"),
                May(SeasonLimits.Box, "number of the box"),
                May(SeasonLimits.Gap, "how wide the gap is"),
                May("photo", Text, "name of the picture taken of it"),
            ],
            WriteFault,
            f => new FaultFound(MarkWords.Faults.Find(f.Text("fault"))!.Value)
            {
                Field = f.Text("field"),
                Source = f.Text("source"),
                Check = f.Whole("check"),
                ToCheck = f.Whole("to_check"),
                Box = f.Whole("box"),
                Width = f.Number("width_ft") is { } feet ? Length.FromFeet(feet) : null,
                Photo = f.Text("photo"),
            }),
        Of<FaultMended>("fault-mended",
            [Need("fault", Text, "name of the mark that told of it")],
            (pen, f) => pen.Text("fault", f.Fault.Text),
            f => new FaultMended(new MarkId(f.Text("fault")!))),
    ];

    private static FlowRate Flow(JsonFacts facts) => FlowRate.FromCubicFeetPerSecond(facts.Number("flow_cfs")!.Value);

    private static void WriteOrder(JsonPen pen, WaterOrdered f)
    {
        pen.Text("source", f.Source);
        pen.Instant("from", f.From);
        pen.Number("flow_cfs", f.Flow.CubicFeetPerSecond);
        pen.Text("state", MarkWords.Orders.Of(f.State));
        pen.Text("order_no", f.OrderNumber);
        pen.Flag("by_voice", f.ByVoice);
    }

    private static void WriteFault(JsonPen pen, FaultFound f)
    {
        pen.Text("fault", MarkWords.Faults.Of(f.Kind));
        pen.Text("field", f.Field);
        pen.Text("source", f.Source);
        pen.Number("check", f.Check);
        pen.Number("to_check", f.ToCheck);
        pen.Number("box", f.Box);
        pen.Number("width_ft", f.Width?.Feet);
        pen.Text("photo", f.Photo);
    }
}
