using CsCheck;
using Watersown.Flight;
using Watersown.Flight.Patterns;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Weather;
using Watersown.Wording;

namespace Watersown.Farms;

/// <summary>Seasons of every sort that can be, made from a seed: each optional fact there or not by a throw of the dice.</summary>
internal static class AnyState
{
    private static readonly DateTimeOffset now = new(2026, 5, 8, 4, 50, 0, TimeSpan.FromHours(-7));

    public static Gen<SeasonState> Gen { get; } = CsCheck.Gen.Int[0, int.MaxValue - 1].Select(seed => Make(new Dice(seed, Chance: 0.6)));

    /// <summary>With every optional fact there.</summary>
    public static SeasonState Full => Make(new Dice(7, Chance: 1));

    private static SeasonState Make(Dice dice)
    {
        var farm = AnyFarm.Make(dice, now);
        ImmutableArray<string> codes = [.. farm.Fields.Select(f => f.Code)];
        ImmutableArray<SeedLot> lots = [.. dice.Several(3, i => Lot(dice, i))];
        return new SeasonState
        {
            Farm = farm,
            Now = now,
            Offset = now.Offset,
            Fields = [.. farm.Fields.Select(f => Season(dice, f))],
            Horizon = new DateOnly(2026, 6, 1 + dice.Whole(29)),
            PlanNumber = 1 + dice.Whole(99),
            Lots = lots,
            Batches = lots.IsEmpty ? [] : [.. dice.Several(3, i => Batch(dice, i, lots[dice.Whole(lots.Length)], codes))],
            SoakPlace = dice.Maybe(() => Place(dice)),
            WetFactor = dice.Figure(1.1, 1.4),
            Aeroplanes = [.. dice.Several(2, i => Plane(dice, i, farm))],
            UsualFrom = new TimeOnly(5, dice.Whole(60)),
            UsualUntil = new TimeOnly(10, dice.Whole(60)),
            Slots = [.. dice.Several(3, i => new FlyingSlot(new DateOnly(2026, 5, 9 + i), new TimeOnly(6, 30), new TimeOnly(10, dice.Whole(60), 15)) { Aeroplane = dice.All ? "aeroplane 0" : null })],
            Wind = [.. dice.Several(4, i => Wind(dice, i))],
            Normals = dice.All ? new FarmNormals([new MonthNormal(5, Temperature.FromFahrenheit(dice.Figure(60, 90)), Temperature.FromFahrenheit(dice.Figure(40, 60))), new MonthNormal(6, Temperature.FromFahrenheit(73.5), Temperature.FromFahrenheit(73.5))], "typed by the farm") : FarmNormals.None,
            Warmth = [.. dice.Several(3, i => new DayWarmth(new DateOnly(2026, 5, 8 + i), Temperature.FromFahrenheit(dice.Figure(70, 100)), Temperature.FromFahrenheit(dice.Figure(30, 60))))],
            Tractors = [.. dice.Several(3, i => new TractorGroup($"group {i}", [GroundWork.Chisel, (GroundWork)dice.Whole(5)], dice.Whole(4), AreaRate.FromAcresPerHour(dice.Figure(4, 20))))],
            Crew = new Crew { Drivers = dice.Maybe(3), Irrigators = dice.Maybe(2), FieldsPerIrrigator = 1 + dice.Whole(5), WorkFrom = new TimeOnly(5, dice.Whole(60)), WorkUntil = new TimeOnly(17, 30) },
            Anchoring = dice.MaybeValue(() => TimeSpan.FromDays(1 + dice.Whole(9))),
            Evaporation = DepthRate.FromInchesPerDay(dice.Figure(0.1, 0.4)),
            Prices = Prices(dice),
            Pins = [.. dice.Several(2, i => new Pin(codes[0], "sow", now.AddDays(i)) { Told = dice.Maybe("Bly") })],
            People = [.. dice.Several(2, i => new Person($"Person {i}", "driver") { Phone = dice.Maybe("555-555-0104"), Speaks = (Language)dice.Whole(2) })],
        };
    }

    private static FieldSeason Season(Dice dice, Field field)
    {
        // Only the later marks of a stage are told by the stage itself; any of them may be missing.
        var stage = (FieldStage)dice.Whole(10);
        var sown = stage == FieldStage.Sown || dice.All;
        var full = sown || stage == FieldStage.Full;
        var wet = full || stage == FieldStage.Flooding;
        return new FieldSeason(field.Code, SeedRate.FromPoundsPerAcre(dice.Figure(120, 200)), sown ? FieldStage.Sown : stage)
        {
            Variety = dice.Maybe("E-1"),
            WorkLeft = dice.Throw() ? [GroundWork.Disc, GroundWork.Roll] : null,
            FitFrom = dice.MaybeValue(() => now.AddHours(dice.Whole(400))),
            AquaOn = dice.MaybeValue(() => new DateOnly(2026, 4, 20)),
            FirstWater = wet ? dice.MaybeValue(() => now.AddHours(-200 - dice.Whole(48))) : null,
            FullSince = full ? dice.MaybeValue(() => now.AddHours(-100 - dice.Whole(48))) : null,
            ChecksWet = wet && !field.Basins.IsEmpty ? dice.MaybeValue(() => dice.Whole(field.Basins.Length + 1)) : null,
            SownAt = sown ? dice.MaybeValue(() => now.AddSeconds(-dice.Whole(86_400))) : null,
            Depth = dice.MaybeValue(() => WaterDepth.FromInches(dice.Figure(0, 8))),
            NoSpill = dice.Throw(),
            AsOf = dice.MaybeValue(() => now.AddHours(-1)),
        };
    }

    private static SeedLot Lot(Dice dice, int index) => new($"lot {index}", $"E-{index}")
    {
        Maturity = (Maturity)dice.Whole(5),
        InHand = dice.MaybeValue(() => DrySeed.FromPounds(dice.Figure(0, 50_000))),
        Germination = dice.MaybeValue(() => Fraction.FromPercent(dice.Figure(80, 99))),
        SeedsPerPound = dice.MaybeValue(() => dice.Figure(13_000, 22_000)),
        WetFactor = dice.MaybeValue(() => dice.Figure(1.1, 1.4)),
    };

    private static SoakBatch Batch(Dice dice, int index, SeedLot lot, ImmutableArray<string> codes) =>
        new($"B-{index}", lot.Code, lot.Variety, DrySeed.FromPounds(dice.Figure(5000, 30_000)), now.AddHours(-60 + index))
        {
            Drained = dice.MaybeValue(() => now.AddHours(-30)),
            MeantFor = dice.Throw() ? [codes[^1]] : [],
            Weighed = dice.MaybeValue(() => SoakedSeed.FromPounds(dice.Figure(5000, 30_000))),
            Trailers = dice.Throw() ? [$"T{index}"] : [],
        };

    private static SoakPlace Place(Dice dice) => new()
    {
        Name = "Warehouse A",
        Phone = dice.Maybe("555-555-0150"),
        Road = dice.MaybeValue(() => Length.FromMiles(dice.Figure(1, 40))),
        Trailers = dice.Maybe(6),
        HaulLimit = dice.MaybeValue(() => SoakedSeed.FromPounds(dice.Figure(20_000, 27_000))),
        CallsUntil = new TimeOnly(6, dice.Whole(60)),
        SoakHour = new TimeOnly(7, dice.Whole(60)),
        SoakLeast = TimeSpan.FromHours(20 + dice.Whole(10)),
        SoakMost = TimeSpan.FromHours(40 + dice.Whole(10)),
        SoakLost = TimeSpan.FromHours(55.5 + dice.Whole(10)),
        Drain = TimeSpan.FromHours(18 + dice.Whole(10)),
        TrailerReturn = TimeSpan.FromHours(18 + dice.Whole(10)),
        Haul = TimeSpan.FromHours(1.25),
    };

    private static Aeroplane Plane(Dice dice, int index, Farm farm) => new($"aeroplane {index}")
    {
        Strip = farm.Strips.IsEmpty ? null : dice.Maybe(farm.Strips[0].Name),
        Hopper = dice.MaybeValue(() => Volume.FromGallons(dice.Figure(400, 800))),
        WorkingLoad = SoakedSeed.FromPounds(dice.Figure(2000, 3000)),
        TopLoad = dice.MaybeValue(() => SoakedSeed.FromPounds(dice.Figure(3000, 5000))),
        Swath = Length.FromFeet(dice.Figure(40, 70)),
        Working = Speed.FromMilesPerHour(dice.Figure(110, 140)),
        Ferry = Speed.FromMilesPerHour(dice.Figure(110, 160)),
        Turn = TimeSpan.FromSeconds(25 + dice.Whole(20)),
        Reload = TimeSpan.FromSeconds(60 + dice.Whole(90)),
        GroundAndAir = TimeSpan.FromSeconds(60.5 + dice.Whole(90)),
        WindLimit = Speed.FromMilesPerHour(dice.Figure(5, 15)),
        GustLimit = Speed.FromMilesPerHour(dice.Figure(10, 25)),
        Tested = dice.Maybe(() => new TrayTest
        {
            Day = new DateOnly(2026, 4, 28),
            Passes = [.. Enumerable.Range(0, 1 + dice.Whole(3)).Select(_ => Enumerable.Range(0, 5).Select(i => SoakedSeed.FromKilograms((1 + dice.Whole(90)) / 10_000.0)).ToImmutableArray())],
            Spacing = Length.FromMeters(1),
            Tray = Area.FromSquareMeters(0.25),
            Offset = Length.FromMeters(dice.All ? 0.5 : 0),
            Seed = dice.Maybe("E-1 soaked"),
            Speed = dice.MaybeValue(() => Speed.FromMilesPerHour(120)),
            Gate = dice.MaybeValue(() => MassFlow.FromPoundsPerMinute(2000)),
            ThousandGrains = dice.MaybeValue(() => SoakedSeed.FromKilograms(0.030)),
        }),
    };

    private static Wind Wind(Dice dice, int index) => new(now.AddHours(index), Speed.FromMilesPerHour(dice.Figure(0, 20)), Speed.FromMilesPerHour(dice.Figure(20, 40)))
    {
        From = dice.MaybeValue(() => Bearing.FromDegrees(dice.Whole(360))),
        Issued = dice.MaybeValue(() => now.AddHours(-2)),
    };

    private static PlanPrices Prices(Dice dice) => new()
    {
        Delay = (DelayRule)dice.Whole(3),
        OwnDelay = dice.Dollars(30),
        Grain = dice.Dollars(30),
        HeadAge = dice.Dollars(9),
        HeadAgeFree = TimeSpan.FromDays(dice.Whole(12)),
        IdleWater = dice.Dollars(99),
        Seed = dice.Dollars(1),
        SoakAndHaul = dice.Dollars(1),
        FlyingHour = dice.Dollars(2000),
        FlyingAcre = dice.MaybeValue(() => dice.Dollars(20)),
        FlyingWetPound = dice.MaybeValue(() => dice.Dollars(1)),
        Unsown = dice.Dollars(900),
    };
}
