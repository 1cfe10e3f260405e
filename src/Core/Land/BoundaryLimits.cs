namespace Watersown.Land;

/// <summary>How much one boundary may hold, and what a field's size usually is.</summary>
public static class BoundaryLimits
{
    /// <summary>Corners of one boundary, all rings together. A surveyed field has 20 to 2,000.</summary>
    public const int MaxCorners = 50_000;

    /// <summary>Outer rings and holes of one boundary.</summary>
    public const int MaxRings = 500;

    /// <summary>Below this it is hardly a field. Common practice, no source.</summary>
    public static Area LeastUsual { get; } = Area.FromAcres(0.1);

    /// <summary>Above this it is hardly one field. Common practice, no source.</summary>
    public static Area MostUsual { get; } = Area.FromAcres(5000);
}
