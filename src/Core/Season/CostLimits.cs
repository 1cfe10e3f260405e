namespace Watersown.Season;

/// <summary>How far money of marks may go. Common practice, no source.</summary>
public static class CostLimits
{
    public static Limit Amount { get; } = new("amount", "$") { Least = -100_000_000, Most = 100_000_000 };

    public static Limit PerAcre { get; } = new("per_ac", "$/ac") { Least = 0, Most = 100_000, UsualMost = 1000 };

    public static Limit PerHundredweight { get; } = new("per_cwt", "$/cwt") { Least = 0, Most = 1000, UsualMost = 10 };
}
