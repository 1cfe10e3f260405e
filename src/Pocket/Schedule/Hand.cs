using Microsoft.AspNetCore.Components.Web;
using Watersown.Land;
using Watersown.Schedule.Board;

namespace Watersown.Pocket.Schedule;

/// <summary>What a hand does to a step on the board.</summary>
public enum HandKind
{
    Down,
    Press,
    Key,
}

/// <summary>A hand on a step: with a pointer, by a press, or by the keyboard.</summary>
public sealed record Hand(HandKind Kind, PointerEventArgs? Pointer, BoardBar Bar, Field Field)
{
    public KeyboardEventArgs? Key { get; init; }

    /// <summary>A mouse takes a step and moves it in one go. A finger takes it first, so that the board can still be pushed about.</summary>
    public bool Drags(Moving? moving) => Kind == HandKind.Down && Pointer is { Button: 0 } && (Pointer.PointerType == "mouse" || moving?.Key == Bar.Key);
}
