using Watersown.Flight;
using Watersown.Weather;

namespace Watersown.Schedule.Board;

/// <summary>Wind over time as seen and forecast, against the least of the pilots' limits.</summary>
/// <param name="Told">What was seen or forecast inside the board and just before it, in order.</param>
public sealed record WindTrack(ImmutableArray<Wind> Told)
{
    /// <summary>The steady wind over which the first pilot does not fly; none where no pilot has said.</summary>
    public Speed? Limit { get; init; }

    /// <summary>The same for gusts.</summary>
    public Speed? GustLimit { get; init; }

    /// <summary>When the newest forecast of them was issued.</summary>
    public DateTimeOffset? Issued { get; init; }

    /// <summary>When the last wind that anybody has told of stops standing; none where none is told.</summary>
    public DateTimeOffset? Until { get; init; }

    internal static WindTrack Of(SeasonState state, BoardSpan span)
    {
        var all = state.Wind.OrderBy(w => w.At).ToImmutableArray();
        var first = Math.Max(0, all.Count(w => w.At <= span.From) - 1);
        ImmutableArray<Wind> told = [.. all.Skip(first).TakeWhile(w => w.At < span.Until).Where(w => w.At + TimeSpan.FromDays(1) > span.From)];
        return new WindTrack(told)
        {
            Limit = Least(state.Aeroplanes, a => a.WindLimit),
            GustLimit = Least(state.Aeroplanes, a => a.GustLimit),
            Issued = told.Max(w => w.Issued),
            Until = told.IsEmpty ? null : told[^1].At.AddDays(1),
        };
    }

    private static Speed? Least(ImmutableArray<Aeroplane> planes, Func<Aeroplane, Speed> limit) => planes.IsEmpty ? null : planes.Select(limit).Min();
}
