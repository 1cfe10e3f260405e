using Watersown.Records.Database;
using Watersown.Web.Edge;
using Watersown.Wording;

namespace Watersown.Web.SignIn;

/// <summary>Who may sign in, and where they are signed in now.</summary>
internal sealed class AccountEndpoints(Book book, TimeProvider time)
{
    private static readonly ImmutableArray<(Role Role, string Name)> Roles =
        [(Role.Owner, "owner"), (Role.Family, "family"), (Role.Crew, "crew"), (Role.Reader, "reader")];

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/accounts", ListAsync).WithMetadata(Access.Owners);
        routes.MapPost("/api/accounts", AddAsync).WithMetadata(Access.Owners);
        routes.MapPut("/api/accounts/{name}", ChangeAsync).WithMetadata(Access.Owners);
        routes.MapDelete("/api/accounts/{name}", EndAsync).WithMetadata(Access.Owners);
        routes.MapPost("/api/accounts/{name}/code", NewCodeAsync).WithMetadata(Access.Owners);
        routes.MapGet("/api/sessions", SessionsAsync).WithMetadata(Access.Readers);
        routes.MapDelete("/api/sessions/{id}", EndSessionAsync).WithMetadata(Access.Readers);
        routes.MapGet("/api/sign-ins", SignInsAsync).WithMetadata(Access.Owners);
    }

    private async Task ListAsync(HttpContext context)
    {
        var accounts = await book.AccountsAsync(context.RequestAborted);
        await Reply.ListAsync(context, "accounts", accounts, (json, account) =>
        {
            json.WriteString("name", account.Name);
            json.WriteString("role", NameOf(account.Role));
            json.WriteString("created", account.Created);
            if (account.Ended is { } ended) json.WriteString("ended", ended);
            json.WriteBoolean("waits_for_code", Secrets.IsCode(account.PasswordHash));
        });
    }

    /// <summary>A new account opens with a code, shown once, so that nobody but its own person knows its password.</summary>
    private async Task AddAsync(HttpContext context)
    {
        if (await ShortForm.ReadAsync(context) is not { } form) return;
        if (RoleOf(form.GetValueOrDefault("role")) is not { } role)
        {
            await RefuseAsync(context, [UnknownRole(form.GetValueOrDefault("role"))]);
            return;
        }

        var (code, until) = (Secrets.NewCode(), time.GetUtcNow() + Secrets.CodeLasts);
        var added = await book.AddAccountAsync(form.GetValueOrDefault("name", string.Empty).Trim(), role, Secrets.KeepCode(code, until), context.RequestAborted);
        if (added.IsRefused) await RefuseAsync(context, added.Problems);
        else await CodeAsync(context, StatusCodes.Status201Created, added.Value.Name, code, until);
    }

    private async Task ChangeAsync(HttpContext context, string name)
    {
        if (await ShortForm.ReadAsync(context) is not { } form) return;
        if (RoleOf(form.GetValueOrDefault("role")) is not { } role)
        {
            await RefuseAsync(context, [UnknownRole(form.GetValueOrDefault("role"))]);
            return;
        }

        await DoneAsync(context, await book.SetRoleAsync(name, role, context.RequestAborted));
    }

    private async Task EndAsync(HttpContext context, string name) => await DoneAsync(context, await book.EndAccountAsync(name, CancellationToken.None));

    /// <summary>For who has lost the password: the old one ends with every session.</summary>
    private async Task NewCodeAsync(HttpContext context, string name)
    {
        var (code, until) = (Secrets.NewCode(), time.GetUtcNow() + Secrets.CodeLasts);
        var set = await book.SetPasswordAsync(name, Secrets.KeepCode(code, until), context.RequestAborted);
        if (set.IsRefused) await RefuseAsync(context, set.Problems);
        else await CodeAsync(context, StatusCodes.Status200OK, name, code, until);
    }

    private async Task SessionsAsync(HttpContext context)
    {
        var caller = Door.CallerOf(context);
        var sessions = await book.SessionsAsync(caller.Role == Role.Owner ? null : caller.Name, context.RequestAborted);
        await Reply.ListAsync(context, "sessions", sessions, (json, session) =>
        {
            json.WriteString("id", session.Id);
            json.WriteString("name", session.Account);
            json.WriteString("device", session.Device);
            json.WriteString("created", session.Created);
            json.WriteString("seen", session.Seen);
            json.WriteString("expires", session.Expires);
            json.WriteBoolean("this", session.Id == caller.Session);
        });
    }

    private async Task EndSessionAsync(HttpContext context, string id)
    {
        var caller = Door.CallerOf(context);
        var seen = await book.SessionsAsync(caller.Role == Role.Owner ? null : caller.Name, context.RequestAborted);
        if (seen.Any(s => s.Id == id) && await book.EndSessionAsync(id, CancellationToken.None)) context.Response.StatusCode = StatusCodes.Status204NoContent;
        else await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, SignInProblems.NoSuchSession.At("session"));
    }

    private async Task SignInsAsync(HttpContext context)
    {
        var lines = await book.SignInsAsync(200, context.RequestAborted);
        await Reply.ListAsync(context, "sign_ins", lines, (json, line) =>
        {
            json.WriteString("at", line.At);
            json.WriteString("name", line.Account);
            json.WriteString("device", line.Device);
            json.WriteString("what", line.What);
        });
    }

    private static Task CodeAsync(HttpContext context, int status, string name, string code, DateTimeOffset until) => Reply.JsonAsync(context, status, json =>
    {
        json.WriteStartObject();
        json.WriteString("name", name);
        json.WriteString("code", code);
        json.WriteString("until", until);
        json.WriteEndObject();
    });

    private static async Task DoneAsync(HttpContext context, Outcome<Account> done)
    {
        if (done.IsRefused) await RefuseAsync(context, done.Problems);
        else context.Response.StatusCode = StatusCodes.Status204NoContent;
    }

    private static Task RefuseAsync(HttpContext context, IEnumerable<Problem> problems) => Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, problems);

    private static Role? RoleOf(string? name) => Roles.Where(r => string.Equals(r.Name, name, StringComparison.Ordinal)).Select(r => (Role?)r.Role).FirstOrDefault();

    private static string NameOf(Role role) => Roles.First(r => r.Role == role).Name;

    private static Problem UnknownRole(string? given) =>
        SignInProblems.UnknownRole.At("role", ("value", given is { Length: <= 40 } ? given : Say.Number(given?.Length ?? 0)), ("known", string.Join(", ", Roles.Select(r => r.Name))));
}
