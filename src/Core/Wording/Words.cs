namespace Watersown.Wording;

/// <summary>
/// All words that crew see, one table for each language. A language that lacks a word does not compile; places in braces
/// are the same in every language, and a test says so.
/// </summary>
public sealed record Words
{
    private Words()
    {
    }

    public static Words English { get; } = new()
    {
        Common = CommonWords.English,
        Flight = FlightWords.English,
        Map = MapWords.English,
        Seed = SeedWords.English,
        Water = WaterWords.English,
        Day = DayWords.English,
        Text = TextWords.English,
        Calendar = CalendarWords.English,
        Index = IndexWords.English,
        Link = LinkWords.English,
        SignIn = SignInWords.English,
        WaterScreen = WaterScreenWords.English,
        SeedScreen = SeedScreenWords.English,
        FlightScreen = FlightScreenWords.English,
        Desk = DeskWords.English,
        Morning = MorningWords.English,
        Story = StoryWords.English,
        Echo = EchoWords.English,
    };

    public static Words Spanish { get; } = new()
    {
        Common = CommonWords.Spanish,
        Flight = FlightWords.Spanish,
        Map = MapWords.Spanish,
        Seed = SeedWords.Spanish,
        Water = WaterWords.Spanish,
        Day = DayWords.Spanish,
        Text = TextWords.Spanish,
        Calendar = CalendarWords.Spanish,
        Index = IndexWords.Spanish,
        Link = LinkWords.Spanish,
        SignIn = SignInWords.Spanish,
        WaterScreen = WaterScreenWords.Spanish,
        SeedScreen = SeedScreenWords.Spanish,
        FlightScreen = FlightScreenWords.Spanish,
        Desk = DeskWords.Spanish,
        Morning = MorningWords.Spanish,
        Story = StoryWords.Spanish,
        Echo = EchoWords.Spanish,
    };

    public required CommonWords Common { get; init; }

    public required FlightWords Flight { get; init; }

    public required MapWords Map { get; init; }

    public required SeedWords Seed { get; init; }

    public required WaterWords Water { get; init; }

    public required DayWords Day { get; init; }

    public required TextWords Text { get; init; }

    public required CalendarWords Calendar { get; init; }

    public required IndexWords Index { get; init; }

    /// <summary>Words of the page behind a link.</summary>
    public required LinkWords Link { get; init; }

    /// <summary>Words of signing in, and of starting the desk.</summary>
    public required SignInWords SignIn { get; init; }

    /// <summary>Words of the water screens.</summary>
    public required WaterScreenWords WaterScreen { get; init; }

    /// <summary>Words of the seed screens.</summary>
    public required SeedScreenWords SeedScreen { get; init; }

    /// <summary>Words of the flight screens.</summary>
    public required FlightScreenWords FlightScreen { get; init; }

    /// <summary>Words of the desk itself.</summary>
    public required DeskWords Desk { get; init; }

    /// <summary>Words of the Morning page.</summary>
    public required MorningWords Morning { get; init; }

    /// <summary>Words in which marks are told again.</summary>
    public required StoryWords Story { get; init; }

    /// <summary>Words that answer a text message.</summary>
    public required EchoWords Echo { get; init; }

    public static Words In(Language language) => language switch
    {
        Language.English => English,
        Language.Spanish => Spanish,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
