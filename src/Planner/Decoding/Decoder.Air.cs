using Watersown.Planner.Instances;

namespace Watersown.Planner.Decoding;

internal sealed partial class Decoder
{
    private void PlanSeedAndAir()
    {
        var batchTaken = new bool[instance.Batches.Length];
        var byFull = instance.Fields
            .Where(f => made[f.Index]!.Flooded && f.Impossible is null)
            .OrderBy(f => Math.Max(0, made[f.Index]!.FillEnd))
            .ThenBy(f => made[f.Index]!.FillStart)
            .ThenBy(f => f.Index);
        foreach (var field in byFull)
        {
            var own = FirstFlight(field, batch: -1);
            var (with, batch) = BestBatch(field, batchTaken);
            // An existing batch is taken when it sows no later than a new one, or saves seed that would be thrown away.
            if (with is { } used && (own is not { } fresh || used.Sow <= fresh.Sow + SeasonClock.PerDay))
            {
                batchTaken[batch] = true;
                Sow(field, used, batch);
            }
            else if (own is { } made)
            {
                Sow(field, made, batch: -1);
            }
        }
    }

    private (Flight? Flight, int Batch) BestBatch(FieldItem field, bool[] taken)
    {
        Flight? best = null;
        var at = -1;
        for (var b = 0; b < instance.Batches.Length; b++)
        {
            if (taken[b] || !Fits(instance.Batches[b], field)) continue;
            if (FirstFlight(field, b) is not { } flight || (best is { } found && found.Sow <= flight.Sow)) continue;
            (best, at) = (flight, b);
        }

        return (best, at);
    }

    /// <summary>A batch serves a field of its own variety that it has enough seed for, and that is not pinned to seed of another soak.</summary>
    internal static bool Fits(BatchItem batch, FieldItem field) =>
        (field.Variety is null || field.Variety == batch.Variety) && batch.DryPounds >= field.DryPounds - 0.5
        && (field.PinnedSoakDay is not { } pin || pin == batch.SoakDay);

    private Flight? FirstFlight(FieldItem field, int batch)
    {
        Flight? best = null;
        for (var p = 0; p < instance.Planes.Length; p++)
        {
            var steps = field.FlySteps[p];
            foreach (var (from, until) in instance.Planes[p].Windows)
            {
                if (best is { } found && from >= found.Sow) break;
                if (until - from < steps) continue;
                var earliest = Math.Max(from, made[field.Index]!.FillEnd);
                if (field.PinnedSow is { } pin) earliest = Math.Max(earliest, pin);
                if (Place(field, p, batch, earliest, until) is { } flight && (best is not { } b || flight.Sow < b.Sow))
                {
                    best = flight;
                    break;
                }
            }
        }

        return best;
    }

    private Flight? Place(FieldItem field, int plane, int batch, int earliest, int until)
    {
        var steps = field.FlySteps[plane];
        var start = earliest;
        for (var tries = 0; tries < 60; tries++)
        {
            start = planes[plane].FirstFit(start, steps, 1, 1);
            if (start == int.MaxValue || start + steps > until) return null;
            var next = batch >= 0 ? SeedFromBatch(instance.Batches[batch], start, steps) : SeedOfItsOwn(field, start, steps);
            if (next.NotBefore > start)
            {
                start = next.NotBefore;
                continue;
            }

            if (next.NotBefore < 0) return null;
            if (PadFree(field, plane, start, steps) is var pad && pad > start)
            {
                start = pad;
                continue;
            }

            return new Flight(start, plane, next.SoakDay);
        }

        return null;
    }

    private (int NotBefore, int SoakDay) SeedFromBatch(BatchItem batch, int start, int steps)
    {
        if (start < batch.ReadyFrom) return (batch.ReadyFrom, -1);
        if (start + steps > batch.GoodUntil) return (-1, -1);
        var from = batch.CanBeCalledOff ? 0 : instance.Soak.Return;
        return instance.Trailers is not { } most || trailers.Peak(from, start + steps + instance.Soak.Return) + batch.Trailers <= most ? (start, -1) : (-1, -1);
    }

    private (int NotBefore, int SoakDay) SeedOfItsOwn(FieldItem field, int start, int steps)
    {
        var soak = instance.Soak;
        var firstReady = instance.Clock.DayStart(soak.FirstDay) + soak.Hour + soak.Least;
        if (start < firstReady) return (firstReady, -1);
        // The latest soak that is ready, then earlier ones while the seed still lasts: trailers may be short.
        var day = instance.Clock.DayOf(start - soak.Least - soak.Hour);
        for (; day >= soak.FirstDay; day--)
        {
            var into = instance.Clock.DayStart(day) + soak.Hour;
            if (into + soak.Least > start) continue;
            if (start + steps > into + soak.Most + instance.Usable[instance.Clock.DayOf(start)]) break;
            if (field.PinnedSoakDay is { } pin && pin != day) continue;
            if (instance.Trailers is not { } most || trailers.Peak(into, start + steps + soak.Return) + field.Trailers <= most) return (start, day);
        }

        // No trailer for this morning: the next place to try is a day later.
        var tomorrow = instance.Clock.DayStart(instance.Clock.DayOf(start) + 1);
        return (tomorrow, -1);
    }

    private int PadFree(FieldItem field, int plane, int start, int steps)
    {
        var pad = pads[instance.Planes[plane].Strip];
        var most = instance.Strips[instance.Planes[plane].Strip].Pad;
        foreach (var (from, until) in PadUse(field.Trailers, start, steps, instance.Soak.Lead))
        {
            if (pad.Peak(from, until) + 1 > most) return start + 1;
        }

        return start;
    }

    /// <summary>Each trailer of a job stands at the strip from shortly before its part of the sowing until that part is done.</summary>
    internal static IEnumerable<(int From, int Until)> PadUse(int trailers, int start, int steps, int lead)
    {
        for (var t = 0; t < trailers; t++) yield return (start + (steps * t / trailers) - lead, start + (steps * (t + 1) / trailers));
    }

    private void Sow(FieldItem field, Flight flight, int batch)
    {
        var steps = field.FlySteps[flight.Plane];
        planes[flight.Plane].Take(flight.Sow, flight.Sow + steps, 1);
        foreach (var (from, until) in PadUse(field.Trailers, flight.Sow, steps, instance.Soak.Lead))
            pads[instance.Planes[flight.Plane].Strip].Take(from, until, 1);
        if (batch < 0)
            trailers.Take(instance.Clock.DayStart(flight.SoakDay) + instance.Soak.Hour, flight.Sow + steps + instance.Soak.Return, field.Trailers);
        else
            trailers.Take(instance.Batches[batch].CanBeCalledOff ? 0 : instance.Soak.Return, flight.Sow + steps + instance.Soak.Return, instance.Batches[batch].Trailers);
        made[field.Index] = made[field.Index]! with { Sown = true, Sow = flight.Sow, Plane = flight.Plane, SoakDay = flight.SoakDay, Batch = batch };
    }

    private readonly record struct Flight(int Sow, int Plane, int SoakDay);
}
