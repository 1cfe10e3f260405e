using Watersown.Schedule;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

public sealed class FitterTests
{
    [Fact]
    public void Every_flight_water_and_seed_sheet_of_the_farm_takes_one_page_in_both_languages() =>
        Assert.All(PrintedPages.All.Where(p => !p.Key.StartsWith("day-", StringComparison.Ordinal)), p => Assert.True(Fitter.Fit(p).Pages.Length == 1, p.Key + " takes more than one page"));

    [Fact]
    public void Nothing_sticks_out_of_the_paper()
    {
        foreach (var page in PrintedPages.All)
        {
            var sheet = Fitter.Fit(page);
            for (var i = 0; i < sheet.Pages.Length; i++)
            {
                var laid = Laid.Stack([HeadLayout.Lay(page, sheet.Folio(i)), BlockLayout.LayAll(sheet.Pages[i], Paper.Inner)], Paper.Gap);
                Assert.True(laid.Height <= Paper.Height - (2 * Paper.Margin), page.Key);
                foreach (var mark in laid.Marks) Assert.True(Right(mark) <= Paper.Inner + 0.5, page.Key + ": " + mark);
            }
        }
    }

    [Fact]
    public void A_sheet_too_long_for_a_page_goes_on_says_so_and_loses_no_line()
    {
        var page = DayPage.Of(PlannedMorning.Plan(), DaySheets.Of(PlannedMorning.Plan(), new DateOnly(2026, 5, 8)), Language.English);
        var sheet = Fitter.Fit(page);
        Assert.True(sheet.Pages.Length > 1);
        Assert.Equal("Page 1 of " + sheet.Pages.Length, sheet.Folio(0));
        Assert.Equal($"This sheet goes on: page 1 of {sheet.Pages.Length}.", sheet.GoesOn(0));
        Assert.Equal(string.Empty, sheet.GoesOn(sheet.Pages.Length - 1));
        var printed = PrintedPages.Blocks(sheet).OfType<Block.Grid>().SelectMany(g => g.Rows).Select(r => string.Join('|', r.Select(c => PageText.Said(c.Runs)))).ToList();
        var asked = page.Arrangements[^1].OfType<Block.Grid>().SelectMany(g => g.Rows).Select(r => string.Join('|', r.Select(c => PageText.Said(c.Runs)))).ToList();
        Assert.Equal(asked, printed);
    }

    [Fact]
    public void Every_sheet_that_somebody_carries_is_one_page() =>
        Assert.All(PrintedPages.All.Where(p => !p.Key.Contains("in-the-way", StringComparison.Ordinal)), p => Assert.Single(Fitter.Fit(p).Pages));

    [Fact]
    public void A_long_table_is_cut_between_rows_under_a_head_of_its_own()
    {
        var grid = new Block.Grid("rows", [new Column("n"), new Column("box", Setting.Center)], [.. Enumerable.Range(0, 120).Select(i => (ImmutableArray<Cell>)[Cell.Of("row " + i), Cell.Box])]);
        var sheet = Fitter.Fit(Some([new Block.Heading("Long"), grid]));
        Assert.InRange(sheet.Pages.Length, 3, 5);
        Assert.Equal(120, PrintedPages.Blocks(sheet).OfType<Block.Grid>().Sum(g => g.Rows.Length));
        Assert.All(sheet.Pages, p => Assert.Contains(p, b => b is Block.Grid));
    }

    [Fact]
    public void A_heading_never_ends_a_page()
    {
        for (var lines = 25; lines < 60; lines++)
        {
            var words = Enumerable.Range(0, lines).Select(i => (Block)new Block.Paragraph([new Run("line " + i)]));
            var sheet = Fitter.Fit(Some([.. words, new Block.Heading("Next"), new Block.Paragraph([new Run("after the heading")])]));
            Assert.All(sheet.Pages, p => Assert.IsNotType<Block.Heading>(p[^1]));
        }
    }

    [Fact]
    public void A_picture_gives_way_before_words_do()
    {
        ImmutableArray<Block> Blocks(int lines) => [new Block.Picture((w, h) => new Drawing("t", "d") { Width = w, Height = h, Items = [] }, 100, 400), .. Enumerable.Range(0, lines).Select(i => (Block)new Block.Paragraph([new Run("line " + i)]))];
        double Height(int lines) => Fitter.Fit(Some(Blocks(lines))).Pages.Single().OfType<Block.Picture>().Single().Most;
        Assert.Equal(400, Height(3));
        Assert.InRange(Height(20), 100, 399);
    }

    [Fact]
    public void A_word_longer_than_its_column_is_broken_and_not_lost()
    {
        var word = new string('W', 400);
        var lines = TextSetter.Lines([new Run(word)], 100, Paper.Body);
        Assert.Equal(word, string.Concat(lines.SelectMany(l => l).Select(s => s.Text)));
        Assert.All(lines, l => Assert.True(l.Sum(s => SheetFonts.Width(s.Text, s.Face, Paper.Body)) <= 100.01));
    }

    [Fact]
    public void Many_no_spill_fields_still_all_stand_in_the_frame() =>
        Assert.Equal(28, Assert.Single(PrintedPages.Blocks(Fitter.Fit(PrintedPages.Water(28))).OfType<Block.Alarm>()).Lines.Single().Split(" · ").Length);

    private static double Right(Mark mark) => mark switch
    {
        Mark.Words words => words.X + SheetFonts.Width(words.Text, words.Face, words.Size),
        Mark.Rule rule => Math.Max(rule.X1, rule.X2),
        Mark.Frame frame => frame.X + frame.Width,
        Mark.Picture picture => picture.X + picture.Drawing.Width,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static SheetPage Some(ImmutableArray<Block> blocks) => new()
    {
        Key = "some",
        Language = Language.English,
        Kind = "Sheet",
        Title = "Some",
        Lead = "lead",
        Corner = ["corner"],
        Arrangements = [blocks],
        Folio = "Page {page} of {pages}",
        GoesOn = "Goes on: {page} of {pages}",
    };
}
