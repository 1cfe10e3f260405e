namespace Watersown.Records.Database;

/// <summary>How large what is put into a book may be. From what a phone sends, with room; common practice, no source.</summary>
public static class BookLimits
{
    /// <summary>Letters of a person's, a device's or a kind's name.</summary>
    public const int NameLettersMost = 100;

    /// <summary>Bytes of one mark; the longest, a week's forecast by the hour, is a tenth of it.</summary>
    public const int MarkBytesMost = 128 * 1024;

    /// <summary>Bytes of one photo.</summary>
    public const int AttachmentBytesMost = 8 * 1024 * 1024;

    /// <summary>Visible letters, and not too many.</summary>
    internal static bool IsName(string? text) => text is { Length: > 0 and <= NameLettersMost } && !string.IsNullOrWhiteSpace(text) && !text.Any(char.IsControl);

    internal static bool IsMarkId(string? text) => text is { Length: 32 } && text.All(char.IsAsciiHexDigitLower);

    internal static bool IsKind(string? text) => text is { Length: > 0 and <= NameLettersMost } && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');
}
