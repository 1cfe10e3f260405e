using Watersown.Water.Flood;

namespace Watersown.Water.Filling;

/// <summary>
/// Carries the fields of a source from one happening to the next: a check is full, a field may be opened, the flow changes.
/// Between two of them every field gets one flow, so each stretch is the closed form and nothing is stepped through.
/// </summary>
internal sealed class FillRun
{
    // What takes longer than this is never.
    private static readonly TimeSpan longest = TimeSpan.FromDays(1000);

    private readonly ImmutableArray<FillGround> grounds;
    private readonly ImmutableArray<FlowStep> supply;
    private readonly FlowRate held;
    private readonly FillingWay way;
    private readonly ImmutableArray<FlowSpan>.Builder spans = ImmutableArray.CreateBuilder<FlowSpan>();

    /// <summary>A run.</summary>
    /// <param name="grounds">Fields that fill, first to get water first.</param>
    /// <param name="held">What all other wet ground of the source takes.</param>
    /// <param name="supply">In order of time.</param>
    /// <param name="way">How the fields share.</param>
    public FillRun(ImmutableArray<FillGround> grounds, FlowRate held, ImmutableArray<FlowStep> supply, FillingWay way) =>
        (this.grounds, this.held, this.supply, this.way) = (grounds, held, [.. supply.OrderBy(s => s.From)], way);

    public ImmutableArray<FlowSpan> Run()
    {
        var (now, owed) = (TimeSpan.Zero, Volume.Zero);
        while (now < longest)
        {
            var gives = At(now);
            var spare = grounds.Aggregate(gives - held, (sum, g) => sum - g.Holding);
            // What wet ground lost while too little came is made up before more ground is covered.
            TimeSpan? even = owed > Volume.Zero && spare > FlowRate.Zero ? now + Later(owed, spare) : null;
            var over = FlowRate.Zero;
            var got = even is null ? Share(now, gives, out over) : [.. grounds.Select(g => g.Holding)];
            var next = Next(now, got, out var ending);
            if (even < next || next is null) (next, ending) = (even, -1);
            Tell(now, gives, over);
            if (next is not { } until) break;
            for (var i = 0; i < grounds.Length; i++) grounds[i].Let(now, until - now, got[i], ends: i == ending);
            owed = until == even ? Volume.Zero : spare < FlowRate.Zero || even is not null ? owed - (spare * (until - now)) : owed;
            now = until;
        }

        return spans.ToImmutable();
    }

    private static TimeSpan Later(Volume owed, FlowRate spare)
    {
        var seconds = owed.CubicMeters / spare.CubicMetersPerSecond;
        return seconds < longest.TotalSeconds ? TimeSpan.FromSeconds(seconds) : longest;
    }

    private FlowRate At(TimeSpan now) => supply.LastOrDefault(s => s.From <= now)?.Flow ?? FlowRate.Zero;

    // Wet ground is held first, wherever it is; what is left goes to the ground that may be opened.
    private FlowRate[] Share(TimeSpan now, FlowRate gives, out FlowRate over)
    {
        var got = grounds.Select(g => g.Holding).ToArray();
        var left = got.Aggregate(gives - held, (sum, g) => sum - g);
        var open = Enumerable.Range(0, grounds.Length).Where(i => !grounds[i].IsFull && grounds[i].Ready <= now).ToList();
        while (left > FlowRate.Zero && open.Count > 0)
        {
            var taking = way == FillingWay.OneAfterAnother ? open.Take(1).ToList() : open;
            var dry = taking.Sum(i => grounds[i].Dry.SquareMeters);
            var before = left;
            foreach (var i in taking)
            {
                var more = before * (grounds[i].Dry.SquareMeters / dry);
                if (grounds[i].Gate is { } limit && got[i] + more > limit) more = limit > got[i] ? limit - got[i] : FlowRate.Zero;
                got[i] += more;
                left -= more;
            }

            // Those that got all they asked for are done; where a gate passed no more, the rest is shared again among the others.
            open.RemoveAll(i => grounds[i].Gate is { } limit && got[i] >= limit * (1 - 1e-12));
            if (left <= gives * 1e-12) break;
            if (way == FillingWay.SideBySide && before - left <= gives * 1e-12) break;
        }

        over = left <= gives * 1e-9 && left >= gives * -1e-9 ? FlowRate.Zero : left;
        return got;
    }

    private TimeSpan? Next(TimeSpan now, FlowRate[] got, out int ending)
    {
        TimeSpan? next = supply.Where(s => s.From > now).Select(s => (TimeSpan?)s.From).FirstOrDefault();
        foreach (var ground in grounds.Where(g => !g.IsFull && g.Ready > now))
        {
            if (next is null || ground.Ready < next) next = ground.Ready;
        }

        ending = -1;
        for (var i = 0; i < grounds.Length; i++)
        {
            if (grounds[i].Ready > now || grounds[i].ToNext(got[i]) is not { } span || span > longest) continue;
            if (next is not null && now + span > next) continue;
            (next, ending) = (now + span, i);
        }

        return next;
    }

    private void Tell(TimeSpan now, FlowRate gives, FlowRate over)
    {
        var taken = gives - over;
        if (spans.Count > 0 && spans[^1].Gives == gives && Math.Abs((spans[^1].Takes - taken).CubicMetersPerSecond) < 1e-9) return;
        spans.Add(new FlowSpan(now, gives, taken));
    }
}
