using Watersown.Flight;
using Watersown.Schedule;
using Watersown.Seed;

namespace Watersown.Planner.Checking;

internal sealed partial class PlanChecker
{
    private void CheckSeed()
    {
        var place = state.SoakPlace ?? new SoakPlace { Name = "soak place" };
        foreach (var sow in Of(PlanTaskKind.Sow))
        {
            var soak = plan.Task(sow.Field, PlanTaskKind.Soak);
            var drain = plan.Task(sow.Field, PlanTaskKind.Drain);
            var haul = plan.Task(sow.Field, PlanTaskKind.Haul);
            if (soak is null || drain is null || haul is null)
            {
                Fault($"{sow.Field} is sown without soak, drain or haul");
                continue;
            }

            CheckSeedClock(place, sow, soak, drain);
            if (haul.End > sow.Start) Fault($"{sow.Field} trailer comes after the first load");
            CheckBatch(sow);
        }

        CheckTrailers(place);
    }

    private void CheckSeedClock(SoakPlace place, PlanTask sow, PlanTask soak, PlanTask drain)
    {
        var existing = state.Batches.FirstOrDefault(b => b.Code == sow.Batch);
        var under = drain.Start - soak.Start;
        var most = existing is not null && existing.InSoak <= state.Now ? place.SoakLost : place.SoakMost;
        if (under < place.SoakLeast) Fault($"{sow.Field} seed soaks {under.TotalHours:0.0} h only");
        if (under > most + Step) Fault($"{sow.Field} seed soaks {under.TotalHours:0.0} h");
        if (sow.Start < drain.Start + place.Drain) Fault($"{sow.Field} seed is drained {(sow.Start - drain.Start).TotalHours:0.0} h only");
        var warmth = state.Warmth.FirstOrDefault(w => w.Day == FarmTime.Day(state, existing?.Drained ?? sow.Start));
        var usable = warmth is null ? TimeSpan.FromHours(24) : warmth.Mean.Fahrenheit switch { < 60 => TimeSpan.FromHours(36), < 70 => TimeSpan.FromHours(24), <= 80 => TimeSpan.FromHours(18), _ => TimeSpan.FromHours(12) };
        if (existing is not null) usable = TimeSpan.FromHours(36); // its window is judged on the day it drained, which is checked by the drain above
        if (sow.End > drain.Start + place.Drain + usable + Step) Fault($"{sow.Field} seed is past its window when sown");
        if (existing is null)
        {
            if (soak.Start.TimeOfDay != place.SoakHour.ToTimeSpan()) Fault($"{sow.Field} seed goes under water at {soak.Start:HH:mm}");
            if (FarmTime.At(state, FarmTime.Day(state, soak.Start), place.CallsUntil) < state.Now) Fault($"{sow.Field} soak is called after the cut-off");
        }
    }

    private void CheckBatch(PlanTask sow)
    {
        var existing = state.Batches.FirstOrDefault(b => b.Code == sow.Batch);
        if (existing is null) return;
        if (state.Season(sow.Field).Variety is { } variety && variety != existing.Variety) Fault($"{sow.Field} gets {existing.Variety} for {variety}");
        if (existing.Dry.Pounds < sow.Dry!.Value.Pounds - 1) Fault($"{sow.Field} gets a batch with too little seed");
        if (Of(PlanTaskKind.Sow).Count(t => t.Batch == sow.Batch) > 1) Fault($"batch {sow.Batch} is sown twice");
    }

    private void CheckTrailers(SoakPlace place)
    {
        if (place.Trailers is not { } most) return;
        var spans = new List<(DateTimeOffset, DateTimeOffset, int)>();
        foreach (var sow in Of(PlanTaskKind.Sow))
        {
            var existing = state.Batches.FirstOrDefault(b => b.Code == sow.Batch);
            var from = existing is not null && existing.InSoak <= state.Now ? state.Now : plan.Task(sow.Field, PlanTaskKind.Soak)!.Start;
            var pounds = existing?.Dry.Pounds ?? sow.Dry!.Value.Pounds;
            var trailers = (int)Math.Ceiling((pounds * state.WetFactor / (place.HaulLimit?.Pounds ?? double.MaxValue)) - 1e-9);
            spans.Add((from, sow.End + place.TrailerReturn - Step, Math.Max(1, trailers)));
        }

        foreach (var lost in state.Batches.Where(b => plan.LostBatches.Contains(b.Code)))
        {
            var trailers = (int)Math.Ceiling((lost.Dry.Pounds * state.WetFactor / (place.HaulLimit?.Pounds ?? double.MaxValue)) - 1e-9);
            spans.Add((state.Now, state.Now + place.TrailerReturn, Math.Max(1, trailers)));
        }

        CheckCount(spans, most, "trailers");
    }

    private void CheckAir()
    {
        var aeroplanes = state.Aeroplanes.IsEmpty ? [new Aeroplane("the aeroplane")] : state.Aeroplanes;
        foreach (var flights in Of(PlanTaskKind.Sow).GroupBy(t => t.Resource))
        {
            var aeroplane = aeroplanes.FirstOrDefault(a => a.Name == flights.Key);
            if (aeroplane is null)
            {
                Fault($"{flights.Key} is no aeroplane of the farm");
                continue;
            }

            CheckCount(flights.Select(f => (f.Start, f.End, 1)), 1, aeroplane.Name);
            foreach (var flight in flights) CheckFlight(flight, aeroplane);
        }

        CheckPad();
    }

    private void CheckFlight(PlanTask flight, Aeroplane aeroplane)
    {
        var day = FarmTime.Day(state, flight.Start);
        var dated = state.Slots.Where(s => s.Day == day && (s.Aeroplane is null || s.Aeroplane == aeroplane.Name)).Select(s => (s.From, s.Until)).ToList();
        if (dated.Count == 0) dated.Add((state.UsualFrom, state.UsualUntil));
        if (!dated.Any(s => FarmTime.At(state, day, s.From) <= flight.Start && flight.End <= FarmTime.At(state, day, s.Until))) Fault($"{flight.Field} is flown outside the service's hours");
        for (var at = flight.Start; at < flight.End; at += TimeSpan.FromMinutes(1))
        {
            var wind = state.Wind.Where(w => w.At <= at && at < w.At.AddHours(24)).OrderBy(w => w.At).LastOrDefault();
            if (wind is null || (wind.Sustained <= aeroplane.WindLimit && wind.Gust <= aeroplane.GustLimit)) continue;
            Fault($"{flight.Field} is flown in wind at {at:ddd HH:mm}");
            break;
        }

        var field = state.Farm.Field(flight.Field);
        var wet = state.Season(flight.Field).Rate.PoundsPerAcre * field.Net.Acres * state.WetFactor;
        var loads = (int)Math.Ceiling((wet / aeroplane.WorkingLoad.Pounds) - 1e-9);
        if (flight.Loads != loads) Fault($"{flight.Field} wants {loads} loads");
        if (flight.End - flight.Start < loads * (aeroplane.Reload + aeroplane.GroundAndAir)) Fault($"{flight.Field} is flown too fast");
    }

    private void CheckPad()
    {
        if (state.Farm.Strips.Length != 1) return;
        var spans = new List<(DateTimeOffset, DateTimeOffset, int)>();
        foreach (var sow in Of(PlanTaskKind.Sow))
        {
            var part = (sow.End - sow.Start) / sow.Trailers!.Value;
            for (var t = 0; t < sow.Trailers.Value; t++) spans.Add((sow.Start + (part * t), sow.Start + (part * (t + 1)) - Step, 1));
        }

        CheckCount(spans, Math.Max(1, state.Farm.Strips[0].PadTrailers), "pad");
    }
}
