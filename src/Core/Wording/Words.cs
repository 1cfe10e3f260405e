namespace Watersown.Wording;

/// <summary>
/// All words that crew see, one table for each language. A language that lacks a word does not compile; places in braces
/// are the same in every language, and a test says so.
/// </summary>
public sealed record Words
{
    private Words(CommonWords common, FlightWords flight, MapWords map, SeedWords seed, WaterWords water, DayWords day, TextWords text, CalendarWords calendar, IndexWords index, WaterScreenWords waterScreen, SeedScreenWords seedScreen, FlightScreenWords flightScreen, FactWords fact) =>
        (Common, Flight, Map, Seed, Water, Day, Text, Calendar, Index, WaterScreen, SeedScreen, FlightScreen, Fact) = (common, flight, map, seed, water, day, text, calendar, index, waterScreen, seedScreen, flightScreen, fact);

    public static Words English { get; } = new(
        CommonWords.English, FlightWords.English, MapWords.English, SeedWords.English, WaterWords.English, DayWords.English, TextWords.English, CalendarWords.English, IndexWords.English,
        WaterScreenWords.English, SeedScreenWords.English, FlightScreenWords.English, FactWords.English);

    public static Words Spanish { get; } = new(
        CommonWords.Spanish, FlightWords.Spanish, MapWords.Spanish, SeedWords.Spanish, WaterWords.Spanish, DayWords.Spanish, TextWords.Spanish, CalendarWords.Spanish, IndexWords.Spanish,
        WaterScreenWords.Spanish, SeedScreenWords.Spanish, FlightScreenWords.Spanish, FactWords.Spanish);

    public CommonWords Common { get; }

    public FlightWords Flight { get; }

    public MapWords Map { get; }

    public SeedWords Seed { get; }

    public WaterWords Water { get; }

    public DayWords Day { get; }

    public TextWords Text { get; }

    public CalendarWords Calendar { get; }

    public IndexWords Index { get; }

    /// <summary>Words of the water screens.</summary>
    public WaterScreenWords WaterScreen { get; }

    /// <summary>Words of the seed screens.</summary>
    public SeedScreenWords SeedScreen { get; }

    /// <summary>Words of the flight screens.</summary>
    public FlightScreenWords FlightScreen { get; }

    /// <summary>Words that tell what a mark says.</summary>
    public FactWords Fact { get; }

    public static Words In(Language language) => language switch
    {
        Language.English => English,
        Language.Spanish => Spanish,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
