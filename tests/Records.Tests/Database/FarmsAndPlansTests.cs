using System.Text;
using Watersown.Records.Database;

namespace Watersown.Database;

public sealed class FarmsAndPlansTests
{
    private static readonly DateTimeOffset made = new(2026, 5, 8, 4, 50, 0, TimeSpan.FromHours(-7));

    public static TheoryData<Engine> Engines => Shelf.Engines;

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_farm_is_kept_by_version_with_who_and_why(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        Assert.Null(await book.LatestFarmAsync());
        await book.SaveFarmAsync(Bytes("{\"name\":\"Ünder\"}"), 0, "Ada", "first list");
        await book.SaveFarmAsync(Bytes("two"), 1, "Ben", "N4 is 88 ac");
        var latest = (await book.LatestFarmAsync())!;
        Assert.Equal((2L, "Ben", "N4 is 88 ac", "two"), (latest.Version, latest.Who, latest.Why, Text(latest.Document)));
        Assert.Equal("{\"name\":\"Ünder\"}", Text((await book.FarmAsync(1))!.Document));
        Assert.Null(await book.FarmAsync(3));
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task One_who_changed_an_older_farm_is_told_and_loses_nothing(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await book.SaveFarmAsync(Bytes("one"), 0, "Ada", "-");
        await book.SaveFarmAsync(Bytes("two"), 1, "Ada", "-");
        var late = await book.SaveFarmAsync(Bytes("other two"), 1, "Ben", "-");
        Assert.Equal(BookProblems.FarmChanged, Assert.Single(late.Problems).Kind);
        Assert.Equal("two", Text((await book.LatestFarmAsync())!.Document));
        // The reply was lost and the same is sent again.
        Assert.Equal(2, (await book.SaveFarmAsync(Bytes("two"), 1, "Ada", "-")).Value.Version);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task Of_many_who_change_a_farm_at_once_one_succeeds(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await using var other = await shelf.OpenAsync();
        var saved = await Task.WhenAll(Enumerable.Range(0, 20).Select(n => Task.Run(() => (n % 2 == 0 ? book : other).SaveFarmAsync(Bytes("farm " + n), 0, "w" + n, "-"))));
        Assert.Single(saved, s => s.HasValue);
        Assert.Equal(1, (await book.LatestFarmAsync())!.Version);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task Plans_are_numbered_without_a_gap_and_kept_as_issued(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await book.SaveFarmAsync(Bytes("farm"), 0, "Ada", "-");
        Assert.Equal(14, await book.NextPlanNumberAsync(14));
        var first = Plan(14, "fourteen");
        Assert.True((await book.SavePlanAsync(first)).HasValue);
        Assert.True((await book.SavePlanAsync(first)).HasValue);
        Assert.Equal(15, await book.NextPlanNumberAsync(3));
        foreach (var taken in new[] { Plan(14, "other"), Plan(16, "sixteen") })
            Assert.Equal(BookProblems.PlanNumberTaken, Assert.Single((await book.SavePlanAsync(taken)).Problems).Kind);
        Assert.True((await book.SavePlanAsync(Plan(15, "fifteen"))).HasValue);
        var kept = (await book.PlanAsync(14))!;
        Assert.Equal("fourteen", Text(kept.Document));
        Assert.Equal(first with { Document = default }, kept with { Document = default });
        Assert.Equal(15, (await book.LatestPlanAsync())!.Number);
        Assert.Equal([15L, 14L], (await book.PlansAsync()).Select(p => p.Number));
        Assert.Null(await book.PlanAsync(99));
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_plan_names_a_farm_that_the_book_has(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        Assert.Equal(BookProblems.NoSuchFarmVersion, Assert.Single((await book.SavePlanAsync(Plan(1, "one"))).Problems).Kind);
    }

    private static IssuedPlan Plan(long number, string text) => new(number, made, "Ada", "the wind", 1, 0, Bytes(text));

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static string Text(ReadOnlyMemory<byte> bytes) => Encoding.UTF8.GetString(bytes.Span);
}
