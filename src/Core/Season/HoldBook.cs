using Watersown.Holds;
using Watersown.Schedule;

namespace Watersown.Season;

/// <summary>Held water that was let go.</summary>
/// <param name="Gone">What was said.</param>
/// <param name="At">When.</param>
/// <param name="Early">A hold that had been applied still ran; it may have had a reason.</param>
public sealed record LetGo(HeldWaterGone Gone, DateTimeOffset At, bool Early);

/// <summary>Treatments, wishes for water and the farm's settings, as the marks tell them.</summary>
public sealed record HoldBook
{
    public static HoldBook Empty { get; } = new();

    public HoldSettings Settings { get; init; } = HoldSettings.Untold;

    /// <summary>Booked and applied, by field, day and product.</summary>
    public ImmutableArray<TreatmentTold> Treatments { get; init; } = [];

    public ImmutableArray<WantedWater> Wishes { get; init; } = [];

    public ImmutableArray<LetGo> Gone { get; init; } = [];

    /// <summary>Treatments with how far they have come.</summary>
    public IEnumerable<(Treatment Treatment, TreatmentState State)> All => Treatments.Select(t => (t.What, t.State));

    public ImmutableArray<FieldHolds> Ledger => HoldLedger.Of(All, Settings.Counting);

    /// <summary>Where holds lie over what is wanted of the water.</summary>
    public ImmutableArray<HoldCollision> Collisions => HoldCollisions.Of(Ledger, HoldCollisions.Needs(All).Concat(Wishes));

    /// <summary>The book as it would be with one more fact: what a page shows before it is put down.</summary>
    public HoldBook With(MarkFact fact) => fact switch
    {
        TreatmentTold told => this with { Treatments = Sorted(Treatments.Where(t => !HoldCollisions.IsSame(t.What, told.What)).Append(told)) },
        WaterWished wished => this with
        {
            Wishes = [.. Wishes.Where(w => !(w.Wish == wished.Wish && string.Equals(w.Field, wished.Field, StringComparison.OrdinalIgnoreCase))), .. wished.Days is { } days ? [new WantedWater(wished.Field, wished.Wish, days)] : ImmutableArray<WantedWater>.Empty],
        },
        HoldSettingsTold told => this with { Settings = told.Settings },
        _ => this,
    };

    /// <summary>Collisions that one more fact would bring or change: those that are not there without it.</summary>
    public ImmutableArray<HoldCollision> Brings(MarkFact fact)
    {
        var before = Collisions;
        return [.. With(fact).Collisions.Where(c => !before.Any(b => b.Want == c.Want && b.Free.SequenceEqual(c.Free) && b.Holds.Length == c.Holds.Length))];
    }

    /// <summary>Which time it would be that a product comes on a field: a new one never takes the place of one that is there.</summary>
    [PlainNumber("times this season")]
    public int NextRound(string field, string product) => 1 + Treatments
        .Where(t => string.Equals(t.What.Field, field, StringComparison.OrdinalIgnoreCase) && string.Equals(t.What.Product, product, StringComparison.OrdinalIgnoreCase))
        .Select(t => t.What.Round).DefaultIfEmpty(0).Max();

    private static ImmutableArray<TreatmentTold> Sorted(IEnumerable<TreatmentTold> treatments) =>
    [
        .. treatments.Where(t => t.State != TreatmentState.CalledOff)
            .OrderBy(t => t.What.Field, StringComparer.OrdinalIgnoreCase).ThenBy(t => t.What.From).ThenBy(t => t.What.Product, StringComparer.OrdinalIgnoreCase).ThenBy(t => t.What.Round),
    ];
}

/// <summary>Treatments and holds as the marks about them go by.</summary>
internal sealed class HoldFold(SeasonState ground)
{
    private readonly List<(HeldWaterGone Gone, DateTimeOffset At)> gone = [];
    private HoldBook book = HoldBook.Empty;

    public void Apply(Mark mark)
    {
        book = book.With(mark.Fact);
        if (mark.Fact is HeldWaterGone let) gone.Add((let, mark.Happened));
    }

    public HoldBook Close()
    {
        var ledger = book.Ledger;
        return book with
        {
            Gone = [.. gone.Select(g => new LetGo(g.Gone, g.At, ledger.Any(f => string.Equals(f.Field, g.Gone.Field, StringComparison.OrdinalIgnoreCase) && f.Runs(FarmTime.Day(ground, g.At)))))],
        };
    }

    /// <summary>The season of a field: no water leaves it while a hold runs.</summary>
    public static FieldSeason Held(FieldSeason season, ImmutableArray<FieldHolds> ledger, DateOnly day) =>
        season.NoSpill || !ledger.Any(f => string.Equals(f.Field, season.Code, StringComparison.OrdinalIgnoreCase) && f.Runs(day)) ? season : season with { NoSpill = true };
}
