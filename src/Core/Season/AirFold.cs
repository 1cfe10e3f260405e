using Watersown.Flight;
using Watersown.Schedule;
using Watersown.Weather;

namespace Watersown.Season;

/// <summary>Wind, warmth and slots as the marks go by.</summary>
internal sealed class AirFold(SeasonState ground)
{
    private readonly GroundTime time = new(ground.Now);
    private readonly List<Wind> felt = [];
    private readonly List<(ForecastHeard Forecast, Mark Mark)> forecasts = [];
    private readonly Dictionary<DateOnly, DayWarmth> warmth = ground.Warmth.GroupBy(w => w.Day).ToDictionary(g => g.Key, g => g.Last());
    private readonly Dictionary<DateOnly, List<FlyingSlot>> slots = [];
    private readonly List<CalledOff> calledOff = [];
    private readonly List<PatternTested> tests = [];

    public ImmutableArray<CalledOff> CalledOff => [.. calledOff];

    public void Apply(Mark mark)
    {
        switch (mark.Fact)
        {
            case WindSeen wind:
                felt.Add(new Wind(Local(mark.Happened), wind.Sustained, wind.Gust) { From = wind.From });
                break;
            case ForecastHeard forecast:
                forecasts.Add((forecast, mark));
                break;
            case WarmthRead read when read.Low <= read.High && (time.IsOlderThan(mark) || !warmth.ContainsKey(read.Day)):
                warmth[read.Day] = new DayWarmth(read.Day, read.High, read.Low);
                break;
            case SlotGiven slot when time.IsOlderThan(mark) || ground.Slots.All(s => s.Day != slot.Day):
                Give(slot);
                break;
            case PatternTested tested when tested.ToTest().IsWhole:
                tests.Add(tested);
                break;
            case StoodDown down:
                calledOff.Add(new CalledOff(down, mark.Happened, mark.By));
                // No slot at all is a day without a word; an empty one is a day without flying.
                if (down.Field is null && (time.IsOlderThan(mark) || ground.Slots.All(s => s.Day != down.Day))) slots[down.Day] = [new FlyingSlot(down.Day, TimeOnly.MinValue, TimeOnly.MinValue)];
                break;
            default:
                break;
        }
    }

    public SeasonState Close(SeasonState state) => state with
    {
        Wind = Winds(),
        Aeroplanes = [.. state.Aeroplanes.Select(Tested)],
        Warmth = [.. warmth.Values.OrderBy(w => w.Day)],
        Slots = [.. ground.Slots.Where(s => !slots.ContainsKey(s.Day)).Concat(slots.Values.SelectMany(s => s)).OrderBy(s => s.Day).ThenBy(s => s.From).ThenBy(s => s.Aeroplane, StringComparer.Ordinal)],
    };

    /// <summary>The aeroplane with its newest test: of two of one day the one told later.</summary>
    private Aeroplane Tested(Aeroplane plane)
    {
        var newest = tests.Where(t => t.Aeroplane is null || string.Equals(t.Aeroplane, plane.Name, StringComparison.OrdinalIgnoreCase))
            .Select((t, i) => (Test: t, Place: i)).OrderBy(t => t.Test.Day).ThenBy(t => t.Place).LastOrDefault().Test;
        return newest is null || (plane.Tested is { } told && told.Day > newest.Day) ? plane : plane with { Tested = newest.ToTest() with { Aeroplane = plane.Name } };
    }

    /// <summary>A new word for a day replaces the farm's, and whatever of this logbook it overlaps.</summary>
    private void Give(SlotGiven slot)
    {
        if (slot.Until < slot.From) return;
        if (!slots.TryGetValue(slot.Day, out var list)) slots[slot.Day] = list = [.. ground.Slots.Where(s => s.Day == slot.Day && slot.Aeroplane is not null && s.Aeroplane is not null && s.Aeroplane != slot.Aeroplane)];
        list.RemoveAll(s => s.From == s.Until || (s.Aeroplane == slot.Aeroplane && s.From < slot.Until && slot.From < s.Until));
        list.Add(new FlyingSlot(slot.Day, slot.From, slot.Until) { Aeroplane = slot.Aeroplane });
    }

    /// <summary>Of two forecasts the later issued one stands wherever it reaches.</summary>
    private ImmutableArray<Wind> Winds()
    {
        var old = ground.Wind.Where(w => w.Issued is not null).GroupBy(w => w.Issued!.Value).Select(g => (Issued: g.Key, Rank: 0, Hours: g.OrderBy(w => w.At).ToImmutableArray()));
        var heard = forecasts.OrderBy(f => f.Mark, MarkOrder.Entered).Select((f, i) => (f.Forecast.Issued, Rank: i + 1, Hours: Hours(f.Forecast)));
        var all = old.Concat(heard).Where(f => !f.Hours.IsEmpty).OrderBy(f => f.Issued).ThenBy(f => f.Rank).ToList();
        var standing = new List<Wind>();
        foreach (var forecast in all)
        {
            standing.RemoveAll(w => w.At >= forecast.Hours[0].At && w.At <= forecast.Hours[^1].At);
            standing.AddRange(forecast.Hours);
        }

        var seen = ground.Wind.Where(w => w.Issued is null).Where(w => felt.TrueForAll(f => f.At != w.At)).Concat(felt.GroupBy(f => f.At).Select(g => g.Last())).ToList();
        return [.. standing.Where(w => seen.TrueForAll(s => s.At != w.At)).Concat(seen).OrderBy(w => w.At)];
    }

    private ImmutableArray<Wind> Hours(ForecastHeard forecast) =>
        [.. forecast.Hours.GroupBy(h => h.At).Select(g => g.Last()).OrderBy(h => h.At).Select(h => new Wind(Local(h.At), h.Sustained, h.Gust) { From = h.From, Issued = Local(forecast.Issued) })];

    private DateTimeOffset Local(DateTimeOffset moment) => moment.ToOffset(ground.Offset);
}
