using CsCheck;
using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Weather;

namespace Watersown.Planner;

/// <summary>Made-up farms for properties: every one possible, no two alike.</summary>
internal static class SomeSeason
{
    private static readonly TimeSpan Offset = TimeSpan.FromHours(-7);

    public static DateTimeOffset At(int day, int hour, int minute = 0) => new(2026, 5, day, hour, minute, 0, Offset);

    /// <summary>A small farm that only says names, acres and rates.</summary>
    public static SeasonState Bare(params double[] acres) => new()
    {
        Farm = new Farm
        {
            Name = "Bare",
            TimeZone = "America/Los_Angeles",
            SeasonYear = 2026,
            Fields = [.. acres.Select((a, i) => new Field { Code = "F" + (i + 1), Name = "Field " + (i + 1), Net = Area.FromAcres(a) })],
        },
        Now = At(8, 5),
        Offset = Offset,
        Fields = [.. acres.Select((_, i) => new FieldSeason("F" + (i + 1), SeedRate.FromPoundsPerAcre(150), FieldStage.Rolled))],
        Horizon = new DateOnly(2026, 6, 20),
    };

    public static Gen<SeasonState> Any { get; } =
        from count in Gen.Int[1, 9]
        from acres in Gen.Int[15, 180].Array[count]
        from stages in Gen.Int[1, 8].Array[count]
        from source in Gen.Int[0, 2].Array[count]
        from caps in Gen.Int[3, 25].Array[3]
        from notice in Gen.Int[0, 2]
        from trailers in Gen.Int[2, 6]
        from planes in Gen.Int[1, 2]
        from windy in Gen.Int[9, 14]
        from inlets in Gen.Int[0, 3].Array[count]
        from batch in Gen.Int[0, 2]
        from held in Gen.Int[0, 5]
        select Build(new Dice(count, acres, stages, source, caps, notice, trailers, planes, windy, inlets, batch, held));

    private sealed record Dice(int Count, int[] Acres, int[] Stages, int[] Source, int[] Caps, int Notice, int Trailers, int Planes, int Windy, int[] Inlets, int Batch, int Held);

    private static SeasonState Build(Dice dice)
    {
        var codes = Enumerable.Range(0, dice.Count).Select(i => "A" + (i + 1)).ToArray();
        ImmutableArray<WaterSource> sources =
        [
            new("D-1", WaterSourceKind.DistrictTurnout, Cfs(dice.Caps[0])) { Notice = TimeSpan.FromHours(24 * dice.Notice), ChangeHours = dice.Notice > 0 ? [new TimeOnly(7, 0)] : [], Running = Cfs(Math.Min(4, dice.Caps[0])), Curtailments = Held(dice.Held, dice.Caps[0]) },
            new("P-1", WaterSourceKind.LiftPump, Cfs(dice.Caps[1]))
            {
                Curtailments = dice.Held == 4 ? [new Curtailment(At(9, 14, 2)) { Share = Fraction.FromPercent(50) }] : [],
                Turns = dice.Held == 5 ? new SourceTurns(At(9, 7), TimeSpan.FromHours(72), TimeSpan.FromHours(120)) : null,
            },
            new("T-1", WaterSourceKind.Tailwater, Cfs(dice.Caps[2])) { Needs = new TailwaterNeed([.. codes.Where((_, i) => dice.Source[i] == 0)], Area.FromAcres(40)) },
        ];
        var fields = codes.Select((code, i) => new Field
        {
            Code = code,
            Name = "Field " + code,
            Net = Area.FromAcres(dice.Acres[i]),
            Sources = dice.Source[i] switch { 0 => ["D-1"], 1 => ["P-1"], _ => ["P-1", "T-1"] },
            InletLimit = dice.Inlets[i] == 0 ? Cfs(6) : null,
        });
        return new SeasonState
        {
            Farm = new Farm
            {
                Name = "Any",
                TimeZone = "America/Los_Angeles",
                SeasonYear = 2026,
                Fields = [.. fields],
                Sources = sources,
                SharedCaps = [new SharedCap("both", ["D-1", "P-1"], Cfs(dice.Caps[0] + dice.Caps[1] - 2))],
                Strips = [new Strip("strip", 2)],
            },
            Now = At(8, 5),
            Offset = Offset,
            Fields = [.. codes.Select((code, i) => Season(code, (FieldStage)dice.Stages[i]))],
            Horizon = new DateOnly(2026, 6, 10),
            SoakPlace = new SoakPlace { Name = "warehouse", Trailers = dice.Trailers, HaulLimit = SoakedSeed.FromPounds(25000) },
            Aeroplanes = [.. Enumerable.Range(1, dice.Planes).Select(p => new Aeroplane("plane " + p) { Strip = "strip" })],
            Slots = [new FlyingSlot(new DateOnly(2026, 5, 10), new TimeOnly(6, 0), new TimeOnly(8, 0)), new FlyingSlot(new DateOnly(2026, 5, 11), new TimeOnly(6, 0), new TimeOnly(6, 0))],
            Wind = [new Wind(At(9, 5), Mph(12), Mph(18)), new Wind(At(10, 5), Mph(4), Mph(6)), new Wind(At(dice.Windy, 7), Mph(14), Mph(20)), new Wind(At(dice.Windy, 20), Mph(5), Mph(8))],
            Warmth = [new DayWarmth(new DateOnly(2026, 5, 12), Temperature.FromFahrenheit(92), Temperature.FromFahrenheit(62))],
            Batches = dice.Batch == 0 ? [] : [new SoakBatch("B-1", "lot", "V", DrySeed.FromPounds(9000), At(dice.Batch == 1 ? 7 : 8, 6)) { Drained = dice.Batch == 1 ? At(8, 5) : null }],
            Tractors =
            [
                new TractorGroup("disc", [GroundWork.Chisel, GroundWork.Disc], 2, AreaRate.FromAcresPerHour(9)),
                new TractorGroup("plane", [GroundWork.Plane], 1, AreaRate.FromAcresPerHour(7.5)),
                new TractorGroup("aqua", [GroundWork.Aqua, GroundWork.Roll], 1, AreaRate.FromAcresPerHour(11)),
            ],
            Crew = new Crew { Drivers = 2, Irrigators = 1, FieldsPerIrrigator = 2 },
        };
    }

    private static ImmutableArray<Curtailment> Held(int held, int cap) => held switch
    {
        // In the middle of a period of orders, for some days, and until further notice.
        2 => [new Curtailment(At(12, 13)) { Flow = Cfs(cap * 0.6), Until = At(16, 7) }],
        3 => [new Curtailment(At(10, 7)) { Flow = Cfs(cap - 2.35) }, new Curtailment(At(14, 3)) { Share = Fraction.FromPercent(40), Until = At(14, 20) }],
        5 => [new Curtailment(At(7, 7)) { Share = Fraction.FromPercent(70) }],
        _ => [],
    };

    private static FieldSeason Season(string code, FieldStage stage) => new(code, SeedRate.FromPoundsPerAcre(150), stage)
    {
        Variety = "V",
        FirstWater = stage is FieldStage.Flooding or FieldStage.Full ? At(5, 6) : null,
        FitFrom = stage == FieldStage.Unworked ? At(11, 6) : null,
    };

    private static FlowRate Cfs(double value) => FlowRate.FromCubicFeetPerSecond(value);

    private static Speed Mph(double value) => Speed.FromMilesPerHour(value);
}
