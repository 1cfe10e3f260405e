using Watersown.Flight.Cover;
using Watersown.Land;
using Watersown.Reckon;
using Watersown.Shapes;

namespace Watersown.Flight;

/// <summary>What was really flown, and what steering and receivers let expect.</summary>
public static partial class FlightReckonings
{
    private const string TwoDrms = "2drms";

    private static Reckoning Covered => new(
        "coverage",
        "How much of this field was skipped, sown once, and sown twice, and where is it bare?",
        [
            new("boundary", KeyKind.Boundary, "GeoJSON, degrees", "Polygon or MultiPolygon in WGS 84, longitude first; holes are no part of the field"),
            new("runs", KeyKind.Rows, "degrees", "stretches flown with the gate open, where the middle of the swath came down: [[[longitude, latitude], …], …], as the coordinates of a MultiLineString"),
            SwathFeet with { Least = 3, AboveLeast = false },
            new("cell_m", KeyKind.Number, "m", "side of the cells; without it a twentieth of the swath, half a meter at most") { Least = 0.02, Most = 5, Optional = true },
        ],
        [
            Result("field_ac", "ac", "land of the field, in cells"),
            Result("skip_ac", "ac", "never flown over"),
            Result("skip_error_ac", "ac", "at most out by this: half a cell along its edges"),
            Result("skip_pct", "%", "skipped land over the field"),
            Result("single_pct", "%", "flown over once"),
            Result("overlap_pct", "%", "flown over twice or more"),
            Result("excess_pct", "%", "beyond the first time, each time counted"),
            Result("off_field_pct", "%", "of all that was swept, off the field"),
            Result("cell_m", "m", "side of the cells"),
            new("bare_places", KeyKind.Rows, string.Empty, "bare places to walk to, the largest first") { Columns = BareColumns },
        ],
        Sources.CellCounting,
        """boundary={"type":"Polygon","coordinates":[[[-122,39.4],[-121.9988,39.4],[-121.9988,39.402],[-122,39.402],[-122,39.4]]]} runs=[[[-121.9999,39.4],[-121.9999,39.402]],[[-121.99965,39.402],[-121.99965,39.4]],[[-121.9994,39.4],[-121.9994,39.402]],[[-121.9992,39.402],[-121.9992,39.4]],[[-121.99895,39.4],[-121.99895,39.402]]] swath_ft=66""",
        given => BoundaryReading.Read(given.Table("boundary"), "boundary").Then(boundary => ReckonCoverage(given, boundary)))
    { Limits = "Cells count by their middles; the swath is taken as even from edge to edge. Where the seed came down is as good as the track, the throw and the wind behind the runs that are given. Bare pieces under 0.005 ac (20 m²) are counted but not listed." };

    private static ImmutableArray<ReckoningKey> BareColumns =>
    [
        Result("area_ac", "ac", "bare ground of the place"),
        Result("latitude", "°", "where to stand, WGS 84"),
        Result("longitude", "°", "where to stand, WGS 84"),
        Result("heading_deg", "°", "the way the nearest run goes, 0 up to 180"),
        Result("long_ft", "ft", "extent along that"),
        Result("wide_ft", "ft", "extent across it"),
        new("nearest_runs", KeyKind.Numbers, string.Empty, "the two runs that pass nearest, 1 for the first given"),
    ];

    private static Reckoning Steering => new(
        "steering-skip",
        "How much must be expected to be skipped because nobody flies quite straight?",
        [
            FromZero("sigma_m", "m", "how far one pass is off its line: standard deviation", 50),
            new("swath_m", KeyKind.Number, "m", "distance from one pass to the next") { Least = 0.5, Most = 500 },
        ],
        [
            Result("skip_m_at_seam", "m", "mean width skipped where two passes meet; as much is overlapped"),
            Result("skip_pct", "%", "of the land, and as much overlapped"),
        ],
        Sources.SteeringNoise,
        "sigma_m=0.5 swath_m=18",
        ReckonSteering)
    { Limits = "Each pass off its line by chance of its own, normally about it. What all passes are off by together skips nothing, and what is off for a whole pass length skips more in one place." };

    private static Reckoning ReceiverWords => new(
        "position-error",
        "What do the words on a receiver's sheet mean, one in terms of another?",
        [
            new("word", KeyKind.Text, string.Empty, "the word the error is given in") { Choices = ["cep", "drms", "r95", TwoDrms] },
            Above("error_m", "m", "the error in that word", 1000),
        ],
        [
            Result("sigma_m", "m", "standard deviation along either axis"),
            Result("cep_m", "m", "circle that holds half of all positions"),
            Result("drms_m", "m", "root of the mean squared distance: 63.2 % within it"),
            Result("r95_m", "m", "circle that holds 95 %"),
            Result("two_drms_m", "m", "twice drms: 98.2 % within it"),
        ],
        Sources.CircularErrors,
        "word=cep error_m=1.2",
        ReckonReceiverWords)
    { Limits = "Errors alike east and north, independent and normal. An absolute error: from pass to pass within minutes it is much smaller." };

    private static Outcome<Reckoned> ReckonCoverage(ReckoningInput given, Boundary boundary)
    {
        var plane = FarmPlane.Over(boundary);
        if (RunsOf(given.Items("runs"), plane) is not { } runs)
        {
            return Outcome<Reckoned>.Refuse(ReckonProblems.Impossible.At("runs",
                ("value", "runs of another form"), ("limit", "each is a list of places near the field, each place [longitude, latitude] in degrees"), ("remedy", "Give the coordinates of a GeoJSON MultiLineString.")));
        }

        var swath = SwathOf(given);
        var cell = given.NumberOrNone("cell_m") is { } side ? Length.FromMeters(side) : Coverage.CellFor(swath);
        return Coverage.Of(plane.ToPlane(boundary), runs, swath, new CoverOptions { Cell = cell }).Map(cover => new Reckoned(
            [
                ("field_ac", cover.Shares.Field.Acres), ("skip_ac", cover.Shares.Skipped.Area.Acres), ("skip_error_ac", cover.Shares.Skipped.Error.Acres),
                ("skip_pct", cover.Shares.SkipShare.Percent), ("single_pct", cover.Shares.SingleShare.Percent), ("overlap_pct", cover.Shares.OverlapShare.Percent),
                ("excess_pct", 100 * cover.Shares.ExcessRatio), ("off_field_pct", cover.Shares.OffFieldShare.Percent), ("cell_m", cell.Meters),
                ("bare_places", Datum.ListOf(cover.ThinPlaces.Select(p => BareRow(p, plane)))),
            ],
            CoverWorking(cover, swath))
        { Cautions = ["Where seed came down is only as well known as the track, the throw and the wind. Walk the bare places before you order seed."] });
    }

    private static Working CoverWorking(FieldCover cover, Length swath)
    {
        var shares = cover.Shares;
        return Working.Empty
            .Given("S", "swath", swath.Feet, "ft", "typed")
            .Given("c", "side of a cell", cover.Grid.Cell.Meters, "m", "typed, or S / 20 and 0.5 m at most")
            .Step("A", "field", shares.Field.Acres, "ac", "cells with their middle in the field × c²", Sources.CellCounting)
            .Step("A0", "skipped", shares.Skipped.Area.Acres, "ac", "cells of these under no run × c²", Sources.CellCounting)
            .Step("A1", "flown over once", shares.Single.Area.Acres, "ac", "cells under one run × c²", Sources.CellCounting)
            .Step("A2", "flown over twice or more", shares.Overlapped.Area.Acres, "ac", "cells under more × c²", Sources.CellCounting)
            .Step("E", "beyond the first time", shares.Excess.Acres, "ac", "Σ (runs − 1) over cells under any × c²", Sources.CellCounting)
            .Step("e0", "A0 at most out by", shares.Skipped.Error.Acres, "ac", "length of its edges × c / 2", Sources.CellCounting)
            .Step("W", "swept with the gate open", shares.Swept.Acres, "ac", "area of every run's swath by its outline", Sources.CellCounting)
            .Step("O", "of that off the field", shares.Outside.Area.Acres, "ac", "W − A1 − A2 − E, never below 0", Sources.CellCounting);
    }

    private static Datum BareRow(ThinPlace place, LocalPlane plane)
    {
        var at = plane.ToPlace(place.At);
        return Datum.Row(
            ("area_ac", place.Area.Acres), ("latitude", at.Latitude), ("longitude", at.Longitude), ("heading_deg", place.Heading.Degrees),
            ("long_ft", place.Long.Feet), ("wide_ft", place.Wide.Feet), ("nearest_runs", Datum.ListOf(place.NearestRuns.Select(r => r + 1.0))));
    }

    private static ImmutableArray<ImmutableArray<PlanePoint>>? RunsOf(ImmutableArray<Datum> given, LocalPlane plane)
    {
        var runs = ImmutableArray.CreateBuilder<ImmutableArray<PlanePoint>>(given.Length);
        foreach (var run in given)
        {
            if (run is not Datum.Sequence { Items: var places }) return null;
            var line = ImmutableArray.CreateBuilder<PlanePoint>(places.Length);
            foreach (var place in places)
            {
                if (place is not Datum.Sequence { Items: [Datum.Number { Value: var longitude }, Datum.Number { Value: var latitude }, ..] }) return null;
                if (!(Math.Abs(longitude) <= 360 && Math.Abs(latitude - plane.Latitude) <= WidestField && Math.Abs(Math.IEEERemainder(longitude - plane.Longitude, 360)) <= WidestField)) return null;
                line.Add(plane.ToPlane(latitude, longitude));
            }

            runs.Add(line.ToImmutable());
        }

        return runs.ToImmutable();
    }

    private static Outcome<Reckoned> ReckonSteering(ReckoningInput given)
    {
        var (sigma, swath) = (Length.FromMeters(given.Number("sigma_m")), Length.FromMeters(given.Number("swath_m")));
        var (seam, share) = (SteeringNoise.SkippedAtSeam(sigma), SteeringNoise.SkippedShare(sigma, swath));
        return Outcome<Reckoned>.Of(new Reckoned(
            [("skip_m_at_seam", seam.Meters), ("skip_pct", share.Percent)],
            Working.Empty
                .Given("s", "one pass off its line, standard deviation", sigma.Meters, "m", "typed")
                .Given("S", "from pass to pass", swath.Meters, "m", "typed")
                .Step("g", "mean width skipped at each seam", seam.Meters, "m", "s / √π", Sources.SteeringNoise)
                .Step("f", "of the land", share.Percent, "%", "100 × g / S", Sources.SteeringNoise)));
    }

    private static Outcome<Reckoned> ReckonReceiverWords(ReckoningInput given)
    {
        var (word, told) = (given.Text("word"), Length.FromMeters(given.Number("error_m")));
        var error = word switch
        {
            "cep" => PositionError.FromCep(told),
            "drms" => PositionError.FromDrms(told),
            "r95" => PositionError.FromR95(told),
            TwoDrms => PositionError.FromTwiceDrms(told),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return Outcome<Reckoned>.Of(new Reckoned(
            [("sigma_m", error.Sigma.Meters), ("cep_m", error.Cep.Meters), ("drms_m", error.Drms.Meters), ("r95_m", error.R95.Meters), ("two_drms_m", error.TwiceDrms.Meters)],
            Working.Empty
                .Given("e", "error as told, " + word, told.Meters, "m", "typed")
                .Step("σ", "standard deviation along either axis", error.Sigma.Meters, "m", "e over the factor of its word below", Sources.CircularErrors)
                .Step("CEP", "holds half", error.Cep.Meters, "m", "√(2 ln 2) σ", Sources.CircularErrors)
                .Step("DRMS", "root mean square", error.Drms.Meters, "m", "√2 σ", Sources.CircularErrors)
                .Step("R95", "holds 95 %", error.R95.Meters, "m", "√(2 ln 20) σ", Sources.CircularErrors)
                .Step("2DRMS", "holds 98.2 %", error.TwiceDrms.Meters, "m", "2 √2 σ", Sources.CircularErrors)));
    }
}
