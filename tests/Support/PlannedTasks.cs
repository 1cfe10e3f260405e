using Watersown.Schedule;

namespace Watersown;

/// <summary>Steps and decisions laid by hand for <see cref="PlannedMorning"/>.</summary>
internal static class PlannedTasks
{
    // Field, batch ("" for one not called yet), day in soak, hour in soak, day of sowing, hour, minute, and minutes in the air.
    private static readonly (string Field, string Batch, double Dry, DateTimeOffset Soak, DateTimeOffset Sow, double Minutes)[] Flights =
    [
        ("S2", "B-08", 12865, At(6, 6), At(9, 6, 30), 53),
        ("R4", "", 15450, At(8, 6, 30), At(10, 5, 45), 67), ("N3", "", 14880, At(8, 6, 30), At(10, 6, 55), 58), ("N4", "B-09", 17700, At(8, 6), At(10, 7, 55), 65),
        ("S3", "", 20550, At(9, 6), At(11, 7, 30), 87), ("R5", "", 14550, At(10, 6), At(12, 5, 45), 58), ("R6", "", 21900, At(12, 6), At(14, 6), 90),
        ("N5", "", 11100, At(13, 6), At(15, 6), 45), ("N6", "", 23400, At(14, 6), At(16, 6), 100), ("H1", "", 6840, At(15, 6), At(17, 6), 38),
        ("H4", "", 17550, At(16, 6), At(18, 6), 90), ("N7", "", 9455, At(17, 6), At(19, 6), 40), ("H2", "", 16200, At(18, 6), At(20, 6), 80),
        ("S4", "", 7590, At(19, 6), At(21, 6), 35), ("N8", "", 14080, At(20, 6), At(22, 6), 60), ("S5", "", 15470, At(21, 6), At(23, 6), 70),
        ("H5", "", 11715, At(22, 6), At(24, 6), 60), ("R7", "", 8320, At(23, 6), At(25, 6), 35), ("H6", "", 9680, At(24, 6), At(26, 6), 50), ("H6", "", 9680, At(25, 6), At(27, 6), 50),
        ("S6", "", 18750, At(26, 6), At(28, 6), 80), ("H3", "", 14880, At(27, 6), At(29, 6), 75), ("S7", "", 10240, At(28, 6), At(30, 6), 45),
    ];

    public static SeasonPlan Plan(SeasonState state) => new()
    {
        Number = state.PlanNumber,
        MadeAt = state.Now,
        State = state,
        Tasks = [.. Fills().Concat(Flights.SelectMany(Chain)).OrderBy(t => t.Start).ThenBy(t => t.Field, StringComparer.Ordinal)],
        Orders =
        [
            new("NT-1", At(8, 4, 50), At(10, 7), Cfs(14)), new("NT-1", At(10, 7), At(14, 7), Cfs(5.8)), new("NT-1", At(14, 7), At(20, 7), Cfs(20)),
            new("ST-2", At(8, 4, 50), At(12, 7), Cfs(16)), new("ST-2", At(12, 7), At(20, 7), Cfs(10)),
        ],
        Cost = new PlanCost(Money.FromDollars(41200m), Money.FromDollars(1276m), Money.FromDollars(90m), Money.FromDollars(11829m), Money.FromDollars(4100m), Money.Zero),
        Bound = Money.FromDollars(51000m),
        SolveTime = TimeSpan.FromSeconds(4),
        Decisions = Decisions(),
        Conflicts =
        [
            new(["H4", "H5", "H6"], "Well W-2 gives 3.2 cfs and holding 309 ac takes 3.75: it stops near 263 ac.", "Join W-1, or bring tailwater.") { Kind = "water" },
            new(["N4", "S3"], "Saturday is short of seed: 3.5 h can be flown and seed is ready for 0.88 h.", "Call the soak earlier.") { Kind = "seed" },
        ],
        LostBatches = ["B-07a", "B-07b"],
        Assumptions = ["Nobody has said which trailers the new batches will use."],
    };

    private static DateTimeOffset At(int day, int hour, int minute = 0) => PlannedMorning.At(day, hour, minute);

    private static FlowRate Cfs(double value) => PlannedMorning.Cfs(value);

    private static IEnumerable<PlanTask> Fills()
    {
        yield return Fill("N4", At(5, 7), At(9, 14, 41), 10.7, "NT-1") with { Fixed = true };
        yield return Fill("S3", At(5, 7), At(9, 18, 18), 14.2, "ST-2") with { Fixed = true };
        yield return Fill("R5", At(6, 7), At(10, 4, 3), 9.1, "SP-1") with { Fixed = true };
        yield return Fill("H1", At(8, 8), At(13, 8), 4.2, "W-1");
        yield return Fill("N5", At(9, 15), At(12, 9), 8, "NT-1");
        yield return Fill("R6", At(10, 5), At(13, 16), 9, "SP-1");
        yield return Fill("N6", At(12, 9), At(15, 18), 12, "NT-1");
        yield return Fill("H4", At(8, 9), At(17, 9), 3.2, "W-2");
        foreach (var (field, start, end, source) in new[] { ("N7", 13, 18, "NT-1"), ("H2", 13, 19, "W-1"), ("S4", 14, 20, "ST-2"), ("N8", 15, 21, "NT-1"), ("S5", 16, 22, "ST-2"), ("H5", 17, 23, "W-2"), ("R7", 18, 24, "SP-1"), ("H6", 19, 25, "W-2"), ("S6", 20, 27, "ST-2"), ("H3", 21, 28, "W-1"), ("S7", 22, 29, "ST-2") })
            yield return Fill(field, At(start, 7), At(end, 7), 6, source);
    }

    private static PlanTask Fill(string field, DateTimeOffset start, DateTimeOffset end, double cfs, string source) =>
        new(field, PlanTaskKind.Fill, start, end, source) { Flow = Cfs(cfs), From = [(source, Cfs(cfs))] };

    private static IEnumerable<PlanTask> Chain((string Field, string Batch, double Dry, DateTimeOffset Soak, DateTimeOffset Sow, double Minutes) flight)
    {
        var (dry, batch) = (DrySeed.FromPounds(flight.Dry), flight.Batch.Length == 0 ? "new " + flight.Field : flight.Batch);
        var soaked = SoakedSeed.FromPounds(flight.Dry * 1.25);
        var drain = flight.Sow.AddHours(-24);
        PlanTask Seed(PlanTaskKind kind, DateTimeOffset start, DateTimeOffset end) =>
            new(flight.Field, kind, start, end, "Warehouse A") { Batch = batch, Dry = dry, Soaked = soaked, Trailers = flight.Dry > 20000 ? 2 : 1, Fixed = kind == PlanTaskKind.Soak && flight.Soak < PlannedMorning.Now };
        if (flight.Soak > PlannedMorning.Now) yield return Seed(PlanTaskKind.CallSeed, flight.Soak.AddHours(-1), flight.Soak);
        yield return Seed(PlanTaskKind.Soak, flight.Soak, drain);
        yield return Seed(PlanTaskKind.Drain, drain, flight.Sow.AddHours(-2));
        yield return Seed(PlanTaskKind.Haul, flight.Sow.AddHours(-1), flight.Sow);
        yield return new PlanTask(flight.Field, PlanTaskKind.Sow, flight.Sow, flight.Sow.AddMinutes(flight.Minutes), "Yellow") { Batch = batch, Dry = dry, Soaked = soaked };
    }

    private static ImmutableArray<Decision> Decisions() =>
    [
        new(At(8, 6), "Put B-09 in soak for Two Gates (N4)", "warehouse", ["N4"]) { Kind = "put-in-soak", CostOfWaiting = "N4 has no seed on Sunday: a day of 118 ac", Cost = Money.FromDollars(425m) },
        new(At(8, 6, 30), "Call the soak for Lower Sink (R4) and Tin Barn (N3)", "warehouse", ["R4", "N3"]) { Kind = "call-soak", CostOfWaiting = "Sunday flies one field only: a day of 199 ac", Cost = Money.FromDollars(716m) },
        new(At(8, 6, 30), "Drain B-08 for Crooked Box (S2) on Saturday, or hold it", "warehouse", ["S2"]) { Kind = "drain", CostOfWaiting = "past 48 h under water it sprouts too far", Cost = Money.FromDollars(5803m) },
        new(At(8, 7), "Ask NT-1 to cut from 14 to 5.8 cfs on Sunday 07:00", "water district", ["N4"]) { Kind = "cut-water", CostOfWaiting = "8.2 cfs run over from Saturday 14:41; nothing may spill into a hold", Cost = Money.FromDollars(163m) },
        new(At(8, 16), "Firm up Saturday: Crooked Box (S2)", "dispatcher", ["S2"]) { Kind = "list-flight", CostOfWaiting = "another customer first" },
        new(At(8, 16), "Say what becomes of B-07a and B-07b", "warehouse", ["R4", "S2"]) { Kind = "dump-seed", CostOfWaiting = "two trailers stand full", Cost = Money.FromDollars(11043m) },
        new(At(9, 6), "Drain the seed of R4, N3 and N4 for Sunday, or hold them", "warehouse", ["R4", "N3", "N4"]) { Kind = "drain", CostOfWaiting = "Sunday's seed is not ready" },
        new(At(12, 7), "Ask NT-1 for 20 cfs on Thursday 07:00", "water district", ["N6"]) { Kind = "order-water", CostOfWaiting = "N6 fills a day later" },
    ];
}
