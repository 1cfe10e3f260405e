using Watersown.Harvest;

namespace Watersown.Season.Harvests;

/// <summary>Grain of one field, off its tickets.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Land">Land it is told over: what was cut.</param>
/// <param name="Green">As weighed, less the truck.</param>
/// <param name="Paid">At the moisture it is paid at, less foreign matter.</param>
/// <param name="Tickets">Tickets it is on.</param>
public sealed record FieldGrain(string Field, Area Land, Mass Green, Mass Paid, [property: PlainNumber("tickets")] int Tickets)
{
    /// <summary>None where nobody said what is cut.</summary>
    public GrainYield? Yield => Land > Area.Zero ? GrainYield.Of(Paid, Land) : null;

    /// <summary>Each landlord's grain, and what stays the farm's.</summary>
    public ImmutableArray<(string? Landlord, Mass Paid)> Shares { get; init; } = [];
}

/// <summary>What was cut, by field and by variety, off the dryer's tickets.</summary>
public sealed record GrainTally
{
    public required ImmutableArray<FieldGrain> Fields { get; init; }

    public required ImmutableArray<(string? Variety, Mass Paid)> Varieties { get; init; }

    /// <summary>All grain over the scale; the fields' green grain together, and what no field is told for.</summary>
    public required Mass Green { get; init; }

    public required Mass Paid { get; init; }

    /// <summary>Green grain on tickets or parts of them that name no field.</summary>
    public required Mass Homeless { get; init; }

    /// <summary>What one ticket is paid for: net of truck and foreign matter, at the moisture it is paid at.</summary>
    [Source(nameof(Sources.IrriMoisture), "W2 = W1 (100 - M1) / (100 - M2)")]
    public static Mass PaidOf(GrainTicketed ticket) =>
        GrainMoisture.WeightAt(ticket.Net * (1 - ticket.Foreign.Share), ticket.Moisture, HarvestMeans.PaidAt);

    /// <summary>Adds tickets up.</summary>
    /// <param name="tickets">Each once.</param>
    /// <param name="land">Land that a field's grain is told over.</param>
    /// <param name="shares">Landlords' shares by field.</param>
    public static GrainTally Of(ImmutableArray<GrainTicketed> tickets, Func<string, Area> land, ImmutableArray<CropShareTold> shares)
    {
        var parts = tickets.SelectMany(t => t.Parts.Select(p => (Ticket: t, p.Field, p.Share))).ToLookup(p => p.Field, StringComparer.OrdinalIgnoreCase);
        return new GrainTally
        {
            Fields = [.. parts.Select(g => Field(g.Key, [.. g.Select(p => (p.Ticket, p.Share))], land(g.Key), shares)).OrderBy(f => f.Field, StringComparer.Ordinal)],
            Varieties = [.. tickets.GroupBy(t => t.Variety, StringComparer.OrdinalIgnoreCase).Select(g => (g.Key, Sum(g.Select(PaidOf)))).OrderBy(v => v.Key, StringComparer.Ordinal)],
            Green = Sum(tickets.Select(t => t.Net)),
            Paid = Sum(tickets.Select(PaidOf)),
            Homeless = Sum(tickets.Select(t => t.Net * Math.Max(0, 1 - t.Parts.Sum(p => p.Share.Share)))),
        };
    }

    private static FieldGrain Field(string code, ImmutableArray<(GrainTicketed Ticket, Fraction Share)> parts, Area land, ImmutableArray<CropShareTold> shares)
    {
        var paid = Sum(parts.Select(p => PaidOf(p.Ticket) * p.Share.Share));
        ImmutableArray<CropShareTold> mine = [.. shares.Where(s => string.Equals(s.Field, code, StringComparison.OrdinalIgnoreCase))];
        return new FieldGrain(code, land, Sum(parts.Select(p => p.Ticket.Net * p.Share.Share)), paid, parts.Length)
        {
            Shares = mine.IsEmpty ? [] : [.. mine.Select(s => ((string?)s.Landlord, paid * s.Share.Share)), (null, paid * (1 - mine.Sum(s => s.Share.Share)))],
        };
    }

    private static Mass Sum(IEnumerable<Mass> grain) => grain.Aggregate(Mass.Zero, (a, b) => a + b);
}
