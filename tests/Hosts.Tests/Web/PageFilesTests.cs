using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Text;
using Watersown.Records.Database;

namespace Watersown.Web;

/// <summary>The desk's own pages, and photos: the right types, nothing outside the folder, nothing that runs.</summary>
public sealed class PageFilesTests
{
    private const string Inline = "document.title = 'first paint';";

    [Fact]
    public async Task Files_have_their_types_and_go_out_as_they_were_compressed()
    {
        await using var desk = await WithPagesAsync();
        using var browser = desk.Stranger();
        browser.DefaultRequestHeaders.AcceptEncoding.ParseAdd("gzip, deflate, br");
        foreach (var (path, type, encoding) in ((string, string, string?)[])
        [
            ("/", "text/html", null), ("/index.html", "text/html", null), ("/water", "text/html", null), ("/field/N4", "text/html", null), ("/css/desk.css", "text/css", null),
            ("/_framework/dotnet.native.abcdefghij.wasm", "application/wasm", "br"), ("/_framework/dotnet.js", "text/javascript", "gzip"), ("/manifest.webmanifest", "application/manifest+json", null), ("/service-worker.js", "text/javascript", null),
        ])
        {
            using var answer = await browser.GetAsync(path);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Equal(type, answer.Content.Headers.ContentType!.MediaType);
            Assert.Equal(encoding, answer.Content.Headers.ContentEncoding.SingleOrDefault());
            Assert.Equal(path.Contains("abcdefghij", StringComparison.Ordinal), answer.Headers.CacheControl!.ToString().Contains("31536000", StringComparison.Ordinal));
            using var again = new HttpRequestMessage(HttpMethod.Get, path);
            again.Headers.IfNoneMatch.Add(answer.Headers.ETag!);
            Assert.Equal(HttpStatusCode.NotModified, (await browser.SendAsync(again)).StatusCode);
        }
    }

    [Fact]
    public async Task The_page_runs_our_scripts_by_hash_and_no_other()
    {
        await using var desk = await WithPagesAsync();
        using var browser = desk.Stranger();
        using var answer = await browser.GetAsync("/land");
        var policy = answer.Headers.GetValues("Content-Security-Policy").Single();
        Assert.Contains("'sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Inline))) + "'", policy, StringComparison.Ordinal);
        Assert.Contains("'wasm-unsafe-eval'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("'unsafe-inline'", policy.Split(';').Single(p => p.Contains("script-src", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.DoesNotContain("'unsafe-eval'", policy, StringComparison.Ordinal);
        Assert.Contains("connect-src 'self';", policy, StringComparison.Ordinal);
        // A worker is bound by the policy of its own script.
        Assert.Equal(policy, (await browser.GetAsync("/service-worker.js")).Headers.GetValues("Content-Security-Policy").Single());
    }

    [Fact]
    public async Task A_tile_source_is_reached_only_where_the_farm_set_one()
    {
        await using var desk = await WithPagesAsync(o => o with { Tiles = new Uri("https://tiles.example.org/{z}/{x}/{y}.png") });
        using var browser = desk.Stranger();
        Assert.Contains("connect-src 'self' https://tiles.example.org;", (await browser.GetAsync("/")).Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/../farm.book")]
    [InlineData("/..%2ffarm.book")]
    [InlineData("/%2e%2e/farm.book")]
    [InlineData("/css/..%5c..%5cfarm.book")]
    [InlineData("/css//..//..//farm.book")]
    [InlineData("/.secret.txt")]
    [InlineData("/css/%00desk.css")]
    [InlineData("/_framework/dotnet.js.gz")]
    [InlineData("/link-out.txt")]
    [InlineData("//etc/hostname.txt")]
    [InlineData("/css/desk.css/")]
    public async Task No_address_reaches_what_is_not_a_page(string path)
    {
        await using var desk = await WithPagesAsync();
        // A browser tidies an address before it is sent; an attacker does not.
        using var socket = new TcpClient(desk.Address.Host, desk.Address.Port);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes($"GET {path} HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n"));
        using var reader = new StreamReader(stream, Encoding.Latin1);
        var answer = await reader.ReadToEndAsync();
        Assert.DoesNotContain("SQLite", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("secret", answer, StringComparison.Ordinal);
        Assert.True(answer.StartsWith("HTTP/1.1 404", StringComparison.Ordinal) || answer.StartsWith("HTTP/1.1 400", StringComparison.Ordinal) || answer.Contains("<title>desk", StringComparison.Ordinal), answer);
    }

    [Fact]
    public async Task A_photo_is_kept_once_and_shown_as_a_picture()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        var id = RunningDesk.NewId();
        byte[] photo = [0xFF, 0xD8, 0xFF, 0xE0, 1, 2, 3];
        Assert.Equal("SEND-005", await RunningDesk.ProblemsAsync(await page.GetAsync("/api/attachments/" + id), HttpStatusCode.NotFound));
        Assert.Equal(HttpStatusCode.NoContent, (await PutAsync(page, id, photo, "image/jpeg")).StatusCode);
        Assert.Equal(HttpStatusCode.NoContent, (await PutAsync(page, id, photo, "image/jpeg")).StatusCode);
        Assert.Equal("BOOK-042", await RunningDesk.ProblemsAsync(await PutAsync(page, id, [.. photo, 4], "image/jpeg"), HttpStatusCode.UnprocessableEntity));
        using var shown = await page.GetAsync("/api/attachments/" + id);
        Assert.Equal("image/jpeg", shown.Content.Headers.ContentType!.MediaType);
        Assert.Contains("sandbox", shown.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        Assert.Equal(photo, await shown.Content.ReadAsByteArrayAsync());
    }

    [Theory]
    [InlineData("..%2F..%2Fetc%2Fpasswd", "image/jpeg", "BOOK-043")]
    [InlineData("CON", "image/jpeg", "BOOK-043")]
    [InlineData("0123456789abcdef0123456789abcdef.html", "image/jpeg", "BOOK-043")]
    [InlineData("0123456789abcdef0123456789abcdef", "text/html", "BOOK-041")]
    [InlineData("0123456789abcdef0123456789abcdef", "image/svg+xml", "BOOK-041")]
    public async Task What_is_no_photo_or_has_a_tricky_name_is_not_kept(string name, string type, string code)
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        Assert.Equal(code, await RunningDesk.ProblemsAsync(await PutAsync(page, name, "<script>alert(1)</script>"u8.ToArray(), type), HttpStatusCode.UnprocessableEntity));
    }

    [Fact]
    public async Task A_photo_that_is_too_large_is_refused_before_it_is_read()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var request = new HttpRequestMessage(HttpMethod.Put, "/api/attachments/" + RunningDesk.NewId()) { Content = new ByteArrayContent(new byte[BookLimits.AttachmentBytesMost + 1]) };
        request.Headers.ExpectContinue = true;
        Assert.Equal("HOST-008", await RunningDesk.ProblemsAsync(await page.SendAsync(request), HttpStatusCode.RequestEntityTooLarge));
    }

    private static Task<HttpResponseMessage> PutAsync(HttpClient page, string name, byte[] bytes, string type)
    {
        var content = new ByteArrayContent(bytes);
        content.Headers.ContentType = new MediaTypeHeaderValue(type);
        return page.PutAsync("/api/attachments/" + name, content);
    }

    private static async Task<RunningDesk> WithPagesAsync(Func<DeskOptions, DeskOptions>? change = null)
    {
        var desk = await RunningDesk.HereAsync(change);
        var pages = Path.Combine(desk.Folder, "pages");
        await WriteAsync(pages, "index.html", $"<!doctype html><title>desk</title><script src=\"/boot.js\"></script><script>{Inline}</script>");
        await WriteAsync(pages, "css/desk.css", "body{}");
        await WriteAsync(pages, "manifest.webmanifest", "{}");
        await WriteAsync(pages, "service-worker.js", "// worker");
        await WriteAsync(pages, ".secret.txt", "secret");
        foreach (var file in (string[])["_framework/dotnet.native.abcdefghij.wasm", "_framework/dotnet.native.abcdefghij.wasm.br", "_framework/dotnet.js", "_framework/dotnet.js.gz"]) await WriteAsync(pages, file, file);
        File.CreateSymbolicLink(Path.Combine(pages, "link-out.txt"), Path.Combine(desk.Folder, "farm.book"));
        return desk;
    }

    private static async Task WriteAsync(string folder, string name, string text)
    {
        var path = Path.Combine(folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        await File.WriteAllTextAsync(path, text);
    }
}
