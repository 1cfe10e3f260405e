using Microsoft.AspNetCore.Components;
using Watersown.Pocket.Page;
using Watersown.Schedule.Board.Paper;

namespace Watersown.Pocket.Schedule;

/// <summary>A part of the board. A board is long to draw, so that each part is drawn anew only where something of it changed.</summary>
public abstract class BoardPart : DeskComponent
{
    private (BoardPaper Paper, object? Shown, object Telling)? drawn;

    [Parameter, EditorRequired] public BoardPaper Paper { get; set; } = null!;

    /// <summary>What it shows besides the paper.</summary>
    protected virtual object? Shown => null;

    protected override bool ShouldRender()
    {
        var now = (Paper, Shown, (object)Desk.Telling);
        if (drawn is { } was && ReferenceEquals(was.Paper, now.Paper) && ReferenceEquals(was.Telling, now.Item3) && Equals(was.Shown, now.Shown)) return false;
        drawn = now;
        return true;
    }
}
