using System.Globalization;
using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>What deep water before cold nights takes.</summary>
internal static class RaiseReckoning
{
    public static Reckoning Reckoning => new(
        "raise-water",
        "Cold nights are coming: how much water does it take to raise these fields, and can it stand in time?",
        [
            new("fields", KeyKind.Rows, string.Empty, "flooded fields to raise")
            {
                Columns =
                [
                    new("acres", KeyKind.Number, "ac", "net land") { Least = 0, AboveLeast = true, Most = 100_000 },
                    new("depth_in", KeyKind.Number, "in", "depth now") { Least = 0, Most = 36 },
                    new("name", KeyKind.Text, string.Empty, "the farm's name for it") { Optional = true },
                ],
            },
            new("target_in", KeyKind.Number, "in", "depth wanted; 8 where left out") { Least = 0, AboveLeast = true, Most = 36, Optional = true },
            new("supply_cfs", KeyKind.Number, "cfs", "what the source gives") { Least = 0, Most = 10_000 },
            new("holding_cfs", KeyKind.Number, "cfs", "what it takes to hold all that is wet on it") { Least = 0, Most = 10_000 },
            new("days", KeyKind.Number, "days", "days until the cold nights") { Least = 0, AboveLeast = true, Most = 400 },
            new("cold_on", KeyKind.Date, string.Empty, "day of the first cold night, to see when the raise must start") { Optional = true },
        ],
        [
            new("volume_ac_ft", KeyKind.Number, "ac-ft", "water to raise all of it"),
            new("spare_cfs", KeyKind.Number, "cfs", "left over once what is wet is held; below zero it is short"),
            new("spare_ac_ft_day", KeyKind.Number, "ac-ft/day", "the same by day"),
            new("days_needed", KeyKind.Number, "days", "until all of it stands so deep") { NullMeans = "never, as nothing is left over" },
            new("in_time", KeyKind.YesNo, string.Empty, "whether it can stand within the days given"),
            new("start_by", KeyKind.Date, string.Empty, "last day to start") { NullMeans = "never in time, or no day of a cold night given" },
            new("supply_wanted_cfs", KeyKind.Number, "cfs", "supply that would do it within the days given"),
            new("together_in", KeyKind.Number, "in", "rise of all of it within the days given"),
            new("fields", KeyKind.Rows, string.Empty, "each field if all that is left over goes into it alone, the greatest rise first"),
        ],
        Sources.WaterBalance,
        """fields=[{"name":"R1","acres":134,"depth_in":3},{"name":"R2","acres":178,"depth_in":3},{"name":"R3","acres":121,"depth_in":3}] target_in=8 supply_cfs=14 holding_cfs=12.57 days=3 cold_on=2026-07-25""",
        Work)
    {
        Limits = "The same supply and loss every day, no rain. Deeper water seeps a little faster and may run over low levees: neither is in it. "
            + "Water from a cold source cools the checks it enters first.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        ImmutableArray<RaisedLand> land =
        [
            .. given.Each("fields").Select((f, i) => new RaisedLand(
                f.Has("name") ? f.Text("name") : "field " + (i + 1).ToString(CultureInfo.InvariantCulture), Area.FromAcres(f.Number("acres")), WaterDepth.FromInches(f.Number("depth_in")))),
        ];
        var target = given.NumberOrNone("target_in") is { } told ? WaterDepth.FromInches(told) : Raising.ColdNights;
        FlowRate supply = FlowRate.FromCubicFeetPerSecond(given.Number("supply_cfs")), holding = FlowRate.FromCubicFeetPerSecond(given.Number("holding_cfs"));
        var raise = Raising.Of(land, target, supply - holding, TimeSpan.FromDays(given.Number("days")));
        var startBy = StartBy(given, raise);
        var working = Working.Empty
            .Given("Q", "source gives", supply.CubicFeetPerSecond, "cfs", "typed")
            .Given("H", "to hold all that is wet on it", holding.CubicFeetPerSecond, "cfs", "typed")
            .Then(RaiseWorking.Show(raise))
            .Step("Q'", "supply that would do it in that time", Wanted(raise, holding).CubicFeetPerSecond, "cfs", "H + V / (1.983471 L)", Sources.Arithmetic);
        if (startBy is { } day) working = working.Step("d", "last day to start", Datum.Date(day), string.Empty, "day of the first cold night − t, rounded up", Sources.Arithmetic);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("volume_ac_ft", raise.Volume.AcreFeet),
                ("spare_cfs", raise.Spare.CubicFeetPerSecond),
                ("spare_ac_ft_day", raise.Spare.AcreFeetPerDay),
                ("days_needed", Datum.Of(raise.Time?.TotalDays)),
                ("in_time", raise.InTime),
                ("start_by", startBy is { } start ? Datum.Date(start) : Datum.None),
                ("supply_wanted_cfs", Wanted(raise, holding).CubicFeetPerSecond),
                ("together_in", raise.Together.Inches),
                ("fields", Datum.ListOf(raise.Parts.Select(p => Datum.Row(("name", p.Land.Name), ("volume_ac_ft", p.Volume.AcreFeet), ("rise_in", p.Rise.Inches), ("depth_in", p.Alone.Inches))))),
            ],
            working)
        { Cautions = [.. Cautions(raise)] });
    }

    private static FlowRate Wanted(WaterRaise raise, FlowRate holding) => holding + raise.Wanted!.Value;

    private static DateOnly? StartBy(ReckoningInput given, WaterRaise raise)
    {
        if (!given.Has("cold_on") || raise.Time is not { } time) return null;
        var cold = given.Date("cold_on");
        var days = Math.Ceiling(time.TotalDays);
        return days < cold.DayNumber ? cold.AddDays(-(int)days) : null;
    }

    private static IEnumerable<string> Cautions(WaterRaise raise)
    {
        if (raise.Parts.IsEmpty) yield return "All of it stands that deep already.";
        else if (raise.Time is null) yield return "Nothing is left over once what is wet is held: it cannot be raised at all without more water.";
        else if (!raise.InTime) yield return "Not possible in time. Put what is left over where panicles are 10 to 16 days from heading, and start earlier next year: at panicle initiation.";
        if (!raise.Parts.IsEmpty) yield return "Boards and levees must stand above the target with freeboard to spare.";
    }
}
