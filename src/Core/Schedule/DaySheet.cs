using Watersown.Seed;
using Watersown.Weather;

namespace Watersown.Schedule;

/// <summary>What the grower must know at the start of one day.</summary>
public sealed record DaySheet
{
    public required DateOnly Day { get; init; }

    /// <summary>Fields sown, full and filling, and all of them.</summary>
    public required (int Sown, int Full, int Filling, int All) Fields { get; init; }

    /// <summary>Decisions whose last safe moment falls on the day or before eight the next morning, soonest first.</summary>
    public required ImmutableArray<Decision> Decisions { get; init; }

    /// <summary>Decisions of the next days that the sheet leaves to the calendar, and the moment they run to.</summary>
    public required (int Count, DateTimeOffset Until) Later { get; init; }

    /// <summary>The last wind seen, and what is forecast until noon of the next day.</summary>
    public required ImmutableArray<Wind> Wind { get; init; }

    public required ImmutableArray<SowingRow> Board { get; init; }

    /// <summary>Seed in soak, drained, or due under water.</summary>
    public required ImmutableArray<SeedAge> Seed { get; init; }

    public required ImmutableArray<CrewMessage> Calls { get; init; }

    public required ImmutableArray<Conflict> Conflicts { get; init; }

    public required ImmutableArray<string> Assumptions { get; init; }
}

/// <summary>One batch and how old it is.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="UseBy">Last moment to sow it; none while it is under water.</param>
/// <param name="Fields">What the plan does with it; empty where no field can use it.</param>
/// <param name="Lost">No field can use it in time.</param>
public sealed record SeedAge(SoakBatch Batch, DateTimeOffset? UseBy, ImmutableArray<string> Fields, bool Lost);

/// <summary>The day sheet of a plan.</summary>
public static class DaySheets
{
    /// <summary>How many mornings the sowing board shows.</summary>
    [Source(nameof(Sources.FarmDefault), "seven mornings")]
    public const int Mornings = 7;

    public static DaySheet Of(SeasonPlan plan, DateOnly day)
    {
        var state = plan.State;
        DateTimeOffset from = FarmTime.Midnight(state, day), until = from.AddHours(32), later = from.AddDays(4);
        var due = plan.Decisions.Where(d => d.By >= from).OrderBy(d => d.By).ToList();
        return new DaySheet
        {
            Day = day,
            Fields = (state.Fields.Count(f => f.Stage == FieldStage.Sown), state.Fields.Count(f => f.Stage == FieldStage.Full), state.Fields.Count(f => f.Stage == FieldStage.Flooding), state.Fields.Length),
            Decisions = [.. due.Where(d => d.By < until)],
            Later = (due.Count(d => d.By >= until && d.By < later), later),
            Wind = Winds(state, from),
            Board = SowingBoard.Of(plan, day, Mornings),
            Seed = [.. state.Batches.Select(b => Age(plan, b))],
            Calls = Messages.Of(plan, day),
            Conflicts = plan.Conflicts,
            Assumptions = plan.Assumptions,
        };
    }

    private static ImmutableArray<Wind> Winds(SeasonState state, DateTimeOffset from)
    {
        var seen = state.Wind.Where(w => w.Issued is null && w.At <= state.Now).OrderBy(w => w.At).TakeLast(1);
        var ahead = state.Wind.Where(w => w.At > state.Now && w.At >= from && w.At < from.AddHours(37)).OrderBy(w => w.At);
        return [.. seen, .. ahead];
    }

    private static SeedAge Age(SeasonPlan plan, SoakBatch batch) => new(
        batch,
        Sheets.SeedTimes.UseBy(plan.State, batch),
        [.. plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && t.Batch == batch.Code).Select(t => t.Field).Distinct(StringComparer.Ordinal)],
        plan.LostBatches.Contains(batch.Code, StringComparer.Ordinal));
}
