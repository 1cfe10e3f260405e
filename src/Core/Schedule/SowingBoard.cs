using Watersown.Flight;
using Watersown.Land;
using Watersown.Seed;

namespace Watersown.Schedule;

/// <summary>What stands against sowing a field on a morning.</summary>
public enum SowingBlock
{
    Ground,
    Water,
    Seed,
    Plane,
    Wind,
}

/// <summary>One field on one morning.</summary>
/// <param name="Day">The morning.</param>
/// <param name="Planned">When the plan sows it that day.</param>
/// <param name="Blocks">What stands against it, in the order of the season; none known means it can go.</param>
public sealed record SowingCell(DateOnly Day, DateTimeOffset? Planned, ImmutableArray<SowingBlock> Blocks);

/// <summary>One field over the mornings.</summary>
public sealed record SowingRow(Field Field, ImmutableArray<SowingCell> Cells);

/// <summary>
/// Which fields can be sown on which morning, and what blocks each, by the plan and by what is known. Whether anything flies
/// stays the pilot's.
/// </summary>
public static class SowingBoard
{
    // As much seed as asked for, less what a scale cannot tell.
    private const double SeedEnough = 0.98;

    /// <summary>The fields not yet sown, in the farm's order, over so many mornings.</summary>
    public static ImmutableArray<SowingRow> Of(SeasonPlan plan, DateOnly first, int days)
    {
        var state = plan.State;
        ImmutableArray<Aeroplane> planes = state.Aeroplanes.IsEmpty ? [new Aeroplane(string.Empty)] : state.Aeroplanes;
        var windows = planes.Select(p => (Plane: p, Windows: FlyingWindows.Of(state, p))).ToList();
        return
        [
            .. state.Farm.Fields.Where(f => state.Season(f.Code).Stage != FieldStage.Sown).Select(f => new SowingRow(f,
                [.. Enumerable.Range(0, days).Select(i => Cell(plan, f, first.AddDays(i), windows))])),
        ];
    }

    private static SowingCell Cell(SeasonPlan plan, Field field, DateOnly day, List<(Aeroplane Plane, ImmutableArray<FlyingWindow> Windows)> windows)
    {
        var state = plan.State;
        var planned = plan.Tasks.FirstOrDefault(t => t.Kind == PlanTaskKind.Sow && t.Field == field.Code && FarmTime.Day(state, t.Start) == day)?.Start;
        var blocks = ImmutableArray.CreateBuilder<SowingBlock>();
        var last = LastFirstLoad(state, day, windows);
        if (Ready(plan, field) is not { } full || full > last) blocks.Add(GroundDone(plan, field) is { } done && done <= last ? SowingBlock.Water : SowingBlock.Ground);
        if (!HasSeed(plan, field, FarmTime.Midnight(state, day), last)) blocks.Add(SowingBlock.Seed);
        var air = windows.Select(w => Air(plan, field, day, w.Plane, w.Windows)).ToList();
        if (air.TrueForAll(b => b is not null)) blocks.Add(air.Exists(b => b == SowingBlock.Plane) ? SowingBlock.Plane : SowingBlock.Wind);
        return new SowingCell(day, planned, blocks.ToImmutable());
    }

    // Latest moment of the day at which a first load still leaves: the end of the last window, or the usual end of the hours.
    private static DateTimeOffset LastFirstLoad(SeasonState state, DateOnly day, List<(Aeroplane Plane, ImmutableArray<FlyingWindow> Windows)> windows)
    {
        var ends = windows.SelectMany(w => w.Windows).Where(w => FarmTime.Day(state, w.From) == day).Select(w => w.Until).ToList();
        return ends.Count > 0 ? ends.Max() : FarmTime.At(state, day, state.UsualUntil);
    }

    private static DateTimeOffset? Ready(SeasonPlan plan, Field field) =>
        plan.State.Season(field.Code).FullSince ?? plan.Task(field.Code, PlanTaskKind.Fill)?.End;

    private static DateTimeOffset? GroundDone(SeasonPlan plan, Field field)
    {
        var planned = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Ground && t.Field == field.Code).Select(t => (DateTimeOffset?)t.End).Max();
        return planned ?? (plan.State.Season(field.Code).Stage >= FieldStage.Rolled ? plan.State.Now : plan.Task(field.Code, PlanTaskKind.Fill)?.Start);
    }

    private static bool HasSeed(SeasonPlan plan, Field field, DateTimeOffset from, DateTimeOffset last)
    {
        var (state, season) = (plan.State, plan.State.Season(field.Code));
        var place = state.SoakPlace ?? new SoakPlace { Name = string.Empty };
        var needed = season.Rate * field.Net * SeedEnough;
        if (NextSoak(state, place) + place.SoakLeast + place.Drain <= last) return true;
        return state.Batches.Any(b => !plan.LostBatches.Contains(b.Code, StringComparer.Ordinal) && (season.Variety is null || b.Variety == season.Variety)
            && b.Dry >= needed && Usable(state, place, b, from, last));
    }

    /// <summary>The day whose soak can still be called for.</summary>
    internal static DateOnly NextSoakDay(SeasonState state, SoakPlace place)
    {
        var today = FarmTime.Day(state, state.Now);
        return state.Now <= FarmTime.At(state, today, place.CallsUntil) ? today : today.AddDays(1);
    }

    /// <summary>When seed called for now goes under water.</summary>
    internal static DateTimeOffset NextSoak(SeasonState state, SoakPlace place) => FarmTime.At(state, NextSoakDay(state, place), place.SoakHour);

    // Ready before the last load, and not past its time at the first.
    private static bool Usable(SeasonState state, SoakPlace place, SoakBatch batch, DateTimeOffset from, DateTimeOffset last)
    {
        if (batch.Drained is { } off) return off + place.Drain <= last && Sheets.SeedTimes.UseBy(state, batch) is { } by && by >= from;
        var earliest = batch.InSoak + place.SoakLeast > state.Now ? batch.InSoak + place.SoakLeast : state.Now;
        return earliest + place.Drain <= last && batch.InSoak + place.SoakLost + place.Drain + SeedClock.UsablePlain >= from;
    }

    // Nothing where the aeroplane can take the field that day; otherwise what keeps it.
    private static SowingBlock? Air(SeasonPlan plan, Field field, DateOnly day, Aeroplane plane, ImmutableArray<FlyingWindow> windows)
    {
        var state = plan.State;
        if (FlyingWindows.Slots(state, plane, day).IsEmpty) return SowingBlock.Plane;
        var open = windows.Where(w => FarmTime.Day(state, w.From) == day).Sum(w => (w.Until - w.From).TotalHours);
        if (open <= 0) return SowingBlock.Wind;
        var taken = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && t.Field != field.Code && (t.Resource == plane.Name || plane.Name.Length == 0) && FarmTime.Day(state, t.Start) == day).Sum(t => (t.End - t.Start).TotalHours);
        var season = state.Season(field.Code);
        var loads = Loads.Equal(season.Rate * field.Net, state.WetFactor, plane.WorkingLoad).Count;
        return taken + FlyingTime.Of(FieldFlight.Job(state, field, loads, plane), plane).TotalHours <= open + 1e-6 ? null : SowingBlock.Plane;
    }
}
