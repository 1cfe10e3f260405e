using Watersown.Flight;

namespace Watersown.Schedule.Board;

/// <summary>Nights, and hours of wind over every pilot's limit or of wind that nobody has said anything of.</summary>
internal static class BoardBands
{
    public static ImmutableArray<BoardBand> Of(SeasonState state, BoardSpan span) => [.. FlyingWindows.Nights(state, span.From, span.Until).Select(n => new BoardBand(BandKind.Night, n.From, n.Until)), .. Winds(state, span)];

    private static IEnumerable<BoardBand> Winds(SeasonState state, BoardSpan span)
    {
        ImmutableArray<Aeroplane> planes = state.Aeroplanes.IsEmpty ? [new Aeroplane(string.Empty)] : state.Aeroplanes;
        // The wind changes at the moments of the list, and stops standing a day after each.
        ImmutableArray<DateTimeOffset> cuts =
            [.. state.Wind.SelectMany(w => new[] { w.At, w.At.AddDays(1) }).Append(span.From).Append(span.Until).Append(state.Now).Where(span.Has).Distinct().Order()];
        (BandKind Kind, DateTimeOffset From, DateTimeOffset Until)? open = null;
        for (var i = 0; i + 1 < cuts.Length; i++)
        {
            var kind = Kind(state, planes, cuts[i]);
            if (open is { } band && band.Kind == kind) open = (band.Kind, band.From, cuts[i + 1]);
            else
            {
                if (open is { } done) yield return new BoardBand(done.Kind, done.From, done.Until);
                open = kind is { } begun ? (begun, cuts[i], cuts[i + 1]) : null;
            }
        }

        if (open is { } last) yield return new BoardBand(last.Kind, last.From, last.Until);
    }

    private static BandKind? Kind(SeasonState state, ImmutableArray<Aeroplane> planes, DateTimeOffset at)
    {
        if (FlyingWindows.Standing(state, at) is { } wind) return planes.All(p => FlyingWindows.TooWindy(wind, p)) ? BandKind.Wind : null;
        return at >= state.Now ? BandKind.NoForecast : null;
    }
}
