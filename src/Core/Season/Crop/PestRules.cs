using Watersown.Growth;
using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season.Crop;

/// <summary>The days in which something can hurt a field, and how often it is looked for.</summary>
/// <param name="Pest">What.</param>
/// <param name="From">First day.</param>
/// <param name="Until">Last day; the danger has passed after it.</param>
/// <param name="Every">Days from look to look.</param>
public sealed record PestWindow(Pest Pest, DateOnly From, DateOnly Until, int Every)
{
    /// <summary>Its last day was set by a stage that somebody saw.</summary>
    public bool EndSeen { get; init; }
}

/// <summary>When each danger begins and ends, as published.</summary>
public static class PestRules
{
    /// <summary>Shrimp hatch from two days after first water.</summary>
    [Source(nameof(Sources.UcShrimpSheet), "hatch from 2 days")]
    public const int ShrimpHatch = 2;

    /// <summary>Shrimp can hurt seed from five warm days after first water.</summary>
    [Source(nameof(Sources.UcShrimpSheet), "4 mm shell from 5 days")]
    public const int ShrimpHarm = 5;

    /// <summary>Rice is safe from shrimp once this leaf is out.</summary>
    [Source(nameof(Sources.ShrimpSafe), "first true leaf, shoots green")]
    public const int ShrimpSafeLeaf = 1;

    /// <summary>First look for midge after seeding.</summary>
    [Source(nameof(Sources.MidgeLouisiana), "5 to 7 days after seeding")]
    public const int MidgeFirst = 5;

    /// <summary>Midge is looked for until plants are about 3 in tall, the third leaf here.</summary>
    [Source(nameof(Sources.MidgeLouisiana), "until plants are about 3 in tall")]
    public const int MidgeLastLeaf = 3;

    /// <summary>Leaves must clear the water by this leaf: from then scum buries nothing.</summary>
    [Source(nameof(Sources.LsuWaterSeeding), "3- to 4-leaf stage")]
    public const int ScumLastLeaf = 4;

    /// <summary>Scars of the weevil's leaf feeding tell at these leaves.</summary>
    [Source(nameof(Sources.WeevilScars), "feeding scars at the 3-leaf stage predict larvae")]
    public static (int From, int To) WeevilLeaves => (2, 4);

    /// <summary>First generation of armyworm.</summary>
    [Source(nameof(Sources.ArmywormUc), "two generations, June and July to August")]
    public static (int Month, int Day) ArmywormFrom => (6, 1);

    /// <summary>Every danger of a field with its days; none before first water.</summary>
    public static ImmutableArray<PestWindow> Of(SeasonBook book, Field field)
    {
        var season = book.State.Season(field.Code);
        if (season.FirstWater is null && season.SownAt is null) return [];
        var windows = ImmutableArray.CreateBuilder<PestWindow>();
        var stages = SeasonStages.Of(book, field.Code);
        var water = FarmTime.Day(book.State, season.FirstWater ?? season.SownAt!.Value);
        var unsown = FarmTime.Day(book.State, book.Now).AddDays(1);
        var (first, firstSeen) = LeafEnd(stages, ShrimpSafeLeaf, unsown);
        windows.Add(new PestWindow(Pest.Shrimp, water.AddDays(ShrimpHatch), first, 2) { EndSeen = firstSeen });
        var (clear, clearSeen) = LeafEnd(stages, ScumLastLeaf, unsown);
        windows.Add(new PestWindow(Pest.Scum, water.AddDays(ShrimpHatch), clear, 2) { EndSeen = clearSeen });
        if (stages is null) return windows.ToImmutable();
        var (tall, tallSeen) = LeafEnd(stages, MidgeLastLeaf, unsown);
        windows.Add(new PestWindow(Pest.Midge, stages.Sown.AddDays(MidgeFirst), tall, 6) { EndSeen = tallSeen });
        if (stages.Calendar.Of(StagePoint.OfLeaf(WeevilLeaves.From)) is { } second)
            windows.Add(new PestWindow(Pest.Weevil, second.Day, LeafEnd(stages, WeevilLeaves.To + 1, unsown).Until, 4));
        var (june, heading, mature) = (new DateOnly(stages.Sown.Year, ArmywormFrom.Month, ArmywormFrom.Day), stages.Calendar.Of(CropStage.Heading), stages.Calendar.Of(CropStage.Mature));
        if (heading is null) return windows.ToImmutable();
        windows.Add(new PestWindow(Pest.ArmywormLeaf, june > stages.Sown ? june : stages.Sown, heading.Latest, 7));
        windows.Add(new PestWindow(Pest.ArmywormPanicle, heading.Earliest, mature?.Day ?? heading.Latest.AddDays(21), 7));
        return windows.ToImmutable();
    }

    /// <summary>The danger ends the day before the leaf is seen; where it is only reckoned, its error is waited for.</summary>
    private static (DateOnly Until, bool Seen) LeafEnd(FieldStages? stages, int leaf, DateOnly unsown)
    {
        if (stages is null) return (unsown, false);
        // A later stage seen proves the leaf.
        if (stages.Calendar.Stages.Where(s => s.Seen && s.Point >= StagePoint.OfLeaf(leaf)).Select(s => (DateOnly?)s.Day).Min() is { } seen) return (seen.AddDays(-1), true);
        return stages.Calendar.Of(StagePoint.OfLeaf(leaf)) is { } reckoned ? (reckoned.Latest, false) : (unsown, false);
    }
}
