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
        LandScreen = LandScreenWords.English,
        MovingMap = MovingMapWords.English,
        Edge = EdgeWords.English,
        First = FirstWords.English,
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
        SourceScreen = SourceScreenWords.English,
        Ditch = DitchWords.English,
        Hold = HoldWords.English,
        SeedScreen = SeedScreenWords.English,
        FlightScreen = FlightScreenWords.English,
        Hazard = HazardWords.English,
        Passes = PassWords.English,
        Pattern = PatternWords.English,
        Strip = StripWords.English,
        ScheduleScreen = ScheduleScreenWords.English,
        PinScreen = PinScreenWords.English,
        Desk = DeskWords.English,
        Morning = MorningWords.English,
        SeasonScreen = SeasonScreenWords.English,
        Replan = ReplanWords.English,
        Story = StoryWords.English,
        Echo = EchoWords.English,
        Book = BookWords.English,
        Trouble = TroubleWords.English,
        Handout = HandoutWords.English,
        Flown = FlownWords.English,
        Harvest = HarvestWords.English,
        Cost = CostWords.English,
        Record = RecordWords.English,
        Crop = CropWords.English,
        Scout = ScoutWords.English,
        Feed = FeedWords.English,
    };

    public static Words Spanish { get; } = new()
    {
        Common = CommonWords.Spanish,
        LandScreen = LandScreenWords.Spanish,
        MovingMap = MovingMapWords.Spanish,
        Edge = EdgeWords.Spanish,
        First = FirstWords.Spanish,
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
        SourceScreen = SourceScreenWords.Spanish,
        Ditch = DitchWords.Spanish,
        Hold = HoldWords.Spanish,
        SeedScreen = SeedScreenWords.Spanish,
        FlightScreen = FlightScreenWords.Spanish,
        Hazard = HazardWords.Spanish,
        Passes = PassWords.Spanish,
        Pattern = PatternWords.Spanish,
        Strip = StripWords.Spanish,
        ScheduleScreen = ScheduleScreenWords.Spanish,
        PinScreen = PinScreenWords.Spanish,
        Desk = DeskWords.Spanish,
        Morning = MorningWords.Spanish,
        SeasonScreen = SeasonScreenWords.Spanish,
        Replan = ReplanWords.Spanish,
        Story = StoryWords.Spanish,
        Echo = EchoWords.Spanish,
        Book = BookWords.Spanish,
        Trouble = TroubleWords.Spanish,
        Handout = HandoutWords.Spanish,
        Flown = FlownWords.Spanish,
        Harvest = HarvestWords.Spanish,
        Cost = CostWords.Spanish,
        Record = RecordWords.Spanish,
        Crop = CropWords.Spanish,
        Scout = ScoutWords.Spanish,
        Feed = FeedWords.Spanish,
    };

    public required CommonWords Common { get; init; }

    /// <summary>Words of the land page and of a field's page.</summary>
    public required LandScreenWords LandScreen { get; init; }

    /// <summary>Words of the map that moves.</summary>
    public required MovingMapWords MovingMap { get; init; }

    /// <summary>Words of drawing an edge and of bringing edges in from a file.</summary>
    public required EdgeWords Edge { get; init; }

    /// <summary>Words of the first evening: a pasted list becomes a farm.</summary>
    public required FirstWords First { get; init; }

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

    public required SourceScreenWords SourceScreen { get; init; }

    public required DitchWords Ditch { get; init; }

    public required HoldWords Hold { get; init; }

    /// <summary>Words of the seed screens.</summary>
    public required SeedScreenWords SeedScreen { get; init; }

    /// <summary>Words of the flight screens.</summary>
    public required FlightScreenWords FlightScreen { get; init; }

    public required HazardWords Hazard { get; init; }

    /// <summary>Words of the page of passes.</summary>
    public required PassWords Passes { get; init; }

    public required PatternWords Pattern { get; init; }

    public required StripWords Strip { get; init; }

    /// <summary>Words of the schedule.</summary>
    public required ScheduleScreenWords ScheduleScreen { get; init; }

    /// <summary>Words of moving steps and of working out plans.</summary>
    public required PinScreenWords PinScreen { get; init; }

    /// <summary>Words of the desk itself.</summary>
    public required DeskWords Desk { get; init; }

    /// <summary>Words of the Morning page.</summary>
    public required MorningWords Morning { get; init; }

    /// <summary>Words of the season screens.</summary>
    public required SeasonScreenWords SeasonScreen { get; init; }

    /// <summary>Words of the page for a morning that nobody can fly.</summary>
    public required ReplanWords Replan { get; init; }

    /// <summary>Words in which marks are told again.</summary>
    public required StoryWords Story { get; init; }

    /// <summary>Words that answer a text message.</summary>
    public required EchoWords Echo { get; init; }

    /// <summary>Words of keeping the farm's book.</summary>
    public required BookWords Book { get; init; }

    /// <summary>Words for when something goes wrong.</summary>
    public required TroubleWords Trouble { get; init; }

    public required HandoutWords Handout { get; init; }

    /// <summary>Words of holding a track against a field.</summary>
    public required FlownWords Flown { get; init; }

    public required HarvestWords Harvest { get; init; }

    public required CostWords Cost { get; init; }

    public required RecordWords Record { get; init; }

    public required CropWords Crop { get; init; }

    public required ScoutWords Scout { get; init; }

    public required FeedWords Feed { get; init; }

    public static Words In(Language language) => language switch
    {
        Language.English => English,
        Language.Spanish => Spanish,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
