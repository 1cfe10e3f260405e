using Watersown.Land;
using Watersown.Reckon;

namespace Watersown.Flight;

/// <summary>Straight passes over a field.</summary>
public static partial class FlightReckonings
{
    // Land that fills less of its outline than this is worth a look for a second heading.
    private const double WellFilled = 0.9;

    // Nearly seventy miles: no field, and far inside what the plane bears.
    private const double WidestField = 1;

    private static Reckoning StraightPasses => new(
        "passes",
        "Which way is this field flown in fewest passes, and how many are they?",
        [
            new("boundary", KeyKind.Boundary, "GeoJSON, degrees", "Polygon or MultiPolygon in WGS 84, longitude first; holes are left unsown"),
            SwathFeet with { Least = 1, AboveLeast = false },
            new("heading_deg", KeyKind.Number, "°", "heading to fly, from true north; without it the one with the least width") { Least = 0, Most = 360, Optional = true },
        ],
        [
            Result("heading_deg", "°", "heading from true north; the opposite way is the same"),
            new("passes", KeyKind.WholeNumber, string.Empty, "passes, side by side"),
            Result("pass_length_m", "m", "mean length of a pass over the field, gate open; holes and ground between pieces taken off"),
            Result("width_m", "m", "extent of the field square to the heading"),
            Result("area_ac", "ac", "land inside, on the ellipsoid"),
            Result("total_length_m", "m", "length over the field of all passes together"),
            Result("even_spacing_ft", "ft", "width shared out evenly over the passes"),
        ],
        Sources.WidthTheorem,
        """boundary={"type":"Polygon","coordinates":[[[-122,39.4],[-121.9906,39.4],[-121.9906,39.4072],[-122,39.4072],[-122,39.4]]]} swath_ft=50""",
        given => BoundaryReading.Read(given.Table("boundary"), "boundary").Then(boundary => ReckonPasses(given, boundary)))
    { Limits = "On a level plane through the field's middle: lengths within 3 parts in a million up to 10 miles across. Straight passes only; passes along the ends are extra. A field that is not convex is taken by its outline." };

    private static Outcome<Reckoned> ReckonPasses(ReckoningInput given, Boundary boundary)
    {
        if (TooFar(boundary) is { } far) return Outcome<Reckoned>.Refuse(far);

        var swath = SwathOf(given);
        Bearing? asked = given.NumberOrNone("heading_deg") is { } degrees ? Bearing.FromDegrees(degrees) : null;
        var field = FarmPlane.Over(boundary).ToPlane(boundary);
        var outline = Passes.OutlineOf(field);
        var width = asked is { } heading ? outline.Across(heading) : outline.Narrowest().Width;
        if (TooMany(width, swath) is { } many) return Outcome<Reckoned>.Refuse(many);

        var plan = Passes.Lay(field, swath, asked);
        var area = GeodesicArea.Of(boundary);
        var working = Working.Empty
            .Given("S", "swath", swath.Feet, "ft", "typed")
            .Given("A", "land inside", area.Acres, "ac", "boundary");
        working = asked is null
            ? working.Step("θ", "heading with the least width", plan.Heading.Degrees, "° from true north", "of the headings along each side of the outline", Sources.WidthTheorem)
            : working.Given("θ", "heading", plan.Heading.Degrees, "° from true north", "typed");
        working = working
            .Step("w", "extent square to the heading", plan.Width.Meters, "m", "farthest right less farthest left", Sources.Definition)
            .Step("n", "passes", plan.All.Length, string.Empty, "w / S, rounded up", Sources.WholePassCount)
            .Step("S1", "width shared out evenly", plan.Spacing.Feet, "ft", "w / n", Sources.WholePassCount)
            .Step("ΣL", "length over the field, all passes", plan.OpenLength.Meters, "m", "lines at (i − 1/2) S1, cut to the field", Sources.Definition)
            .Step("L", "mean length of a pass", plan.MeanLength.Meters, "m", "ΣL / n", Sources.Arithmetic);
        return Outcome<Reckoned>.Of(new Reckoned(
            [
                ("heading_deg", plan.Heading.Degrees), ("passes", plan.All.Length), ("pass_length_m", plan.MeanLength.Meters), ("width_m", plan.Width.Meters),
                ("area_ac", area.Acres), ("total_length_m", plan.OpenLength.Meters), ("even_spacing_ft", plan.Spacing.Feet),
            ],
            working)
        { Cautions = PassCautions(boundary, area / outline.Area) });
    }

    private static Problem? TooFar(Boundary boundary) => Reach(boundary) is var reach && reach > WidestField
        ? ReckonProblems.Impossible.At("boundary",
            ("value", "a boundary that reaches over " + Wording.Say.Figure(reach) + " degrees"),
            ("limit", "a field lies within " + Wording.Say.Figure(WidestField) + " degree of latitude and longitude"),
            ("remedy", "Look for a corner that is far from the others."))
        : null;

    private static Problem? TooMany(Length width, Length swath) => Passes.Count(width, swath) > Passes.Most
        ? ReckonProblems.Impossible.At("swath_ft",
            ("value", Wording.Say.Figure(swath.Feet) + " ft"),
            ("limit", "the field is " + Wording.Say.Figure(width.Feet) + " ft across and would take more than " + Wording.Say.Number(Passes.Most) + " passes"),
            ("remedy", "Check the swath and that the boundary is one field."))
        : null;

    // Degrees from one end of the boundary to the other, north-south or east-west, the larger.
    private static double Reach(Boundary boundary)
    {
        ImmutableArray<GeoPoint> corners = [.. boundary.Parts.SelectMany(p => p.Outer)];
        var steps = corners.Select(c => Math.IEEERemainder(c.Longitude - corners[0].Longitude, 360)).ToList();
        return Math.Max(corners.Max(c => c.Latitude) - corners.Min(c => c.Latitude), steps.Max() - steps.Min());
    }

    private static ImmutableArray<string> PassCautions(Boundary boundary, double filled)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        if (boundary.Parts.Any(p => p.Holes.Length > 0)) cautions.Add("The gate is shut over each hole; a pass that may not fly over one is split in two.");
        if (filled < WellFilled)
            cautions.Add("The land fills only " + Wording.Say.Number(filled * 100) + " % of its outline: flying it in two headings may save turns.");
        cautions.Add("A wish, not a flight path: wires, poles, trees, houses, wind and sun are not in it. Walk the field and tell the pilot of each hazard by day.");
        cautions.Add(PilotDecides);
        return cautions.ToImmutable();
    }
}
