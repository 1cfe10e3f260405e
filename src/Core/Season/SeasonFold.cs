using Watersown.Schedule;

namespace Watersown.Season;

/// <summary>
/// Lays the marks of a logbook on the farm as it was told: the same ground, the same marks and the same moment give the same
/// season, in whatever order the marks came in.
/// </summary>
public static class SeasonFold
{
    /// <summary>The season at a moment.</summary>
    /// <param name="ground">The farm document; true at its own moment.</param>
    /// <param name="book">The marks.</param>
    /// <param name="now">The moment it is told for; marks that happened later are not laid on.</param>
    public static SeasonBook Fold(SeasonState ground, Logbook book, DateTimeOffset now)
    {
        var standing = book.Marks.Where(m => m.Happened <= now).ToList();
        var fields = ground.Fields.ToDictionary(f => f.Code, StringComparer.OrdinalIgnoreCase);
        foreach (var mark in standing)
        {
            if (mark.Fact.AboutField is not { } code || !fields.TryGetValue(code, out var field)) continue;
            fields[code] = mark.Fact switch
            {
                StageReached reached => field with { Stage = reached.Stage, StageUntold = false, AsOf = mark.Happened },
                DepthRead read => field with { Depth = read.Depth, AsOf = mark.Happened },
                _ => field,
            };
        }

        return new SeasonBook
        {
            State = ground with { Farm = GroundMarks.Lay(ground.Farm, standing), Now = now.ToOffset(ground.Offset), Fields = [.. ground.Fields.Select(f => fields[f.Code])] },
            Ground = ground,
            Log = book,
            Now = now,
            Story = [.. standing.Select(m => new StoryLine(m, Standing.Stands))],
            Undoable = [.. standing.Where(m => now - m.Entered <= SeasonLimits.UndoFor).OrderDescending(MarkOrder.Entered)],
        };
    }
}
