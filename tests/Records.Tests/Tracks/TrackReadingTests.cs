using System.Text;
using Watersown.Documents.Tracks;
using Watersown.Flight.Flown;

namespace Watersown.Tracks;

public sealed class TrackReadingTests
{
    private static readonly ImmutableArray<Fix> Wanted =
        [.. new SomeTrack { Lines = [10, 30], Every = 0.5 }.Fixes().Select((f, i) => f with { Begins = i == 0, Gate = f.Gate == GateSign.Open ? GateSign.Open : GateSign.Shut })];

    public static TheoryData<string, TrackKind> Formats => new()
    {
        { TrackTexts.Gpx(Wanted), TrackKind.Gpx },
        { TrackTexts.Kml(Wanted), TrackKind.Kml },
        { TrackTexts.GeoJson(Wanted), TrackKind.GeoJson },
        { TrackTexts.Points(Wanted), TrackKind.GeoJson },
        { TrackTexts.Csv(Wanted), TrackKind.Csv },
        { TrackTexts.Csv(Wanted, ';'), TrackKind.Csv },
        { TrackTexts.Csv(Wanted, '\t'), TrackKind.Csv },
        { TrackTexts.Nmea(Wanted), TrackKind.Nmea },
    };

    [Theory]
    [MemberData(nameof(Formats), DisableDiscoveryEnumeration = true)]
    public async Task Every_format_gives_the_same_places(string text, TrackKind kind)
    {
        var fixes = new List<Fix>();
        var told = await TrackTexts.ReadAsync(text, fixes, kind == TrackKind.Nmea ? [(TrackColumn.Gate, "PGATE.1")] : []);
        Assert.Empty(told.Problems);
        Assert.Equal(kind, told.Value.Kind);
        Assert.Empty(told.Value.Dropped);
        Assert.Equal(Wanted.Length, fixes.Count);
        foreach (var (wanted, found) in Wanted.Zip(fixes))
        {
            // Eight decimals of a minute are 2 × 10⁻¹⁰ of a degree.
            Assert.Equal(wanted.Latitude, found.Latitude, 2e-10);
            Assert.Equal(wanted.Longitude, found.Longitude, 2e-10);
            Assert.Equal(wanted.Seconds, found.Seconds, 1e-3);
            Assert.Equal(wanted.Speed, found.Speed, 1e-5);
            Assert.Equal(wanted.Height, found.Height, 1e-5);
            Assert.Equal(wanted.Gate, found.Gate);
        }
    }

    [Fact]
    public async Task A_spreadsheet_in_two_bytes_a_letter_is_read_as_well()
    {
        var fixes = new List<Fix>();
        var told = await TrackTexts.ReadAsync([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(TrackTexts.Csv(Wanted, '\t'))], fixes);
        Assert.Empty(told.Problems);
        Assert.Equal(Wanted.Length, fixes.Count);
    }

    [Fact]
    public async Task Spanish_headings_and_days_are_read()
    {
        var fixes = new List<Fix>();
        var told = await TrackTexts.ReadAsync("Fecha;Hora;Latitud;Longitud;Velocidad (km/h);Altura (pies);Compuerta\n08/05/2026;05:50:00;39,2;-121,9;180;100;abierta\n08/05/2026;05:50:01;39,2005;-121,9;180;100;cerrada\n", fixes);
        Assert.Empty(told.Problems);
        Assert.Equal(new Fix(39.2, -121.9) { Seconds = TrackSeconds(2026, 5, 8) + 21_000, Speed = 50, Height = 30.48, Gate = GateSign.Open }, fixes[0] with { Speed = Math.Round(fixes[0].Speed, 9), Height = Math.Round(fixes[0].Height, 9) });
        Assert.Equal(GateSign.Shut, fixes[1].Gate);
    }

    private static double TrackSeconds(int year, int month, int day) => new DateTimeOffset(year, month, day, 0, 0, 0, TimeSpan.Zero).ToUnixTimeSeconds();

    [Fact]
    public async Task Unknown_headings_are_asked_for_and_can_be_told_by_name_or_number()
    {
        const string Text = "t,a,b,c\n2026-05-08T12:00:00Z,39.2,-121.9,1\n2026-05-08T12:00:01Z,39.2005,-121.9,0\n";
        var fixes = new List<Fix>();
        var refused = await TrackTexts.ReadAsync(Text, fixes);
        Assert.Equal(TrackProblems.NoPlaceColumns, Assert.Single(refused.Problems).Kind);
        Assert.Empty(fixes);
        var told = await TrackTexts.ReadAsync(Text, fixes, (TrackColumn.Latitude, "a"), (TrackColumn.Longitude, "3"), (TrackColumn.Gate, "c"), (TrackColumn.Time, "t"));
        Assert.Empty(told.Problems);
        Assert.Equal([GateSign.Open, GateSign.Shut], fixes.Select(f => f.Gate));
        Assert.Equal(1, fixes[1].Seconds - fixes[0].Seconds);
        var wrong = await TrackTexts.ReadAsync(Text, fixes, (TrackColumn.Latitude, "nowhere"));
        Assert.Equal(TrackProblems.NoSuchColumn, Assert.Single(wrong.Problems).Kind);
    }

    [Fact]
    public async Task Columns_told_by_number_need_no_headings()
    {
        var fixes = new List<Fix>();
        await TrackTexts.ReadAsync("39.2,-121.9\n39.2005,-121.9\n", fixes, (TrackColumn.Latitude, "1"), (TrackColumn.Longitude, "2"));
        Assert.Equal([39.2, 39.2005], fixes.Select(f => f.Latitude));
    }

    [Fact]
    public async Task A_speed_without_a_unit_and_two_gates_and_a_date_of_two_readings_are_said()
    {
        var told = await TrackTexts.ReadAsync("date,time,lat,lon,speed,gate,boom left\n5/8/2026,05:50:00,39.2,-121.9,120,1,1\n", []);
        Assert.Equal([TrackProblems.NoUnit, TrackProblems.SeveralGates, TrackProblems.TwoDates], told.Problems.Select(p => p.Kind).OrderBy(k => k.Code, StringComparer.Ordinal));
    }

    [Fact]
    public void A_column_that_nothing_is_called_is_refused() =>
        Assert.Equal(TrackProblems.UnknownMeaning, Assert.Single(TrackReading.Columns(["width=3"]).Problems).Kind);

    [Fact]
    public async Task A_file_cut_short_gives_what_came_before_and_says_so()
    {
        foreach (var text in new[] { TrackTexts.Gpx(Wanted), TrackTexts.Points(Wanted) })
        {
            var fixes = new List<Fix>();
            var told = await TrackTexts.ReadAsync(text[..(text.Length / 2)], fixes);
            Assert.True(told.HasValue);
            Assert.Equal(TrackProblems.Broken, Assert.Single(told.Problems).Kind);
            Assert.InRange(fixes.Count, Wanted.Length / 3, Wanted.Length * 2 / 3);
        }
    }

    [Fact]
    public async Task A_document_type_is_never_followed()
    {
        var told = await TrackTexts.ReadAsync("<?xml version=\"1.0\"?><!DOCTYPE gpx [<!ENTITY a SYSTEM \"other.txt\">]><gpx><trk><trkseg><trkpt lat=\"1\" lon=\"2\"><ele>&a;</ele></trkpt></trkseg></trk></gpx>", []);
        Assert.True(told.IsRefused);
    }

    [Fact]
    public async Task Nesting_without_end_is_ended()
    {
        var told = await TrackTexts.ReadAsync("<gpx><trk><trkseg><trkpt lat=\"1\" lon=\"2\"/></trkseg>" + string.Concat(Enumerable.Repeat("<a>", 200)), []);
        Assert.Contains(told.Problems, p => p.Kind == TrackProblems.TooDeep);
    }

    [Fact]
    public async Task What_is_no_track_is_refused()
    {
        Assert.Equal(TrackProblems.UnknownKind, Assert.Single((await TrackTexts.ReadAsync("hello", [])).Problems).Kind);
        Assert.Equal(TrackProblems.UnknownKind, Assert.Single((await TrackTexts.ReadAsync("<html/>", [])).Problems).Kind);
        Assert.Equal(TrackProblems.UnknownKind, Assert.Single((await TrackTexts.ReadAsync("PK\u0003\u0004 , ", [])).Problems).Kind);
        Assert.Equal(TrackProblems.NoFixes, Assert.Single((await TrackTexts.ReadAsync("{\"type\":\"FeatureCollection\",\"features\":[]}", [])).Problems).Kind);
        Assert.Equal(TrackProblems.NoFixes, Assert.Single((await TrackTexts.ReadAsync("{\"type\":\"Polygon\",\"coordinates\":[[[1,2],[2,2],[2,3],[1,2]]]}", [])).Problems).Kind);
    }

    [Fact]
    public async Task Lines_drawn_apart_begin_a_piece_each()
    {
        var fixes = new List<Fix>();
        await TrackTexts.ReadAsync("{\"type\":\"MultiLineString\",\"coordinates\":[[[1,2],[1,3]],[[2,2],[2,3]]]}", fixes);
        Assert.Equal([true, false, true, false], fixes.Select(f => f.Begins));
        fixes.Clear();
        await TrackTexts.ReadAsync("<kml><Placemark><LineString><coordinates>1,2 1,3</coordinates></LineString></Placemark><Placemark><LineString><coordinates>\n2,2,0\n2,3,0\n</coordinates></LineString></Placemark></kml>", fixes);
        Assert.Equal([true, false, true, false], fixes.Select(f => f.Begins));
        Assert.Equal(new Fix(3, 2) { Height = 0 }, fixes[3]);
    }

    [Fact]
    public async Task A_line_of_more_places_than_can_be_held_is_cut_and_said()
    {
        var fixes = 0L;
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes("{\"type\":\"LineString\",\"coordinates\":[" + new StringBuilder().Insert(0, "[1,2],", 4_000_001).Append("[1,2]]}")));
        var told = await TrackReading.ReadAsync(stream, "track", _ => fixes++, new TrackOptions(), CancellationToken.None);
        Assert.Equal(TrackProblems.LongLine, Assert.Single(told.Problems).Kind);
        Assert.Equal(4_000_000, fixes);
    }
}
