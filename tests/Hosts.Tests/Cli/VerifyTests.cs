using System.Globalization;
using System.Text;
using System.Text.Json;
using Watersown.Cli;
using Watersown.Flight.Flown;
using Watersown.Land;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

/// <summary>Tracks whose skips and overlaps follow by arithmetic from where their lines lie.</summary>
public sealed class VerifyTests : IDisposable
{
    private const string Twenty = "65.616797900262467"; // 20 m

    private static readonly SomeTrack case48 = new() { Lines = [10, 30, 53, 70, 90] };

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("watersown");

    public void Dispose() => folder.Delete(recursive: true);

    private string Here(string file) => Path.Combine(folder.FullName, file);

    private string Edge(Boundary field)
    {
        static string Ring(ImmutableArray<GeoPoint> ring) => "[" + string.Join(',', ring.Append(ring[0]).Select(p => string.Create(CultureInfo.InvariantCulture, $"[{p.Longitude:R},{p.Latitude:R}]"))) + "]";
        var path = Here("field.geojson");
        File.WriteAllText(path, "{\"type\":\"Feature\",\"properties\":{\"code\":\"T1\"},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[" + string.Join(',', field.Parts[0].Holes.Prepend(field.Parts[0].Outer).Select(Ring)) + "]}}");
        return path;
    }

    private string Csv(IEnumerable<Fix> fixes, bool gate = true, bool time = true)
    {
        var text = new StringBuilder((time ? "time," : string.Empty) + "lat,lon" + (gate ? ",gate\n" : "\n"));
        foreach (var f in fixes)
        {
            if (time) text.Append(DateTimeOffset.FromUnixTimeMilliseconds((long)Math.Round(f.Seconds * 1000)).ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z',", CultureInfo.InvariantCulture));
            text.Append(CultureInfo.InvariantCulture, $"{f.Latitude:F10},{f.Longitude:F10}").Append(!gate ? string.Empty : f.Gate == GateSign.Open ? ",1" : ",0").Append('\n');
        }

        var path = Here("track.csv");
        File.WriteAllText(path, text.ToString());
        return path;
    }

    private static async Task<JsonElement> AskAsync(string edge, string track, params string[] more)
    {
        var said = await AsksAsync(["verify", "--boundary", edge, "--track", track, "--swath-ft", Twenty, "--json", .. more]);
        Assert.Equal((ExitCode.Done, string.Empty), (said.Code, said.Error));
        using var document = JsonDocument.Parse(said.Out);
        return document.RootElement.Clone();
    }

    private static double Of(JsonElement answer, string key) => answer.GetProperty(key).GetDouble();

    private static void Shares(JsonElement answer, double skip, double overlap, double off, double within)
    {
        Assert.Equal(skip, Of(answer, "skip_pct"), within);
        Assert.Equal(overlap, Of(answer, "overlap_pct"), within);
        Assert.Equal(off, Of(answer, "off_field_pct"), within);
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(false, true)]
    [InlineData(false, false)]
    [InlineData(true, false)]
    public async Task Lines_at_10_30_53_70_90_with_a_swath_of_20_on_100_skip_3_and_double_3_percent(bool gate, bool time)
    {
        var answer = await AskAsync(Edge(case48.Field), Csv(case48.Fixes(), gate, time));
        Shares(answer, 3, 3, 0, 0.1);
        Assert.Equal(5, answer.GetProperty("passes").GetInt32());
        Assert.Equal(0, Math.Sin(Of(answer, "heading_deg") * Math.PI / 180), 1e-3);
        Assert.Equal(20 / 0.3048, Of(answer, "mean_spacing_ft"), 0.01);

        // 100 m × 800 m = 8 ha = 19.7684 ac
        Assert.Equal(19.7684, Of(answer, "net_ac"), 0.001);
        Assert.Equal(19.7684 * 0.97, Of(answer, "flown_ac"), 0.02);
    }

    [Fact]
    public async Task A_log_that_follows_the_plan_comes_out_at_nothing()
    {
        var plan = new SomeTrack { Lines = [10, 30, 50, 70, 90] };
        var answer = await AskAsync(Edge(plan.Field), Csv(plan.Fixes()), "--planned-deg", "0");
        Shares(answer, 0, 0, 0, 0.1);
        Assert.Equal(0, answer.GetProperty("line_error_ft").GetProperty("p95").GetDouble(), 0.05);
        Assert.Equal(0, Of(answer, "spacing_rms_error_ft"), 0.01);
        Assert.Empty(answer.GetProperty("thin_places").EnumerateArray());
    }

    [Fact]
    public async Task Half_a_field_flown_is_half_skipped() => Shares(await AskAsync(Edge(case48.Field), Csv(new SomeTrack { Lines = [10, 30] }.Fixes())), 60, 0, 0, 0.1);

    [Fact]
    public async Task Holes_are_no_land_and_what_fell_on_them_is_off_the_field()
    {
        // A hole 20 m × 200 m under the line at 50: 4,000 m² of 80,000 m² swept.
        var holed = new SomeTrack { Lines = [10, 30, 50, 70, 90], Field = SomeTrack.Box(0, 0, 100, 800, (40, 300, 60, 500)) };
        var answer = await AskAsync(Edge(holed.Field), Csv(holed.Fixes()));
        Shares(answer, 0, 0, 5, 0.1);
        Assert.Equal(19.7684 * 0.95, Of(answer, "net_ac"), 0.001);
    }

    [Fact]
    public async Task A_gate_left_open_beyond_the_end_is_off_the_field()
    {
        // Runs of 1,000 m over 800 m of field.
        var long_ = new SomeTrack { Lines = [10, 30, 50, 70, 90], From = -100, To = 900, Beyond = 100, Every = 0.02 };
        Shares(await AskAsync(Edge(long_.Field), Csv(long_.Fixes())), 0, 0, 20, 0.1);
    }

    [Fact]
    public async Task The_text_says_the_same_and_where_to_walk_in_both_languages()
    {
        var (edge, track) = (Edge(case48.Field), Csv(case48.Fixes(gate: false), gate: false));
        var english = await AsksAsync("verify", "--boundary", edge, "--track", track, "--swath-ft", Twenty, "--rate-lb-ac", "150");
        Assert.Equal(ExitCode.Done, english.Code);
        Assert.Contains("3.00 %, 0.59 ac", english.Out, StringComparison.Ordinal);
        Assert.Contains("89 lb dry", english.Out, StringComparison.Ordinal);
        Assert.Contains("1. 0.59 ac at 39.20", english.Out, StringComparison.Ordinal);
        Assert.Contains("The track tells no gate.", english.Out, StringComparison.Ordinal);
        var spanish = await AsksAsync("verify", "--boundary", edge, "--track", track, "--swath-ft", Twenty, "--lang", "es");
        Assert.Contains("El recorrido no dice la compuerta.", spanish.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_of_trays_the_scale_and_exact_areas_are_in_the_answer()
    {
        var answer = await AskAsync(Edge(case48.Field), Csv(case48.Fixes()), "--exact", "--trays", "0,1,1,0", "--tray-spacing-ft", "20", "--rate-lb-ac", "150", "--soaked-out-lb", "3700", "--wet-factor", "1.25");
        Assert.Equal("tested", answer.GetProperty("deposit_pattern").GetString());
        Assert.Equal(0.03, Of(answer, "exact_skip_ac") / Of(answer, "net_ac"), 0.001);
        Assert.Equal(0.03, Of(answer, "exact_overlap_ac") / Of(answer, "net_ac"), 0.001);
        Assert.Equal(1.25, Of(answer, "deposit_lb_ac_soaked") / Of(answer, "deposit_lb_ac_dry"), 1e-9);

        // 3,700 lb soaked are 2,960 lb dry: over 19.7684 ac, less what fell off the field.
        Assert.Equal(3700 / 1.25 / 19.7684 * (1 - (Of(answer, "deposit_off_field_pct") / 100)), Of(answer, "deposit_lb_ac_dry"), 0.2);
    }

    [Fact]
    public async Task What_cannot_be_asked_is_refused()
    {
        var (edge, track) = (Edge(case48.Field), Csv(case48.Fixes()));
        (await AsksAsync("verify", "--boundary", edge, "--track", track, "--swath-ft", "50", "--trays", "1,x,2")).Refused();
        (await AsksAsync("verify", "--boundary", edge, "--track", track, "--swath-ft", "0")).Refused();
        (await AsksAsync("verify", "--boundary", edge, "--track", Here("none.gpx"), "--swath-ft", "50")).Refused();
        Assert.Contains("FLOWN-004", (await AsksAsync("verify", "--boundary", edge, "--track", track, "--swath-ft", "50", "--field", "Z9")).Refused().Error, StringComparison.Ordinal);
        Assert.Contains("TRACK-011", (await AsksAsync("verify", "--boundary", edge, "--track", track, "--swath-ft", "50", "--columns", "width=2")).Refused().Error, StringComparison.Ordinal);
        var elsewhere = Csv(case48.Fixes().Select(f => f with { Latitude = f.Latitude + 0.5 }));
        Assert.Contains("FLOWN-001", (await AsksAsync("verify", "--boundary", edge, "--track", elsewhere, "--swath-ft", "50")).Refused().Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Times_that_no_aeroplane_could_keep_are_refused_and_can_be_left_out()
    {
        var hurried = (case48 with { Every = 1 }).Fixes().Select((f, i) => f with { Seconds = SomeTrack.Morning + (i * 0.001) });
        var (edge, track) = (Edge(case48.Field), Csv(hurried));
        Assert.Contains("FLOWN-003", (await AsksAsync("verify", "--boundary", edge, "--track", track, "--swath-ft", Twenty)).Refused().Error, StringComparison.Ordinal);
        Shares(await AskAsync(edge, track, "--no-time"), 3, 3, 0, 0.1);
    }

    [Fact]
    public async Task What_was_flown_goes_out_in_open_formats_with_its_times_and_reads_back_the_same()
    {
        var into = Here("out");
        var first = await AskAsync(Edge(case48.Field), Csv(case48.Fixes()), "--handout", into);
        Assert.Equal(["README.txt", "handout.geojson", "handout.gpx", "handout.kml", "shapefiles.zip", "taskdata.zip"],
            Directory.GetFiles(into).Select(f => Path.GetFileName(f)).Where(f => f[0] != '.').Order(StringComparer.Ordinal));
        await using var zip = await System.IO.Compression.ZipFile.OpenReadAsync(Path.Combine(into, "taskdata.zip"), TestContext.Current.CancellationToken);
        Assert.Contains(zip.Entries, e => e.FullName == "TASKDATA/TLG00001.bin" && e.Length > 0);

        // The track of the file that was handed out, held against the same field, tells the same.
        using var json = JsonDocument.Parse(await File.ReadAllBytesAsync(Path.Combine(into, "handout.geojson"), TestContext.Current.CancellationToken));
        var flown = json.RootElement.GetProperty("features").EnumerateArray().Where(f => f.GetProperty("properties").GetProperty("kind").GetString() == "flown").Select(f => f.GetRawText());
        var again = Here("again.geojson");
        await File.WriteAllTextAsync(again, "{\"type\":\"FeatureCollection\",\"features\":[" + string.Join(',', flown) + "]}", TestContext.Current.CancellationToken);
        var second = await AskAsync(Edge(case48.Field), again);
        Assert.Equal(5, Of(second, "passes"));
        Shares(second, Of(first, "skip_pct"), Of(first, "overlap_pct"), Of(first, "off_field_pct"), 0.05);
    }
}
