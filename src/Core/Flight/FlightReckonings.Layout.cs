using Watersown.Flight.Laying;
using Watersown.Land;
using Watersown.Reckon;
using Watersown.Shapes;

namespace Watersown.Flight;

/// <summary>A field laid out: heading, passes, order, loads, and how near to what nothing can beat.</summary>
public static partial class FlightReckonings
{
    // More than a hundred miles: nobody ferries so far with every load.
    private const double FarthestStrip = 2;

    private static ImmutableArray<ReckoningKey> HopperKeys =>
    [
        new("strip_lat", KeyKind.Number, "°", "strip, latitude in WGS 84") { Least = -89, Most = 89 },
        new("strip_lon", KeyKind.Number, "°", "strip, longitude in WGS 84") { Least = -180, Most = 180 },
        Above("ferry_mph", "mph", "ferry speed", 300),
        FromZero("turnaround_s", "s", "reload, taxi, take-off and landing, each load", 7200),
        Above("rate_wet_lb_ac", "lb soaked/ac", "rate as loaded: soaked", 2000),
        new("load_limit_wet_lb", KeyKind.Number, "lb soaked", "most soaked seed in one load, as the pilot named it") { Least = 10, Most = 100_000 },
        Above("hopper_gal", "gal", "volume of the hopper; with bulk_wet_lb_ft3 the load is the smaller of both", 5000) with { Optional = true },
        FromZero("line_up_s", "s", "time to line up again within a pass, where loads may stop there; without it every load ends with a pass", 600) with { Optional = true },
        new("bulk_wet_lb_ft3", KeyKind.Number, "lb soaked/ft³", "weight of a cubic foot of the soaked seed") { Least = 20, Most = 80, Optional = true },
    ];

    private static ImmutableArray<ReckoningKey> WindKeys =>
    [
        new("from_deg", KeyKind.Number, "°", "whence it blows, from true north") { Least = 0, Most = 360 },
        FromZero("mph", "mph", "how fast, below half of the aeroplane's speed", 60),
        FromZero("most_across_mph", "mph", "most of it wanted across a pass; without it all headings are looked at", 60) with { Optional = true },
    ];

    private static ImmutableArray<ReckoningKey> RoundKeys =>
    [
        new("kind", KeyKind.Text, string.Empty, "what it is") { Choices = ["wire", "tower", "house", "school", "trees", "water", "crop"] },
        new("lon_lat", KeyKind.Numbers, "°", "longitude and latitude of each corner in turn: one for a place, more for a line"),
        FromZero("height_ft", "ft", "how high it is", 2000) with { Optional = true },
        FromZero("reach_ft", "ft", "how far from it no pass comes down; without it the usual for its kind", 10_000) with { Optional = true },
    ];

    private static Reckoning LaidField => new(
        "pass-layout",
        "How is this field flown in least time: which way, in how many passes and loads?",
        [
            new("boundary", KeyKind.Boundary, "GeoJSON, degrees", "Polygon or MultiPolygon in WGS 84, longitude first; holes are left unsown and flown over with the gate shut"),
            SwathFeet with { Least = 1, AboveLeast = false },
            GroundSpeed("ground speed while sowing, in still air"),
            new("turn_s", KeyKind.Number, "s", "one turn to the next pass, by the watch") { Least = 1, Most = 600 },
            new("heading_deg", KeyKind.Number, "°", "run wished for, from true north; without it the quickest") { Least = 0, Most = 360, Optional = true },
            new("order", KeyKind.Text, string.Empty, "order of the passes; without it back-and-forth") { Choices = ["back-and-forth", "racetrack"], Optional = true },
            new("round", KeyKind.Rows, string.Empty, "what stands in or beside the field; without it nothing does") { Columns = RoundKeys, Optional = true },
            Above("climb_ft_min", "ft/min", "how fast the aeroplane climbs loaded, as the pilot told; without it the climb before wires is left out", 5000) with { Optional = true },
            new("wind", KeyKind.Group, string.Empty, "wind to reckon with; without it still air") { Columns = WindKeys, Optional = true },
            new("loads", KeyKind.Group, string.Empty, "how the seed gets there; without it passes and turns alone are told") { Columns = HopperKeys, Optional = true },
        ],
        [
            Result("heading_deg", "°", "heading from true north of the first cell; the opposite way is the same"),
            new("passes", KeyKind.WholeNumber, string.Empty, "passes"),
            new("turns", KeyKind.WholeNumber, string.Empty, "turns from pass to pass, were it all one load"),
            Result("open_length_m", "m", "length with the gate open, all passes"),
            Result("flown_length_m", "m", "length from the first land of each strip to the last, gaps flown over"),
            Result("flight_min", "min", "passes and turns; ferry and loads are not in it"),
            Result("bound_min", "min", "what no straight passes of this swath can beat"),
            new("bound_passes", KeyKind.WholeNumber, string.Empty, "fewest passes that could ever do"),
            Result("gap_pct", "%", "flight time above that bound"),
            Result("one_heading_deg", "°", "heading on which the whole field takes least time"),
            Result("one_heading_min", "min", "what it then takes, passes and turns"),
            Result("run_costs_min", "min", "what the run wished for takes more than the quickest cells"),
            Result("for_ferry_min", "min", "what the heading takes more in passes and turns than the quickest, for the ferry of its loads"),
            Result("unsown_ac", "ac", "left unsown round what stands in the way"),
            new("along_wire_passes", KeyKind.WholeNumber, string.Empty, "of the passes, those along wires over ground that climbing passes leave"),
            new("cells", KeyKind.Rows, string.Empty, "pieces flown on one heading") { Columns = [Result("heading_deg", "°", "heading"), Result("area_ac", "ac", "land in it"), new("passes", KeyKind.WholeNumber, string.Empty, "passes"), Result("spacing_ft", "ft", "from pass to pass, evened out"), new("narrowest_passes", KeyKind.WholeNumber, string.Empty, "fewest passes of the piece on any heading")] },
            new("loads", KeyKind.WholeNumber, string.Empty, "loads; none without loads, or where one pass is more than a load"),
            Result("load_limit_wet_lb", "lb soaked", "most in one load: the smaller of weight and room"),
            Result("ferry_min", "min", "there and back, all loads"),
            Result("filled_up_ferry_min", "min", "ferry of loads filled up in the order laid"),
            Result("least_ferry_min", "min", "ferry that no loads of whole passes can beat, in whatever order"),
            Result("job_min", "min", "passes, turns, ferry and turnaround together"),
            Result("filled_up_costs_min", "min", "what loads filled up in the order laid would take more"),
            Result("one_fewer_load_wet_lb", "lb soaked", "smallest limit at which a load is saved; none where there is one load"),
            Result("one_fewer_saves_min", "min", "what that saves"),
        ],
        Sources.WholePassCount,
        """boundary={"type":"Polygon","coordinates":[[[-122,39.4],[-121.9906,39.4],[-121.9906,39.4072],[-122,39.4072],[-122,39.4]]]} swath_ft=50 speed_mph=120 turn_s=32 loads={"strip_lat":39.39,"strip_lon":-122.01,"ferry_mph":130,"turnaround_s":190,"rate_wet_lb_ac":187.5,"load_limit_wet_lb":2800}""",
        given => BoundaryReading.Read(given.Table("boundary"), "boundary").Then(boundary => ReckonLayout(given, boundary)))
    { Limits = "A field is flown in pieces only where that saves more than the turn between them and a pass along the cut. Level ground, still air or one steady wind for all passes (turns and ferry as in still air), one turn time for every turn to the next pass. Straight passes from edge to edge: passes along angled ends are not in it, nor is anything that was not told." };

    private static Outcome<Reckoned> ReckonLayout(ReckoningInput given, Boundary boundary)
    {
        if (TooFar(boundary) is { } far) return Outcome<Reckoned>.Refuse(far);
        var plane = FarmPlane.Over(boundary);
        var field = plane.ToPlane(boundary);
        var pace = new PassPace(SwathOf(given), SpeedOf(given), TimeSpan.FromSeconds(given.Number("turn_s")));
        if (TooMany(Passes.OutlineOf(field).Longest, pace.Swath) is { } many) return Outcome<Reckoned>.Refuse(many);
        if (given.Has("loads") && StripTooFar(given.Group("loads"), plane) is { } away) return Outcome<Reckoned>.Refuse(away);
        if (WindOf(given, pace.Speed) is { } told)
        {
            if (!told.HasValue) return Outcome<Reckoned>.Refuse(told.Problems);
            pace = pace with { Wind = told.Value };
        }

        var round = RoundOf(given, plane, pace.Swath);
        if (!round.HasValue) return Outcome<Reckoned>.Refuse(round.Problems);
        var layout = FieldLaying.Lay(field, new LayingAsk(pace)
        {
            Run = given.NumberOrNone("heading_deg") is { } degrees ? Bearing.FromDegrees(degrees) : null,
            Order = given.TextOrNone("order") == "racetrack" ? PassOrderKind.Racetrack : PassOrderKind.BackAndForth,
            Round = round.Value,
            Climb = given.NumberOrNone("climb_ft_min") is { } climb ? Speed.FromMetersPerSecond(Length.FromFeet(climb).Meters / 60) : null,
            Hopper = given.Has("loads") ? HopperOf(given.Group("loads"), plane) : null,
        });
        if (layout is null)
        {
            return Outcome<Reckoned>.Refuse(ReckonProblems.Impossible.At("round",
                ("value", "a field with nothing left to sow"), ("limit", "the ground round what stands there takes all of it"), ("remedy", "Check the places, heights and reaches.")));
        }

        return Outcome<Reckoned>.Of(new Reckoned([.. LayoutResults(layout), .. LoadResults(given, layout)], LayoutWorking.Of(layout))
        {
            Cautions = LayoutCautions.Of(layout),
        });
    }

    private static Outcome<ImmutableArray<NoDescent>> RoundOf(ReckoningInput given, LocalPlane plane, Length swath)
    {
        if (!given.Has("round")) return Outcome<ImmutableArray<NoDescent>>.Of([]);
        var round = ImmutableArray.CreateBuilder<NoDescent>();
        foreach (var row in given.Each("round"))
        {
            var numbers = row.Numbers("lon_lat");
            if (numbers.Length % 2 != 0 || Enumerable.Range(0, numbers.Length / 2).Any(i => Math.Abs(Math.IEEERemainder(numbers[2 * i] - plane.Longitude, 360)) > WidestField || Math.Abs(numbers[(2 * i) + 1] - plane.Latitude) > WidestField))
            {
                return Outcome<ImmutableArray<NoDescent>>.Refuse(ReckonProblems.Impossible.At("round",
                    ("value", Wording.Say.Datum(Datum.ListOf(numbers))), ("limit", "corners are pairs of longitude and latitude within a degree of the field"), ("remedy", "Give longitude first, then latitude, for each corner.")));
            }

            ImmutableArray<PlanePoint> points = [.. Enumerable.Range(0, numbers.Length / 2).Select(i => plane.ToPlane(new GeoPoint(numbers[(2 * i) + 1], numbers[2 * i])))];
            Length? height = row.NumberOrNone("height_ft") is { } high ? Length.FromFeet(high) : null;
            var ground = NoDescents.Of(new Hazard(KindOf(row.Text("kind")), row.Text("kind")) { Height = height }, points, swath)!;
            round.Add(row.NumberOrNone("reach_ft") is { } reach ? ground with { Reach = Length.FromFeet(reach) } : ground);
        }

        return Outcome<ImmutableArray<NoDescent>>.Of(round.ToImmutable());
    }

    private static HazardKind KindOf(string word) => word switch
    {
        "wire" => HazardKind.Wire,
        "tower" => HazardKind.Tower,
        "house" => HazardKind.House,
        "school" => HazardKind.School,
        "trees" => HazardKind.Trees,
        "water" => HazardKind.Pond,
        "crop" => HazardKind.SensitiveCrop,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static Outcome<PassWind>? WindOf(ReckoningInput given, Speed air)
    {
        if (!given.Has("wind")) return null;
        var told = given.Group("wind");
        var wind = new PassWind(Bearing.FromDegrees(told.Number("from_deg")), Speed.FromMilesPerHour(told.Number("mph"))) { MostAcross = told.NumberOrNone("most_across_mph") is { } most ? Speed.FromMilesPerHour(most) : null };
        return wind.Speed < air / 2
            ? Outcome<PassWind>.Of(wind)
            : Outcome<PassWind>.Refuse(ReckonProblems.Impossible.At("wind mph",
                ("value", Wording.Say.Figure(wind.Speed.MilesPerHour)), ("limit", "the wind is below half of the aeroplane's speed"), ("remedy", "Nobody sows in more; check the figure.")));
    }

    private static Problem? StripTooFar(ReckoningInput loads, LocalPlane plane) =>
        Math.Abs(Math.IEEERemainder(loads.Number("strip_lon") - plane.Longitude, 360)) > FarthestStrip || Math.Abs(loads.Number("strip_lat") - plane.Latitude) > FarthestStrip
            ? ReckonProblems.Impossible.At("loads strip_lat",
                ("value", Wording.Say.Figure(loads.Number("strip_lat")) + ", " + Wording.Say.Figure(loads.Number("strip_lon"))),
                ("limit", "a strip lies within " + Wording.Say.Figure(FarthestStrip) + " degrees of its field"),
                ("remedy", "Give latitude and longitude of the strip in degrees, west below zero."))
            : null;

    private static HopperAsk HopperOf(ReckoningInput loads, LocalPlane plane) => new()
    {
        Rate = SoakedRate.FromPoundsPerAcre(loads.Number("rate_wet_lb_ac")),
        Limit = LoadLimitOf(loads),
        Strip = plane.ToPlane(new GeoPoint(loads.Number("strip_lat"), loads.Number("strip_lon"))),
        Ferry = Speed.FromMilesPerHour(loads.Number("ferry_mph")),
        Turnaround = TimeSpan.FromSeconds(loads.Number("turnaround_s")),
        LineUp = loads.NumberOrNone("line_up_s") is { } seconds ? TimeSpan.FromSeconds(seconds) : null,
    };

    private static SoakedSeed LoadLimitOf(ReckoningInput loads)
    {
        var named = SoakedSeed.FromPounds(loads.Number("load_limit_wet_lb"));
        if (loads.NumberOrNone("hopper_gal") is not { } gallons || loads.NumberOrNone("bulk_wet_lb_ft3") is not { } bulk) return named;
        var room = Hopper.ByVolume(Volume.FromGallons(gallons), Fraction.FromShare(1), SoakedSeed.FromPounds(bulk), Volume.FromCubicFeet(1));
        return room < named ? room : named;
    }

    private static IEnumerable<(string Key, Datum Value)> LayoutResults(FieldLayout layout) =>
    [
        ("heading_deg", layout.Cells[0].Plan.Heading.Degrees), ("passes", layout.Passes), ("turns", layout.Passes - 1),
        ("open_length_m", layout.Open.Meters), ("flown_length_m", layout.Flown.Meters), ("flight_min", layout.Passing.TotalMinutes),
        ("bound_min", layout.Bound.Time.TotalMinutes), ("bound_passes", layout.Bound.Passes), ("gap_pct", layout.Gap * 100),
        ("one_heading_deg", layout.OneHeading.Heading.Degrees), ("one_heading_min", layout.OneHeading.Time.TotalMinutes), ("run_costs_min", layout.RunCosts.TotalMinutes), ("for_ferry_min", layout.ForFerry.TotalMinutes),
        ("unsown_ac", layout.Unsown.Acres), ("along_wire_passes", layout.AlongWires),
        ("cells", Datum.ListOf(layout.Cells.Select(c => Datum.Row(
            ("heading_deg", c.Plan.Heading.Degrees), ("area_ac", c.Area.Acres), ("passes", c.Plan.All.Length), ("spacing_ft", c.Plan.Spacing.Feet), ("narrowest_passes", c.Narrowest))))),
    ];

    private static IEnumerable<(string Key, Datum Value)> LoadResults(ReckoningInput given, FieldLayout layout)
    {
        var loads = layout.Loads;
        return
        [
            ("loads", Datum.Of(loads?.Chosen.Loads.Length)), ("load_limit_wet_lb", Datum.Of(given.Has("loads") ? LoadLimitOf(given.Group("loads")).Pounds : null)),
            ("ferry_min", Datum.Of(loads?.Chosen.Ferry.TotalMinutes)), ("filled_up_ferry_min", Datum.Of(loads?.FilledUp.Ferry.TotalMinutes)), ("least_ferry_min", Datum.Of(loads?.LeastFerry.TotalMinutes)), ("job_min", Datum.Of(layout.Job?.TotalMinutes)),
            ("filled_up_costs_min", Datum.Of(loads is null ? null : (loads.FilledUp.Time - loads.Chosen.Time).TotalMinutes)), ("one_fewer_load_wet_lb", Datum.Of(loads?.ForOneFewer?.Pounds)),
            ("one_fewer_saves_min", Datum.Of(loads?.OneFewerSaves?.TotalMinutes)),
        ];
    }
}
