namespace Watersown.Records.Files.Boundaries;

/// <summary>How much of a stranger's file is looked at. A farm of 60 surveyed fields takes a hundredth of each.</summary>
internal static class MapFileLimits
{
    public const int MaxBytes = 32 * 1024 * 1024;

    public const int MaxZipEntries = 200;

    /// <summary>All entries that are unpacked, together.</summary>
    public const long MaxUnpacked = 64L * 1024 * 1024;

    /// <summary>Unpacked over packed size; text packs up to about 30 times, a trap thousands of times.</summary>
    public const int MaxRatio = 200;

    public const int MaxFeatures = 5000;

    /// <summary>Corners of the whole file.</summary>
    public const int MaxPoints = 1_000_000;

    public const int MaxDepth = 64;

    /// <summary>Letters kept of one text of a file.</summary>
    public const int MaxText = 200;

    /// <summary>Columns kept of one boundary.</summary>
    public const int MaxColumns = 100;
}
