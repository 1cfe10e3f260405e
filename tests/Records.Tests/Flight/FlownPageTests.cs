using Watersown.Flight;
using Watersown.Flight.Flown;
using Watersown.Records.Files.Sheets;
using Watersown.Schedule.Sheets;
using Watersown.Shapes;
using Watersown.Wording;

namespace Watersown.Records.Flight;

/// <summary>The example's track over Crooked Box: of 29 passes the thirteenth is missing, and one began 90 m late.</summary>
public sealed class FlownPageTests
{
    private static readonly DateTimeOffset Made = new(2026, 5, 8, 18, 0, 0, TimeSpan.FromHours(-7));

    private static string Example(string name) => Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", name);

    private static async Task<FlownReport> ReportAsync(SeedOut? seed = null)
    {
        var request = new VerifyRequest(Example("boundaries.geojson"), Example("s2-track.csv"), edge => new FlownQuestion(edge, Length.FromFeet(50)) { Rate = SeedRate.FromPoundsPerAcre(155), Out = seed }) { Field = "S2" };
        return (await VerifyTrack.RunAsync(request, TestContext.Current.CancellationToken)).Value.Report;
    }

    private static FlownMatches Matches(FlownReport report) => FlownAccounts.Of(new FlownAccount(report.Net, report.Flown, report.Net * report.Skip.Error.Share)
    {
        Seed = SeedLeftOver.Of(new SownSeed(SoakedSeed.FromPounds(15_500), SoakedSeed.Zero, report.Net, SeedRate.FromPoundsPerAcre(155)) { WetFactor = 1.25 }),
        BilledLand = Area.FromAcres(87),
        BilledSeed = SoakedSeed.FromPounds(16_500),
    });

    [Fact]
    public async Task The_missing_pass_is_the_first_place_bare_and_thin()
    {
        var report = await ReportAsync();
        var first = report.Cover.ThinPlaces[0];
        // Fifty feet by 2,640 are 3.03 ac, more or less what both neighbors strayed, 0.4 m each over 805 m.
        Assert.Equal(3.03, first.Area.Acres, 0.2);
        Assert.Equal(2640, first.Long.Feet, 3.0);
        // Neighbors 100 ft apart reach 33⅓ ft; less than 40 % lies beyond 26⅔ ft of either: 46⅔ ft between them.
        Assert.Equal((100 - (2 * 80.0 / 3)) * 2640 / 43_560, report.Deposit.Places[0].Area.Acres, 0.2);
        Assert.DoesNotContain(report.ThinPlaces, p => p.Area.Acres > 1);
    }

    [Fact]
    public async Task Areas_by_outlines_lie_within_the_error_of_the_cells_and_too_many_places_are_refused()
    {
        var report = await ReportAsync();
        var (exact, shares) = (ExactAreas.Of(report, "s2-track.csv").Value, report.Cover.Shares);
        Assert.Equal(exact.None.SquareMeters, shares.Skipped.Area.SquareMeters, shares.Skipped.Error.SquareMeters);
        Assert.Equal(exact.Once.SquareMeters, shares.Single.Area.SquareMeters, shares.Single.Error.SquareMeters);
        Assert.Equal(exact.More.SquareMeters, shares.Overlapped.Area.SquareMeters, shares.Overlapped.Error.SquareMeters);
        var line = Enumerable.Range(0, ExactAreas.MostPlaces + 1).Select(i => new PlanePoint(i, 0)).ToImmutableArray();
        Assert.Equal([ExactAreas.TooMany], ExactAreas.Of(report with { Landed = [report.Landed[0] with { Line = line }] }, "s2-track.csv").Problems.Select(p => p.Kind));
    }

    [Fact]
    public async Task By_the_scale_the_map_holds_the_seed_that_went_out()
    {
        var deposit = (await ReportAsync(new SeedOut(SoakedSeed.FromPounds(15_500), 1.25))).Deposit;
        Assert.Equal(15_500 / 1.25, (SeedRate.FromPoundsPerAcre(155) * deposit.Laid).Pounds, 0.5);
        Assert.Equal(deposit.Laid.Acres * (1 - deposit.OffField.Share), deposit.Mean * deposit.Land.Acres, 1e-6);
    }

    [Theory]
    [InlineData(Language.English)]
    [InlineData(Language.Spanish)]
    public async Task It_stands_on_one_page_with_its_map_places_and_invoice(Language language)
    {
        var report = await ReportAsync(new SeedOut(SoakedSeed.FromPounds(15_500), 1.25));
        var page = FlownPage.Of(report, new FlownPaper("Crooked Box", "s2-track.csv") { Matches = Matches(report), Invoice = "A-117", Made = Made }, new Telling(language, metric: false, Made));
        var fitted = Fitter.Fit(page);
        var blocks = Assert.Single(fitted.Pages);
        Assert.Single(blocks.OfType<Block.Side>());
        var grids = blocks.OfType<Block.Grid>().ToList();
        Assert.Equal("1", grids[0].Rows[0][0].Runs[0].Text);
        Assert.Equal(4, grids[^1].Rows.Length);
        Assert.NotEmpty(PdfSheet.Write(fitted, Made));
    }

    [Fact]
    public async Task A_file_that_is_there_stays_unless_it_may_go()
    {
        var folder = Directory.CreateTempSubdirectory("watersown-flown-");
        try
        {
            var page = FlownPage.Of(await ReportAsync(), new FlownPaper("S2", "s2-track.csv") { Made = Made }, new Telling(Language.English, metric: true, Made));
            var path = Path.Combine(folder.FullName, "s2.pdf");
            Assert.Equal(path, WriteFlownPage.Run(page, path, Made, replace: false).Value);
            Assert.Equal([FileProblems.Exists], WriteFlownPage.Run(page, path, Made, replace: false).Problems.Select(p => p.Kind));
            Assert.True(WriteFlownPage.Run(page, path, Made, replace: true).HasValue);
            Assert.Equal([FileProblems.NotWritable], WriteFlownPage.Run(page, Path.Combine(folder.FullName, "none", "s2.pdf"), Made, replace: false).Problems.Select(p => p.Kind));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
