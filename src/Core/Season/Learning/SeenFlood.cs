using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season.Learning;

/// <summary>A flood of a field, as its marks and the farm document tell of it.</summary>
/// <param name="Start">When the run begins: first water, or the farm document's moment.</param>
/// <param name="Covered">Checks covered then, by number.</param>
internal sealed record SeenFlood(DateTimeOffset Start, ImmutableArray<int> Covered)
{
    /// <summary>The mark of first water; none where only the farm document tells of it.</summary>
    public Mark? First { get; init; }

    /// <summary>Its marks after that, in order.</summary>
    public required ImmutableArray<Mark> Marks { get; init; }

    /// <summary>It was covered, drained or sown then; later marks say nothing of how it filled.</summary>
    public required DateTimeOffset Until { get; init; }

    /// <summary>It was drained or let down at the end, or had water before: its ground was not dry.</summary>
    public bool FillTells { get; init; } = true;
}

/// <summary>Cuts the marks of a field into floods.</summary>
internal static class SeenFloods
{
    /// <summary>Marks farther apart are of two floods.</summary>
    private static readonly TimeSpan apart = TimeSpan.FromDays(30);

    /// <summary>Every flood in order of time.</summary>
    /// <param name="field">The field.</param>
    /// <param name="ground">Its season in the farm document, and when that was true.</param>
    /// <param name="story">Its marks that stand, in order.</param>
    /// <param name="now">The moment it is told for.</param>
    public static ImmutableArray<SeenFlood> Of(Field field, (FieldSeason Season, DateTimeOffset AsOf) ground, ImmutableArray<Mark> story, DateTimeOffset now)
    {
        var floods = ImmutableArray.CreateBuilder<SeenFlood>();
        var groups = Groups([.. story.Where(m => m.Fact is CheckWater or DepthRead or BoardsSet or FieldSown or StageReached { Stage: >= FieldStage.Flooding })]);
        if (!groups.Exists(g => Holds(g, ground.AsOf)) && ground.Season.Stage >= FieldStage.Flooding) groups.Add([]);
        foreach (var group in groups)
        {
            if (Open(field, ground, group) is { } flood) floods.Add(Close(field, flood, First(ground.Season, flood.Start, now)));
        }

        return [.. floods.OrderBy(f => f.Start)];
    }

    private static List<List<Mark>> Groups(ImmutableArray<Mark> marks)
    {
        var groups = new List<List<Mark>>();
        foreach (var mark in marks)
        {
            if (groups.Count == 0 || mark.Happened - groups[^1][^1].Happened > apart) groups.Add([]);
            groups[^1].Add(mark);
        }

        return groups;
    }

    private static bool Holds(List<Mark> group, DateTimeOffset asOf) => group[0].Happened - apart <= asOf && asOf <= group[^1].Happened + apart;

    private static SeenFlood? Open(Field field, (FieldSeason Season, DateTimeOffset AsOf) ground, List<Mark> group)
    {
        var at = group.FindIndex(m => m.Fact is CheckWater { Water: not WaterSeen.Dry } or StageReached { Stage: FieldStage.Flooding });
        var first = at < 0 ? null : group[at];
        // The farm document speaks where it knew of water before anybody marked any.
        if (ground.Season.Stage >= FieldStage.Flooding && (group.Count == 0 || Holds(group, ground.AsOf)) && (first is null || first.Happened >= ground.AsOf))
        {
            var covered = ground.Season.Stage >= FieldStage.Full ? field.Basins.Length : ground.Season.ChecksWet ?? (field.Basins.Length / 2);
            // Without checks there is no saying how much is covered: then the first water is where it begins.
            var start = field.Basins.IsEmpty && ground.Season.FirstWater < ground.AsOf ? ground.Season.FirstWater.Value : ground.AsOf;
            return new SeenFlood(start, [.. Numbers(field).Take(covered)]) { Marks = [.. group.Where(m => m.Happened >= ground.AsOf)], Until = default, FillTells = ground.Season.Stage == FieldStage.Flooding };
        }

        if (first is null) return null;
        return new SeenFlood(first.Happened, first.Fact is CheckWater water ? Above(field, water) : [])
        {
            First = first,
            Marks = [.. group.Skip(at + 1)],
            Until = default,
            FillTells = first.Fact is not CheckWater { Water: WaterSeen.Reflooded },
        };
    }

    // Water in a check has come through those between it and the nearest inlet above.
    private static ImmutableArray<int> Above(Field field, CheckWater water)
    {
        var inlet = field.Boxes.Where(b => b is { Kind: BoxKind.Inlet, ToCheck: not null }).Select(b => b.ToCheck!.Value).Where(c => c <= water.Check).DefaultIfEmpty(1).Max();
        return [.. Numbers(field).Where(n => n >= inlet && (n < water.Check || (n == water.Check && water.Water == WaterSeen.Full)))];
    }

    private static IEnumerable<int> Numbers(Field field) => field.Basins.Select(b => b.Number).Order();

    // The farm document may know when it was full, where nobody marked it.
    private static DateTimeOffset First(FieldSeason season, DateTimeOffset start, DateTimeOffset now) =>
        (season.FullSince ?? season.SownAt) is { } full && full > start && full < now ? full : now;

    private static SeenFlood Close(Field field, SeenFlood flood, DateTimeOffset last)
    {
        var (wet, full, all) = (flood.Covered.ToHashSet(), flood.Covered.ToHashSet(), Numbers(field).ToHashSet());
        if (flood.First?.Fact is CheckWater first) wet.Add(first.Check);
        foreach (var mark in flood.Marks)
        {
            switch (mark.Fact)
            {
                case CheckWater { Water: WaterSeen.Wet } water: wet.Add(water.Check); break;
                case CheckWater { Water: WaterSeen.Full } water:
                    wet.Add(water.Check);
                    full.Add(water.Check);
                    if (full.IsSupersetOf(all)) return flood with { Until = mark.Happened < last ? mark.Happened : last };
                    break;
                case CheckWater { Water: WaterSeen.Dry } dry when !wet.Any(c => c >= dry.Check): break;
                case CheckWater or FieldSown or StageReached { Stage: FieldStage.Full or FieldStage.Sown }: return flood with { Until = mark.Happened < last ? mark.Happened : last };
                default: break;
            }
        }

        return flood with { Until = last };
    }
}
