using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Watersown.Records.Database;

/// <summary>
/// Secrets handed to a browser or put into a link: 256 bits of chance. The book keeps their digest only, so that a stolen
/// copy of it opens nothing. Without a salt: there is nothing to guess in 256 bits of chance.
/// </summary>
internal static class Tokens
{
    public static string New() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(32));

    /// <summary>The name that the book keeps a secret under.</summary>
    public static string IdOf(string token) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(token)));

    /// <summary>A name that nobody has to agree on.</summary>
    public static string NewId() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
}
