using Watersown.Database;
using Watersown.Records.Season;

namespace Watersown.Seasons;

public sealed class OpenSeasonTests
{
    public static TheoryData<Engine> Engines => Shelf.Engines;

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_book_without_a_farm_says_so_and_one_with_a_farm_tells_its_season(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        var stop = TestContext.Current.CancellationToken;
        Assert.Equal([SeasonFileProblems.NoFarm], (await OpenSeason.RunAsync(book, PlannedMorning.Now, stop)).Problems.Select(p => p.Kind));
        await book.SaveFarmAsync(SomeBook.Farm(1), 0, "Odalie Marrowfen", "first", stop);
        await book.AppendMarksAsync(Some.Marks(1, 12), "Lucero Quintabar", stop);
        var season = await OpenSeason.RunAsync(book, PlannedMorning.Now.AddDays(30), stop);
        Assert.Equal(28, season.Value.State.Farm.Fields.Length);
        Assert.Equal(12, season.Value.Log.Count);
    }
}
