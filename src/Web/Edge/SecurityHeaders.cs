namespace Watersown.Web.Edge;

/// <summary>What a browser is told about every answer: whom to listen to, whom to tell nothing.</summary>
internal static class SecurityHeaders
{
    /// <summary>Answers that are data: a browser that shows one as a page runs nothing of it.</summary>
    public const string ForData = "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'; sandbox";

    /// <summary>Pages made here that need no script: their look stands in them.</summary>
    public const string ForPlainPages = "default-src 'none'; style-src 'unsafe-inline'; img-src 'self' data:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /// <summary>The sign-in page: one script of our own.</summary>
    public const string ForSignIn = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; script-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    /// <summary>
    /// The desk's pages. Core runs in the browser, which needs leave to compile it; inline scripts are named by their hashes;
    /// styles may be inline because bars and boards are drawn by them. A map's worker is made from memory.
    /// </summary>
    public static string ForDesk(IEnumerable<string> scriptHashes, Uri? tiles)
    {
        var tile = tiles is null ? string.Empty : " " + tiles.GetLeftPart(UriPartial.Authority);
        return "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'" + string.Concat(scriptHashes.Select(h => " '" + h + "'"))
            + "; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:" + tile + "; connect-src 'self'" + tile
            + "; worker-src 'self' blob:; manifest-src 'self'; object-src 'none'; form-action 'self'; base-uri 'self'; frame-ancestors 'none'";
    }

    public static void Put(HttpContext context, string policy)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(self), geolocation=(self), microphone=(), payment=(), usb=()";
        if (context.Request.IsHttps) headers.StrictTransportSecurity = "max-age=31536000";
    }
}
