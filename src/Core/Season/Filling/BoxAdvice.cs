using Watersown.Hydraulics;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Water;
using Watersown.Water.Flood;

namespace Watersown.Season.Filling;

/// <summary>What has to go through the boxes below one check, and what they can pass.</summary>
/// <param name="Check">The check above.</param>
/// <param name="Width">Of all its boxes together.</param>
/// <param name="Measured">Somebody has told that width; otherwise one usual box is taken.</param>
/// <param name="Flow">What comes to it and does not stay above.</param>
public sealed record BoxAdvice(int Check, Length Width, bool Measured, FlowRate Flow)
{
    /// <summary>Passed with the check at the depth for seed and every board out.</summary>
    public required FlowRate Most { get; init; }

    /// <summary>Top of the boards over the ground so that the check stands at the depth for seed; none where even without boards it stands deeper.</summary>
    public WaterDepth? Boards { get; init; }

    /// <summary>How deep the check stands without boards while all of it goes through; none where that is three widths and more.</summary>
    public WaterDepth? Open { get; init; }

    public required Working Working { get; init; }

    /// <summary>One for each check that gives on to another, at what the field gets.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="scene">The field as it fills.</param>
    [Source(nameof(Sources.WaterMeasurementManual), "ch. 7, Francis 1883: what comes less what the checks above take up, against 3.33 (L − 0.2 H) H^1.5")]
    public static ImmutableArray<BoxAdvice> Of(SeasonState state, FillScene scene)
    {
        var network = FieldFlood.Network(state, scene.Field.Code, scene.Source ?? scene.Field.Code, [new FlowStep(TimeSpan.Zero, scene.Flow)], asMeasured: true);
        var loss = FieldWater.Of(state, scene.Field.Code).Job.Loss;
        var advice = ImmutableArray.CreateBuilder<BoxAdvice>();
        for (var i = 0; i + 1 < network.Checks.Length; i++)
        {
            var width = network.Boxes.Where(b => b.From == i).Select(b => b.Width).FirstOrDefault();
            if (width <= Length.Zero) continue;
            var came = network.Inlets.Where(n => n.To <= i).Aggregate(FlowRate.Zero, (sum, n) => sum + n.Flow[0].Flow);
            var land = network.Checks.Take(i + 1).Aggregate(Area.Zero, (sum, c) => sum + c.Area);
            var kept = Ponding.HoldingFlow(land, loss);
            advice.Add(Of(scene, i, width, came, kept));
        }

        return advice.ToImmutable();
    }

    private static BoxAdvice Of(FillScene scene, int place, Length width, FlowRate came, FlowRate kept)
    {
        var flow = came > kept ? came - kept : FlowRate.Zero;
        var wished = WaterTargets.Sowing;
        var most = Weir.FreeFlow(WeirKind.Contracted, wished, width);
        var check = scene.Checks[place].Number;
        var measured = scene.Field.Boxes.Any(b => b.Kind == BoxKind.BetweenChecks && b.FromCheck == check && b.Width is not null);
        // Far below: the check that fills takes water over dry ground.
        var low = WaterDepth.FromFeet(-1);
        var open = BoardSetting.Head(flow, width, WeirKind.Contracted, low);
        var boards = BoardSetting.Boards(wished, flow, width, WeirKind.Contracted, WaterDepth.Zero, WaterDepth.FromFeet(1));
        return new BoxAdvice(check, width, measured, flow)
        {
            Most = most,
            Boards = boards,
            Open = open,
            Working = Working.Empty
                .Given("Qi", "comes to this check and those above", came.CubicFeetPerSecond, "cfs", "inlets")
                .Given("Qk", "they take up themselves once covered", kept.CubicFeetPerSecond, "cfs", "land × loss")
                .Step("Q", "must go through", flow.CubicFeetPerSecond, "cfs", "Qi − Qk", Sources.WaterBalance)
                .Given("L", measured ? "width of its boxes" : "width of a usual box: nobody has told it", width.Feet, "ft", measured ? "farm" : "usual")
                .Given("d", "depth for seed", wished.Inches, "in", "farm")
                .Step("Q1", "passed at that depth with every board out", most.CubicFeetPerSecond, "cfs", "3.33 (L − 0.2 H) H^1.5, H = d / 12", Sources.WaterMeasurementManual.At("ch. 7, Francis 1883"))
                .Step("H", "depth at which all of it goes through without boards", Datum.Of(open?.Inches), "in", "the same, turned around", Sources.WaterMeasurementManual.At("ch. 7, Francis 1883"))
                .Step("B", "boards over the ground", Datum.Of(boards?.Inches), "in", "d − H, none where H is more than d", Sources.Arithmetic),
        };
    }
}
