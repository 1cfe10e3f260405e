using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Watersown.Web.SignIn;

/// <summary>
/// Turns a password into what is kept of it, and holds a password against that: PBKDF2 with SHA-256, a salt of its own for
/// each, and the number of rounds written beside it so that it can be raised later.
/// </summary>
internal static class Passwords
{
    public const int Shortest = 10;

    public const int Longest = 200;

    /// <summary>Rounds for new passwords: the least that is advised for this function.</summary>
    public const int Rounds = 600_000;

    private const int SaltBytes = 16;

    private const int HashBytes = 32;

    /// <summary>Kept where nobody of that name is known, so that an unknown name takes as long as a wrong password.</summary>
    private static readonly Lazy<string> Nobody = new(() => Keep(Convert.ToHexString(RandomNumberGenerator.GetBytes(16))));

    /// <summary>What is kept of a password.</summary>
    public static string Keep(string password)
    {
        var salt = RandomNumberGenerator.GetBytes(SaltBytes);
        return string.Create(CultureInfo.InvariantCulture, $"pbkdf2-sha256${Rounds}${Base64Url.EncodeToString(salt)}${Base64Url.EncodeToString(Hash(password, salt, Rounds))}");
    }

    /// <summary>Whether a password is the one that was kept; takes as long where nothing was.</summary>
    public static bool Fits(string password, string? kept)
    {
        var parts = (kept ?? Nobody.Value).Split('$');
        if (parts.Length != 4 || parts[0] != "pbkdf2-sha256" || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var rounds)) return false;
        var right = CryptographicOperations.FixedTimeEquals(Hash(password, Base64Url.DecodeFromChars(parts[2]), rounds), Base64Url.DecodeFromChars(parts[3]));
        return right && kept is not null;
    }

    // The same letters can be typed in more than one way: composed first, as the standards for passwords advise.
    private static byte[] Hash(string password, byte[] salt, int rounds) =>
        Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(Composed(password)), salt, rounds, HashAlgorithmName.SHA256, HashBytes);

    private static string Composed(string password) => password.Length <= Longest && password.IsNormalized(NormalizationForm.FormC) ? password : password.Normalize(NormalizationForm.FormC);
}
