using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

/// <summary>How high boards stand for a depth wished, and what a box can pass.</summary>
public static class BoardSetting
{
    /// <summary>
    /// Water over the boards while a flow runs over them; none where the box cannot pass it with water up to three widths deep.
    /// </summary>
    /// <param name="flow">To be passed on.</param>
    /// <param name="width">Of the opening.</param>
    /// <param name="kind">Straight crest, drawn in at the ends or not.</param>
    /// <param name="below">How far the water below stands over the boards; below zero where it stands lower.</param>
    [Source(nameof(Sources.WaterMeasurementManual), "ch. 7, Francis 1883, turned around; drowning by Villemonte 1947")]
    public static WaterDepth? Head(FlowRate flow, Length width, WeirKind kind, WaterDepth below)
    {
        var law = new BoxFlow(width.Meters, kind);
        var (low, high) = (Math.Max(0, below.Meters), Math.Max(0, below.Meters) + (3 * width.Meters));
        if (law.At(high, below.Meters) < flow.CubicMetersPerSecond) return null;
        // More water above passes more: halving finds it.
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (law.At(middle, below.Meters) < flow.CubicMetersPerSecond) low = middle;
            else high = middle;
        }

        return WaterDepth.FromMeters(high);
    }

    /// <summary>
    /// Top of the boards over the ground of the check above, so that the check stands at a depth while a flow runs on; none where the
    /// box is too small for it even without boards.
    /// </summary>
    /// <param name="wished">Depth in the check above.</param>
    /// <param name="flow">To be passed on.</param>
    /// <param name="width">Of the opening.</param>
    /// <param name="kind">Straight crest.</param>
    /// <param name="below">Depth in the check below.</param>
    /// <param name="drop">How much lower its ground lies.</param>
    [Source(nameof(Sources.WaterMeasurementManual), "depth wished − head over the boards")]
    public static WaterDepth? Boards(WaterDepth wished, FlowRate flow, Length width, WeirKind kind, WaterDepth below, WaterDepth drop)
    {
        var surface = below - drop;
        var law = new BoxFlow(width.Meters, kind);
        double Passed(double boards) => law.At(wished.Meters - boards, surface.Meters - boards);
        if (Passed(0) < flow.CubicMetersPerSecond) return null;
        var (low, high) = (0.0, wished.Meters);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Passed(middle) >= flow.CubicMetersPerSecond) low = middle;
            else high = middle;
        }

        return WaterDepth.FromMeters(low);
    }
}
