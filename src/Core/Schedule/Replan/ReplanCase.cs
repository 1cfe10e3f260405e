namespace Watersown.Schedule.Replan;

/// <summary>What a blown-out morning leaves to choose from: fields that wait, seed that lives, mornings that are open.</summary>
public sealed record ReplanCase
{
    /// <summary>At most so many fields are weighed together; the rest, youngest water last, wait for the season plan.</summary>
    [Source(nameof(Sources.FarmDefault), "eight fields are two full mornings of one aeroplane")]
    public const int MostFields = 8;

    /// <summary>So many open mornings are looked at.</summary>
    [Source(nameof(Sources.FarmDefault), "four open mornings: beyond them no wind forecast holds")]
    public const int MostMornings = 4;

    /// <summary>The season as it stands.</summary>
    public required SeasonState State { get; init; }

    /// <summary>The day from which delay is counted.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Oldest water first.</summary>
    public required ImmutableArray<WaitingField> Fields { get; init; }

    /// <summary>Fields that wait too, more than are weighed together.</summary>
    public ImmutableArray<WaitingField> LeftOut { get; init; } = [];

    public required ImmutableArray<OpenMorning> Mornings { get; init; }

    /// <summary>Every batch with seed in it, in the farm's order.</summary>
    public required ImmutableArray<StandingBatch> Batches { get; init; }

    /// <summary>A soak can still be called for this day at the soonest.</summary>
    public required DateOnly FirstSoakDay { get; init; }

    /// <summary>Last moment of that call.</summary>
    public DateTimeOffset CallBy => FarmTime.At(State, FirstSoakDay, State.SoakRules.CallsUntil);

    /// <summary>The day on which whatever is not sown on these mornings is counted as sown.</summary>
    public DateOnly Later => Mornings.IsEmpty ? Today.AddDays(1) : Mornings[^1].Day.AddDays(1);

    /// <summary>The next open morning.</summary>
    public OpenMorning? Next => Mornings.IsEmpty ? null : Mornings[0];

    /// <summary>The same season with nothing flown today.</summary>
    public static SeasonState WithoutToday(SeasonState state)
    {
        var today = FarmTime.Day(state, state.Now);
        return state with { Slots = [.. state.Slots.Where(s => s.Day != today), new(today, TimeOnly.MinValue, TimeOnly.MinValue)] };
    }

    /// <summary>Reads the case out of a season.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="plan">The plan in force: when fields that still flood will be full. Without it only full fields are weighed.</param>
    public static ReplanCase Of(SeasonState state, SeasonPlan? plan)
    {
        var today = FarmTime.Day(state, state.Now);
        var mornings = MorningsOf(state);
        var waiting = FieldsOf(state, plan, mornings);
        ImmutableArray<WaitingField> fields = [.. waiting.Take(MostFields)];
        return new ReplanCase
        {
            State = state,
            Today = today,
            Fields = fields,
            LeftOut = [.. waiting.Skip(MostFields)],
            Mornings = mornings,
            Batches = [.. state.Batches.Where(b => b.Dry > DrySeed.Zero).Select(b => StandingBatches.Of(state, b, fields, mornings))],
            FirstSoakDay = SowingBoard.NextSoakDay(state, state.SoakRules),
        };
    }

    private static ImmutableArray<OpenMorning> MorningsOf(SeasonState state)
    {
        ImmutableArray<Flight.Aeroplane> planes = state.Aeroplanes.IsEmpty ? [new(string.Empty)] : state.Aeroplanes;
        var spans = planes.SelectMany(p => FlyingWindows.Of(state, p).Select(w => new OpenSpan(p, w.From, w.Until) { Forecast = w.Forecast }));
        return
        [
            .. spans.GroupBy(s => FarmTime.Day(state, s.From)).OrderBy(g => g.Key).Take(MostMornings)
                .Select(g => new OpenMorning(g.Key, [.. g.OrderBy(s => s.From).ThenBy(s => s.Aeroplane.Name, StringComparer.Ordinal)])),
        ];
    }

    /// <summary>Full fields, and those that a batch is meant for and that will be full by the last of the mornings.</summary>
    private static ImmutableArray<WaitingField> FieldsOf(SeasonState state, SeasonPlan? plan, ImmutableArray<OpenMorning> mornings)
    {
        if (mornings.IsEmpty) return [];
        var meant = state.Batches.SelectMany(b => b.MeantFor).ToHashSet(StringComparer.Ordinal);
        var fields = ImmutableArray.CreateBuilder<WaitingField>();
        foreach (var land in state.Farm.Fields)
        {
            if (state.Fields.FirstOrDefault(f => f.Code == land.Code) is not { } season || season.Rate * land.Net <= DrySeed.Zero) continue;
            if (FullAt(season, plan, meant) is not { } full || full >= mornings[^1].Until) continue;
            fields.Add(new WaitingField(land, season, full) { FirstWater = season.FirstWater is { } first ? FarmTime.Day(state, first) : null });
        }

        return [.. fields.OrderBy(f => f.FirstWater ?? FarmTime.Day(state, f.Full)).ThenBy(f => f.Full)];
    }

    private static DateTimeOffset? FullAt(FieldSeason season, SeasonPlan? plan, HashSet<string> meant) => season.Stage switch
    {
        FieldStage.Sown => null,
        FieldStage.Full => season.FullSince ?? season.AsOf ?? DateTimeOffset.MinValue,
        _ => meant.Contains(season.Code) ? plan?.Task(season.Code, PlanTaskKind.Fill)?.End : null,
    };
}
