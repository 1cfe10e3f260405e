using Watersown.Reckon;

namespace Watersown.Flight;

/// <summary>Land swept, seed through the gate, and the check by weighing out.</summary>
public static partial class FlightReckonings
{
    private static Reckoning LandCovered => new(
        "land-rate",
        "How much land goes under the swath in a minute?",
        [GroundSpeed("ground speed while sowing"), SwathFeet],
        [Result("ac_per_min", "ac/min", "land swept"), Result("ha_per_h", "ha/h", "land swept")],
        Sources.UsArmyAcreageChart,
        "speed_mph=120 swath_ft=50",
        given =>
        {
            var (speed, swath) = (SpeedOf(given), SwathOf(given));
            var land = LandRate.Of(speed, swath);
            return Outcome<Reckoned>.Of(new Reckoned([("ac_per_min", land.AcresPerMinute), ("ha_per_h", land.HectaresPerHour)], Land(speed, swath, land)));
        })
    { Limits = "While the gate is open only: turns, ferry and loading take most of the day. Ask work-rate for the whole." };

    private static Reckoning GateOpening => new(
        "gate-flow",
        "How fast must soaked seed leave the gate?",
        [Above("rate_wet_lb_ac", "lb soaked/ac", "rate as loaded: soaked", 2000), GroundSpeed("ground speed while sowing"), SwathFeet],
        [Result("lb_per_min", "lb soaked/min", "soaked seed through the gate"), Result("kg_per_s", "kg soaked/s", "soaked seed through the gate")],
        Sources.UcFundamentalRelationship,
        "rate_wet_lb_ac=188.571 speed_mph=120 swath_ft=60",
        ReckonGate)
    { Limits = "Exact for the speed over the ground. Wet seed, airflow and the agitator move the gate: time a weighed load over a measured length." };

    private static Reckoning WeighOut => new(
        "weigh-out",
        "What rate did these measured passes really lay down?",
        [
            Above("used_wet_lb", "lb soaked", "weighed in less weighed out, soaked", 100_000),
            new("passes", KeyKind.WholeNumber, string.Empty, "passes flown") { Least = 1, Most = 1000 },
            Above("pass_ft", "ft", "length of each pass with the gate open", 100_000),
            SwathFeet,
        ],
        [Result("rate_wet_lb_ac", "lb soaked/ac", "soaked rate laid down"), Result("area_ac", "ac", "land covered")],
        Sources.FloridaDryCalibration.At("table 1"),
        "used_wet_lb=3500 passes=5 pass_ft=2640 swath_ft=60",
        ReckonWeighOut)
    { Limits = "As good as the scale and the swath flown. Repeat until two runs agree within 5 % (common practice)." };

    private static Speed SpeedOf(ReckoningInput given) => Speed.FromMilesPerHour(given.Number("speed_mph"));

    private static Length SwathOf(ReckoningInput given) => Length.FromFeet(given.Number("swath_ft"));

    private static Working Land(Speed speed, Length swath, AreaRate land) => Working.Empty
        .Given("V", "ground speed while sowing", speed.MilesPerHour, "mph", "typed")
        .Given("S", "swath", swath.Feet, "ft", "typed")
        .Step("A", "land swept", land.AcresPerMinute, "ac/min", "V × S / 495", Sources.UsArmyAcreageChart);

    private static Outcome<Reckoned> ReckonGate(ReckoningInput given)
    {
        var rate = SoakedRate.FromPoundsPerAcre(given.Number("rate_wet_lb_ac"));
        var (speed, swath) = (SpeedOf(given), SwathOf(given));
        var flow = GateFlow.Of(rate, speed, swath);
        var working = Land(speed, swath, LandRate.Of(speed, swath))
            .Given("R", "rate as loaded", rate.PoundsPerAcre, "lb soaked/ac", "typed")
            .Step("Q", "soaked seed through the gate", flow.PoundsPerMinute, "lb soaked/min", "R × A", Sources.UcFundamentalRelationship);
        var half = Wording.Say.Figure((rate / 2).PoundsPerAcre);
        ImmutableArray<string> poor = rate > GateFlow.SpreadFallsOff
            ? ["Above about 250 lb soaked an acre a ram-air spreader lays a poor pattern (" + Sources.SpreaderSetUp.Reference + "): two passes at " + half + " lb soaked/ac each may lie more evenly."]
            : [];
        return Outcome<Reckoned>.Of(new Reckoned([("lb_per_min", flow.PoundsPerMinute), ("kg_per_s", flow.KilogramsPerSecond)], working)
        {
            Cautions = ["The rate must be the SOAKED rate. A gate set for the dry figure sows a fifth too little.", .. poor, PilotDecides],
        });
    }

    private static Outcome<Reckoned> ReckonWeighOut(ReckoningInput given)
    {
        var used = SoakedSeed.FromPounds(given.Number("used_wet_lb"));
        var (passes, pass, swath) = (given.Whole("passes"), Length.FromFeet(given.Number("pass_ft")), SwathOf(given));
        var area = passes * (pass * swath);
        var rate = GateFlow.FromWeighOut(used, passes, pass, swath);
        var working = Working.Empty
            .Given("M", "soaked seed used", used.Pounds, "lb soaked", "typed")
            .Given("n", "passes flown", passes, string.Empty, "typed")
            .Given("L", "length of each pass", pass.Feet, "ft", "typed")
            .Given("S", "swath", swath.Feet, "ft", "typed")
            .Step("a", "land covered", area.Acres, "ac", "n × L × S / 43,560", Sources.UsArmyAcreageChart)
            .Step("R", "soaked rate laid down", rate.PoundsPerAcre, "lb soaked/ac", "M / a", Sources.FloridaDryCalibration.At("table 1"));
        return Outcome<Reckoned>.Of(new Reckoned([("rate_wet_lb_ac", rate.PoundsPerAcre), ("area_ac", area.Acres)], working)
        {
            Cautions = ["This is a SOAKED rate: divide by the wet factor for dry seed.", "Check it again whenever lot, soak or drain time changes."],
        });
    }
}
