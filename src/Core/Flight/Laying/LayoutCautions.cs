namespace Watersown.Flight.Laying;

/// <summary>What stands beside every layout.</summary>
public static class LayoutCautions
{
    /// <summary>English, for a figure that is told by itself.</summary>
    public static ImmutableArray<string> Of(FieldLayout layout)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (layout.Lines.Any(line => line.Spans.Length > 1)) cautions.Add("The gate is shut over each gap in the land; a pass that may not fly over one is split in two.");
        if (!layout.Bound.Convex) cautions.Add("The field has a bay or a hole: the bound is honest but loose, and the gap is not all waste.");
        cautions.Add("A wish, not a flight path: it knows what was told of wires, towers, trees and houses and no more, and nothing of wind and sun. Walk the field and tell the pilot of each hazard by day.");
        cautions.Add("A planning figure, not flight guidance: the pilot decides whether, how and with what load to fly.");
        return cautions.ToImmutable();
    }
}
