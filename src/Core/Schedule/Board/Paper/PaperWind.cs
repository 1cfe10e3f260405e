using Watersown.Weather;

namespace Watersown.Schedule.Board.Paper;

/// <summary>The wind over a board: lines that step where the list of winds does.</summary>
/// <param name="Track">What was told.</param>
public sealed record PaperWind(WindTrack Track)
{
    private const double Top = 6, Bottom = 62, LeastMilesPerHour = 20;

    [PlainNumber("points of the board, downward")]
    public static double Height => Bottom + 2;

    /// <summary>Points of the steady wind, one line for each stretch that is told of.</summary>
    public required ImmutableArray<ImmutableArray<Wording.PaperPoint>> Steady { get; init; }

    /// <summary>The same of the gusts.</summary>
    public required ImmutableArray<ImmutableArray<Wording.PaperPoint>> Gusts { get; init; }

    /// <summary>How high the limit of steady wind lies.</summary>
    [PlainNumber("points of the board, downward")]
    public double? Limit { get; init; }

    [PlainNumber("points of the board, downward")]
    public double? GustLimit { get; init; }

    internal static PaperWind Of(WindTrack track, BoardScale scale)
    {
        var most = track.Told.Select(w => w.Gust.MilesPerHour).Append(track.GustLimit?.MilesPerHour ?? 0).Append(LeastMilesPerHour).Max();
        double Y(Quantities.Speed speed) => Math.Round(Bottom - ((Bottom - Top) * speed.MilesPerHour / most), 2);
        return new PaperWind(track)
        {
            Steady = Lines(track.Told, scale, w => Y(w.Sustained)),
            Gusts = Lines(track.Told, scale, w => Y(w.Gust)),
            Limit = track.Limit is { } limit ? Y(limit) : null,
            GustLimit = track.GustLimit is { } gust ? Y(gust) : null,
        };
    }

    /// <summary>A wind stands until the next one of the list, and never for more than a day.</summary>
    private static ImmutableArray<ImmutableArray<Wording.PaperPoint>> Lines(ImmutableArray<Wind> told, BoardScale scale, Func<Wind, double> height)
    {
        var lines = new List<ImmutableArray<Wording.PaperPoint>>();
        var line = ImmutableArray.CreateBuilder<Wording.PaperPoint>();
        for (var i = 0; i < told.Length; i++)
        {
            var stops = told[i].At.AddDays(1);
            var next = i + 1 < told.Length && told[i + 1].At < stops ? told[i + 1].At : stops;
            line.Add(new Wording.PaperPoint(scale.At(told[i].At), height(told[i])));
            line.Add(new Wording.PaperPoint(scale.At(next), height(told[i])));
            if (i + 1 < told.Length && told[i + 1].At <= stops) continue;
            lines.Add(line.ToImmutable());
            line.Clear();
        }

        return [.. lines];
    }
}
