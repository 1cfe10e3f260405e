using System.IO.Compression;
using System.Net;
using System.Text;
using System.Text.Json;
using Watersown.Records.Database;

namespace Watersown.Web;

/// <summary>A file of edges is read for a person to look at; a hostile one is refused, and nothing of any is kept.</summary>
public sealed class EdgeFileTests
{
    private const string Square = """{"type":"Polygon","coordinates":[[[-122.0,39.4],[-121.9906,39.4],[-121.9906,39.4072],[-122.0,39.4072],[-122.0,39.4]]]}""";

    [Fact]
    public async Task Edges_find_their_fields_by_name_and_code_and_the_rest_is_left_to_a_person()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var client = Client(desk);
        using var read = await ReadAsync(client, "farm.geojson", Encoding.UTF8.GetBytes(
            """{"type":"FeatureCollection","features":[""" + string.Join(',', Feature("two gates"), Feature("n-3", "code"), Feature("<script>alert(1)</script>")) + "]}"));
        var edges = read.RootElement.GetProperty("edges").EnumerateArray().ToList();
        Assert.Equal(["N4", "N3", null], edges.Select(e => e.TryGetProperty("field", out var field) ? field.GetString() : null));
        Assert.Equal("<script>alert(1)</script>", edges[2].GetProperty("name").GetString());
        Assert.All(edges, e => Assert.Equal("Polygon", e.GetProperty("edge").GetProperty("type").GetString()));
        // 124.5 gross acres against a square of about 520: said, and left to the person.
        Assert.NotEmpty(read.RootElement.GetProperty("problems").EnumerateArray());
        Assert.Equal(0, await desk.Book.UptoAsync());
        Assert.Equal(1, (await desk.Book.LatestFarmAsync())!.Version);
    }

    [Fact]
    public async Task A_file_in_which_nothing_is_called_like_a_field_is_still_shown()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var client = Client(desk);
        using var read = await ReadAsync(client, "..%2F..%2Fetc%2Fpasswd", Encoding.UTF8.GetBytes(Feature("nobody's")));
        Assert.False(Assert.Single(read.RootElement.GetProperty("edges").EnumerateArray()).TryGetProperty("field", out _));
    }

    [Fact]
    public async Task Hostile_files_are_refused_with_a_reason()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var client = Client(desk);
        foreach (var (name, bytes) in Hostile())
        {
            using var answer = await client.PostAsync("/api/edges/read?name=" + name, new ByteArrayContent(bytes));
            Assert.True(answer.StatusCode == HttpStatusCode.UnprocessableEntity, name + " " + answer.StatusCode);
            using var said = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
            Assert.NotEmpty(said.RootElement.GetProperty("problems").EnumerateArray());
            Assert.DoesNotContain("root:", said.RootElement.GetRawText(), StringComparison.Ordinal);
        }

        Assert.Equal(HttpStatusCode.OK, (await client.GetAsync("/health")).StatusCode);
    }

    [Fact]
    public async Task A_file_that_is_too_large_is_not_read()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var client = Client(desk);
        // Asked before the body goes out, as a browser's own size check would.
        client.DefaultRequestHeaders.ExpectContinue = true;
        using var answer = await client.PostAsync("/api/edges/read?name=large.kml", new ByteArrayContent(new byte[(16 * 1024 * 1024) + 1]));
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    [Fact]
    public async Task Crew_cannot_bring_in_edges()
    {
        await using var desk = await RunningDesk.ReachableAsync();
        using var crew = await desk.AsAsync(Role.Crew);
        using var answer = await crew.PostAsync("/api/edges/read?name=a.geojson", new ByteArrayContent(Encoding.UTF8.GetBytes(Feature("N4"))));
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    private static IEnumerable<(string Name, byte[] Bytes)> Hostile()
    {
        yield return ("empty.geojson", []);
        yield return ("odd.geojson", Encoding.UTF8.GetBytes("{\"type\":\"FeatureCollection\",\"features\":"));
        yield return ("deep.geojson", Encoding.UTF8.GetBytes(new string('[', 100_000)));
        yield return ("crossed.geojson", Encoding.UTF8.GetBytes("""{"type":"Polygon","coordinates":[[[-122,39],[-121,40],[-121,39],[-122,40],[-122,39]]]}"""));
        yield return ("outside.kml", Encoding.UTF8.GetBytes("""<?xml version="1.0"?><!DOCTYPE kml [<!ENTITY x SYSTEM "PLACE">]><kml xmlns="http://www.opengis.net/kml/2.2"><Document><name>&x;</name></Document></kml>""".Replace("PLACE", "file:" + "//" + "/etc/passwd", StringComparison.Ordinal)));
        yield return ("laughs.kml", Encoding.UTF8.GetBytes("""<?xml version="1.0"?><!DOCTYPE kml [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;"><!ENTITY c "&b;&b;&b;&b;">]><kml><name>&c;</name></kml>"""));
        yield return ("bomb.zip", Bomb());
        yield return ("program.zip", [0x4D, 0x5A, .. Enumerable.Repeat((byte)0x90, 500)]);
    }

    // Fifty million zeros in some fifty thousand bytes.
    private static byte[] Bomb()
    {
        using var kept = new MemoryStream();
        using (var zip = new ZipArchive(kept, ZipArchiveMode.Create, leaveOpen: true))
        {
            using var entry = zip.CreateEntry("../../fields.shp", CompressionLevel.SmallestSize).Open();
            for (var i = 0; i < 50; i++) entry.Write(new byte[1_000_000]);
        }

        return kept.ToArray();
    }

    private static string Feature(string name, string column = "name") => "{\"type\":\"Feature\",\"properties\":{\"" + column + "\":" + JsonSerializer.Serialize(name) + "},\"geometry\":" + Square + "}";

    private static async Task<JsonDocument> ReadAsync(HttpClient client, string name, byte[] bytes)
    {
        using var answer = await client.PostAsync("/api/edges/read?name=" + name, new ByteArrayContent(bytes));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
    }

    private static HttpClient Client(RunningDesk desk)
    {
        var client = desk.Stranger();
        client.DefaultRequestHeaders.Add("X-Watersown", "1");
        return client;
    }
}
