using System.Globalization;

namespace Watersown.Pocket.Crop.Holds;

/// <summary>What is typed into a form of treatments: empty is not told.</summary>
internal static class Typing
{
    public static string? Words(string text) => text.Trim() is { Length: > 0 } told ? told : null;

    public static int? Whole(string text) => int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    public static double? Number(string text) => double.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
}
