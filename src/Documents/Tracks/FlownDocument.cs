using System.Text.Json;
using Watersown.Documents.Reckon;
using Watersown.Flight.Flown;
using Watersown.Land;

namespace Watersown.Documents.Tracks;

/// <summary>What was flown, as JSON: figures at full precision, their errors, what was dropped, where to walk, working, cautions.</summary>
public static class FlownDocument
{
    /// <summary>The document.</summary>
    /// <param name="report">What was flown.</param>
    /// <param name="told">What the file told.</param>
    /// <param name="telling">Says cautions.</param>
    public static string ToJson(FlownReport report, TrackTold told, FlownTelling telling) => DatumWriter.Text(writer => Write(writer, report, told, telling), indented: true);

    /// <summary>A heading there and back, 0 up to but not including 180; dust below 180 is 0.</summary>
    public static double? Axis(Bearing? heading) => heading is { } h ? Math.Round(h.Degrees % 180, 9) % 180 : null;

    private static void Write(Utf8JsonWriter writer, FlownReport report, TrackTold told, FlownTelling telling)
    {
        writer.WriteStartObject();
        foreach (var (key, value) in Figures(report, told))
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
        yield return ("thin_places", Datum.ListOf(report.Cover.ThinPlaces.Select(t =>
        {
            var at = report.Track.Plane.ToPlace(t.At);
            return Datum.Row(("lat", at.Latitude), ("lon", at.Longitude), ("ac", t.Area.Acres), ("long_ft", t.Long.Feet), ("wide_ft", t.Wide.Feet), ("heading_deg", t.Heading.Degrees));
        })));
    }

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
