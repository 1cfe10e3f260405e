using Watersown.Flight;
using Watersown.Schedule;
using Watersown.Weather;

namespace Watersown.Season.Boards;

/// <summary>A stretch of hours in which one wind stands.</summary>
/// <param name="From">When it begins.</param>
/// <param name="Until">When the next word takes its place, or when it is too old to stand.</param>
/// <param name="Wind">The wind; none where nobody has said anything about these hours.</param>
public sealed record WindSpan(DateTimeOffset From, DateTimeOffset Until, Wind? Wind)
{
    /// <summary>Against the pilot's limits.</summary>
    public required SlotAir Air { get; init; }
}

/// <summary>
/// The wind now and in the coming hours against the pilot's own limits, with daylight and the aeroplane's hours, on one scale.
/// It says what was told and how old that is; whether anything flies stays the pilot's.
/// </summary>
public sealed record WindTape
{
    /// <summary>How far the tape runs past the midnight that follows: to noon of the morning after next.</summary>
    private static readonly TimeSpan PastMidnight = TimeSpan.FromHours(36);

    public required TimeScale Scale { get; init; }

    /// <summary>The wind that stands now.</summary>
    public Wind? Now { get; init; }

    /// <summary>The wind now against the limits.</summary>
    public required SlotAir Air { get; init; }

    /// <summary>Who saw the wind of now, or gave the forecast; none where the farm document has it.</summary>
    public string? Teller { get; init; }

    /// <summary>From when on the wind has stood over the limits without a break, as far as was told; none while it is within.</summary>
    public DateTimeOffset? OverSince { get; init; }

    /// <summary>When the standing wind is next inside the limits; none where it is now, or where nobody has said.</summary>
    public DateTimeOffset? WithinFrom { get; init; }

    /// <summary>The whole scale, in order, without gaps.</summary>
    public required ImmutableArray<WindSpan> Spans { get; init; }

    /// <summary>Hours without daylight at the strip.</summary>
    public required ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)> Dark { get; init; }

    /// <summary>Hours of the flying service that daylight leaves.</summary>
    public required ImmutableArray<(DateTimeOffset From, DateTimeOffset Until)> Slots { get; init; }

    /// <summary>Parts of those hours inside the limits.</summary>
    public required ImmutableArray<FlyingWindow> Windows { get; init; }

    /// <summary>The aeroplane whose limits these are.</summary>
    public required Aeroplane Aeroplane { get; init; }

    /// <summary>The newest forecast that reaches into the scale.</summary>
    public DateTimeOffset? Issued { get; init; }

    /// <summary>Who gave that forecast; none where nobody has said.</summary>
    public string? Source { get; init; }

    /// <summary>Top of the drawing: above every gust and both limits.</summary>
    public required Speed Top { get; init; }

    /// <summary>How high a speed stands in the drawing.</summary>
    public Fraction At(Speed speed) => Fraction.FromShare(Math.Clamp(speed / Top, 0, 1));

    /// <summary>The tape of the farm's first aeroplane at the moment of the book.</summary>
    [Source(nameof(Sources.FarmRecord), "wind as told, each word standing until the next, a day at most")]
    public static WindTape Of(SeasonBook book)
    {
        var state = book.State;
        var plane = state.Aeroplanes.FirstOrDefault() ?? new Aeroplane(string.Empty);
        var scale = Reach(state);
        var spans = SpansOf(state, plane, scale);
        var now = FlyingWindows.Standing(state, state.Now);
        var days = Enumerable.Range(0, 3).Select(i => FarmTime.Day(state, state.Now).AddDays(i)).ToImmutableArray();
        var issued = spans.Select(s => s.Wind?.Issued).Max();
        return new WindTape
        {
            Scale = scale,
            Now = now,
            Air = AirOf(now, plane),
            Teller = TellerOf(book, now),
            OverSince = OverSinceOf(state, plane),
            WithinFrom = AirOf(now, plane) == SlotAir.Within ? null : spans.Where(s => s.Air == SlotAir.Within && s.From > state.Now).Select(s => (DateTimeOffset?)s.From).FirstOrDefault(),
            Spans = spans,
            Dark = FlyingWindows.Nights(state, scale.From, scale.Until),
            Slots = [.. days.SelectMany(d => FlyingWindows.Slots(state, plane, d)).Where(s => s.From < scale.Until)],
            Windows = [.. FlyingWindows.Of(state, plane).Where(w => w.From < scale.Until)],
            Aeroplane = plane,
            Issued = issued,
            Source = SourceOf(book, issued),
            Top = TopOf(spans, plane),
        };
    }

    private static TimeScale Reach(SeasonState state)
    {
        var midnight = FarmTime.Midnight(state, FarmTime.Day(state, state.Now).AddDays(1));
        return new TimeScale(state.Now.ToOffset(state.Offset), midnight + PastMidnight);
    }

    private static ImmutableArray<WindSpan> SpansOf(SeasonState state, Aeroplane plane, TimeScale scale)
    {
        // A word stands until the next, or until it is a day old: cut at both.
        ImmutableArray<DateTimeOffset> cuts =
        [
            .. state.Wind.SelectMany(w => new[] { w.At, w.At.AddHours(24) }).Where(t => t > scale.From && t < scale.Until)
                .Append(scale.From).Append(scale.Until).Distinct().Order(),
        ];
        var spans = ImmutableArray.CreateBuilder<WindSpan>();
        foreach (var (from, until) in cuts.Zip(cuts.Skip(1)))
        {
            var wind = FlyingWindows.Standing(state, from);
            if (spans.Count > 0 && spans[^1].Wind == wind) spans[^1] = spans[^1] with { Until = until };
            else spans.Add(new WindSpan(from, until, wind) { Air = AirOf(wind, plane) });
        }

        return spans.ToImmutable();
    }

    private static SlotAir AirOf(Wind? wind, Aeroplane plane) =>
        wind is null ? SlotAir.NoWord : FlyingWindows.TooWindy(wind, plane) ? SlotAir.Over : SlotAir.Within;

    private static DateTimeOffset? OverSinceOf(SeasonState state, Aeroplane plane)
    {
        DateTimeOffset? since = null;
        foreach (var wind in state.Wind.Where(w => w.At <= state.Now).OrderByDescending(w => w.At))
        {
            if (!FlyingWindows.TooWindy(wind, plane) || (since ?? state.Now) - wind.At >= TimeSpan.FromHours(24)) break;
            since = wind.At;
        }

        return since;
    }

    private static string? TellerOf(SeasonBook book, Wind? now) => now switch
    {
        null => null,
        { Issued: { } issued } => SourceOf(book, issued),
        _ => book.Story.LastOrDefault(l => l is { Standing: Standing.Stands, Mark.Fact: WindSeen } && l.Mark.Happened == now.At)?.Mark.By,
    };

    private static string? SourceOf(SeasonBook book, DateTimeOffset? issued) => book.Story
        .LastOrDefault(l => l is { Standing: Standing.Stands, Mark.Fact: ForecastHeard heard } && heard.Issued == issued) is { Mark: { Fact: ForecastHeard told } mark } ? told.Source ?? mark.By : null;

    private static Speed TopOf(ImmutableArray<WindSpan> spans, Aeroplane plane)
    {
        ImmutableArray<Speed> all = [.. spans.Select(s => s.Wind?.Gust ?? Speed.Zero), plane.GustLimit, plane.WindLimit];
        return all.Max() * 1.1;
    }
}
