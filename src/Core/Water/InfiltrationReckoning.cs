using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>What soil drinks under a flood.</summary>
internal static class InfiltrationReckoning
{
    public static Reckoning Reckoning => new(
        "infiltration",
        "How much does the soil drink before the water stands?",
        [
            new("texture", KeyKind.Text, string.Empty, "texture of the worked soil") { Choices = [.. Infiltration.Textures.Select(t => t.Texture.Replace(' ', '-'))] },
            new("saturation_pct", KeyKind.Number, "%", "how full of water its pores are at the start: 0 dry, 100 soaked") { Least = 0, Most = 99 },
            new("hours", KeyKind.Number, "h", "since it got wet") { Least = 0, AboveLeast = true, Most = 2400 },
            new("layer_in", KeyKind.Number, "in", "worked layer, to see what it can still take") { Least = 0, Most = 60, Optional = true },
            new("rain_in_h", KeyKind.Number, "in/h", "steady rain, to see when it stands") { Least = 0, AboveLeast = true, Most = 20, Optional = true },
        ],
        [
            new("drunk_in", KeyKind.Number, "in", "drunk by then"),
            new("rate_in_day", KeyKind.Number, "in/day", "how fast it drinks then"),
            new("layer_takes_in", KeyKind.Number, "in", "what the worked layer can still take") { NullMeans = "no layer given" },
            new("stands_after_h", KeyKind.Number, "h", "hours of that rain before water stands") { NullMeans = "never, as the soil drinks it all; or no rain given" },
        ],
        Sources.Chow1988.At("Green and Ampt"),
        "texture=clay saturation_pct=50 hours=24 layer_in=8",
        Work)
    {
        Limits = "Mean figures of a texture class: a field of it may drink half or twice as much. Cracks of dry clay and plow layers come on top: take them from the first check that fills.",
    };

    private static Outcome<Reckoned> Work(ReckoningInput given)
    {
        var soil = Infiltration.Textures.First(t => t.Texture.Replace(' ', '-') == given.Text("texture"));
        var saturation = Fraction.FromPercent(given.Number("saturation_pct"));
        var deficit = Infiltration.SuctionDeficit(soil, saturation);
        var span = TimeSpan.FromHours(given.Number("hours"));
        var drunk = Infiltration.Drunk(soil.Conductivity, deficit, span);
        var rate = Infiltration.Rate(soil.Conductivity, deficit, drunk);
        WaterDepth? takes = given.NumberOrNone("layer_in") is { } layer
            ? Infiltration.Deficit(soil.EffectivePorosity, Fraction.FromShare(soil.EffectivePorosity.Share * saturation.Share), WaterDepth.FromInches(layer))
            : null;
        var stands = given.NumberOrNone("rain_in_h") is { } rain ? Infiltration.TimeToPond(soil.Conductivity, deficit, DepthRate.FromInchesPerDay(rain * 24)) : null;
        var working = Working.Empty
            .Given("Se", "pores full of water at the start", saturation.Percent, "%", "typed")
            .Given("t", "since it got wet", span.TotalHours, "h", "typed")
            .Constant("θe", "pores that water can fill and leave", soil.EffectivePorosity.Percent, "%", Sources.Rawls1983)
            .Constant("ψ", "pull of the dry soil", soil.Suction.Inches, "in", Sources.Rawls1983)
            .Constant("K", "rate of the soaked soil", soil.Conductivity.InchesPerDay, "in/day", Sources.Rawls1983)
            .Step("S", "pull times empty pores", deficit.Inches, "in", "ψ (1 − Se) θe", Sources.Rawls1983)
            .Step("F", "drunk by then", drunk.Inches, "in", "F − S ln(1 + F / S) = K t", Sources.Chow1988)
            .Step("f", "how fast then", rate.InchesPerDay, "in/day", "K (S / F + 1)", Sources.Chow1988);
        if (takes is { } room) working = working.Given("z", "worked layer", given.Number("layer_in"), "in", "typed").Step("D", "what it can still take", room.Inches, "in", "(1 − Se) θe z", Sources.WaterBalance);
        if (given.NumberOrNone("rain_in_h") is { } steady)
            working = working.Given("i", "steady rain", steady, "in/h", "typed").Step("tp", "until water stands", Datum.Of(stands?.TotalHours), "h", stands is null ? "never: i is not above K" : "K S / (i (i − K))", Sources.Chow1988);
        return Outcome<Reckoned>.Of(new Reckoned(
            [("drunk_in", drunk.Inches), ("rate_in_day", rate.InchesPerDay), ("layer_takes_in", Datum.Of(takes?.Inches)), ("stands_after_h", Datum.Of(stands?.TotalHours))], working)
        { Cautions = ["Cracks come on top. Set the farm's own figure from the first check that fills."] });
    }
}
