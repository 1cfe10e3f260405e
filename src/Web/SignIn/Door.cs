using Watersown.Records.Database;
using Watersown.Web.Edge;

namespace Watersown.Web.SignIn;

/// <summary>
/// Stands before every endpoint: finds out who asks, holds that against what the endpoint says, and keeps pages of other
/// places from writing. An endpoint that says nothing is closed.
/// </summary>
internal sealed class Door(Book book, DeskOptions options, TimeProvider time, HostGuard hosts)
{
    /// <summary>A session nobody used for so long has ended.</summary>
    public static TimeSpan Idle { get; } = TimeSpan.FromDays(30);

    /// <summary>However much it is used, after so long one signs in anew.</summary>
    public static TimeSpan Lifetime { get; } = TimeSpan.FromDays(90);

    private static readonly object CallerKey = new();

    /// <summary>Who asks; only behind an endpoint that somebody must be for.</summary>
    public static Caller CallerOf(HttpContext context) => (Caller)context.Items[CallerKey]!;

    /// <summary>The name of the cookie; over https a browser lets no other place set it.</summary>
    public static string CookieName(HttpContext context) => context.Request.IsHttps ? "__Host-watersown" : "watersown";

    public async Task RunAsync(HttpContext context, RequestDelegate next)
    {
        SecurityHeaders.Put(context, SecurityHeaders.ForData);
        BodySize.Limit(context);
        if (hosts.Fault(context) is { } fault)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status421MisdirectedRequest, fault);
            return;
        }

        if (context.GetEndpoint() is not { } endpoint)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, HostProblems.NothingHere.At(string.Empty));
            return;
        }

        if (await RefusedAsync(context, endpoint.Metadata.GetMetadata<Access>())) return;
        await next(context);
    }

    private async Task<bool> RefusedAsync(HttpContext context, Access? access)
    {
        if (access is { NeedsNobody: true }) return false;
        var caller = await FindAsync(context);
        if (caller is null) return await NoAsync(context, StatusCodes.Status401Unauthorized, SignInProblems.NotSignedIn.At(string.Empty));
        if (access?.Lets(caller.Role) != true) return await NoAsync(context, StatusCodes.Status403Forbidden, SignInProblems.NotAllowed.At(string.Empty, ("value", caller.Name)));
        context.Items[CallerKey] = caller;
        if (HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method)) return false;
        if (!WriteGuard.SameOrigin(context, options)) return await NoAsync(context, StatusCodes.Status403Forbidden, HostProblems.OtherOrigin.At(string.Empty));
        var headers = context.Request.Headers;
        if (headers[WriteGuard.Header] != "1") return await NoAsync(context, StatusCodes.Status403Forbidden, HostProblems.MissingHeader.At(string.Empty, ("value", WriteGuard.Header)));
        if (caller.Token is { } token && !Secrets.Same(token, headers[WriteGuard.TokenHeader].ToString()))
            return await NoAsync(context, StatusCodes.Status403Forbidden, HostProblems.MissingHeader.At(string.Empty, ("value", WriteGuard.TokenHeader)));
        return false;
    }

    private static async Task<bool> NoAsync(HttpContext context, int status, Problem problem)
    {
        await Reply.ProblemsAsync(context, status, problem);
        return true;
    }

    /// <summary>On one's own machine everybody is the owner; elsewhere a session says who asks.</summary>
    public async Task<Caller?> FindAsync(HttpContext context)
    {
        if (!options.ReachableByOthers) return new Caller(options.Owner ?? "owner", Role.Owner);
        if (!context.Request.Cookies.TryGetValue(CookieName(context), out var secret) || string.IsNullOrEmpty(secret)) return null;
        if (await book.SessionAsync(secret, context.RequestAborted) is not { } session || time.GetUtcNow() - session.Seen > Idle) return null;
        if (await book.AccountAsync(session.Account, context.RequestAborted) is not { IsOpen: true } account) return null;
        return new Caller(account.Name, account.Role) { Session = session.Id, Token = Secrets.TokenOf(secret) };
    }
}
