using System.Security.Cryptography;
using Watersown.Season;

namespace Watersown.Pocket.Keeping;

/// <summary>Names for new marks, from the device's own chance: two devices never make the same.</summary>
internal static class MarkNames
{
    public static MarkId New() => new(Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(MarkId.Digits / 2)));
}
