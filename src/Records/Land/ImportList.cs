using Watersown.Documents.Farms;
using Watersown.Records.Files;

namespace Watersown.Records.Land;

/// <summary>Makes a farm document of a saved list of fields, whatever program saved it.</summary>
public static class ImportList
{
    /// <summary>A list is a few kilobytes; anything near this is no list.</summary>
    public const int MaxBytes = 4 * 1024 * 1024;

    public static Outcome<ImportedList> Run(ReadOnlySpan<byte> bytes, ImportListOptions options) =>
        TextDecoding.Read(bytes).Then(text => ImportedList.Of(text, options));
}
