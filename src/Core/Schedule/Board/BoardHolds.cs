namespace Watersown.Schedule.Board;

/// <summary>Fields that one thing holds.</summary>
/// <param name="Hold">What holds them.</param>
/// <param name="Fields">Field codes, in the order of the board.</param>
public sealed record HeldFields(BoardHold Hold, ImmutableArray<string> Fields);

/// <summary>What holds the season: for each thing the fields that it holds, the most first.</summary>
public static class BoardHolds
{
    public static ImmutableArray<HeldFields> Of(ScheduleBoard board) =>
    [
        .. board.Rows.Where(r => r.Reason.Hold != BoardHold.Sown).GroupBy(r => r.Reason.Hold)
            .Select(g => new HeldFields(g.Key, [.. g.Select(r => r.Field.Code)])).OrderByDescending(h => h.Fields.Length).ThenBy(h => h.Hold),
    ];
}
