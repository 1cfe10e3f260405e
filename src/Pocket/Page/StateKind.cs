namespace Watersown.Pocket.Page;

/// <summary>A state that the desk draws: each has a word, a pattern and a color.</summary>
public enum StateKind
{
    Dry,
    Ground,
    Filling,
    Full,
    Soaking,
    Drained,
    Sown,
    Can,
    Wind,
    Spent,
    Plane,
    Unknown,

    /// <summary>No water on it yet, as what stands against sowing.</summary>
    NoWater,

    /// <summary>No seed ready, as what stands against sowing.</summary>
    NoSeed,
}

/// <summary>The word and the pattern of each state.</summary>
public static class States
{
    public static string Word(StateKind kind, Wording.DeskWords words) => kind switch
    {
        StateKind.Dry => words.StateDry,
        StateKind.Ground => words.StateGround,
        StateKind.Filling => words.StateFilling,
        StateKind.Full => words.StateFull,
        StateKind.Soaking => words.StateSoaking,
        StateKind.Drained => words.StateDrained,
        StateKind.Sown => words.StateSown,
        StateKind.Can => words.StateCan,
        StateKind.Wind => words.StateWind,
        StateKind.Spent => words.StateSpent,
        StateKind.Plane => words.StatePlane,
        StateKind.NoWater => words.StateWater,
        StateKind.NoSeed => words.StateSeed,
        _ => words.StateUnknown,
    };

    /// <summary>Name of its pattern in the style sheet.</summary>
    public static string Pattern(StateKind kind) => kind switch
    {
        StateKind.Dry => "state-dry",
        StateKind.Ground => "state-ground",
        StateKind.Filling or StateKind.NoWater => "state-filling",
        StateKind.Full => "state-full",
        StateKind.Soaking => "state-soaking",
        StateKind.Drained or StateKind.NoSeed => "state-drained",
        StateKind.Sown => "state-sown",
        StateKind.Can => "state-can",
        StateKind.Wind => "state-wind",
        StateKind.Spent => "state-spent",
        StateKind.Plane => "state-plane",
        _ => "state-unknown",
    };
}
