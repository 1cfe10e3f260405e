using System.Globalization;
using System.Text;
using Watersown.Records.Database;
using Watersown.Schedule;
using Watersown.Season;
using Watersown.Web.Edge;
using Watersown.Web.Season;
using Watersown.Web.SignIn;
using Watersown.Wording;

namespace Watersown.Web.Links;

/// <summary>
/// Sheets for people without an account. The address is the key: it is told once, only its digest is kept, and a link that was
/// taken back, one whose days are over and one that nobody ever made look the same from outside.
/// </summary>
internal sealed class LinkEndpoints(Book book, MarkDoor door, LiveSeason season, RateLimits limits, DeskOptions options, TimeProvider time)
{
    private const int DaysMost = 30;

    private const string Html = "text/html; charset=utf-8";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/links", ListAsync).WithMetadata(Access.Farmers);
        routes.MapPost("/api/links", MakeAsync).WithMetadata(Access.Farmers);
        routes.MapDelete("/api/links/{id}", WithdrawAsync).WithMetadata(Access.Farmers);
        routes.MapGet("/l/{token}", ShowAsync).WithMetadata(Access.Anyone);
        routes.MapPost("/l/{token}", AnswerAsync).WithMetadata(Access.Anyone);
    }

    private async Task ListAsync(HttpContext context)
    {
        var (links, now) = (await book.LinksAsync(context.RequestAborted), time.GetUtcNow());
        await Reply.ListAsync(context, "links", links, (json, link) =>
        {
            var sheet = LinkSheet.Read(link.Sheet);
            json.WriteString("id", link.Id);
            json.WriteString("sheet", LinkSheet.Name(sheet.Kind));
            json.WriteString("person", link.Whom);
            json.WriteString("day", sheet.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            json.WriteNumber("plan", sheet.Plan);
            json.WriteString("by", link.MadeBy);
            json.WriteString("created", link.Created);
            json.WriteString("expires", link.Expires);
            if (link.Withdrawn is { } withdrawn) json.WriteString("withdrawn", withdrawn);
            json.WriteBoolean("works", link.IsLiveAt(now));
        });
    }

    private async Task MakeAsync(HttpContext context)
    {
        var caller = Door.CallerOf(context);
        if (caller.Session is not null && limits.LinksMade.Count(caller.Key) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return;
        }

        if (await ShortForm.ReadAsync(context) is not { } form) return;
        var known = await season.ReadAsync(context.RequestAborted);
        var wished = Wished(known, form);
        if (wished.IsRefused)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, wished.Problems);
            return;
        }

        var (sheet, person, days) = wished.Value;
        var made = await book.MakeLinkAsync(sheet.ToString(), person.Name, caller.Name, TimeSpan.FromDays(days), CancellationToken.None);
        var here = options.PublicName ?? new Uri(context.Request.Scheme + "://" + context.Request.Host.Value);
        await Reply.JsonAsync(context, StatusCodes.Status201Created, json =>
        {
            json.WriteStartObject();
            json.WriteString("id", made.Link.Id);
            json.WriteString("url", new Uri(here, "/l/" + made.Token).ToString());
            json.WriteString("person", person.Name);
            json.WriteString("sheet", LinkSheet.Name(sheet.Kind));
            json.WriteNumber("plan", sheet.Plan);
            json.WriteString("expires", made.Link.Expires);
            json.WriteEndObject();
        });
    }

    private Outcome<(LinkSheet Sheet, Person Person, double Days)> Wished(KnownSeason? known, Dictionary<string, string> form)
    {
        var now = time.GetUtcNow();
        if (known is null || known.BookAt(now) is not { } told || LiveSeason.Open(known.Plan, told.State) is not { } plan)
            return Outcome<(LinkSheet, Person, double)>.Refuse(LinkProblems.NoPlan.At(string.Empty));
        var problems = new List<Problem>();
        var asked = form.GetValueOrDefault("sheet", string.Empty);
        if (LinkSheet.KindOf(asked) is not { } kind)
        {
            kind = LinkKind.Day;
            problems.Add(LinkProblems.UnknownSheet.At("sheet", ("value", Say.Short(asked)), ("known", LinkSheet.Known)));
        }

        var name = form.GetValueOrDefault("person", string.Empty);
        var person = plan.State.People.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase));
        if (person is null) problems.Add(LinkProblems.UnknownPerson.At("person", ("value", Say.Short(name)), ("known", string.Join(", ", plan.State.People.Select(p => p.Name)))));
        var days = form.TryGetValue("days", out var written) ? double.TryParse(written, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var d) ? d : 0 : 3;
        if (days is <= 0 or > DaysMost) problems.Add(LinkProblems.DaysOut.At("days", ("value", Say.Short(written ?? string.Empty)), ("limit", Say.Number(DaysMost))));
        var today = FarmTime.Day(plan.State, plan.State.Now);
        var day = form.TryGetValue("day", out var text) && DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var given) ? given : today;
        if (problems.Count > 0) return Outcome<(LinkSheet, Person, double)>.Refuse(problems);
        var sheet = new LinkSheet(kind, day, plan.Number);
        if (ScopeOf(sheet, person!, told, plan, plan, "link", now).Pages.IsEmpty)
            return Outcome<(LinkSheet, Person, double)>.Refuse(LinkProblems.NothingToShow.At("sheet", ("value", LinkSheet.Name(kind)), ("person", person!.Name), ("day", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))));
        return Outcome<(LinkSheet, Person, double)>.Of((sheet, person!, days));
    }

    private async Task WithdrawAsync(HttpContext context, string id)
    {
        if (await book.WithdrawLinkAsync(id, CancellationToken.None)) context.Response.StatusCode = StatusCodes.Status204NoContent;
        else await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, LinkProblems.NoSuchLink.At("link"));
    }

    private async Task ShowAsync(HttpContext context, string token)
    {
        if (await OpenAsync(context, token) is not { } open) return;
        var (link, scope) = open;
        var kept = context.Request.Query["kept"].ToString() is { Length: MarkId.Digits } id ? scope.Book.Log.Find(new MarkId(id)) : null;
        await PageAsync(context, StatusCodes.Status200OK, scope, View(token, link) with
        {
            Sheet = int.TryParse(context.Request.Query["sheet"].ToString(), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : 0,
            Kept = kept?.Device == scope.Device ? kept : null,
        });
    }

    private async Task AnswerAsync(HttpContext context, string token)
    {
        if (await OpenAsync(context, token) is not { } open) return;
        var (link, scope) = open;
        if (limits.LinkAnswers.Count(link.Id) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return;
        }

        if (await ShortForm.ReadAsync(context) is not { } form) return;
        var mark = LinkAnswers.Read(scope, form);
        if (mark.IsRefused)
        {
            await PageAsync(context, StatusCodes.Status422UnprocessableEntity, scope, View(token, link) with { Refused = mark.Problems[0] });
            return;
        }

        // Sent twice it is there already, with the moment of the first time: that is the same answer.
        await door.KeepAsync([mark.Value], "link " + link.Id);
        SecurityHeaders.Put(context, SecurityHeaders.ForPlainPages);
        context.Response.Headers.CacheControl = "no-store";
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = "/l/" + token + "?kept=" + mark.Value.Id;
    }

    /// <summary>The link and what it shows; nothing where it does not work, which has been answered then.</summary>
    private async Task<(Link Link, LinkScope Scope)?> OpenAsync(HttpContext context, string token)
    {
        var address = RateLimits.Address(context);
        if ((limits.LinksGuessed.Wait(address) ?? limits.LinksSeen.Count(address)) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return null;
        }

        var now = time.GetUtcNow();
        var link = token.Length is > 20 and < 100 ? await book.LinkAsync(token, context.RequestAborted) : null;
        var known = link?.IsLiveAt(now) == true ? await season.ReadAsync(context.RequestAborted) : null;
        if (known is not null && await ScopeAsync(link!, known, now, context.RequestAborted) is { } scope) return (link!, scope);
        limits.LinksGuessed.Count(address);
        SecurityHeaders.Put(context, SecurityHeaders.ForPlainPages);
        await Reply.BytesAsync(context, StatusCodes.Status404NotFound, Html, Encoding.UTF8.GetBytes(LinkPage.Gone(Reply.LanguageOf(context))));
        return null;
    }

    private async Task<LinkScope?> ScopeAsync(Link link, KnownSeason known, DateTimeOffset now, CancellationToken stop)
    {
        var sheet = LinkSheet.Read(link.Sheet);
        var told = known.BookAt(now);
        if (LiveSeason.Open(known.Plan, told.State) is not { } plan) return null;
        var issued = sheet.Plan == plan.Number ? plan : LiveSeason.Open(await book.PlanAsync(sheet.Plan, stop), told.State) ?? plan;
        var person = told.State.People.FirstOrDefault(p => string.Equals(p.Name, link.Whom, StringComparison.Ordinal)) ?? new Person(link.Whom, string.Empty) { Speaks = told.State.Farm.Language };
        return ScopeOf(sheet, person, told, plan, issued, "link " + link.Id[..12], now);
    }

    private static LinkScope ScopeOf(LinkSheet sheet, Person person, SeasonBook told, SeasonPlan plan, SeasonPlan issued, string device, DateTimeOffset now) => new()
    {
        Sheet = sheet,
        Person = person,
        Plan = plan,
        Issued = issued,
        Book = told,
        Now = now.ToOffset(told.State.Offset),
        Device = device,
    };

    private static LinkView View(string token, Link link) => new("/l/" + token, link.Expires, Secrets.NewName);

    private static Task PageAsync(HttpContext context, int status, LinkScope scope, LinkView view)
    {
        SecurityHeaders.Put(context, SecurityHeaders.ForPlainPages);
        return Reply.BytesAsync(context, status, Html, Encoding.UTF8.GetBytes(LinkPage.Write(scope, view)));
    }
}
