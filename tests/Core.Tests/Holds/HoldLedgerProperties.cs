using CsCheck;

namespace Watersown.Holds;

public sealed class HoldLedgerProperties
{
    private static readonly Gen<DaySpan> Spans = Gen.Select(Gen.Int[0, 120], Gen.Int[0, 40]).Select((from, days) => new DaySpan(First.AddDays(from), First.AddDays(from + days)));

    private static readonly Gen<(Treatment Treatment, TreatmentState State)> Treatments =
        Gen.Select(Gen.Int[0, 2], Gen.Int[0, 5], Gen.Int[0, 90], Gen.Int[0, 10], Gen.Int[0, 60], Gen.Enum<TreatmentState>()).Select((field, product, from, window, days, state) =>
            (new Treatment("F" + field, "P" + product, First.AddDays(from), First.AddDays(from + window)) { Rule = new HoldRule { Days = days } }, state));

    private static DateOnly First => new(2026, 5, 1);

    [Fact]
    public void A_union_has_exactly_the_days_of_its_spans_and_its_parts_neither_meet_nor_touch() => Spans.Array[0, 8].Sample(spans =>
    {
        var union = HoldDays.Union(spans);
        for (var d = -2; d < 170; d++)
        {
            var day = First.AddDays(d);
            if (spans.Any(s => s.Has(day)) != union.Any(s => s.Has(day))) return false;
        }

        return union.Zip(union.Skip(1)).All(p => p.Second.From > p.First.Until.AddDays(1));
    });

    [Fact]
    public void Days_left_are_those_of_the_window_on_which_nothing_holds() => Gen.Select(Spans, Spans.Array[0, 6]).Sample((window, spans) =>
    {
        var free = HoldDays.Without(window, spans);
        return Enumerable.Range(0, window.Days).Select(d => window.From.AddDays(d)).All(day => free.Any(f => f.Has(day)) != spans.Any(s => s.Has(day)))
            && free.All(f => f.From >= window.From && f.Until <= window.Until && f.Days > 0);
    });

    [Fact]
    public void Treatments_in_any_order_give_the_same_ledger_and_the_latest_end_stands() =>
        Gen.Select(Treatments.Array[0, 10], Gen.Int[0, 1000], Gen.Bool).Sample((treatments, seed, one) =>
        {
            var counting = one ? ApplicationDay.CountsAsOne : ApplicationDay.CountsAsZero;
            var ledger = HoldLedger.Of(treatments, counting);
            var turned = HoldLedger.Of(treatments.Select((t, i) => (t, Key: (i * 7919 + seed) % 104729)).OrderBy(x => x.Key).Select(x => x.t), counting);
            return ledger.SelectMany(f => f.Holds.Select(h => (f.Field, h.Held))).SequenceEqual(turned.SelectMany(f => f.Holds.Select(h => (f.Field, h.Held))))
                && ledger.All(f => f.Holds[0].Release == f.Holds.Max(h => h.Release) && f.Spans[^1].Until == f.Holds[0].Held.Until);
        });
}
