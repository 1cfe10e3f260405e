using Watersown.Costs;
using Watersown.Documents.Logbooks;
using Watersown.Growth;
using Watersown.Schedule.Sheets;
using Watersown.Season;
using Watersown.Season.FieldRecords;
using Watersown.Season.Harvests;
using Watersown.Wording;

namespace Watersown.Documents.Seasons;

/// <summary>A season as tables for other programs. US units, each named in its column; days and moments by ISO 8601.</summary>
public static class SeasonTables
{
    /// <summary>Fields, what was sown by day, tickets, bills and the logbook.</summary>
    public static ImmutableArray<SeasonTable> All(SeasonBook book) => [Fields(book), SownByDay(book), Tickets(book), Bills(book), Marks(book)];

    /// <summary>One line a field.</summary>
    public static SeasonTable Fields(SeasonBook book) => new(
        "fields",
        [
            "field", "name", "net_ac", "gross_ac", "certified_ac", "soil", "sources", "variety", "rate_dry_lb_ac", "lots", "first_water", "full_since", "sown", "sown_ac", "sown_dry_lb",
            "heading_seen", "boards_out", "cut_ac", "cut_at", "tickets", "grain_14_lb", "yield_14_cwt_ac", "planned_usd", "spent_usd", "doubts", "missing",
        ],
        [
            .. FieldRecord.All(book).Select(r => (ImmutableArray<object?>)
            [
                r.Field.Code, r.Field.Name, r.Field.Net.Acres, r.Field.Gross?.Acres, r.Field.Certified?.Acres, r.Field.Soil, string.Join(' ', r.Field.Sources), r.Variety, r.Rate.PoundsPerAcre,
                string.Join("; ", r.Lots), r.FirstWater, r.FullSince, r.SownAt, r.Sown.Acres, r.DrySown?.Pounds,
                r.Seen.FirstOrDefault(s => s.Point == new StagePoint(CropStage.Heading))?.Day, r.Harvest.BoardsOut, r.Harvest.Cut?.Acres, r.Harvest.CutAt, (double)(r.Grain?.Tickets ?? 0), r.Grain?.Paid.Pounds,
                r.Grain?.Yield?.HundredweightsPerAcre, (double)r.Cost.Planned.Amount, (double)r.Cost.Spent.Amount, (double)r.Doubts, string.Join("; ", r.Missing.Select(g => RecordSpeech.Of(g, Words.English.Record))),
            ]),
        ]);

    /// <summary>Land sown on each day, by field, with the mark that says so: what an adjuster or a farm office asks for.</summary>
    public static SeasonTable SownByDay(SeasonBook book) => new(
        "sown-by-day",
        ["day", "field", "sown_ac", "dry_lb", "batch", "part", "resown", "together_ac", "mark"],
        [.. SownDays.Of(book).Select(d => (ImmutableArray<object?>)[d.Day, d.Field, d.Land.Acres, d.Sowing?.Dry?.Pounds, d.Sowing?.Batch, d.Sowing?.Part, d.Sowing is { Resow: true } ? "yes" : null, d.Together.Acres, d.Sowing?.Mark.Text])]);

    private static SeasonTable Tickets(SeasonBook book) => new(
        "tickets",
        ["at", "number", "dryer", "variety", "gross_lb", "tare_lb", "net_lb", "moisture_pct", "foreign_pct", "grain_14_lb", "fields", "head_pct", "total_pct"],
        [
            .. book.Harvest.Tickets.Select(t => (ImmutableArray<object?>)
            [
                t.Mark.Happened, t.Ticket.Number, t.Ticket.Dryer, t.Ticket.Variety, t.Ticket.Gross.Pounds, t.Ticket.Tare.Pounds, t.Ticket.Net.Pounds, t.Ticket.Moisture.Percent, t.Ticket.Foreign.Percent,
                GrainTally.PaidOf(t.Ticket).Pounds, string.Join("; ", t.Ticket.Parts.Select(p => p.Field + " " + Say.Figure(p.Share.Percent) + " %")), t.Ticket.Head?.Percent, t.Ticket.Total?.Percent,
            ]),
        ]);

    private static SeasonTable Bills(SeasonBook book) => new(
        "bills",
        ["at", "category", "amount_usd", "fields", "what", "invoice"],
        [.. book.Costs.Bills.Select(b => (ImmutableArray<object?>)[b.Mark.Happened, CostNames.Of(b.Bill.Category, Words.English.Cost), (double)b.Bill.Amount.Amount, string.Join(' ', b.Bill.Fields), b.Bill.What, b.Bill.Invoice])]);

    /// <summary>The logbook in order: what was told, by whom, when, and whether it counts.</summary>
    public static SeasonTable Marks(SeasonBook book)
    {
        var say = new MarkTelling(new Telling(book.State, Language.English));
        return new(
            "logbook",
            ["happened", "entered", "by", "sure", "counts", "field", "kind", "said", "note", "mark"],
            [
                .. book.Story.Select(l => (ImmutableArray<object?>)
                [
                    l.Mark.Happened, l.Mark.Entered, l.Mark.By, MarkWords.Sureness.Of(l.Mark.Sure), l.Standing == Standing.Stands ? "yes" : "no", l.Mark.Fact.AboutField,
                    l.Mark.Fact is UnknownFact strange ? strange.Kind : FactForms.Of(l.Mark.Fact).Kind, say.Say(l.Mark.Fact), l.Mark.Note, l.Mark.Id.Text,
                ]),
            ]);
    }
}
