using Watersown.Pocket.Page;
using Watersown.Schedule;
using Watersown.Season;
using Watersown.Season.Boards;
using Watersown.Wording;

namespace Watersown.Pocket.Schedule.Morning;

/// <summary>Words and patterns of the Morning page's states.</summary>
internal static class MorningSaid
{
    /// <summary>The state that a block is drawn as.</summary>
    public static StateKind Kind(SowingBlock block) => block switch
    {
        SowingBlock.Ground => StateKind.Ground,
        SowingBlock.Water => StateKind.NoWater,
        SowingBlock.Seed => StateKind.NoSeed,
        SowingBlock.Plane => StateKind.Plane,
        SowingBlock.Wind => StateKind.Wind,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>Figures and a leading plus: what a telephone dials.</summary>
    public static string Dialled(string phone) => string.Concat(phone.Where((c, i) => char.IsAsciiDigit(c) || (c == '+' && i == 0)));

    /// <summary>How far a call has come, in a word.</summary>
    public static string Of(CallState state, MorningWords words) => state switch
    {
        CallState.ToTell => words.StateToTell,
        CallState.NotReached => words.StateNotReached,
        CallState.Told => words.StateTold,
        CallState.Heard => words.StateHeard,
        CallState.Agreed => words.StateAgreed,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>What the wind of some hours comes to, in a word or two.</summary>
    public static string Of(SlotAir air, MorningWords words) => air switch
    {
        SlotAir.Over => words.Over,
        SlotAir.PartOver => words.PartOver,
        SlotAir.Within => words.Within,
        SlotAir.NoWord => words.NoWord,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
