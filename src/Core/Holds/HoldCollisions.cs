namespace Watersown.Holds;

/// <summary>Why water is wanted lower or gone.</summary>
public enum WaterWish
{
    /// <summary>A treatment needs leaves bare.</summary>
    LowerFor,

    /// <summary>A treatment needs the field drained.</summary>
    DrainFor,

    /// <summary>Lower, for anything else.</summary>
    Lower,

    /// <summary>A drain so that roots peg.</summary>
    Peg,

    /// <summary>A drain for anything else, the last before harvest too.</summary>
    Drain,
}

/// <summary>Days on which somebody wants the water of a field lower or gone.</summary>
/// <param name="Field">Field code.</param>
/// <param name="Wish">Why.</param>
/// <param name="Window">Between which days.</param>
public sealed record WantedWater(string Field, WaterWish Wish, DaySpan Window)
{
    /// <summary>The treatment it is for, where it is for one.</summary>
    public Treatment? For { get; init; }

    /// <summary>Water need not leave the field for it: it may stand deeper in another check.</summary>
    public bool IsLowering => Wish is WaterWish.LowerFor or WaterWish.Lower;
}

/// <summary>A wish that holds leave fewer days for than it wants.</summary>
/// <param name="Want">What is wanted.</param>
/// <param name="Holds">Holds of the same field that lie over its days.</param>
/// <param name="Free">Days of its window on which none of them holds.</param>
public sealed record HoldCollision(WantedWater Want, ImmutableArray<FieldHold> Holds, ImmutableArray<DaySpan> Free)
{
    /// <summary>Days that are left where water is lowered by moving it within the field, by those rules that let that; none where it makes no difference.</summary>
    public ImmutableArray<DaySpan>? Within { get; init; }

    /// <summary>The lines behind it.</summary>
    public Working Working => Holds.Aggregate(
        Working.Empty.Given("W", "days wanted", Span(Want.Window), string.Empty, "typed"),
        (working, h) => working.Then(h.Working)).Step("F", "days of it on which nothing is held", Free.IsEmpty ? "none" : string.Join(", ", Free.Select(Span)), string.Empty, "W without the days of each hold", Sources.CalendarCount);

    private static string Span(DaySpan span) => span.From == span.Until ? Day(span.From) : Day(span.From) + " to " + Day(span.Until);

    private static string Day(DateOnly day) => ((Datum.Text)Datum.Date(day)).Value;
}

/// <summary>Where holds and wishes for lower water meet on the same field.</summary>
public static class HoldCollisions
{
    /// <summary>Every wish that a hold lies over, by field and day. What a treatment itself needs is not held against its own hold.</summary>
    /// <param name="holds">The ledger.</param>
    /// <param name="wants">What is wanted.</param>
    [Source(nameof(Sources.CalendarCount), "days of the window without the days of each hold")]
    public static ImmutableArray<HoldCollision> Of(ImmutableArray<FieldHolds> holds, IEnumerable<WantedWater> wants)
    {
        var found = ImmutableArray.CreateBuilder<HoldCollision>();
        foreach (var want in wants.OrderBy(w => w.Field, StringComparer.OrdinalIgnoreCase).ThenBy(w => w.Window.From).ThenBy(w => w.Wish))
        {
            ImmutableArray<FieldHold> over =
            [
                .. holds.Where(f => string.Equals(f.Field, want.Field, StringComparison.OrdinalIgnoreCase)).SelectMany(f => f.Holds)
                    .Where(h => h.Held.Meets(want.Window) && !(want.For is { } mine && IsSame(mine, h.Treatment))),
            ];
            if (over.IsEmpty) continue;
            var within = want.IsLowering && over.Any(h => h.Treatment.Rule.MovesWithin);
            found.Add(new HoldCollision(want, over, HoldDays.Without(want.Window, over.Select(h => h.Held)))
            {
                Within = within ? HoldDays.Without(want.Window, over.Where(h => !h.Treatment.Rule.MovesWithin).Select(h => h.Held)) : null,
            });
        }

        return found.ToImmutable();
    }

    /// <summary>What treatments still to come need of the water.</summary>
    public static IEnumerable<WantedWater> Needs(IEnumerable<(Treatment Treatment, TreatmentState State)> treatments) => treatments
        .Where(t => t.State == TreatmentState.Booked && t.Treatment.Rule.Needs != WaterNeeded.AsItIs)
        .Select(t => new WantedWater(t.Treatment.Field, t.Treatment.Rule.Needs == WaterNeeded.Lowered ? WaterWish.LowerFor : WaterWish.DrainFor, new DaySpan(t.Treatment.From, t.Treatment.Until)) { For = t.Treatment });

    /// <summary>Two that tell of the same treatment: field, product and which time.</summary>
    public static bool IsSame(Treatment one, Treatment other) =>
        string.Equals(one.Field, other.Field, StringComparison.OrdinalIgnoreCase) && string.Equals(one.Product, other.Product, StringComparison.OrdinalIgnoreCase) && one.Round == other.Round;
}
