using System.Text;
using System.Text.Json;
using Watersown.Records.Database;
using Watersown.Web.Edge;
using Watersown.Wording;

namespace Watersown.Web.SignIn;

/// <summary>Signing in with a password or a code, signing out, and who one is.</summary>
internal sealed class SignInEndpoints(Book book, DeskOptions options, RateLimits limits, TimeProvider time)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/sign-in", PageAsync).WithMetadata(Access.Anyone);
        routes.MapGet("/sign-in.js", ScriptAsync).WithMetadata(Access.Anyone);
        routes.MapPost("/sign-in", EnterAsync).WithMetadata(Access.Anyone);
        routes.MapPost("/sign-out", LeaveAsync).WithMetadata(Access.Readers);
        routes.MapGet("/api/you", YouAsync).WithMetadata(Access.Readers);
        routes.MapPut("/api/password", ChangeAsync).WithMetadata(Access.Readers);
    }

    private async Task PageAsync(HttpContext context)
    {
        if (!options.ReachableByOthers)
        {
            context.Response.Redirect("/");
            return;
        }

        await ShowAsync(context, StatusCodes.Status200OK, null);
    }

    private static Task ScriptAsync(HttpContext context)
    {
        context.Response.Headers.CacheControl = "no-cache";
        return Reply.BytesAsync(context, StatusCodes.Status200OK, "text/javascript; charset=utf-8", SignInPage.Script);
    }

    private async Task EnterAsync(HttpContext context)
    {
        // A form of another place could sign somebody in as somebody else.
        if (!WriteGuard.SameOrigin(context, options))
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status403Forbidden, HostProblems.OtherOrigin.At(string.Empty));
            return;
        }

        if (await ShortForm.ReadAsync(context) is not { } form) return;
        var (name, password, code) = (form.GetValueOrDefault("name", string.Empty).Trim(), form.GetValueOrDefault("password", string.Empty), form.GetValueOrDefault("code", string.Empty));
        if ((limits.SignInByAddress.Count(RateLimits.Address(context)) ?? limits.SignInByName.Count(name)) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return;
        }

        var account = name.Length is > 0 and <= BookLimits.NameLettersMost ? await book.AccountAsync(name, context.RequestAborted) : null;
        var kept = account is { IsOpen: true } ? account.PasswordHash : null;
        var problem = code.Length > 0 ? await ByCodeAsync(name, code, password, kept) : Secrets.IsCode(kept) || !Passwords.Fits(Bounded(password), kept) ? SignInProblems.WrongPassword.At("password") : null;
        if (problem is not null)
        {
            if (account is not null) await book.NoteSignInAsync(name, Device(context), "refused", CancellationToken.None);
            await ShowAsync(context, StatusCodes.Status422UnprocessableEntity, problem);
            return;
        }

        await BeginAsync(context, account!);
    }

    /// <summary>A code is spent by choosing a password with it.</summary>
    private async Task<Problem?> ByCodeAsync(string name, string code, string password, string? kept)
    {
        if (!Secrets.CodeFits(Bounded(code), kept, time.GetUtcNow())) return SignInProblems.WrongPassword.At("code");
        if (LengthFault(password) is { } fault) return fault;
        await book.SetPasswordAsync(name, Passwords.Keep(password));
        return null;
    }

    /// <summary>Begins a session and tells the browser; the secret leaves the desk only here.</summary>
    public async Task BeginAsync(HttpContext context, Account account)
    {
        limits.SignInByName.Clear(account.Name);
        var session = await book.StartSessionAsync(account.Name, Device(context), Door.Lifetime, context.RequestAborted);
        await book.NoteSignInAsync(account.Name, Device(context), "signed-in", CancellationToken.None);
        context.Response.Cookies.Append(Door.CookieName(context), session.Value.Token, new CookieOptions
        {
            HttpOnly = true,
            SameSite = SameSiteMode.Strict,
            Secure = context.Request.IsHttps,
            Path = "/",
            MaxAge = Door.Lifetime,
        });
        if (!WantsPage(context))
        {
            await Reply.JsonAsync(context, StatusCodes.Status200OK, json => WriteYou(json, null, new Caller(account.Name, account.Role) { Token = Secrets.TokenOf(session.Value.Token) }));
            return;
        }

        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = "/";
    }

    private async Task LeaveAsync(HttpContext context)
    {
        var caller = Door.CallerOf(context);
        if (caller.Session is { } session) await book.EndSessionAsync(session, CancellationToken.None);
        context.Response.Cookies.Delete(Door.CookieName(context), new CookieOptions { Path = "/", Secure = context.Request.IsHttps, SameSite = SameSiteMode.Strict, HttpOnly = true });
        context.Response.Headers["Clear-Site-Data"] = "\"cookies\"";
        context.Response.StatusCode = StatusCodes.Status204NoContent;
    }

    private static Task YouAsync(HttpContext context) => Reply.JsonAsync(context, StatusCodes.Status200OK, json => WriteYou(json, null, Door.CallerOf(context)));

    /// <summary>Who one is, with the token that this session's pages send when they write.</summary>
    public static void WriteYou(Utf8JsonWriter json, string? key, Caller caller)
    {
        if (key is null) json.WriteStartObject();
        else json.WriteStartObject(key);
        json.WriteString("name", caller.Name);
        json.WriteString("role", caller.Role.ToString().ToLowerInvariant());
        if (caller.Token is { } token) json.WriteString("token", token);
        json.WriteBoolean("signs_in", caller.Session is not null || caller.Token is not null);
        json.WriteEndObject();
    }

    /// <summary>One's own password; ends every other session, and this one goes on under a new secret.</summary>
    private async Task ChangeAsync(HttpContext context)
    {
        var caller = Door.CallerOf(context);
        if (await ShortForm.ReadAsync(context) is not { } form) return;
        if (limits.SignInByName.Count(caller.Name) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return;
        }

        var account = await book.AccountAsync(caller.Name, context.RequestAborted);
        var (old, fresh) = (form.GetValueOrDefault("old", string.Empty), form.GetValueOrDefault("password", string.Empty));
        var problem = account is null ? BookProblems.NoSuchAccount.At("name", ("value", caller.Name))
            // Where only a passkey opened the account there is no old password to ask for.
            : account.PasswordHash is not null && !Passwords.Fits(Bounded(old), account.PasswordHash) ? SignInProblems.WrongPassword.At("old") : LengthFault(fresh);
        if (problem is not null)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, problem);
            return;
        }

        await book.SetPasswordAsync(caller.Name, Passwords.Keep(fresh), CancellationToken.None);
        await BeginAsync(context, account!);
    }

    private static Problem? LengthFault(string password) => password.Length is >= Passwords.Shortest and <= Passwords.Longest ? null
        : SignInProblems.PasswordLength.At("password", ("value", Say.Number(password.Length)), ("limit", Say.Number(Passwords.Shortest)));

    // Hashing a megabyte for a stranger would be work for nothing.
    private static string Bounded(string given) => given.Length <= Passwords.Longest ? given : string.Empty;

    private static string Device(HttpContext context) => context.Request.Headers.UserAgent.ToString();

    private static bool WantsPage(HttpContext context) => context.Request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase);

    private async Task ShowAsync(HttpContext context, int status, Problem? problem)
    {
        if (problem is not null && !WantsPage(context))
        {
            await Reply.ProblemsAsync(context, status, problem);
            return;
        }

        SecurityHeaders.Put(context, SecurityHeaders.ForSignIn);
        // A form sent without any referrer names no origin, and could not be told from one of another place.
        context.Response.Headers["Referrer-Policy"] = "same-origin";
        var farm = (await book.SettingAsync("farm-name", context.RequestAborted)) ?? "Watersown";
        var page = SignInPage.Write(farm, Reply.LanguageOf(context), problem);
        await Reply.BytesAsync(context, status, "text/html; charset=utf-8", Encoding.UTF8.GetBytes(page));
    }
}
