using System.Text.RegularExpressions;
using Microsoft.Data.Sqlite;
using Watersown.Records;
using Watersown.Records.Database;
using Watersown.Records.Database.Copies;

namespace Watersown.Database.Copies;

/// <summary>Copies of a book: made while others write, checked, kept for so long.</summary>
public sealed partial class CopyTests
{
    public static TheoryData<Engine> Engines => Shelf.Engines;

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_copy_holds_all_that_the_book_held(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        var clock = new HandClock();
        await using var book = await shelf.OpenAsync(clock);
        await SomeBook.FillAsync(book, clock);
        var folder = Folder(shelf);
        var made = (await folder.MakeAsync(book, clock)).Value;
        Assert.Equal((2L, 12L, 2L, 1L, 3L), (made.Counts.Farms, made.Counts.Marks, made.Counts.Plans, made.Counts.Photos, made.Counts.Accounts));
        Assert.Matches(Name(), Path.GetFileName(made.Copy.Path));
        Assert.Equal(clock.Now, made.Copy.Made);
        Assert.Equal([made.Copy], folder.List());
        Assert.Equal(made, await folder.NewestGoodAsync());
        if (!OperatingSystem.IsWindows()) Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(made.Copy.Path));
        // Two in one second are two.
        Assert.NotEqual(made.Copy.Path, (await folder.MakeAsync(book, clock)).Value.Copy.Path);
        Assert.Equal(2, Directory.GetFiles(folder.Path).Length);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task Those_who_mark_meanwhile_do_not_wait_and_lose_nothing(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        await book.AppendMarksAsync(Some.Marks(1, 3_000));
        var copying = Folder(shelf).MakeAsync(book, TimeProvider.System);
        for (var i = 0; i < 30; i++) await book.AppendMarksAsync([Some.Mark(10_000 + i)]);
        var made = (await copying).Value;
        Assert.InRange(made.Counts.Marks, 3_000, 3_030);
        Assert.Equal(3_030, await book.UptoAsync());
    }

    [Fact]
    public async Task Old_copies_go_and_the_last_one_never()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        var clock = new HandClock();
        await using var book = await shelf.OpenAsync(clock);
        var folder = Folder(shelf);
        for (var day = 0; day < 5; day++)
        {
            await folder.MakeAsync(book, clock);
            clock.Now += TimeSpan.FromDays(1);
        }

        // Not copies of this book, whatever they are.
        var others = new[] { "farm.book", "farm-notes.book", "farm-20200101-000000.txt", "field-20200101-000000.book" }.Select(n => Path.Combine(folder.Path, n)).ToList();
        foreach (var other in others) await File.WriteAllTextAsync(other, "-");
        var broken = Path.Combine(folder.Path, "farm-20200101-000000.book.part-1234abcd");
        await File.WriteAllTextAsync(broken, "-");
        File.SetLastWriteTimeUtc(broken, (clock.Now - TimeSpan.FromDays(1)).UtcDateTime);
        Assert.Equal(2, folder.Prune(TimeSpan.FromDays(3), clock.Now).Length);
        Assert.Equal(3, folder.List().Length);
        Assert.False(File.Exists(broken));
        Assert.All(others, o => Assert.True(File.Exists(o)));
        Assert.Equal(2, folder.Prune(TimeSpan.FromDays(3), clock.Now + TimeSpan.FromDays(400)).Length);
        Assert.Single(folder.List());
        Assert.Empty(folder.Prune(TimeSpan.FromDays(3), clock.Now + TimeSpan.FromDays(800)));
    }

    [Fact]
    public async Task A_copy_that_was_damaged_is_passed_over_for_an_older_good_one()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        var clock = new HandClock();
        await using var book = await shelf.OpenAsync(clock);
        await book.AppendMarksAsync(Some.Marks(1, 40));
        var folder = Folder(shelf);
        Assert.Null(await folder.NewestGoodAsync());
        var good = (await folder.MakeAsync(book, clock)).Value;
        clock.Now += TimeSpan.FromDays(1);
        await book.AppendMarksAsync(Some.Marks(50, 1));
        var torn = (await folder.MakeAsync(book, clock)).Value;
        // One letter of a mark, where the engine itself sees nothing wrong.
        await using (var connection = new SqliteConnection("Pooling=false;Data Source=" + torn.Copy.Path))
        {
            await connection.OpenAsync();
            await using var command = new SqliteCommand("UPDATE marks SET body = replace(body, 'ck 5 wet', 'ck 5 dry') WHERE seq = 7", connection);
            await command.ExecuteNonQueryAsync();
        }

        Assert.Equal(BookProblems.Damaged, Assert.Single((await CopyFolder.LookAsync(torn.Copy.Path)).Problems).Kind);
        Assert.Equal(good, await folder.NewestGoodAsync());
        var offer = await OfferCopy.OfAsync(shelf.Connection);
        Assert.Equal((CopyProblems.GoodCopy, good.Copy.Path, "40"), (offer.Kind, offer.Facts["copy"], offer.Facts["count"]));
        File.Delete(good.Copy.Path);
        Assert.Equal(CopyProblems.NoCopy, (await OfferCopy.OfAsync(shelf.Connection)).Kind);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_book_is_looked_over_from_end_to_end(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        var clock = new HandClock();
        await using var book = await shelf.OpenAsync(clock);
        await SomeBook.FillAsync(book, clock);
        Assert.Null(await book.LookOverAsync());
        Assert.Null(await book.CheckAsync());
        foreach (var (sql, told) in new[]
        {
            ("UPDATE plans SET document = '{}' WHERE number = 15", "plan 15"),
            ("UPDATE farms SET document = '{}' WHERE version = 1", "farm 1"),
            ("DELETE FROM marks WHERE seq = 5", "mark 5 is missing"),
        })
        {
            await book.WriteAsync(async connection =>
            {
                await using var command = connection.CreateCommand();
                command.CommandText = sql;
                return await command.ExecuteNonQueryAsync();
            });
            var fault = await book.CheckAsync();
            Assert.Equal(BookProblems.Damaged, fault!.Kind);
            Assert.StartsWith(told, fault.Facts["value"], StringComparison.Ordinal);
            // A copy of what is damaged is no copy.
            Assert.True((await Folder(shelf).MakeAsync(book, clock)).IsRefused || engine == Engine.Postgres);
        }

        Assert.Empty(engine == Engine.Sqlite ? Folder(shelf).List() : []);
    }

    [Fact]
    public async Task A_place_where_no_copy_can_be_is_told_and_nothing_stays()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        await using var book = await shelf.OpenAsync();
        var inTheWay = Path.Combine(shelf.Folder, "a-file");
        await File.WriteAllTextAsync(inTheWay, "-");
        Assert.Equal(CopyProblems.NotMade, Assert.Single((await CopyFolder.Of(shelf.Connection, inTheWay).MakeAsync(book, TimeProvider.System)).Problems).Kind);
        Assert.Equal("-", await File.ReadAllTextAsync(inTheWay));
        Assert.Empty(CopyFolder.Of(shelf.Connection, inTheWay).List());
    }

    [Fact]
    public async Task Looking_at_a_copy_changes_no_byte_and_leaves_no_file()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        await using var book = await shelf.OpenAsync();
        await book.AppendMarksAsync(Some.Marks(1, 5));
        var made = (await Folder(shelf).MakeAsync(book, TimeProvider.System)).Value;
        var bytes = await File.ReadAllBytesAsync(made.Copy.Path);
        Assert.True((await CopyFolder.LookAsync(made.Copy.Path)).HasValue);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(made.Copy.Path));
        Assert.Single(Directory.GetFiles(Path.GetDirectoryName(made.Copy.Path)!));
        Assert.Equal(FileProblems.NotThere, Assert.Single((await CopyFolder.LookAsync(made.Copy.Path + "x")).Problems).Kind);
        await File.WriteAllTextAsync(made.Copy.Path, "no book at all, only some words that are long enough to be looked at");
        Assert.Equal(BookProblems.NotABook, Assert.Single((await CopyFolder.LookAsync(made.Copy.Path)).Problems).Kind);
    }

    [Fact]
    public void A_copy_with_less_of_anything_than_the_book_is_none()
    {
        // No way is known to make the engine do so, which is what COPY-002 is for.
        var book = new BookCounts(1, 2, 3, 4, 5, null);
        Assert.True((book with { Marks = 9 }).Holds(book));
        foreach (var less in new[] { book with { Farms = 0 }, book with { Marks = 1 }, book with { Plans = 2 }, book with { Photos = 3 }, book with { Accounts = 4 } }) Assert.False(less.Holds(book));
    }

    private static CopyFolder Folder(Shelf shelf) => CopyFolder.Of(shelf.Connection, Path.Combine(shelf.Folder, "backups"));

    [GeneratedRegex(@"^farm(?:_[0-9a-f]+)?-\d{8}-\d{6}\.(?:book|zip)$", RegexOptions.NonBacktracking)]
    private static partial Regex Name();
}
