using Watersown.Costs;
using Watersown.Growth;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Season.Crop;
using Watersown.Wording;

namespace Watersown.Season.FieldRecords;

/// <summary>One field's season on one page: facts with their dates, what is missing, a line to sign.</summary>
public static class RecordPage
{
    /// <summary>The page.</summary>
    /// <param name="plan">The plan in force, for its number and moment.</param>
    /// <param name="book">The season.</param>
    /// <param name="record">The field.</param>
    /// <param name="language">Its language.</param>
    public static SheetPage Of(SeasonPlan plan, SeasonBook book, FieldRecord record, Language language)
    {
        var tell = new Telling(book.State, language);
        var words = tell.Words.Record;
        ImmutableArray<Block> blocks =
        [
            record.Complete
                ? new Block.Banner([new Run(words.Complete, Bold: true)])
                : new Block.Banner([new Run(words.Missing, Bold: true), new Run(" " + string.Join(", ", Lacks(record, words)))]),
            new Block.Facts(words.LandTitle, Land(record, tell)),
            new Block.Facts(words.SowingTitle, Sowing(record, tell)),
            new Block.Facts(words.CropTitle, Crop(book, record, tell)),
            new Block.Facts(words.HarvestTitle, Harvest(record, tell)),
            .. record.Cost.Lines.IsEmpty ? ImmutableArray<Block>.Empty : [new Block.Facts(words.MoneyTitle, Money(record, tell))],
            new Block.Paragraph([new Run(words.Facts)]),
            new Block.Ticks([new Tick(words.Signed) { HasBox = false, Line = 220 }]),
        ];
        return PageParts.Start(plan, tell, "record-" + PageParts.Slug(record.Field.Code), words.Kind, record.Field.Name) with
        {
            TitleNote = record.Field.Code,
            Lead = Template.Fill(words.Lead, ("year", Say.Figure(book.State.Farm.SeasonYear)), ("farm", book.State.Farm.Name)),
            Arrangements = [blocks],
        };
    }

    private static IEnumerable<string> Lacks(FieldRecord record, RecordWords words)
    {
        foreach (var gap in record.Missing) yield return RecordSpeech.Of(gap, words);
        if (record.Doubts > 0) yield return Template.Fill(words.Doubts, ("n", Telling.Count(record.Doubts)));
    }

    private static ImmutableArray<Fact> Land(FieldRecord record, Telling tell)
    {
        var words = tell.Words.Record;
        return
        [
            new Fact(words.Net, tell.Land(record.Field.Net), string.Empty),
            new Fact(words.Gross, record.Field.Gross is { } gross ? tell.Land(gross) : words.Untold, string.Empty),
            new Fact(words.Certified, record.Field.Certified is { } certified ? tell.Land(certified) : words.Untold, words.CertifiedNote),
            new Fact(words.Shares, record.Grain is { Shares.IsEmpty: false } grain ? string.Join(", ", grain.Shares.Select(s => (s.Landlord ?? tell.Words.Harvest.SharesFarm) + " " + tell.Heavy(s.Paid))) : words.Untold, string.Empty),
        ];
    }

    private static ImmutableArray<Fact> Sowing(FieldRecord record, Telling tell)
    {
        var words = tell.Words.Record;
        return
        [
            new Fact(words.Variety, record.Variety ?? words.Untold, record.Lots.IsEmpty ? words.LotUntold : string.Join(", ", record.Lots)),
            new Fact(words.FirstWater, Moment(record.FirstWater, tell), string.Empty),
            new Fact(words.Full, Moment(record.FullSince, tell), string.Empty),
            new Fact(words.Sown, Moment(record.SownAt, tell), record.Sown > Area.Zero ? tell.Land(record.Sown) : string.Empty),
            new Fact(words.DrySeed, record.DrySown is { } dry ? Say.Number(tell.Whole(dry)) + " " + tell.MassUnit : words.Untold,
                record.DrySown is { } sown && record.Sown > Area.Zero ? tell.FineRate(SeedRate.FromPoundsPerAcre(sown.Pounds / record.Sown.Acres)) + " " + tell.RateUnit : string.Empty),
        ];
    }

    private static ImmutableArray<Fact> Crop(SeasonBook book, FieldRecord record, Telling tell)
    {
        var words = tell.Words.Record;
        return
        [
            new Fact(words.Stand, record.CountedZones > 0 ? Template.Fill(words.StandZones, ("n", Telling.Count(record.CountedZones))) : words.Untold,
                book.Field(record.Field.Code).Counts is { IsEmpty: false } counts ? string.Join("; ", counts.Select(c => c.Count.Zone + " " + Say.Number(c.Count.Rings.DefaultIfEmpty().Average(), 1))) : string.Empty),
            new Fact(words.Heading, record.Seen.FirstOrDefault(s => s.Point == new StagePoint(CropStage.Heading)) is { } heading ? tell.DayAndYear(heading.Day) : words.Untold, string.Empty),
            new Fact(words.Stages, record.Seen.IsEmpty ? words.Untold : string.Join(", ", record.Seen.Select(s => StageSpeech.Name(s.Point, tell.Words.Crop) + " " + tell.ShortDay(s.Day))), words.StagesNote),
        ];
    }

    private static ImmutableArray<Fact> Harvest(FieldRecord record, Telling tell)
    {
        var words = tell.Words.Record;
        return
        [
            new Fact(words.BoardsOut, Moment(record.Harvest.BoardsOut, tell), string.Empty),
            new Fact(words.Cut, Moment(record.Harvest.CutAt, tell), record.Harvest.Cut is { } land ? tell.Land(land) : string.Empty),
            new Fact(words.Moisture, record.Harvest.Samples.IsEmpty ? words.Untold : string.Join(", ", record.Harvest.Samples.TakeLast(4).Select(s => Say.Number(s.Moisture.Percent, 1) + " % " + tell.ShortDay(s.At))), string.Empty),
            new Fact(words.Grain, record.Grain is { } grain ? tell.Heavy(grain.Paid) : words.Untold,
                record.Grain is { } told ? Template.Fill(words.GrainNote, ("n", Telling.Count(told.Tickets))) + (told.Yield is { } yield ? ", " + tell.Grain(yield) : string.Empty) : string.Empty),
        ];
    }

    private static ImmutableArray<Fact> Money(FieldRecord record, Telling tell) =>
    [
        .. record.Cost.Lines.Select(l => new Fact(CostNames.Of(l.Category, tell.Words.Cost), Dollars(l.Spent), tell.Words.Cost.Planned + " " + Dollars(l.Planned))),
        new Fact(tell.Words.Cost.All, Dollars(record.Cost.Spent), Template.Fill(tell.Words.Cost.PerAcre, ("amount", Dollars(record.Cost.SpentPerAcre)))),
    ];

    private static string Dollars(Quantities.Money amount) => "$" + Say.Number((double)amount.Amount, 2);

    private static string Moment(DateTimeOffset? moment, Telling tell) => moment is { } at ? tell.DayAndYear(tell.Day(at)) + " " + tell.Clock(at) : tell.Words.Record.Untold;
}
