using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Watersown.Web.Edge;
using Watersown.Web.SignIn;

namespace Watersown.Web.Pages;

/// <summary>
/// Serves the desk's own pages from one folder: what was compressed when it was published goes out as it is, what carries its
/// own hash in its name is kept by browsers for good, everything else is asked for again. An address of the desk that is no
/// file is the desk itself.
/// </summary>
internal sealed partial class PageFiles
{
    private static readonly Dictionary<string, string> Types = new(StringComparer.OrdinalIgnoreCase)
    {
        [".html"] = "text/html; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".mjs"] = "text/javascript; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".json"] = "application/json; charset=utf-8",
        [".webmanifest"] = "application/manifest+json; charset=utf-8",
        [".wasm"] = "application/wasm",
        [".svg"] = "image/svg+xml",
        [".png"] = "image/png",
        [".ico"] = "image/x-icon",
        [".woff2"] = "font/woff2",
        [".txt"] = "text/plain; charset=utf-8",
        [".map"] = "application/json; charset=utf-8",
    };

    private readonly string root;

    private readonly DeskOptions options;

    private Listing listing = Listing.Empty;

    public PageFiles(DeskOptions options)
    {
        this.options = options;
        root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(options.Pages ?? Path.Combine(AppContext.BaseDirectory, "pages"))) + Path.DirectorySeparatorChar;
    }

    public bool AreThere => File.Exists(root + "index.html");

    public string Folder => root;

    public void Map(IEndpointRouteBuilder routes) =>
        routes.MapMethods("/{**path}", [HttpMethods.Get, HttpMethods.Head], (HttpContext context) => ServeAsync(context)).WithMetadata(Access.Anyone);

    private async Task ServeAsync(HttpContext context)
    {
        var path = context.Request.Path.Value ?? "/";
        var files = Current();
        var file = files.Find(path == "/" ? "/index.html" : path) ?? (IsAddressOfDesk(path) ? files.Find("/index.html") : null);
        if (file is null)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, HostProblems.NothingHere.At(string.Empty));
            return;
        }

        // Every file, not the page alone: a worker is bound by the policy that came with its own script.
        SecurityHeaders.Put(context, SecurityHeaders.ForDesk(files.ScriptHashes, options.Tiles));
        var (sent, encoding) = file.For(context.Request.Headers.AcceptEncoding.ToString());
        var headers = context.Response.Headers;
        headers.Vary = "Accept-Encoding";
        headers.CacheControl = file.NamesItsHash ? "public, max-age=31536000, immutable" : "no-cache";
        headers.ETag = string.Create(CultureInfo.InvariantCulture, $"\"{sent.Written.ToUnixTimeMilliseconds():x}-{sent.Length:x}{(encoding is null ? string.Empty : "-" + encoding)}\"");
        if (path == "/service-worker.js") headers["Service-Worker-Allowed"] = "/";
        if (context.Request.Headers.IfNoneMatch.ToString() == headers.ETag)
        {
            context.Response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }

        if (encoding is not null) headers.ContentEncoding = encoding;
        context.Response.ContentType = file.Type;
        context.Response.ContentLength = sent.Length;
        if (!HttpMethods.IsHead(context.Request.Method)) await context.Response.SendFileAsync(sent.Path, context.RequestAborted);
    }

    /// <summary>Names without an ending are pages of the desk; data and links behind are not.</summary>
    private static bool IsAddressOfDesk(string path) =>
        !path.StartsWith("/api/", StringComparison.OrdinalIgnoreCase) && !path.StartsWith("/l/", StringComparison.OrdinalIgnoreCase) && !path.Split('/')[^1].Contains('.', StringComparison.Ordinal)
        && !path.Contains('\0', StringComparison.Ordinal) && !path.Contains('\\', StringComparison.Ordinal);

    /// <summary>What lies in the folder, read once and again after it was published anew.</summary>
    private Listing Current()
    {
        var written = new DateTimeOffset(File.GetLastWriteTimeUtc(root + "index.html"), TimeSpan.Zero);
        var kept = Volatile.Read(ref listing);
        if (kept.Written == written) return kept;
        var read = Listing.Read(root, written);
        Volatile.Write(ref listing, read);
        return read;
    }

    /// <summary>
    /// The files of the folder by their addresses. Only what is listed can be asked for, so that no address, however it is
    /// written, reaches anything else of the machine.
    /// </summary>
    private sealed class Listing(DateTimeOffset written, Dictionary<string, PageFile> files, ImmutableArray<string> hashes)
    {
        public static Listing Empty { get; } = new(DateTimeOffset.MinValue, [], []);

        public DateTimeOffset Written => written;

        /// <summary>The scripts that stand in the page itself, by their hashes: no other may run there.</summary>
        public ImmutableArray<string> ScriptHashes => hashes;

        public PageFile? Find(string path) => files.GetValueOrDefault(path);

        public static Listing Read(string root, DateTimeOffset written)
        {
            if (!Directory.Exists(root)) return Empty;
            // Links out of the folder and hidden files are no pages.
            var found = new DirectoryInfo(root).EnumerateFiles("*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.Hidden | FileAttributes.ReparsePoint })
                .Where(f => !f.Name.StartsWith('.')).ToDictionary(f => "/" + Path.GetRelativePath(root, f.FullName).Replace('\\', '/'), f => new SentFile(f.FullName, f.Length, new DateTimeOffset(f.LastWriteTimeUtc, TimeSpan.Zero)), StringComparer.Ordinal);
            var pages = found.Where(f => !f.Key.EndsWith(".br", StringComparison.Ordinal) && !f.Key.EndsWith(".gz", StringComparison.Ordinal)).ToDictionary(
                f => f.Key,
                f => new PageFile(f.Value, found.GetValueOrDefault(f.Key + ".br"), found.GetValueOrDefault(f.Key + ".gz"), Types.GetValueOrDefault(Path.GetExtension(f.Key), "application/octet-stream"), Fingerprint().IsMatch(f.Key)),
                StringComparer.Ordinal);
            ImmutableArray<string> hashes = pages.ContainsKey("/index.html")
                ? [.. InlineScript().Matches(File.ReadAllText(Path.Combine(root, "index.html"))).Select(m => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(m.Groups["code"].Value))))]
                : [];
            return new Listing(written, pages, hashes);
        }
    }

    private sealed record SentFile(string Path, long Length, DateTimeOffset Written);

    private sealed record PageFile(SentFile Plain, SentFile? Brotli, SentFile? Gzip, string Type, bool NamesItsHash)
    {
        public (SentFile File, string? Encoding) For(string accepted)
        {
            if (Brotli is not null && accepted.Contains("br", StringComparison.OrdinalIgnoreCase)) return (Brotli, "br");
            return Gzip is not null && accepted.Contains("gzip", StringComparison.OrdinalIgnoreCase) ? (Gzip, "gzip") : (Plain, null);
        }
    }

    [GeneratedRegex(@"<script(?![^>]*\ssrc\s*=)[^>]*>(?<code>.*?)</script>", RegexOptions.Singleline | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex InlineScript();

    [GeneratedRegex(@"\.[a-z0-9]{10}\.[a-z]+$", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Fingerprint();
}
