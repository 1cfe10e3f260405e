using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Watersown.Web.SignIn;

/// <summary>Small secrets of the host: tokens of its pages, and codes that let somebody in once.</summary>
internal static class Secrets
{
    public static TimeSpan CodeLasts { get; } = TimeSpan.FromHours(24);

    private const string CodeMark = "code$";

    /// <summary>Bound to a session without being kept: the token that its pages send with what they write.</summary>
    public static string TokenOf(string session) => Base64Url.EncodeToString(HMACSHA256.HashData(Encoding.UTF8.GetBytes(session), "token of the desk's own pages"u8));

    /// <summary>Equal, found out in a time that tells nothing of where they differ.</summary>
    public static bool Same(string one, string other) => CryptographicOperations.FixedTimeEquals(SHA256.HashData(Encoding.UTF8.GetBytes(one)), SHA256.HashData(Encoding.UTF8.GetBytes(other)));

    /// <summary>What is kept of a secret of full strength.</summary>
    public static string Digest(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));

    /// <summary>A name that nobody has to agree on, as marks have them.</summary>
    public static string NewName() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));

    /// <summary>A code that a person reads off one screen and types into another: 74 bits, without letters that look alike.</summary>
    public static string NewCode()
    {
        const string Letters = "abcdefghjkmnpqrstuvwxyz23456789";
        var letters = RandomNumberGenerator.GetItems<char>(Letters, 15);
        return string.Join('-', new string(letters[..5]), new string(letters[5..10]), new string(letters[10..]));
    }

    /// <summary>What is kept of a code in the place of a password: it opens nothing but the choice of one, and not for ever.</summary>
    public static string KeepCode(string code, DateTimeOffset until) => string.Create(CultureInfo.InvariantCulture, $"{CodeMark}{until.ToUnixTimeSeconds()}${Passwords.Keep(Tidy(code))}");

    public static bool IsCode(string? kept) => kept?.StartsWith(CodeMark, StringComparison.Ordinal) == true;

    /// <summary>Whether a code is the one that was kept and still lasts; takes as long where it is not.</summary>
    public static bool CodeFits(string code, string? kept, DateTimeOffset now)
    {
        if (!IsCode(kept)) return Passwords.Fits(Tidy(code), null);
        var parts = kept![CodeMark.Length..].Split('$', 2);
        return Passwords.Fits(Tidy(code), parts[1]) && now.ToUnixTimeSeconds() < long.Parse(parts[0], CultureInfo.InvariantCulture);
    }

    private static string Tidy(string code) => code.Trim().ToLowerInvariant();
}
