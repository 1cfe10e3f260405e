namespace Watersown.Web.Edge;

/// <summary>
/// Keeps pages of other places from writing with a signed-in person's session: the browser's own word about where a request
/// comes from, a header that no form can send, and a token that only the desk's own pages can read.
/// </summary>
internal static class WriteGuard
{
    /// <summary>Carried by every request of the desk that writes.</summary>
    public const string Header = "X-Watersown";

    /// <summary>Carries the session's token.</summary>
    public const string TokenHeader = "X-Watersown-Token";

    /// <summary>The request says that it comes from the desk's own pages, or from no page at all.</summary>
    public static bool SameOrigin(HttpContext context, DeskOptions options)
    {
        var headers = context.Request.Headers;
        var site = headers["Sec-Fetch-Site"].ToString();
        if (site.Length > 0 && site is not ("same-origin" or "none")) return false;
        var origin = headers.Origin.ToString();
        if (origin.Length == 0) return true;
        if (!Uri.TryCreate(origin, UriKind.Absolute, out var from)) return false;
        if (options.PublicName is { } name && Same(from, name)) return true;
        return string.Equals(from.Authority, Authority(context), StringComparison.OrdinalIgnoreCase);
    }

    private static bool Same(Uri one, Uri other) => Uri.Compare(one, other, UriComponents.SchemeAndServer, UriFormat.SafeUnescaped, StringComparison.OrdinalIgnoreCase) == 0;

    private static string Authority(HttpContext context) => new Uri(context.Request.Scheme + "://" + context.Request.Host.Value).Authority;
}
