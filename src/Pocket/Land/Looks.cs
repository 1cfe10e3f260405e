using Watersown.Pocket.Page;
using Watersown.Season.Ground;
using Watersown.Wording;

namespace Watersown.Pocket.Land;

/// <summary>The word and the drawn state of each look of the ground, and of each span of a field's clocks.</summary>
internal static class Looks
{
    /// <summary>From what has just begun to what is done.</summary>
    public static ImmutableArray<GroundLook> All { get; } = [GroundLook.Unknown, GroundLook.Dry, GroundLook.Filling, GroundLook.Full, GroundLook.Sown];

    public static string Word(GroundLook look, LandScreenWords words) => look switch
    {
        GroundLook.Dry => words.LookDry,
        GroundLook.Filling => words.LookFilling,
        GroundLook.Full => words.LookFull,
        GroundLook.Sown => words.LookSown,
        _ => words.LookUnknown,
    };

    public static StateKind Kind(GroundLook look) => look switch
    {
        GroundLook.Dry => StateKind.Dry,
        GroundLook.Filling => StateKind.Filling,
        GroundLook.Full => StateKind.Full,
        GroundLook.Sown => StateKind.Sown,
        _ => StateKind.Unknown,
    };

    /// <summary>Name of the pattern on either map.</summary>
    public static string Name(GroundLook look) => look switch
    {
        GroundLook.Dry => "dry",
        GroundLook.Filling => "fill",
        GroundLook.Full => "full",
        GroundLook.Sown => "sown",
        _ => "unknown",
    };

    public static string Word(ClockState state, LandScreenWords words) => state switch
    {
        ClockState.GroundWork => words.ClockWork,
        ClockState.Dry => words.ClockDry,
        ClockState.Filling => words.ClockFilling,
        ClockState.Full => words.ClockFull,
        ClockState.Soaking => words.ClockSoaking,
        ClockState.Drained => words.ClockDrained,
        ClockState.Spent => words.ClockSpent,
        ClockState.Sowing => words.ClockSowing,
        ClockState.Sown => words.ClockSown,
        _ => words.ClockUnknown,
    };

    /// <summary>Pattern of a span in the style sheet.</summary>
    public static string Pattern(ClockState state) => States.Pattern(state switch
    {
        ClockState.GroundWork => StateKind.Ground,
        ClockState.Dry => StateKind.Dry,
        ClockState.Filling => StateKind.Filling,
        ClockState.Full => StateKind.Full,
        ClockState.Soaking => StateKind.Soaking,
        ClockState.Drained => StateKind.Drained,
        ClockState.Spent => StateKind.Spent,
        ClockState.Sowing => StateKind.Plane,
        ClockState.Sown => StateKind.Sown,
        _ => StateKind.Unknown,
    });

    public static string Lane(ClockLane lane, LandScreenWords words) => lane switch
    {
        ClockLane.Ground => words.Ground,
        ClockLane.Water => words.Water,
        ClockLane.Seed => words.Seed,
        _ => words.Air,
    };
}
