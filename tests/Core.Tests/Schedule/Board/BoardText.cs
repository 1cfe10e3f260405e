using System.Globalization;
using System.Text;

namespace Watersown.Schedule.Board;

/// <summary>A board as lines of text, so that a person can read in a difference what moved.</summary>
internal static class BoardText
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static string Of(ScheduleBoard board)
    {
        var text = new StringBuilder();
        text.AppendLine(Plain, $"{board.Span.Zoom} {At(board.Span.From)} to {At(board.Span.Until)}, now {At(board.Now)}");
        foreach (var band in board.Bands) text.AppendLine(Plain, $"band {band.Kind} {At(band.From)} - {At(band.Until)}");
        foreach (var row in board.Rows) Row(text, row);
        foreach (var flow in board.Flows) Flow(text, flow);
        foreach (var lane in board.Lanes) Lane(text, lane);
        return text.ToString();
    }

    private static void Row(StringBuilder text, BoardRow row)
    {
        var since = row.Reason.At is { } at ? At(at) : "-";
        text.AppendLine(Plain, $"{row.Field.Code} {row.Group}: {row.Reason.Hold} {since}{string.Concat(row.Reason.Others.Select(o => " " + o))}");
        foreach (var bar in row.Bars)
            text.AppendLine(Plain, $"  {bar.Track}{bar.Layer} {bar.State} {At(bar.From)} - {At(bar.Until)}{(bar.GoesOn ? " >" : "")}{(bar.Fixed ? " fixed" : "")}{(bar.Pinned ? " pinned" : "")}{(bar.Told is { } told ? " told " + told.Who : "")}");
        foreach (var moment in row.Moments) text.AppendLine(Plain, $"  by {At(moment.At)} {moment.Task.Kind}");
    }

    private static void Flow(StringBuilder text, FlowLane flow)
    {
        text.AppendLine(flow.Source.Code);
        foreach (var s in flow.Steps)
            text.AppendLine(Plain, $"  {At(s.From)} - {At(s.Until)} given {s.Given.CubicFeetPerSecond:0.00} hold {s.Holding.CubicFeetPerSecond:0.00} fill {s.Filling.CubicFeetPerSecond:0.00}{(s.Short > FlowRate.Zero ? s.Short.CubicFeetPerSecond.ToString(" 'short' 0.00", Plain) : "")}");
        foreach (var c in flow.Changes) text.AppendLine(Plain, $"  ask by {At(c.AskBy)}: {c.From.CubicFeetPerSecond:0.0} to {c.To.CubicFeetPerSecond:0.0} at {At(c.At)}");
    }

    private static void Lane(StringBuilder text, UseLane lane)
    {
        text.AppendLine(Plain, $"{lane.Kind} {lane.Name} {lane.Most?.ToString(Plain) ?? "any"} in {lane.Layers} layers");
        foreach (var slot in lane.Slots) text.AppendLine(Plain, $"  slot {At(slot.From)} - {At(slot.Until)}{(slot.Blown ? " blown" : "")}");
        foreach (var bar in lane.Bars) text.AppendLine(Plain, $"  {bar.Layer} {bar.Use} {bar.Field ?? bar.Batch} {At(bar.From)} - {At(bar.Until)}");
    }

    private static string At(DateTimeOffset moment) => moment.ToString("d HH:mm", Plain);
}
