using Watersown.Schedule;

namespace Watersown.Season;

/// <summary>A batch going under water.</summary>
internal static class BatchSoaking
{
    /// <summary>What the mark says beats what was due; a mark from before the farm's own word fills only what that left open.</summary>
    public static void TakeSoak(this BatchFold batch, SeasonState ground, GroundTime time, Mark mark, BatchInSoak soak)
    {
        var newer = time.IsOlderThan(mark) || batch.Ground is null || batch.Ground.InSoak > ground.Now;
        if (newer || batch.InSoak is null) batch.InSoak = mark.Happened.ToOffset(ground.Offset);
        if (newer && batch.Drained is { } drained && drained < batch.InSoak) batch.Drained = null;
        batch.SoakTold = true;
        batch.Lot = newer ? soak.Lot ?? batch.Lot : batch.Lot ?? soak.Lot;
        var lot = ground.Lots.FirstOrDefault(l => string.Equals(l.Code, batch.Lot, StringComparison.OrdinalIgnoreCase));
        batch.Variety = newer ? soak.Variety ?? (string.IsNullOrEmpty(batch.Variety) ? lot?.Variety : batch.Variety) : batch.Variety ?? soak.Variety;
        batch.Dry = newer ? soak.Dry ?? batch.Dry : batch.Dry ?? soak.Dry;
        if (newer && !soak.MeantFor.IsEmpty) batch.MeantFor = soak.MeantFor.AsArray();
        batch.WetFactor = lot?.WetFactor ?? ground.WetFactor;
    }
}
