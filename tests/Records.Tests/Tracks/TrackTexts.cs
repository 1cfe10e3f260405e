using System.Globalization;
using System.Text;
using Watersown.Documents.Tracks;
using Watersown.Flight.Flown;

namespace Watersown.Tracks;

/// <summary>One track written in each format, by hand rather than by the code under test.</summary>
internal static class TrackTexts
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static string Gpx(IEnumerable<Fix> fixes)
    {
        var text = new StringBuilder("<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"t\" xmlns=\"http://www.topografix.com/GPX/1/1\" xmlns:w=\"urn:w\"><trk><name>a</name>");
        var first = true;
        foreach (var f in fixes)
        {
            if (f.Begins) text.Append(first ? "<trkseg>" : "</trkseg>\n<trkseg>");
            first = false;
            text.Append(Plain, $"<trkpt lat=\"{f.Latitude:R}\" lon=\"{f.Longitude:R}\"><ele>{f.Height:R}</ele><time>{Iso(f.Seconds)}</time><extensions><w:speed>{f.Speed:R}</w:speed><w:gate>{(f.Gate == GateSign.Open ? 1 : 0)}</w:gate></extensions></trkpt>\n");
        }

        return text.Append("</trkseg></trk></gpx>").ToString();
    }

    public static string Csv(IEnumerable<Fix> fixes, char delimiter = ',')
    {
        var text = new StringBuilder("# a log\n" + string.Join(delimiter, "Time UTC", "Latitude", "Longitude", "Altitude (m)", "Speed m/s", "Gate") + "\r\n");
        foreach (var f in fixes)
        {
            string[] cells = [Iso(f.Seconds), f.Latitude.ToString("R", Plain), f.Longitude.ToString("R", Plain), f.Height.ToString("R", Plain), f.Speed.ToString("R", Plain), f.Gate == GateSign.Open ? "on" : "off"];
            text.Append(string.Join(delimiter, delimiter == ';' ? cells.Select(c => c.Replace('.', ',')) : cells)).Append("\r\n");
        }

        return text.ToString();
    }

    public static string GeoJson(IEnumerable<Fix> fixes)
    {
        var all = fixes.ToList();
        return "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"geometry\":{\"type\":\"LineString\",\"coordinates\":["
            + string.Join(',', all.Select(f => string.Create(Plain, $"[{f.Longitude:R},{f.Latitude:R},{f.Height:R}]")))
            + "]},\"properties\":{\"coordTimes\":[" + string.Join(',', all.Select(f => "\"" + Iso(f.Seconds) + "\""))
            + "],\"gate\":[" + string.Join(',', all.Select(f => f.Gate == GateSign.Open ? "true" : "false"))
            + "],\"speed_mps\":[" + string.Join(',', all.Select(f => f.Speed.ToString("R", Plain))) + "]}}]}";
    }

    public static string Points(IEnumerable<Fix> fixes) => "{\"type\":\"FeatureCollection\",\"features\":["
        + string.Join(",\n", fixes.Select(f => string.Create(Plain, $$$"""{"type":"Feature","properties":{"time":"{{{Iso(f.Seconds)}}}","gate":"{{{(f.Gate == GateSign.Open ? "open" : "closed")}}}","speed m/s":{{{f.Speed:R}}}},"geometry":{"type":"Point","coordinates":[{{{f.Longitude:R}}},{{{f.Latitude:R}}},{{{f.Height:R}}}]}}""")))
        + "]}";

    public static string Kml(IEnumerable<Fix> fixes)
    {
        var all = fixes.ToList();
        var text = new StringBuilder("<kml xmlns=\"http://www.opengis.net/kml/2.2\" xmlns:gx=\"http://www.google.com/kml/ext/2.2\"><Document><Placemark><name>a</name><gx:Track>");
        foreach (var f in all) text.Append("<when>").Append(Iso(f.Seconds)).Append("</when>");
        foreach (var f in all) text.Append(Plain, $"<gx:coord>{f.Longitude:R} {f.Latitude:R} {f.Height:R}</gx:coord>\n");
        text.Append("<ExtendedData><SchemaData>");
        text.Append("<gx:SimpleArrayData name=\"gate\">").AppendJoin("", all.Select(f => "<gx:value>" + (f.Gate == GateSign.Open ? 1 : 0) + "</gx:value>")).Append("</gx:SimpleArrayData>");
        text.Append("<gx:SimpleArrayData name=\"speed m/s\">").AppendJoin("", all.Select(f => "<gx:value>" + f.Speed.ToString("R", Plain) + "</gx:value>")).Append("</gx:SimpleArrayData>");
        return text.Append("</SchemaData></ExtendedData></gx:Track></Placemark></Document></kml>").ToString();
    }

    public static string Nmea(IEnumerable<Fix> fixes)
    {
        var text = new StringBuilder();
        foreach (var f in fixes)
        {
            var time = DateTimeOffset.FromUnixTimeMilliseconds((long)Math.Round(f.Seconds * 1000));
            var (clock, date) = (time.ToString("HHmmss.fff", Plain), time.ToString("ddMMyy", Plain));
            var place = Angle(f.Latitude, 2) + (f.Latitude < 0 ? ",S," : ",N,") + Angle(f.Longitude, 3) + (f.Longitude < 0 ? ",W" : ",E");
            text.Append(Sentence("PGATE," + (f.Gate == GateSign.Open ? "1" : "0")));
            text.Append(Sentence($"GPGGA,{clock},{place},1,10,0.8,{f.Height.ToString("R", Plain)},M,0.0,M,,"));
            text.Append(Sentence($"GPRMC,{clock},A,{place},{(f.Speed * 3600 / 1852).ToString("F9", Plain)},0.0,{date},,,A"));
        }

        return text.ToString();
    }

    public static string Sentence(string said) => "$" + said + "*" + said.Aggregate(0, (sum, letter) => sum ^ letter).ToString("X2", Plain) + "\r\n";

    public static Task<Outcome<TrackTold>> ReadAsync(string text, List<Fix> into, params (TrackColumn, string)[] columns) => ReadAsync(Encoding.UTF8.GetBytes(text), into, columns);

    public static async Task<Outcome<TrackTold>> ReadAsync(byte[] bytes, List<Fix> into, params (TrackColumn Column, string Heading)[] columns)
    {
        using var stream = new MemoryStream(bytes);
        return await TrackReading.ReadAsync(stream, "track", into.Add, new TrackOptions { Columns = columns.ToImmutableDictionary(c => c.Column, c => c.Heading) }, CancellationToken.None);
    }

    private static string Iso(double seconds) => DateTimeOffset.FromUnixTimeMilliseconds((long)Math.Round(seconds * 1000)).ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", Plain);

    private static string Angle(double degrees, int digits)
    {
        var whole = Math.Floor(Math.Abs(degrees));
        return whole.ToString(new string('0', digits), Plain) + ((Math.Abs(degrees) - whole) * 60).ToString("00.00000000", Plain);
    }
}
