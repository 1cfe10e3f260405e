using Watersown.Flight;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Seed;

namespace Watersown.Season.Troubles;

/// <summary>What a scale showed for a trailer.</summary>
public sealed record ScaleTicket(string Trailer, SoakedSeed Soaked, DateTimeOffset At, string By);

/// <summary>Seed of the right variety that is left of another batch. Shown with its age, never proposed.</summary>
/// <param name="Batch">Batch code.</param>
/// <param name="Dry">Dry seed of it that no field waits for.</param>
/// <param name="OffWater">How long it has been off the water.</param>
public sealed record SpareSeed(string Batch, DrySeed Dry, TimeSpan OffWater);

/// <summary>The scale tickets of the seed of one or more fields, and what they mean.</summary>
/// <param name="Fields">Fields that the seed is for.</param>
/// <param name="Tickets">One for each trailer.</param>
/// <param name="Answer">What they mean together.</param>
public sealed record ScaleReading(ImmutableArray<Field> Fields, ImmutableArray<ScaleTicket> Tickets, ScaleAnswer Answer)
{
    public string? Batch { get; init; }

    public ImmutableArray<SpareSeed> Spare { get; init; } = [];
}

/// <summary>Reads the scale tickets of a trailer, and of the others that carry the same seed to the same field.</summary>
public static class ScaleTickets
{
    /// <summary>The newest ticket of a trailer for what it carries now; none where nobody weighed it.</summary>
    [Source(nameof(Sources.FarmRecord), "as told from the scale")]
    public static ScaleTicket? Of(SeasonBook book, string trailer)
    {
        ScaleTicket? ticket = null;
        string? batch = null;
        foreach (var line in book.Story.Where(l => l.Standing == Standing.Stands))
        {
            if (line.Mark.Fact is not TrailerSeen seen || !Same(seen.Number, trailer)) continue;
            // Other seed in the same trailer has no ticket until it is weighed.
            if (seen.Batch is { } code && batch is not null && !Same(batch, code)) ticket = null;
            batch = seen.Batch ?? batch;
            if (seen.Weighed is { } weight) ticket = new ScaleTicket(trailer, weight, line.Mark.Happened, line.Mark.By);
        }

        return ticket;
    }

    /// <summary>What the tickets mean for the fields that the seed is for; none while a trailer is not weighed or nobody knows for which field.</summary>
    [Source(nameof(Sources.MassBalance), "all tickets of the seed against rate × acres of its fields")]
    public static ScaleReading? Read(SeasonBook book, SeasonPlan? plan, string trailer)
    {
        var state = book.State;
        var told = book.Trailer(trailer);
        var batch = state.Batches.FirstOrDefault(b => told?.Batch is { } code ? Same(b.Code, code) : b.Trailers.Contains(trailer, StringComparer.OrdinalIgnoreCase));
        var fields = FieldsOf(book, plan, told, batch);
        if (fields.IsEmpty) return null;
        var tickets = Companions(book, told, batch, trailer).Select(n => Of(book, n)).ToImmutableArray();
        if (tickets.Any(t => t is null)) return null;
        var lot = state.Lots.FirstOrDefault(l => l.Code == batch?.Lot);
        var wanted = fields.Aggregate(DrySeed.Zero, (sum, f) => sum + (state.Season(f.Code).Rate * f.Net));
        var ticket = tickets.Aggregate(SoakedSeed.Zero, (sum, t) => sum + t!.Soaked);
        if (wanted <= DrySeed.Zero || ticket <= SoakedSeed.Zero) return null;
        var plane = state.Aeroplanes.IsEmpty ? new Aeroplane(string.Empty) : state.Aeroplanes[0];
        var answer = SeedOnScale.Of(new WeighedSeed(ticket, wanted, fields.Aggregate(Area.Zero, (sum, f) => sum + f.Net))
        {
            // This ticket must not prove itself: the factor is what was known before it.
            WetFactor = FlightSheets.Factor(state, null, lot).Factor,
            FactorWeighed = lot?.WetFactor is not null,
            Limit = plane.WorkingLoad,
            Units = state.Farm.Units,
        });
        return new ScaleReading(fields, [.. tickets.OfType<ScaleTicket>()], answer) { Batch = batch?.Code, Spare = Spare(book, plan, batch?.Code, batch?.Variety ?? state.Season(fields[0].Code).Variety) };
    }

    private static ImmutableArray<Field> FieldsOf(SeasonBook book, SeasonPlan? plan, TrailerBook? told, SoakBatch? batch)
    {
        ImmutableArray<string> codes = told?.Field is { } field ? [field] : [];
        if (codes.IsEmpty && batch is not null && plan is not null) codes = [.. plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && !t.Fixed && t.Batch == batch.Code).Select(t => t.Field).Distinct(StringComparer.Ordinal)];
        if (codes.IsEmpty) codes = batch?.MeantFor ?? [];
        return [.. book.State.Farm.Fields.Where(f => codes.Contains(f.Code, StringComparer.OrdinalIgnoreCase))];
    }

    // Trailers of the same batch that are for the same field, or for none in particular.
    private static ImmutableArray<string> Companions(SeasonBook book, TrailerBook? told, SoakBatch? batch, string trailer) => batch is null
        ? [trailer]
        : [.. batch.Trailers.Append(trailer).Distinct(StringComparer.OrdinalIgnoreCase).Where(n => Same(n, trailer) || book.Trailer(n)?.Field is not { } field || Same(field, told?.Field ?? field))];

    private static ImmutableArray<SpareSeed> Spare(SeasonBook book, SeasonPlan? plan, string? own, string? variety) =>
    [
        .. book.Batches.Where(b => b is { Place: BatchPlace.Drained, Batch.Drained: not null, Remaining: not null } && b.Code != own && b.Batch.Variety == variety)
            .Select(b => new SpareSeed(b.Code, Free(book, plan, b), book.State.Now - b.Batch!.Drained!.Value)).Where(s => s.Dry > DrySeed.Zero),
    ];

    // What is left of a batch, less what the fields still to be sown with it take.
    private static DrySeed Free(SeasonBook book, SeasonPlan? plan, BatchBook batch)
    {
        var state = book.State;
        var waiting = (plan?.Tasks ?? []).Where(t => t.Kind == PlanTaskKind.Sow && !t.Fixed && t.Batch == batch.Code && t.Start > state.Now && state.Season(t.Field).Stage != FieldStage.Sown)
            .Aggregate(DrySeed.Zero, (sum, t) => sum + (t.Dry ?? (state.Season(t.Field).Rate * state.Farm.Field(t.Field).Net)));
        return batch.Remaining!.Value > waiting ? batch.Remaining.Value - waiting : DrySeed.Zero;
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
