using System.Security.Cryptography;
using System.Text;
using Watersown.Records.Database;
using Watersown.Schedule;
using Watersown.Season;
using Watersown.Season.Texts;
using Watersown.Web.Edge;
using Watersown.Web.Season;
using Watersown.Web.SignIn;
using Watersown.Wording;

namespace Watersown.Web.Texts;

/// <summary>
/// Text messages: one that a service hands over for a person with a known number, and one that is pasted on the desk. What was
/// understood is kept as marks and said back; what was not is asked, never guessed.
/// </summary>
internal sealed class TextEndpoints(Book book, MarkDoor door, LiveSeason season, RateLimits limits, TimeProvider time)
{
    private const string SecretSetting = "text-secret";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/text", ComeInAsync).WithMetadata(Access.Anyone);
        routes.MapPost("/api/text", PasteAsync).WithMetadata(Access.Markers);
        routes.MapPost("/api/text-secret", NewSecretAsync).WithMetadata(Access.Owners);
        routes.MapDelete("/api/text-secret", NoSecretAsync).WithMetadata(Access.Owners);
    }

    private async Task ComeInAsync(HttpContext context)
    {
        if (await ShortForm.ReadAsync(context) is not { } form) return;
        var address = RateLimits.Address(context);
        var given = context.Request.Headers["X-Watersown-Secret"].ToString() is { Length: > 0 } header ? header : form.GetValueOrDefault("secret", string.Empty);
        if (limits.TextSecrets.Wait(address) is { } guessing)
        {
            await Reply.TooOftenAsync(context, guessing);
            return;
        }

        if (await book.SettingAsync(SecretSetting, context.RequestAborted) is not { } kept || !Secrets.Same(Secrets.Digest(given), kept))
        {
            limits.TextSecrets.Count(address);
            await Reply.ProblemsAsync(context, StatusCodes.Status403Forbidden, TextProblems.WrongSecret.At("secret"));
            return;
        }

        var from = Digits(form.GetValueOrDefault("from", string.Empty));
        if (limits.Texts.Count(from) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return;
        }

        if (await StateAsync(context) is not { } state) return;
        // The last ten digits: a service may put the country before them.
        if (state.People.FirstOrDefault(p => from.Length >= 7 && Last(Digits(p.Phone ?? string.Empty)) == Last(from)) is not { } person)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, TextProblems.UnknownNumber.At("from", ("value", Say.Short(from, 20))));
            return;
        }

        if (await ReadAsync(context, form, new TextContext(state, state.Now, person.Name) { Language = person.Speaks }) is not { } reading) return;
        await KeepAsync(reading, person.Name, form.GetValueOrDefault("id", string.Empty) is { Length: > 0 } id ? from + "\n" + id : null, "text");
        // A service sends what it is answered back to the telephone.
        await Reply.BytesAsync(context, StatusCodes.Status200OK, "text/plain; charset=utf-8", Encoding.UTF8.GetBytes(reading.Reply + "\n"));
    }

    private async Task PasteAsync(HttpContext context)
    {
        var caller = Door.CallerOf(context);
        if (caller.Session is not null && limits.Texts.Count(caller.Key) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return;
        }

        if (await ShortForm.ReadAsync(context) is not { } form) return;
        if (await StateAsync(context) is not { } state) return;
        var told = form.GetValueOrDefault("person", string.Empty).Trim();
        var by = caller.Role is Role.Owner or Role.Family && told.Length is > 0 and <= BookLimits.NameLettersMost ? told : caller.Name;
        var person = state.People.FirstOrDefault(p => string.Equals(p.Name, by, StringComparison.OrdinalIgnoreCase));
        if (await ReadAsync(context, form, new TextContext(state, state.Now, by) { Language = person?.Speaks ?? state.Farm.Language }) is not { } reading) return;
        // Looked at first, kept on a second tap.
        var ids = form.GetValueOrDefault("keep", string.Empty) == "no" ? []
            : await KeepAsync(reading, by, form.GetValueOrDefault("id", string.Empty) is { Length: > 0 } id ? caller.Name + "\n" + id : null, caller.Session is null ? null : caller.Name);
        await Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteString("by", by);
            json.WriteString("echo", reading.Echo);
            json.WriteString("reply", reading.Reply);
            json.WriteString("language", Words.In(reading.Language).Common.Tag);
            Write("questions", reading.Questions);
            Write("not_understood", reading.NotUnderstood);
            Write("kept", [.. ids.Select(i => i.Text)]);
            json.WriteNumber("facts", reading.Facts.Length);
            json.WriteEndObject();

            void Write(string key, ImmutableArray<string> lines)
            {
                json.WriteStartArray(key);
                foreach (var line in lines) json.WriteStringValue(line);
                json.WriteEndArray();
            }
        });
    }

    private static async Task<TextReading?> ReadAsync(HttpContext context, Dictionary<string, string> form, TextContext about)
    {
        var text = form.GetValueOrDefault("body", form.GetValueOrDefault("text", string.Empty));
        if (!string.IsNullOrWhiteSpace(text) && text.Length <= TextMarks.MaxLength) return TextMarks.Read(text, about);
        await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, TextProblems.NothingSaid.At("body", ("limit", Say.Number(TextMarks.MaxLength))));
        return null;
    }

    /// <summary>Keeps what was understood. A service that hands a message over twice, under one name, tells it once.</summary>
    private async Task<ImmutableArray<MarkId>> KeepAsync(TextReading reading, string by, string? name, string? sender)
    {
        if (reading.Facts.IsEmpty) return [];
        var now = time.GetUtcNow();
        name ??= Secrets.NewName();
        ImmutableArray<Mark> marks =
        [
            .. reading.Facts.Select((fact, i) => new Mark
            {
                Id = new MarkId(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', "text", name, i))))[..MarkId.Digits]),
                Happened = now,
                Entered = now,
                By = by,
                Device = "text",
                Sure = Sureness.Told,
                Fact = fact,
            }),
        ];
        await door.KeepAsync(marks, sender);
        return [.. marks.Select(m => m.Id)];
    }

    /// <summary>A new secret, told once; the one before it ends.</summary>
    private async Task NewSecretAsync(HttpContext context)
    {
        var secret = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(24));
        await book.SetAsync(SecretSetting, Secrets.Digest(secret), CancellationToken.None);
        await Reply.JsonAsync(context, StatusCodes.Status201Created, json =>
        {
            json.WriteStartObject();
            json.WriteString("secret", secret);
            json.WriteEndObject();
        });
    }

    private async Task NoSecretAsync(HttpContext context)
    {
        await book.SetAsync(SecretSetting, null, CancellationToken.None);
        context.Response.StatusCode = StatusCodes.Status204NoContent;
    }

    private async Task<SeasonState?> StateAsync(HttpContext context)
    {
        if (await season.ReadAsync(context.RequestAborted) is { } known) return known.BookAt(time.GetUtcNow()).State;
        await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, SendProblems.NoFarm.At(string.Empty));
        return null;
    }

    private static string Digits(string text) => string.Concat(text.Where(char.IsAsciiDigit));

    private static string Last(string digits) => digits.Length <= 10 ? digits : digits[^10..];
}
