using System.Text;
using System.Text.Unicode;
using Watersown.Schedule.Lists;

namespace Watersown.Records.Files;

/// <summary>From the bytes of a list to its text, whatever program saved it.</summary>
public static class TextDecoding
{
    /// <summary>UTF-8 or UTF-16, told by their mark or their look; else Western European with a warning.</summary>
    public static Outcome<string> Read(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith("PK\u0003\u0004"u8)) return Refuse("a spreadsheet or an archive");
        if (bytes.StartsWith("%PDF"u8)) return Refuse("a PDF");
        if (bytes.StartsWith(new byte[] { 0xFF, 0xFE })) return Wide(Encoding.Unicode, bytes[2..]);
        if (bytes.StartsWith(new byte[] { 0xFE, 0xFF })) return Wide(Encoding.BigEndianUnicode, bytes[2..]);
        if (bytes.StartsWith("\uFEFF"u8)) bytes = bytes[3..];
        if (LooksWide(bytes, zeroAt: 1)) return Wide(Encoding.Unicode, bytes);
        if (LooksWide(bytes, zeroAt: 0)) return Wide(Encoding.BigEndianUnicode, bytes);
        if (Utf8.IsValid(bytes)) return Checked(Encoding.UTF8.GetString(bytes));
        var western = Checked(Encoding.Latin1.GetString(bytes));
        return western.HasValue ? Outcome<string>.Of(western.Value, [ListProblems.WesternText.At(string.Empty)]) : western;
    }

    /// <summary>Plain letters in UTF-16 have a zero for every other byte.</summary>
    private static bool LooksWide(ReadOnlySpan<byte> bytes, int zeroAt)
    {
        var look = bytes[..(Math.Min(bytes.Length, 400) / 2 * 2)];
        if (look.Length < 4) return false;
        int zeros = 0, others = 0;
        for (var i = 0; i < look.Length; i += 2)
        {
            if (look[i + zeroAt] == 0) zeros++;
            if (look[i + 1 - zeroAt] == 0) others++;
        }

        return others == 0 && zeros * 10 >= look.Length / 2 * 8;
    }

    private static Outcome<string> Wide(Encoding encoding, ReadOnlySpan<byte> bytes) => Checked(encoding.GetString(bytes[..(bytes.Length / 2 * 2)]));

    /// <summary>Text has no control signs but blanks and line ends.</summary>
    private static Outcome<string> Checked(string text)
    {
        var odd = text.Count(c => char.IsControl(c) && c is not ('\t' or '\r' or '\n' or '\f' or '\v' or '\u0085' or '\u001A') && c < 0x80);
        return odd > 0 ? Refuse("it holds signs that no text has") : Outcome<string>.Of(text);
    }

    private static Outcome<string> Refuse(string value) => Outcome<string>.Refuse(ListProblems.NotText.At(string.Empty, ("value", value)));
}
