using Watersown.Schedule;
using Watersown.Water.Learning;

namespace Watersown.Season.Learning;

/// <summary>Turns the marks of a flood into what was seen of it.</summary>
internal static class FloodSightings
{
    /// <summary>Readings nearer together than this tell no loss.</summary>
    private static readonly TimeSpan leastFall = TimeSpan.FromHours(8);

    /// <summary>How many times the usual spread.</summary>
    [Source(nameof(Sources.FarmDefault), "told 1.5, guessed 3")]
    public static double Wider(Sureness sure) => sure switch { Sureness.Measured => 1, Sureness.Told => 1.5, _ => 3 };

    public static ImmutableArray<(Mark Mark, FloodSighting Seen)> Of(SeenFlood flood, ImmutableArray<int> numbers, FieldInflow inflow)
    {
        var seen = ImmutableArray.CreateBuilder<(Mark, FloodSighting)>();
        if (flood.FillTells)
        {
            foreach (var (at, mark) in inflow.Readings) seen.Add((mark, new FloodSighting(SightingKind.Flow, at) { Wider = Wider(mark.Sure), Shared = inflow.Shared }));
            Fill(flood, numbers, seen);
        }

        Falls(flood, numbers, inflow, seen);
        return seen.ToImmutable();
    }

    private static void Fill(SeenFlood flood, ImmutableArray<int> numbers, ImmutableArray<(Mark, FloodSighting)>.Builder seen)
    {
        // The first word of each check counts: later ones only say it again.
        var told = flood.Covered.SelectMany(n => new[] { (SightingKind.Wet, n), (SightingKind.Full, n) }).ToHashSet();
        if (flood.First?.Fact is CheckWater first) told.Add((SightingKind.Wet, first.Check));
        foreach (var mark in flood.Marks.Where(m => m.Happened <= flood.Until))
        {
            var at = mark.Happened - flood.Start;
            FloodSighting? one = mark.Fact switch
            {
                CheckWater { Water: WaterSeen.Wet } water when numbers.Contains(water.Check) && told.Add((SightingKind.Wet, water.Check)) => new FloodSighting(SightingKind.Wet, at) { Check = numbers.IndexOf(water.Check) },
                CheckWater { Water: WaterSeen.Full } water when numbers.Contains(water.Check) && told.Add((SightingKind.Full, water.Check)) => new FloodSighting(SightingKind.Full, at) { Check = numbers.IndexOf(water.Check) },
                CheckWater { Water: WaterSeen.Dry } water when numbers.Contains(water.Check) && mark.Happened < flood.Until => new FloodSighting(SightingKind.StillDry, at) { Check = numbers.IndexOf(water.Check) },
                StageReached { Stage: FieldStage.Full } => new FloodSighting(SightingKind.Full, at),
                DepthRead { Check: null } read when read.Depth > WaterDepth.Zero => new FloodSighting(SightingKind.Depth, at) { Depth = read.Depth },
                DepthRead { Check: { } check } read when read.Depth > WaterDepth.Zero && numbers.Contains(check) => new FloodSighting(SightingKind.Depth, at) { Depth = read.Depth, Check = numbers.IndexOf(check) },
                _ => null,
            };
            if (one is not null) seen.Add((mark, one with { Wider = Wider(mark.Sure) }));
        }
    }

    // Two readings at one stick while no water came between them.
    private static void Falls(SeenFlood flood, ImmutableArray<int> numbers, FieldInflow inflow, ImmutableArray<(Mark, FloodSighting)>.Builder seen)
    {
        var last = new Dictionary<int, (TimeSpan At, WaterDepth Depth, Sureness Sure)>();
        foreach (var mark in flood.Marks)
        {
            if (mark.Fact is BoardsSet or CheckWater { Water: WaterSeen.Dry or WaterSeen.Reflooded }) last.Clear();
            if (mark.Fact is not DepthRead read) continue;
            var (place, at) = (read.Check ?? 0, mark.Happened - flood.Start);
            if (last.TryGetValue(place, out var before) && at - before.At < leastFall) continue;
            if (before.Depth > read.Depth && read.Depth > WaterDepth.Zero && inflow.Stopped(before.At, at))
            {
                var sure = Math.Max(Wider(mark.Sure), Wider(before.Sure));
                seen.Add((mark, new FloodSighting(SightingKind.Drop, at) { Depth = before.Depth - read.Depth, Over = at - before.At, Wider = sure, Check = numbers.IndexOf(place) is var i && i >= 0 ? i : null }));
            }

            last[place] = (at, read.Depth, mark.Sure);
        }
    }
}
