namespace Watersown.Records.Database;

/// <summary>Kinds of photo that are taken, known by their first bytes: what a browser would do with anything else is not ours to find out.</summary>
internal static class PhotoKind
{
    private static readonly byte[] png = [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>The media type by the bytes themselves; none for what is no photo.</summary>
    public static string? Of(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])) return "image/jpeg";
        if (bytes.StartsWith(png)) return "image/png";
        return bytes.Length >= 12 && bytes.StartsWith("RIFF"u8) && bytes[8..].StartsWith("WEBP"u8) ? "image/webp" : null;
    }
}
