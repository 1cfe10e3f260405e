using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Farms;

/// <summary>The ground of <see cref="AnyState"/>.</summary>
internal static class AnyFarm
{
    public static Farm Make(Dice dice, DateTimeOffset now)
    {
        ImmutableArray<Soil> soils = [.. dice.Several(2, i => new Soil($"S{i}", "clay", WaterDepth.FromFeet(dice.Figure(0.4, 0.8)), DepthRate.FromInchesPerDay(dice.Figure(0, 0.3))) { LearnedFrom = dice.Whole(4) + (dice.All ? 1 : 0) })];
        ImmutableArray<string> names = ["Two Gates", "Widow's Eighty", "Ñandú \"east\"", "Long\tCheck 上"];
        ImmutableArray<string> codes = ["TG", "WE", "ÑE", "上"];
        var count = 1 + dice.Whole(4);
        ImmutableArray<WaterSource> sources = [.. dice.Several(3, i => Source(dice, i, codes[..count]))];
        return new Farm
        {
            Name = "Any & <every> farm",
            TimeZone = "America/Los_Angeles",
            SeasonYear = now.Year + dice.Whole(2),
            Units = (UnitSystem)dice.Whole(2),
            Language = (Language)dice.Whole(2),
            FinalPlanting = dice.MaybeValue(() => new DateOnly(2026, 6, 1)),
            Fields = [.. Enumerable.Range(0, count).Select(i => Field(dice, codes[i], names[i], soils, sources))],
            Soils = soils,
            Sources = sources,
            SharedCaps = sources.IsEmpty ? [] : [.. dice.Several(1, _ => new SharedCap("both", [sources[0].Code], FlowRate.FromCubicFeetPerSecond(dice.Figure(30, 50))))],
            Strips = [.. dice.Several(1, _ => new Strip("Heron's Elbow", 1 + dice.Whole(3)) { At = dice.MaybeValue(() => Point(dice)), RunwayLength = dice.MaybeValue(() => Length.FromFeet(dice.Figure(1800, 3500))) })],
            Hazards = [.. dice.Several(2, i => Hazard(dice, i, codes[0]))],
            HazardsKeep = dice.All ? HazardKeep.Season : (HazardKeep)dice.Whole(2),
        };
    }

    private static Field Field(Dice dice, string code, string name, ImmutableArray<Soil> soils, ImmutableArray<WaterSource> sources)
    {
        var net = Area.FromAcres(dice.Figure(40, 200));
        ImmutableArray<Basin> basins = dice.Throw() ? Basins(dice, net) : [];
        return new Field
        {
            Code = code,
            Name = name,
            Net = net,
            Gross = dice.MaybeValue(() => Area.FromAcres(Math.Round(net.Acres / 0.95, 3))),
            Certified = dice.MaybeValue(() => Area.FromAcres(Math.Round(net.Acres * 1.01, 3))),
            Boundary = dice.Maybe(() => Edge(dice)),
            Center = dice.MaybeValue(() => Point(dice)),
            Ferry = dice.MaybeValue(() => Length.FromMiles(dice.Figure(0, 10))),
            LongAxis = dice.MaybeValue(() => Bearing.FromDegrees(dice.Whole(180))),
            PassLength = dice.MaybeValue(() => Length.FromFeet(dice.Figure(800, 5000))),
            Soil = soils.IsEmpty ? null : dice.Maybe(soils[0].Code),
            Sources = sources.IsEmpty ? [] : [sources[^1].Code],
            Basins = basins,
            Boxes = basins.IsEmpty ? [] : [.. dice.Several(3, i => Box(dice, i))],
            InletLimit = dice.MaybeValue(() => FlowRate.FromCubicFeetPerSecond(dice.Figure(1, 20))),
            BoxNotes = dice.Maybe("Box 2 leaks \\ look {at} it"),
            Note = dice.Maybe("Turn wide\nof the \"barn\"."),
        };
    }

    private static ImmutableArray<Basin> Basins(Dice dice, Area net)
    {
        var count = 1 + dice.Whole(5);
        if (dice.Throw() && !dice.All) return [.. Enumerable.Range(1, count).Select(n => new Basin(n, net / count))];
        return [.. Enumerable.Range(1, count).Select(n => new Basin(n, Area.FromAcres(Math.Round(net.Acres / count, 2)))
        {
            Drop = dice.MaybeValue(() => WaterDepth.FromFeet(dice.Figure(0, 0.3))),
            HighSpot = dice.MaybeValue(() => WaterDepth.FromInches(dice.Figure(0, 2))),
            Boundary = dice.Maybe(() => Edge(dice)),
        })];
    }

    private static Box Box(Dice dice, int index) => new(index, (BoxKind)dice.Whole(3))
    {
        FromCheck = dice.Maybe(1),
        ToCheck = dice.Maybe(1),
        Width = dice.MaybeValue(() => Length.FromFeet(dice.Figure(2, 6))),
        Boards = dice.MaybeValue(() => WaterDepth.FromInches(dice.Figure(0, 14))),
        Leaks = dice.Throw(),
        DrainsTo = dice.Maybe("public drain"),
        At = dice.MaybeValue(() => Point(dice)),
    };

    private static WaterSource Source(Dice dice, int index, ImmutableArray<string> codes) =>
        new($"W-{index}", (WaterSourceKind)dice.Whole(5), FlowRate.FromCubicFeetPerSecond(dice.Figure(15, 30)))
        {
            Name = dice.Maybe("north turnout"),
            Notice = TimeSpan.FromHours(dice.Whole(72)),
            ChangeHours = dice.Throw() ? [new TimeOnly(7, 0), new TimeOnly(19, 30)] : [],
            MinStep = dice.MaybeValue(() => FlowRate.FromCubicFeetPerSecond(dice.Figure(0.5, 2))),
            Running = dice.MaybeValue(() => FlowRate.FromCubicFeetPerSecond(dice.Figure(0, 9))),
            Down = dice.Throw(),
            Turns = dice.Maybe(() => new SourceTurns(new DateTimeOffset(2026, 5, 9, 7, 0, 0, TimeSpan.FromHours(-7)), TimeSpan.FromHours(1 + dice.Whole(70)), TimeSpan.FromHours(72 + dice.Whole(200))) { Flow = dice.MaybeValue(() => FlowRate.FromCubicFeetPerSecond(dice.Figure(1, 15))) }),
            Curtailments = dice.Throw()
                ? [new Curtailment(new DateTimeOffset(2026, 5, 9, 7, 0, 0, TimeSpan.FromHours(-7))) { Flow = FlowRate.FromCubicFeetPerSecond(dice.Figure(0, 9)) },
                    new Curtailment(new DateTimeOffset(2026, 5, 20, 7, 0, 0, TimeSpan.FromHours(-7))) { Until = new DateTimeOffset(2026, 5, 25, 7, 0, 0, TimeSpan.FromHours(-7)), Share = Fraction.FromPercent(dice.Figure(10, 90)) }]
                : [],
            Needs = dice.Maybe(() => new TailwaterNeed(codes, Area.FromAcres(dice.Figure(0, 400)))),
        };

    private static Hazard Hazard(Dice dice, int index, string code) => new((HazardKind)dice.Whole(13), $"hazard {index}")
    {
        Points = [.. dice.Several(3, _ => Point(dice))],
        Height = dice.MaybeValue(() => Length.FromFeet(dice.Figure(15, 200))),
        Confirmed = dice.MaybeValue(() => new DateOnly(2026, 4, 20)),
        Near = dice.Throw() ? [code] : [],
        Note = dice.Maybe("mind it"),
        Listing = dice.Maybe(() => new HazardListing("06-00000" + dice.Whole(9), new DateOnly(2026, 4, 16))
        {
            Verified = dice.Throw(),
            Within = dice.MaybeValue(() => Length.FromFeet(250)),
            HeightWithin = dice.MaybeValue(() => Length.FromFeet(50)),
            Top = dice.MaybeValue(() => Length.FromFeet(dice.Figure(-20, 400))),
            Light = dice.All ? HazardLight.Red : (HazardLight)dice.Whole(11),
            Marking = dice.All ? HazardMarking.Flag : (HazardMarking)dice.Whole(7),
            Count = dice.All ? 3 : 1 + dice.Whole(4),
            TakenDown = dice.Throw(),
            Changed = dice.MaybeValue(() => new DateOnly(2025, 9, 20)),
        }),
    };

    private static GeoPoint Point(Dice dice) => new(dice.Figure(38.9, 39.1), dice.Figure(-122.1, -121.9));

    /// <summary>One or two pieces apart, the first perhaps with an island; outer rings counterclockwise, holes clockwise.</summary>
    private static Boundary Edge(Dice dice) =>
        new([.. Enumerable.Range(0, 1 + dice.Whole(2)).Select(i => new BoundaryPart(Ring(39 + (i * 0.05), dice.Figure(0.008, 0.01)), dice.Throw() ? [[.. Ring(39.002 + (i * 0.05), 0.001).Reverse()]] : []))]);

    private static ImmutableArray<GeoPoint> Ring(double south, double size)
    {
        var west = -122 + (south - Math.Floor(south * 20) / 20);
        return [new(Math.Round(south, 6), Math.Round(west, 6)), new(Math.Round(south, 6), Math.Round(west + size, 6)), new(Math.Round(south + size, 6), Math.Round(west + size, 6)), new(Math.Round(south + size, 6), Math.Round(west, 6))];
    }
}

/// <summary>A seeded row of throws.</summary>
/// <param name="Seed">Same seed, same throws.</param>
/// <param name="Chance">Chance that an optional fact is there; at 1 all are.</param>
internal sealed record Dice(int Seed, double Chance)
{
    private readonly Random random = new(Seed);

    public bool All => Chance >= 1;

    public bool Throw() => random.NextDouble() < Chance;

    public int Whole(int below) => random.Next(below);

    /// <summary>A figure as people give it: at most three decimals.</summary>
    public double Figure(double low, double high) => Math.Round(low + ((high - low) * random.NextDouble()), 3);

    public Money Dollars(int below) => Money.FromDollars(Math.Round((decimal)Figure(0, below), 2));

    public T? Maybe<T>(Func<T> make)
        where T : class => Throw() ? make() : null;

    public T? MaybeValue<T>(Func<T> make)
        where T : struct => Throw() ? make() : null;

    public string? Maybe(string text) => Throw() ? text : null;

    public int? Maybe(int number) => Throw() ? number : null;

    public IEnumerable<T> Several<T>(int most, Func<int, T> make) => Enumerable.Range(0, All ? most : Whole(most + 1)).Select(make).ToList();
}
