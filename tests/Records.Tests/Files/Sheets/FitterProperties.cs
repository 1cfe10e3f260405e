using CsCheck;
using Watersown.Land;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>Whatever is put on a sheet, no line is lost and nothing sticks out of the paper.</summary>
public sealed class FitterProperties
{
    private static readonly Gen<string> Word = Gen.OneOf(Gen.String[Gen.Char['a', 'z'], 1, 14], Gen.String[Gen.Char['0', '9'], 1, 8], Gen.String[1, 12], Gen.String[Gen.Char['A', 'Z'], 60, 140]);

    private static readonly Gen<string> Sentence = Word.Array[1, 25].Select(w => string.Join(' ', w));

    private static readonly Gen<Block> Any = Gen.OneOf<Block>(
        Sentence.Select(s => (Block)new Block.Paragraph([new Run(s), new Run(" " + s, Bold: true)])),
        Sentence.Select(s => (Block)new Block.Heading(s)),
        Sentence.Select(s => (Block)new Block.Banner([new Run(s, Bold: true)])),
        Sentence.Array[0, 4].Select(s => (Block)new Block.Alarm("NO SPILL", [.. s])),
        Gen.Select(Sentence, Gen.Int[1, 60], Gen.Int[1, 3], (s, rows, folds) => (Block)new Block.Grid("t",
            [new Column("n", Setting.Right), new Column(s.Split(' ')[0]), new Column("box", Setting.Center), new Column("write") { Room = 30 }],
            [.. Enumerable.Range(0, rows).Select(i => (ImmutableArray<Cell>)[Cell.Of("r" + i), Cell.Strong(s), Cell.Box, Cell.Blank])])
        { Folds = folds }),
        Sentence.Array[1, 9].Select(s => (Block)new Block.Facts("facts", [.. s.Select(w => new Fact(w.Split(' ')[0], w.Length > 30 ? w[..30] : w, w))])),
        Sentence.Array[1, 9].Select(s => (Block)new Block.Ticks([.. s.Select((w, i) => new Tick(w.Split(' ')[0]) { HasBox = i % 2 == 0, Line = i * 40 })])));

    [Fact]
    public void No_row_is_lost_and_nothing_sticks_out_to_the_side() =>
        Gen.Select(Any.Array[1, 14], Sentence, Sentence).Sample((blocks, title, lead) => Assert.Equal(string.Empty, Fault(Page(title, lead, [.. blocks]))), iter: 40);

    private static string Fault(SheetPage page)
    {
        var (sheet, blocks) = (Fitter.Fit(page), page.Arrangements[0]);
        if (PrintedPages.Blocks(sheet).OfType<Block.Grid>().Sum(g => g.Rows.Length) != blocks.OfType<Block.Grid>().Sum(g => g.Rows.Length)) return "rows are lost";
        if (PrintedPages.Blocks(sheet).Count(b => b is not Block.Grid) != blocks.Count(b => b is not Block.Grid)) return "blocks are lost";
        for (var i = 0; i < sheet.Pages.Length; i++)
        {
            var laid = Laid.Stack([HeadLayout.Lay(page, sheet.Folio(i)), BlockLayout.LayAll(sheet.Pages[i], Paper.Inner)], Paper.Gap);
            if (laid.Marks.FirstOrDefault(m => Right(m) > Paper.Inner + 1) is { } wide) return "sticks out: " + wide;
            if (sheet.Pages[i].Length > 1 && laid.Height > Paper.Height - (2 * Paper.Margin)) return $"page {i + 1} is {laid.Height} high: {string.Join(", ", sheet.Pages[i].Select(b => b.GetType().Name + " " + BlockLayout.Lay(b, Paper.Inner).Height))}";
        }

        return string.Empty;
    }

    [Fact]
    public void A_field_with_sixty_loads_and_thirty_hazards_still_prints_all_of_them()
    {
        var plan = PlannedMorning.Plan();
        var field = plan.State.Farm.Field("S2");
        var middle = FieldPlace.Middle(field)!.Value;
        var hazards = Enumerable.Range(1, 30).Select(i => new Hazard(HazardKind.Pole, "pole number " + i) { Points = [new(middle.Latitude + (i * 0.0004), middle.Longitude + (i * 0.0003))] });
        var crowded = plan with
        {
            Tasks = [.. plan.Tasks.Select(t => t.Field == "S2" ? t with { Dry = DrySeed.FromPounds(134000), Soaked = SoakedSeed.FromPounds(167500) } : t)],
            State = plan.State with { Farm = plan.State.Farm with { Hazards = [.. hazards] } },
        };
        var sheet = FlightSheets.Of(crowded).Single(f => f.Field.Code == "S2");
        Assert.Equal(60, sheet.Loads.Count);
        var fitted = Fitter.Fit(FlightPage.Of(crowded, sheet, Language.Spanish));
        Assert.InRange(fitted.Pages.Length, 2, 4);
        var said = PageText.Of(fitted.Page with { Arrangements = [[.. PrintedPages.Blocks(fitted)]] });
        for (var i = 1; i <= 30; i++) Assert.Contains("pole number " + i + ",", said, StringComparison.Ordinal);
        Assert.Contains("60 | 2,79", said, StringComparison.Ordinal);
        Assert.NotEmpty(PdfSheet.Write(fitted, PlannedMorning.Now));
    }

    private static double Right(Mark mark) => mark switch
    {
        Mark.Words words => words.X + SheetFonts.Width(words.Text, words.Face, words.Size),
        Mark.Rule rule => Math.Max(rule.X1, rule.X2),
        Mark.Frame frame => frame.X + frame.Width,
        _ => 0,
    };

    private static SheetPage Page(string title, string lead, ImmutableArray<Block> blocks) => new()
    {
        Key = "any",
        Language = Language.English,
        Kind = "Sheet",
        Title = title,
        Lead = lead,
        Corner = ["corner"],
        Arrangements = [blocks],
        Folio = "Page {page} of {pages}",
        GoesOn = "Goes on: {page} of {pages}",
    };
}
