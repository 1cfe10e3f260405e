using Watersown.Documents.Json;
using Watersown.Flight;
using Watersown.Flight.Patterns;

namespace Watersown.Documents.Farms;

/// <summary>How a pattern test is written and read, in a farm document and in a mark alike.</summary>
internal static class TrayTestForm
{
    private const string Passes = "passes_g";

    public static ImmutableArray<OutlineKey> Keys { get; } =
    [
        new("day", new Outline.Day(), "the day of the test") { Required = true },
        new(Passes, new Outline.Several(new Outline.Several(new Outline.Number(FlightLimits.Tray), TrayTest.MostTrays), TrayTest.MostPasses), "grams on each tray, left to right seen along the flight, one row for each pass") { Required = true },
        OutlineKey.Of(FlightLimits.TraySpacing, "from tray to tray") with { Required = true },
        OutlineKey.Of(FlightLimits.TrayArea, "area of one tray") with { Required = true },
        OutlineKey.Of(FlightLimits.TrayOffset, "how far right of the flight line the middle of the row lay"),
        new("seed", new Outline.Text(), "what was flown"),
        OutlineKey.Of(FlightLimits.TestSpeed, "ground speed over the trays"),
        OutlineKey.Of(FlightLimits.Gate, "what left the gate, by scale and watch"),
        OutlineKey.Of(FlightLimits.ThousandGrains, "weight of 1,000 soaked grains"),
    ];

    public static void Write(JsonPen pen, TrayTest test)
    {
        pen.Day("day", test.Day);
        pen.List(Passes, test.Passes, pass => pen.List(null, pass, tray => pen.Bare(tray.Kilograms * 1000)));
        pen.Number(FlightLimits.TraySpacing.Key, test.Spacing.Meters);
        pen.Number(FlightLimits.TrayArea.Key, test.Tray.SquareMeters);
        pen.Number(FlightLimits.TrayOffset.Key, test.Offset == Length.Zero ? null : test.Offset.Meters);
        pen.Text("seed", test.Seed);
        pen.Number(FlightLimits.TestSpeed.Key, test.Speed?.MilesPerHour);
        pen.Number(FlightLimits.Gate.Key, test.Gate?.PoundsPerMinute);
        pen.Number(FlightLimits.ThousandGrains.Key, test.ThousandGrains?.Kilograms * 1000);
    }

    /// <summary>A test out of what was held against its keys; none where its rows cannot be worked.</summary>
    public static TrayTest? Read(JsonFacts facts)
    {
        if (facts.Day("day") is null || facts.Number(FlightLimits.TraySpacing) is null || facts.Number(FlightLimits.TrayArea) is null) return null;
        var test = All(facts);
        return test.IsWhole ? test : null;
    }

    /// <summary>The same as it stands: a mark is kept whatever its rows hold.</summary>
    public static TrayTest All(JsonFacts facts) => new()
    {
        Day = facts.Day("day")!.Value,
        Passes = [.. facts.Entries(Passes).Where(p => p.Element.ValueKind == System.Text.Json.JsonValueKind.Array).Select(Row)],
        Spacing = Length.FromMeters(facts.Number(FlightLimits.TraySpacing)!.Value),
        Tray = Area.FromSquareMeters(facts.Number(FlightLimits.TrayArea)!.Value),
        Offset = Length.FromMeters(facts.Number(FlightLimits.TrayOffset) ?? 0),
        Seed = facts.Text("seed"),
        Speed = facts.Number(FlightLimits.TestSpeed) is { } mph ? Speed.FromMilesPerHour(mph) : null,
        Gate = facts.Number(FlightLimits.Gate) is { } flow ? MassFlow.FromPoundsPerMinute(flow) : null,
        ThousandGrains = facts.Number(FlightLimits.ThousandGrains) is { } grams ? SoakedSeed.FromKilograms(grams / 1000) : null,
    };

    private static ImmutableArray<SoakedSeed> Row(JsonFacts row) => [.. row.Element.EnumerateArray().Select(t => SoakedSeed.FromKilograms((JsonFacts.NumberOf(t) ?? 0) / 1000))];
}
