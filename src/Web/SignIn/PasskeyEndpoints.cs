using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Fido2NetLib;
using Fido2NetLib.Objects;
using Watersown.Records.Database;
using Watersown.Web.Edge;

namespace Watersown.Web.SignIn;

/// <summary>Passkeys: adding one to the account that is signed in, signing in with one, the list of them.</summary>
internal sealed class PasskeyEndpoints(Book book, DeskOptions options, RateLimits limits, Ceremonies ceremonies, SignInEndpoints signIn)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/api/passkeys/options", AskForNewAsync).WithMetadata(Access.Readers);
        routes.MapPost("/api/passkeys", AddAsync).WithMetadata(Access.Readers);
        routes.MapGet("/api/passkeys", ListAsync).WithMetadata(Access.Readers);
        routes.MapDelete("/api/passkeys/{id}", RemoveAsync).WithMetadata(Access.Readers);
        routes.MapPost("/sign-in/passkey/options", AskAsync).WithMetadata(Access.Anyone);
        routes.MapPost("/sign-in/passkey", EnterAsync).WithMetadata(Access.Anyone);
    }

    private async Task AskForNewAsync(HttpContext context)
    {
        var name = Door.CallerOf(context).Name;
        if (await book.AccountAsync(name, context.RequestAborted) is not { IsOpen: true })
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, BookProblems.NoSuchAccount.At("name", ("value", name)));
            return;
        }

        var known = await book.PasskeysAsync(name, context.RequestAborted);
        var asked = Library(context).RequestNewCredential(new RequestNewCredentialParams
        {
            User = new Fido2User { Id = HandleOf(name), Name = name, DisplayName = name },
            ExcludeCredentials = [.. known.Select(k => new PublicKeyCredentialDescriptor(Convert.FromBase64String(Padded(k.Id))))],
            AuthenticatorSelection = new AuthenticatorSelection { ResidentKey = ResidentKeyRequirement.Required, UserVerification = UserVerificationRequirement.Preferred },
            AttestationPreference = AttestationConveyancePreference.None,
        });
        await HandOutAsync(context, asked.ToJson(), name);
    }

    private async Task AddAsync(HttpContext context)
    {
        var caller = Door.CallerOf(context);
        if (await ReadAsync(context) is not { } given) return;
        using var document = given;
        if (Taken(document, caller.Name) is not { } asked)
        {
            await RefuseAsync(context, "the challenge is not known or too old");
            return;
        }

        try
        {
            var answer = document.RootElement.GetProperty("response").Deserialize<AuthenticatorAttestationRawResponse>()!;
            var made = await Library(context).MakeNewCredentialAsync(new MakeNewCredentialParams
            {
                AttestationResponse = answer,
                OriginalOptions = CredentialCreateOptions.FromJson(asked),
                IsCredentialIdUniqueToUserCallback = async (unique, stop) => await book.PasskeyAsync(Name(unique.CredentialId), stop) is null,
            }, context.RequestAborted);
            var label = document.RootElement.TryGetProperty("label", out var said) && said.ValueKind == JsonValueKind.String ? said.GetString()! : string.Empty;
            var added = await book.AddPasskeyAsync(Name(made.Id), caller.Name, made.SignCount, PasskeyDocument.Write(made.PublicKey, label), context.RequestAborted);
            if (added.IsRefused) await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, added.Problems);
            else context.Response.StatusCode = StatusCodes.Status204NoContent;
        }
        catch (Exception refused) when (refused is Fido2VerificationException or JsonException or KeyNotFoundException or FormatException or InvalidOperationException or NullReferenceException)
        {
            await RefuseAsync(context, refused.Message);
        }
    }

    private async Task AskAsync(HttpContext context)
    {
        if (!WriteGuard.SameOrigin(context, options))
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status403Forbidden, HostProblems.OtherOrigin.At(string.Empty));
            return;
        }

        if (limits.SignInByAddress.Count(RateLimits.Address(context)) is { } wait)
        {
            await Reply.TooOftenAsync(context, wait);
            return;
        }

        // No name is asked for: the key says whose it is, so nothing here tells who has one.
        var asked = Library(context).GetAssertionOptions(new GetAssertionOptionsParams { AllowedCredentials = [], UserVerification = UserVerificationRequirement.Preferred });
        await HandOutAsync(context, asked.ToJson(), string.Empty);
    }

    private async Task EnterAsync(HttpContext context)
    {
        if (!WriteGuard.SameOrigin(context, options))
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status403Forbidden, HostProblems.OtherOrigin.At(string.Empty));
            return;
        }

        if (await ReadAsync(context) is not { } given) return;
        using var document = given;
        if (Taken(document, string.Empty) is not { } asked)
        {
            await RefuseAsync(context, "the challenge is not known or too old");
            return;
        }

        try
        {
            var answer = document.RootElement.GetProperty("response").Deserialize<AuthenticatorAssertionRawResponse>()!;
            var key = await book.PasskeyAsync(answer.Id.TrimEnd('='), context.RequestAborted);
            var account = key is null ? null : await book.AccountAsync(key.Account, context.RequestAborted);
            if (key is null || account is not { IsOpen: true })
            {
                await RefuseAsync(context, "it opens nothing here");
                return;
            }

            var proved = await Library(context).MakeAssertionAsync(new MakeAssertionParams
            {
                AssertionResponse = answer,
                OriginalOptions = AssertionOptions.FromJson(asked),
                StoredPublicKey = PasskeyDocument.PublicKey(key.Document),
                StoredSignatureCounter = (uint)key.SignCount,
                IsUserHandleOwnerOfCredentialIdCallback = (owner, _) => Task.FromResult(owner.UserHandle.AsSpan().SequenceEqual(HandleOf(account.Name))),
            }, context.RequestAborted);
            await book.UsePasskeyAsync(key.Id, proved.SignCount, key.Document, CancellationToken.None);
            await signIn.BeginAsync(context, account);
        }
        catch (Exception refused) when (refused is Fido2VerificationException or JsonException or KeyNotFoundException or FormatException or InvalidOperationException or NullReferenceException)
        {
            await RefuseAsync(context, refused.Message);
        }
    }

    private async Task ListAsync(HttpContext context)
    {
        var keys = await book.PasskeysAsync(Door.CallerOf(context).Name, context.RequestAborted);
        await Reply.ListAsync(context, "passkeys", keys, (json, key) =>
        {
            json.WriteString("id", key.Id);
            json.WriteString("label", PasskeyDocument.Label(key.Document));
            json.WriteString("created", key.Created);
            if (key.Used is { } used) json.WriteString("used", used);
        });
    }

    private async Task RemoveAsync(HttpContext context, string id)
    {
        var mine = await book.PasskeyAsync(id, context.RequestAborted) is { } key && key.Account == Door.CallerOf(context).Name;
        if (mine && await book.RemovePasskeyAsync(id, CancellationToken.None)) context.Response.StatusCode = StatusCodes.Status204NoContent;
        else await Reply.ProblemsAsync(context, StatusCodes.Status404NotFound, HostProblems.NothingHere.At(string.Empty));
    }

    private async Task HandOutAsync(HttpContext context, string asked, string account)
    {
        if (ceremonies.Begin(asked, account) is not { } name)
        {
            await Reply.TooOftenAsync(context, TimeSpan.FromMinutes(1));
            return;
        }

        await Reply.JsonAsync(context, StatusCodes.Status200OK, json =>
        {
            json.WriteStartObject();
            json.WriteString("ceremony", name);
            json.WritePropertyName("options");
            json.WriteRawValue(asked);
            json.WriteEndObject();
        });
    }

    private static async Task<JsonDocument?> ReadAsync(HttpContext context)
    {
        if (await BodySize.ReadAsync(context) is not { } body)
        {
            await BodySize.TooLargeAsync(context);
            return null;
        }

        try
        {
            return JsonDocument.Parse(body, new JsonDocumentOptions { MaxDepth = 8 });
        }
        catch (JsonException)
        {
            await Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, HostProblems.NotThisBody.At(string.Empty, ("limit", "a passkey's answer")));
            return null;
        }
    }

    private string? Taken(JsonDocument document, string account) =>
        document.RootElement.ValueKind == JsonValueKind.Object && document.RootElement.TryGetProperty("ceremony", out var name) && name.ValueKind == JsonValueKind.String
        && ceremonies.End(name.GetString()!) is { } kept && kept.Account == account ? kept.Options : null;

    private static Task RefuseAsync(HttpContext context, string why) =>
        Reply.ProblemsAsync(context, StatusCodes.Status422UnprocessableEntity, SignInProblems.Passkey.At("passkey", ("value", why.TrimEnd('.').Length > 200 ? why[..200] : why.TrimEnd('.'))));

    private Fido2 Library(HttpContext context)
    {
        var here = options.PublicName ?? new Uri(context.Request.Scheme + "://" + context.Request.Host.Value);
        return new Fido2(new Fido2Configuration { RPID = here.Host, RPName = "Watersown", Origins = new HashSet<string>(StringComparer.Ordinal) { here.GetLeftPart(UriPartial.Authority) } });
    }

    // A key keeps it in the open, so it says nothing of the person.
    private static byte[] HandleOf(string account) => SHA256.HashData(Encoding.UTF8.GetBytes("watersown account " + account));

    private static string Name(byte[] id) => System.Buffers.Text.Base64Url.EncodeToString(id);

    private static string Padded(string name) => name.Replace('-', '+').Replace('_', '/') + new string('=', (4 - (name.Length % 4)) % 4);
}

/// <summary>What is kept of a passkey beside its name.</summary>
internal static class PasskeyDocument
{
    public static string Write(byte[] publicKey, string label) => JsonSerializer.Serialize(new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["public_key"] = Convert.ToBase64String(publicKey),
        ["label"] = label.Length <= 80 ? label : label[..80],
    });

    public static byte[] PublicKey(string document) => Convert.FromBase64String(Of(document, "public_key"));

    public static string Label(string document) => Of(document, "label");

    private static string Of(string document, string key)
    {
        using var json = JsonDocument.Parse(document);
        return json.RootElement.GetProperty(key).GetString()!;
    }
}
