using Watersown.Flight.Cover;
using Watersown.Flight.Flown;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>What stands beside a report on paper.</summary>
/// <param name="Field">What the field is called.</param>
/// <param name="File">Name of the track's file.</param>
public sealed record FlownPaper(string Field, string File)
{
    /// <summary>Track, scale and invoice; none where only the track is known.</summary>
    public FlownMatches? Matches { get; init; }

    /// <summary>Number or name of the invoice.</summary>
    public string? Invoice { get; init; }

    /// <summary>When it was put together.</summary>
    public required DateTimeOffset Made { get; init; }
}

/// <summary>Puts what was flown on one page: the map, the figures with how far each can be off, where to walk, and whether the invoice agrees.</summary>
public static class FlownPage
{
    private const double DrawingLeast = 130;
    private const double DrawingMost = 330;

    // From roomy to tight: places told of each kind, and whether figures that only round the picture off are left out.
    private static readonly ImmutableArray<(int Places, bool Brief)> Rooms = [(8, false), (5, false), (5, true), (4, true), (3, true), (2, true), (1, true)];

    public static SheetPage Of(FlownReport report, FlownPaper paper, Telling tell)
    {
        var words = tell.Words.Flown;
        return new SheetPage
        {
            Key = "flown-" + PageParts.Slug(paper.Field),
            Language = tell.Words == Words.Spanish ? Language.Spanish : Language.English,
            Kind = words.Title,
            Title = paper.Field,
            Lead = Template.Fill(words.PageLead, ("file", paper.File), ("swath", tell.Long(report.Question.Swath)), ("n", Telling.Count(report.Passes.All.Length))),
            Corner = [Template.Fill(tell.Words.Common.Made, ("when", tell.Moment(paper.Made)))],
            Arrangements = [.. Rooms.Select(room => (ImmutableArray<Block>)[.. Blocks(report, paper, tell, room)])],
            Folio = tell.Words.Common.Folio,
            GoesOn = tell.Words.Common.GoesOn,
        };
    }

    private static IEnumerable<Block> Blocks(FlownReport report, FlownPaper paper, Telling tell, (int Places, bool Brief) room)
    {
        var telling = new FlownTelling(tell.Words, tell.Metric);
        var words = tell.Words.Flown;
        yield return new Block.Banner([new Run(words.CautionAlways, Bold: true)]);
        yield return Figures(report, telling, tell);
        yield return new Block.Side(
            [new Block.Heading(words.LaidTitle), new Block.Picture((w, h) => DepositDrawing.Of(report, tell, w, h), DrawingLeast, DrawingMost)],
            [new Block.Grid(words.Title, [new Column(words.What), new Column(words.HowMuch, Setting.Right)], [.. telling.Others(report, room.Brief).Select(f => (ImmutableArray<Cell>)[Cell.Of(f.What), Cell.Of(With(f.Value, f.Error))])])],
            Fraction.FromPercent(room.Brief ? 34 : 42));
        foreach (var block in Walk(report, telling, words, room.Places).Concat(Matches(paper, telling, words))) yield return block;
        yield return new Block.Paragraph([new Run(string.Join(' ', report.Cautions.Where(c => c is not (FlownCaution.Always or FlownCaution.SwathAsTold)).Select(c => telling.Caution(report, c))))]);
    }

    private static Block.Figures Figures(FlownReport report, FlownTelling telling, Telling tell)
    {
        var words = tell.Words.Flown;
        return new Block.Figures(
        [
            new Figure(Say.Number(tell.Metric ? report.Flown.Hectares : report.Flown.Acres, 1), [new Run(With(Template.Fill(words.PageFlown, ("net", telling.Land(report.Net))), telling.Land(report.Net * report.Skip.Error.Share)))], Heavy: true),
            new Figure(Say.Number(report.Skip.Share.Percent, 1) + " %", [new Run(With(words.Skipped, Say.Number(report.Skip.Error.Percent, 1) + " %"))], Heavy: true),
            new Figure(Say.Number(report.Overlap.Share.Percent, 1) + " %", [new Run(With(words.Overlapped, Say.Number(report.Overlap.Error.Percent, 1) + " %"))], Heavy: false),
            new Figure(Say.Number(report.Deposit.Near.Percent) + " %", [new Run(words.LaidNear)], Heavy: false),
        ]);
    }

    private static string With(string value, string error) => error.Length == 0 ? value : value + " ± " + error;

    // Bare places by number, thin ones by letter, as the map shows them.
    private static IEnumerable<Block> Walk(FlownReport report, FlownTelling telling, FlownWords words, int most)
    {
        var (bare, thin) = (report.Cover.ThinPlaces, report.ThinPlaces);
        yield return new Block.Heading(words.ThinTitle);
        ImmutableArray<ImmutableArray<Cell>> rows =
        [
            .. bare.Take(most).Select(p => Row(Telling.Count(p.Rank), words.PlaceBare, p, report, telling)),
            .. thin.Take(most).Select((p, i) => Row(FlownTelling.Letter(i), words.PlaceThin, p, report, telling)),
        ];
        if (rows.IsEmpty)
        {
            yield return new Block.Paragraph([new Run(words.ThinNone)]);
            yield break;
        }

        yield return new Block.Grid(words.ThinTitle, [new Column(words.PlaceMark), new Column(words.What), new Column(words.PlaceLand, Setting.Right), new Column(words.PlaceAt), new Column(words.PlaceLong, Setting.Right), new Column(words.PlaceWide, Setting.Right)], rows);
        var more = Math.Max(0, bare.Length - most) + Math.Max(0, thin.Length - most);
        if (more > 0) yield return new Block.Paragraph([new Run(Template.Fill(words.ThinMore, ("n", Say.Number(more))))]);
    }

    private static ImmutableArray<Cell> Row(string mark, string what, ThinPlace place, FlownReport report, FlownTelling telling) =>
        [Cell.Strong(mark), Cell.Of(what), Cell.Of(telling.Land(place.Area)), Cell.Of(PlaceWords.Of(report.Track.Plane.ToPlace(place.At))), Cell.Of(telling.Far(place.Long)), Cell.Of(telling.Far(place.Wide))];

    private static IEnumerable<Block> Matches(FlownPaper paper, FlownTelling telling, FlownWords words)
    {
        if (paper.Matches is not { } matches || telling.Matches(matches) is not { IsEmpty: false } lines) yield break;
        yield return new Block.Heading(words.MatchTitle + (paper.Invoice is { } name ? " (" + name + ")" : string.Empty));
        yield return new Block.Grid(words.MatchTitle, [new Column(words.What), new Column(words.OneSays, Setting.Right), new Column(words.OtherSays, Setting.Right), new Column(words.Verdict)],
            [.. lines.Select(l => (ImmutableArray<Cell>)[Cell.Of(l.What), Cell.Of(l.One), Cell.Of(l.Other), l.Agree ? Cell.Of(l.Verdict) : Cell.Strong(l.Verdict)])]);
    }
}
