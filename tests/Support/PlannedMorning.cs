using System.Globalization;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Weather;
using Watersown.Wording;

namespace Watersown;

/// <summary>
/// One morning at the invented farm Marrowfen, Friday 8 May 2026 at 04:50, with a plan laid by hand for its first days. It is
/// material for sheets: nothing says that the plan is a good one.
/// </summary>
internal static class PlannedMorning
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    // Code, name, net, gross, checks, soil, source, miles east, miles north, variety, lb/ac dry, stage. All invented.
    private const string Table = """
        N1|Gander North|142|150.4|7|HP|NT-1|-1.47|1.05|E-1|150|Sown
        N2|Gander South|128|135.0|6|HP|NT-1|-1.01|1.05|E-1|150|Sown
        N3|Tin Barn|96|100.8|5|CL|NT-1|-0.63|1.05|E-1|155|Full
        N4|Two Gates|118|124.5|6|CL|NT-1|-0.27|1.05|E-2|150|Flooding
        N5|Schoolhouse|74|77.4|4|HP|NT-1|-1.58|1.56|E-2|150|Rolled
        N6|Split Oak|156|166.0|8|CL|NT-1|-1.19|1.56|E-2|150|Rolled
        N7|Dogleg|61|64.8|5|CL|NT-1|-0.82|1.56|E-2|155|AquaOn
        N8|Old Orchard|88|92.1|4|LK|NT-1|-0.56|1.56|VE-1|160|Planed
        R1|Pumphouse|134|140.8|5|HC|SP-1|1.20|-0.24|I-1|145|Sown
        R2|Big Elbow|178|188.6|7|HC|SP-1|1.73|-0.24|I-1|145|Sown
        R3|Tulehead|121|127.1|5|HC|SP-1|2.24|-0.24|I-1|145|Sown
        R4|Lower Sink|103|107.7|4|HC|SP-1|2.61|-0.24|E-1|150|Full
        R5|Upper Sink|97|101.5|4|HC|SP-1|1.14|-0.76|E-1|150|Flooding
        R6|Long Check|146|152.1|3|HC|SP-1|1.55|-0.76|E-1|150|Rolled
        R7|Borrow Pit|52|54.7|3|CL|SP-1|1.89|-0.76|VE-1|160|Disced
        S1|Wheelwright|112|118.1|6|CL|ST-2|-1.37|-1.61|E-1|150|Sown
        S2|Crooked Box|83|87.2|5|CL|ST-2|-1.04|-1.61|E-1|155|Full
        S3|Willow Run|137|144.5|6|HC|ST-2|-0.66|-1.61|E-2|150|Flooding
        S4|Rag Corner|46|48.6|4|LK|ST-2|-0.35|-1.61|VE-1|165|AquaOn
        S5|Salt Corner|91|95.6|5|LK|ST-2|-1.40|-2.12|VE-1|170|Planed
        S6|Moth House|125|131.9|6|CL|ST-2|-1.04|-2.12|E-2|150|Chiselled
        S7|Far Sixty|64|67.4|3|HC|ST-2|-0.71|-2.12|VE-1|160|TooWet
        H1|Home Forty|38|40.0|3|CL|W-1|-3.54|-0.02|S-1|180|Rolled
        H2|Sill|108|113.4|5|CL|W-1|-3.28|-0.02|E-2|150|AquaOn
        H3|Dry Tank|93|97.7|5|LK|W-1|-2.94|-0.02|VE-1|160|Chiselled
        H4|Crane|117|122.9|5|HC|W-2|-3.41|-0.53|E-2|150|Rolled
        H5|Bootlace|71|75.9|9|CL|W-2|-3.08|-0.53|VE-1|165|Planed
        H6|Widow's Eighty|121|126.6|4|HC|W-2|-2.76|-0.53|VE-1|160|Disced
        """;

    public static DateTimeOffset Now { get; } = At(8, 4, 50);

    public static SeasonPlan Plan() => PlannedTasks.Plan(State());

    public static SeasonState State() => new()
    {
        Farm = Farm(),
        Now = Now,
        Offset = TimeSpan.FromHours(-7),
        Fields = [.. Rows().Select(Season)],
        Horizon = new DateOnly(2026, 6, 7),
        PlanNumber = 14,
        Lots = [new("E-1 lot 2", "E-1"), new("E-2 lot 1", "E-2"), new("VE-1 lot 1", "VE-1") { WetFactor = 1.27 }, new("I-1 lot 1", "I-1"), new("S-1 lot 1", "S-1")],
        Batches =
        [
            Batch("B-07a", "E-1 lot 2", "E-1", 15450, At(5, 6), At(6, 6), ["R4"], ["1"]),
            Batch("B-07b", "E-1 lot 2", "E-1", 12865, At(5, 6), At(6, 6), ["S2"], ["2"]),
            Batch("B-08", "E-1 lot 2", "E-1", 14880, At(6, 6), null, ["N3"], ["3"]),
            Batch("B-09", "E-2 lot 1", "E-2", 17700, At(8, 6), null, ["N4"], ["5"]),
        ],
        SoakPlace = new SoakPlace { Name = "Warehouse A", Phone = "555-555-0150", Road = Length.FromMiles(14), Trailers = 6, HaulLimit = SoakedSeed.FromPounds(25000) },
        Aeroplanes = [new("Yellow") { Strip = "Heron's Elbow", TopLoad = SoakedSeed.FromPounds(3000) }],
        Slots = [new(new(2026, 5, 9), new(6, 30), new(10, 0)), new(new(2026, 5, 11), new(7, 30), new(10, 30))],
        Wind = Winds(),
        Warmth =
        [
            Warm(6, 79, 54), Warm(7, 76, 55), Warm(8, 78, 53), Warm(9, 82, 52), Warm(10, 85, 54), Warm(11, 84, 57),
        ],
        Crew = new Crew { Drivers = 3, Irrigators = 2 },
        People =
        [
            new("Odalie Marrowfen", "grower") { Phone = "555-555-0101" },
            new("Tamsin Wexcombe", "irrigator") { Phone = "555-555-0102" },
            new("Lucero Quintabar", "irrigator") { Phone = "555-555-0103", Speaks = Language.Spanish },
            new("Perrin Aldegate", "warehouse") { Phone = "555-555-0150" },
            new("Fenna Okwold", "dispatcher") { Phone = "555-555-0151" },
            new("Joss Tarrowby", "pilot") { Phone = "555-555-0152" },
            new("Ossel Valley water desk", "water district") { Phone = "555-555-0153" },
            new("Garland Estate", "landlord"),
        ],
    };

    public static Farm Farm() => new()
    {
        Name = "Marrowfen Farm",
        TimeZone = "America/Los_Angeles",
        SeasonYear = 2026,
        FinalPlanting = new DateOnly(2026, 6, 1),
        Fields = [.. Rows().Select(Field)],
        Soils =
        [
            new("HC", "heavy clay", WaterDepth.FromFeet(0.55), DepthRate.FromInchesPerDay(0.06)), new("CL", "clay", WaterDepth.FromFeet(0.6), DepthRate.FromInchesPerDay(0.1)),
            new("HP", "clay on hardpan", WaterDepth.FromFeet(0.5), DepthRate.FromInchesPerDay(0.04)), new("LK", "leaky", WaterDepth.FromFeet(0.75), DepthRate.FromInchesPerDay(0.22)),
        ],
        Sources =
        [
            Turnout("NT-1", 20, 14), Turnout("ST-2", 16, 16),
            new("SP-1", WaterSourceKind.LiftPump, Cfs(14)) { Running = Cfs(14) },
            new("W-1", WaterSourceKind.Well, Cfs(4.2)) { Running = Cfs(0) }, new("W-2", WaterSourceKind.Well, Cfs(3.2)) { Running = Cfs(0) },
        ],
        Strips = [new("Heron's Elbow", 2) { At = new GeoPoint(39, -122) }],
        Hazards =
        [
            new(HazardKind.Tower, "new mast, unlit, on no chart") { Points = [new(39.029139, -122.022107)], Height = Length.FromFeet(110), Confirmed = new(2026, 5, 2), Near = ["N6"] },
            new(HazardKind.SensitiveCrop, "prune orchard") { Points = [new(38.996521, -121.936281)], Confirmed = new(2026, 4, 20), Near = ["R4"] },
            new(HazardKind.SensitiveCrop, "organic vegetables") { Near = ["S5"], Note = "south of Salt Corner" },
            new(HazardKind.Pond, "hatchery pond") { Points = [new(39.00145, -121.977708)], Near = ["R1"] },
            new(HazardKind.Wire, "ditch-bank line") { Points = [new(38.9955, -121.9467), new(38.9955, -121.9397)], Height = Length.FromFeet(28), Near = ["R4"] },
        ],
    };

    public static DateTimeOffset At(int day, int hour, int minute = 0) => new(2026, 5, day, hour, minute, 0, TimeSpan.FromHours(-7));

    public static FlowRate Cfs(double value) => FlowRate.FromCubicFeetPerSecond(value);

    private static IEnumerable<string[]> Rows() => Table.ReplaceLineEndings("\n").Split('\n').Select(l => l.Trim().Split('|'));

    private static Field Field(string[] row)
    {
        double acres = Number(row[3]), east = Number(row[7]), north = Number(row[8]);
        var middle = new GeoPoint(39 + (north / 68.98), -122 + (east / 53.83));
        var field = new Field
        {
            Code = row[0],
            Name = row[1],
            Net = Area.FromAcres(Number(row[2])),
            Gross = Area.FromAcres(acres),
            Soil = row[5],
            Sources = [row[6]],
            PassLength = Length.FromFeet(2640),
            Basins = [.. Enumerable.Range(1, int.Parse(row[4], Plain)).Select(n => new Basin(n, Area.FromAcres(Number(row[2]) / Number(row[4]))))],
        };
        return row[0] switch
        {
            "S2" => PlannedGround.CrookedBox(field with { Boundary = PlannedGround.Rectangle(middle, acres) }),
            "N7" => field with { Boundary = PlannedGround.Dogleg(middle, acres) },
            "S5" => field with { Boundary = PlannedGround.WithPatch(middle, acres), Note = "Salt patch in the middle stays bare." },
            "N4" => field with { Boundary = PlannedGround.Rectangle(middle, acres), BoxNotes = "Two inlets; the east one sticks.", Boxes = [new(1, BoxKind.Inlet) { ToCheck = 1 }, new(2, BoxKind.Inlet) { ToCheck = 4 }] },
            "H1" => field with { Center = middle, LongAxis = Bearing.FromDegrees(20) },
            "H5" => field with { Center = middle, Gross = null },
            "H6" => field with { PassLength = null, Ferry = Length.FromMiles(2.8), Sources = [] },
            _ => field with { Boundary = PlannedGround.Rectangle(middle, acres) },
        };
    }

    private static FieldSeason Season(string[] row)
    {
        var season = new FieldSeason(row[0], SeedRate.FromPoundsPerAcre(Number(row[10])), Enum.Parse<FieldStage>(row[11])) { Variety = row[9], AsOf = At(8, 4, 30) };
        return row[0] switch
        {
            "N1" => season with { SownAt = At(2, 7), NoSpill = true, Depth = WaterDepth.FromInches(3) },
            "N2" => season with { SownAt = At(4, 7), NoSpill = true },
            "R1" => season with { SownAt = new DateTimeOffset(2026, 4, 30, 7, 0, 0, TimeSpan.FromHours(-7)), Depth = WaterDepth.FromInches(4) },
            "R2" => season with { SownAt = At(1, 7), Depth = WaterDepth.FromInches(3.5) },
            "R3" => season with { SownAt = At(5, 7), Depth = WaterDepth.FromInches(2.5) },
            "S1" => season with { SownAt = At(6, 7, 5) },
            "N3" => season with { FirstWater = At(1, 7), FullSince = At(5, 7) },
            "R4" => season with { FirstWater = At(2, 7), FullSince = At(6, 7), Depth = WaterDepth.FromInches(2.5) },
            "S2" => season with { FirstWater = new DateTimeOffset(2026, 4, 29, 7, 0, 0, TimeSpan.FromHours(-7)), FullSince = At(4, 7), Depth = WaterDepth.FromInches(2) },
            "N4" => season with { FirstWater = At(5, 7), ChecksWet = 4 },
            "S3" => season with { FirstWater = At(5, 7), ChecksWet = 3 },
            "R5" => season with { FirstWater = At(6, 7), ChecksWet = 2 },
            _ => season,
        };
    }

    private static ImmutableArray<Wind> Winds() =>
    [
        Blow(8, 5, 15, 22, 0), Fc(8, 12, 16, 24, 0), Fc(8, 19, 10, 15, 0), Fc(9, 5, 5, 8, 0), Fc(9, 9, 7, 11, 0), Fc(9, 13, 12, 17, 225),
        Fc(10, 5, 3, 5, 0), Fc(10, 10, 6, 9, 0), Fc(11, 5, 8, 12, 180), Fc(11, 9, 11, 16, 180), Fc(12, 5, 4, 6, 0), Fc(13, 5, 17, 26, 0),
    ];

    private static Wind Blow(int day, int hour, double steady, double gust, double from) =>
        new(day == 8 && hour == 5 ? At(8, 4, 45) : At(day, hour), Speed.FromMilesPerHour(steady), Speed.FromMilesPerHour(gust)) { From = Bearing.FromDegrees(from) };

    private static Wind Fc(int day, int hour, double steady, double gust, double from) => Blow(day, hour, steady, gust, from) with { Issued = At(7, 20) };

    private static DayWarmth Warm(int day, double high, double low) => new(new(2026, 5, day), Temperature.FromFahrenheit(high), Temperature.FromFahrenheit(low));

    private static WaterSource Turnout(string code, double cap, double running) =>
        new(code, WaterSourceKind.DistrictTurnout, Cfs(cap)) { Notice = TimeSpan.FromHours(48), ChangeHours = [new(7, 0)], Running = Cfs(running) };

    private static SoakBatch Batch(string code, string lot, string variety, double pounds, DateTimeOffset inSoak, DateTimeOffset? drained, ImmutableArray<string> meantFor, ImmutableArray<string> trailers) =>
        new(code, lot, variety, DrySeed.FromPounds(pounds), inSoak) { Drained = drained, MeantFor = meantFor, Trailers = trailers };

    private static double Number(string text) => double.Parse(text, Plain);
}
