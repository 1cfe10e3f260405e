using System.Text.Json;
using Watersown.Documents.Reckon;
using Watersown.Flight.Cover;
using Watersown.Flight.Flown;
using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Documents.Tracks;

/// <summary>What was flown, as JSON: figures at full precision, their errors, what was dropped, where to walk, working, cautions.</summary>
public static class FlownDocument
{
    /// <summary>The document.</summary>
    /// <param name="report">What was flown.</param>
    /// <param name="told">What the file told.</param>
    /// <param name="telling">Says cautions.</param>
    /// <param name="exact">Areas by outlines; none where they were not asked for.</param>
    public static string ToJson(FlownReport report, TrackTold told, FlownTelling telling, LayerAreas? exact = null) => DatumWriter.Text(writer => Write(writer, (report, exact), told, telling), indented: true);

    /// <summary>A heading there and back, 0 up to but not including 180; dust below 180 is 0.</summary>
    public static double? Axis(Bearing? heading) => heading is { } h ? Math.Round(h.Degrees % 180, 9) % 180 : null;

    private static void Write(Utf8JsonWriter writer, (FlownReport Report, LayerAreas? Exact) found, TrackTold told, FlownTelling telling)
    {
        var report = found.Report;
        writer.WriteStartObject();
        foreach (var (key, value) in Figures(report, told).Concat(Exact(found.Exact)))
        {
            writer.WritePropertyName(key);
            DatumWriter.Write(writer, value);
        }

        WorkingJson.Write(writer, report.Working);
        writer.WriteStartArray("cautions");
        foreach (var caution in report.Cautions) writer.WriteStringValue(telling.Caution(report, caution));
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static IEnumerable<(string Key, Datum Value)> Figures(FlownReport report, TrackTold told)
    {
        var (passes, swath) = (report.Passes, report.Question.Swath);
        yield return ("net_ac", report.Net.Acres);
        yield return ("flown_ac", report.Flown.Acres);
        yield return ("flown_error_ac", report.Net.Acres * report.Skip.Error.Share);
        yield return ("skip_pct", report.Skip.Share.Percent);
        yield return ("skip_error_pct", report.Skip.Error.Percent);
        yield return ("overlap_pct", report.Overlap.Share.Percent);
        yield return ("overlap_error_pct", report.Overlap.Error.Percent);
        yield return ("excess_pct", report.Cover.Shares.ExcessRatio * 100);
        yield return ("off_field_pct", report.OffField.Share.Percent);
        yield return ("off_field_error_pct", report.OffField.Error.Percent);
        foreach (var figure in Laid(report)) yield return figure;
        yield return ("passes", passes.All.Length);
        yield return ("heading_deg", Datum.Of(Axis(passes.Heading)));
        yield return ("mean_spacing_ft", Datum.Of(passes.MeanSpacing?.Feet));
        yield return ("spacing_rms_error_ft", Datum.Of(passes.SpacingError(swath)?.Feet));
        yield return ("line_error_ft", report.LineErrors is { } lines ? Datum.Row(("mean", lines.Mean.Feet), ("rms", lines.RootMeanSquare.Feet), ("p95", lines.Of95.Feet)) : Datum.None);
        yield return ("gate", report.Runs.Gate switch { GateKnown.Told => "told", GateKnown.DrawnApart => "drawn-apart", _ => "inferred" });
        yield return ("end_error_ft", Datum.Of(report.Runs.EndError?.Feet));
        yield return ("kind", told.Kind switch { TrackKind.GeoJson => "geojson", TrackKind.Gpx => "gpx", TrackKind.Nmea => "nmea", TrackKind.Kml => "kml", _ => "csv" });
        yield return ("fixes", report.Track.Given);
        yield return ("dropped", Datum.ListOf(told.Dropped.Concat(report.Track.Dropped).Select(d => Datum.Row(("reason", Reason(d.Reason)), ("count", d.Count), ("first", d.First)))));
        yield return ("far_away", Datum.ListOf(report.Track.Far.Take(20).Select(f => Datum.Row(("lat", f.Around.Latitude), ("lon", f.Around.Longitude), ("count", f.Count)))));
        yield return ("pass_list", Datum.ListOf(passes.All.Select(Pass)));
        yield return ("spacings", Datum.ListOf(passes.Spacings.Select(s => Datum.Row(("left", s.Left), ("right", s.Right), ("spacing_ft", s.Apart.Feet)))));
        yield return ("thin_places", Places(report, report.Cover.ThinPlaces));
    }

    private static IEnumerable<(string Key, Datum Value)> Exact(LayerAreas? exact) =>
        exact is null ? [] : [("exact_skip_ac", exact.None.Acres), ("exact_single_ac", exact.Once.Acres), ("exact_overlap_ac", exact.More.Acres)];

    private static IEnumerable<(string Key, Datum Value)> Laid(FlownReport report)
    {
        var (deposit, asked) = (report.Deposit, report.Question);
        yield return ("deposit_pattern", deposit.Shape.Tested ? "tested" : "supposed");
        yield return ("deposit_mean_pct", deposit.Mean * 100);
        yield return ("deposit_lb_ac_dry", Datum.Of(asked.Rate?.PoundsPerAcre * deposit.Mean));
        yield return ("deposit_lb_ac_soaked", Datum.Of(asked.Rate?.PoundsPerAcre * deposit.Mean * asked.Out?.Factor));
        yield return ("deposit_cv_pct", deposit.Cv.Percent);
        yield return ("deposit_near_pct", deposit.Near.Percent);
        yield return ("deposit_thin_pct", deposit.Thin.Percent);
        yield return ("deposit_off_field_pct", deposit.OffField.Percent);
        yield return ("deposit_thin_places", Places(report, report.ThinPlaces));
    }

    private static Datum Places(FlownReport report, ImmutableArray<ThinPlace> places) => Datum.ListOf(places.Select(t =>
    {
        var at = report.Track.Plane.ToPlace(t.At);
        return Datum.Row(("lat", at.Latitude), ("lon", at.Longitude), ("ac", t.Area.Acres), ("long_ft", t.Long.Feet), ("wide_ft", t.Wide.Feet), ("heading_deg", t.Heading.Degrees));
    }));

    private static Datum Pass(FlownPass pass) => Datum.Row(
        ("pass", pass.Number), ("heading_deg", pass.Heading.Degrees), ("along", pass.IsAlong), ("length_ft", pass.Length.Feet), ("speed_mph", Datum.Of(pass.Speed?.MilesPerHour)),
        ("strays_ft", pass.Strays.Feet), ("began", pass.Stretches[0].Began is var b && double.IsFinite(b) ? b : Datum.None));

    private static string Reason(DropReason reason) => reason switch
    {
        DropReason.BadChecksum => "bad-checksum",
        DropReason.NoPosition => "no-position",
        DropReason.Unreadable => "unreadable",
        DropReason.OffTheEarth => "off-the-earth",
        DropReason.NoTime => "no-time",
        DropReason.SameTime => "same-time",
        DropReason.TimeBack => "time-back",
        _ => "jump",
    };
}
