namespace Watersown.Wording;

/// <summary>
/// All words that crew see, one table for each language. A language that lacks a word does not compile; places in braces
/// are the same in every language, and a test says so.
/// </summary>
public sealed record Words
{
    private Words(CommonWords common, FlightWords flight, MapWords map, SeedWords seed, WaterWords water, DayWords day, TextWords text, CalendarWords calendar, IndexWords index, StoryWords story) =>
        (Common, Flight, Map, Seed, Water, Day, Text, Calendar, Index, Story) = (common, flight, map, seed, water, day, text, calendar, index, story);

    public static Words English { get; } = new(
        CommonWords.English, FlightWords.English, MapWords.English, SeedWords.English, WaterWords.English, DayWords.English, TextWords.English, CalendarWords.English, IndexWords.English, StoryWords.English);

    public static Words Spanish { get; } = new(
        CommonWords.Spanish, FlightWords.Spanish, MapWords.Spanish, SeedWords.Spanish, WaterWords.Spanish, DayWords.Spanish, TextWords.Spanish, CalendarWords.Spanish, IndexWords.Spanish, StoryWords.Spanish);

    public CommonWords Common { get; }

    public FlightWords Flight { get; }

    public MapWords Map { get; }

    public SeedWords Seed { get; }

    public WaterWords Water { get; }

    public DayWords Day { get; }

    public TextWords Text { get; }

    public CalendarWords Calendar { get; }

    public IndexWords Index { get; }

    public StoryWords Story { get; }

    public static Words In(Language language) => language switch
    {
        Language.English => English,
        Language.Spanish => Spanish,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
