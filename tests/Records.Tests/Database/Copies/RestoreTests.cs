using Watersown.Records;
using Watersown.Records.Database;
using Watersown.Records.Database.Copies;

namespace Watersown.Database.Copies;

/// <summary>A copy brought back: whole, never over a book that is open, and never without the old one beside it.</summary>
public sealed class RestoreTests
{
    public static TheoryData<Engine> Engines => Shelf.Engines;

    public static TheoryData<Engine, Engine> Pairs => new() { { Engine.Sqlite, Engine.Sqlite }, { Engine.Sqlite, Engine.Postgres }, { Engine.Postgres, Engine.Sqlite }, { Engine.Postgres, Engine.Postgres } };

    [Theory]
    [MemberData(nameof(Pairs))]
    public async Task A_copy_comes_back_to_a_place_where_nothing_is(Engine from, Engine to)
    {
        await using var shelf = await Shelf.OfAsync(from);
        await using var other = await Shelf.OfAsync(to);
        var clock = new HandClock();
        await using var book = await shelf.OpenAsync(clock);
        await SomeBook.FillAsync(book, clock);
        var copy = (await Folder(shelf).MakeAsync(book, clock)).Value.Copy.Path;
        var restored = await RestoreBook.RunAsync(copy, other.Connection, replace: false, clock);
        Assert.Equal((12L, null), (restored.Value.Counts.Marks, restored.Value.Kept));
        await using var back = await other.OpenAsync(clock);
        Assert.Equal(await SomeBook.SaidAsync(book), await SomeBook.SaidAsync(back));
        Assert.NotEqual(await book.IdentityAsync(), await back.IdentityAsync());
        // A file comes back with its people's secrets, the open form without, which is said.
        var files = (from, to) == (Engine.Sqlite, Engine.Sqlite);
        Assert.Equal(files ? "a secret of Odalie" : null, (await back.AccountAsync("Odalie Marrowfen"))!.PasswordHash);
        Assert.Equal(files ? [] : [CopyProblems.WithoutSecrets], restored.Problems.Select(p => p.Kind));
        Assert.True(File.Exists(copy));
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_book_that_is_there_is_kept_beside_and_only_when_asked(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        var clock = new HandClock();
        string copy, said, name;
        await using (var book = await shelf.OpenAsync(clock))
        {
            await SomeBook.FillAsync(book, clock);
            copy = (await Folder(shelf).MakeAsync(book, clock)).Value.Copy.Path;
            (said, name) = (await SomeBook.SaidAsync(book), await book.IdentityAsync());
            await book.AppendMarksAsync(Some.Marks(700, 4));
        }

        Assert.Equal(CopyProblems.BookIsThere, Assert.Single((await RestoreBook.RunAsync(copy, shelf.Connection, replace: false, clock)).Problems).Kind);
        var restored = (await RestoreBook.RunAsync(copy, shelf.Connection, replace: true, clock)).Value;
        await using (var back = await shelf.OpenAsync(clock))
        {
            Assert.Equal(said, await SomeBook.SaidAsync(back));
            Assert.NotEqual(name, await back.IdentityAsync());
        }

        if (engine == Engine.Postgres)
        {
            Assert.StartsWith("before_20260508_", restored.Kept, StringComparison.Ordinal);
            await PostgresServer.ExecuteAsync(shelf.Connection, $"DO $$ BEGIN ASSERT (SELECT COUNT(*) = 16 FROM {restored.Kept}.marks); END $$");
        }
        else
        {
            Assert.StartsWith(shelf.Connection + ".before-20260508-", restored.Kept, StringComparison.Ordinal);
            await using var before = (await Book.OpenAsync(restored.Kept!)).Value;
            Assert.Equal(16, await before.UptoAsync());
        }
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_book_that_is_open_stays_as_it_is(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        var clock = new HandClock();
        await using var book = await shelf.OpenAsync(clock);
        await SomeBook.FillAsync(book, clock);
        var copy = (await Folder(shelf).MakeAsync(book, clock)).Value.Copy.Path;
        await book.AppendMarksAsync(Some.Marks(700, 4));
        Assert.Equal(CopyProblems.BookIsOpen, Assert.Single((await RestoreBook.RunAsync(copy, shelf.Connection, replace: true, clock)).Problems).Kind);
        Assert.Equal(16, await book.UptoAsync());
        Assert.DoesNotContain(Directory.GetFiles(shelf.Folder), f => f.Contains(".part-", StringComparison.Ordinal) || f.Contains(".before-", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_book_that_is_being_put_in_place_is_not_opened()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        await using (await shelf.OpenAsync())
        {
        }

        await using (BookHold.Alone(shelf.Connection)) Assert.Equal(BookProblems.BeingRestored, Assert.Single((await Book.OpenAsync(shelf.Connection)).Problems).Kind);
        await using var book = await shelf.OpenAsync();
        Assert.Null(BookHold.Alone(shelf.Connection));
    }

    [Fact]
    public async Task A_log_that_is_left_of_an_old_book_is_not_taken_for_one_of_the_new()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        var clock = new HandClock();
        string copy;
        await using (var book = await shelf.OpenAsync(clock))
        {
            await book.AppendMarksAsync(Some.Marks(1, 3));
            copy = (await Folder(shelf).MakeAsync(book, clock)).Value.Copy.Path;
            await book.AppendMarksAsync(Some.Marks(50, 30));
            // As after a power cut: what was written last is in the log alone.
            File.Copy(shelf.Connection, shelf.Connection + ".cut");
            File.Copy(shelf.Connection + "-wal", shelf.Connection + ".cut-wal");
        }

        var cut = shelf.Connection + ".cut";
        var restored = (await RestoreBook.RunAsync(copy, cut, replace: true, clock)).Value;
        await using (var back = (await Book.OpenAsync(cut)).Value) Assert.Equal(3, await back.UptoAsync());
        await using (var before = (await Book.OpenAsync(restored.Kept!)).Value) Assert.Equal(33, await before.UptoAsync());
        File.Delete(cut);
        File.Copy(restored.Kept!, cut + "-wal");
        await RestoreBook.RunAsync(copy, cut, replace: false, clock);
        await using (var again = (await Book.OpenAsync(cut)).Value) Assert.Equal(3, await again.UptoAsync());
    }

    [Fact]
    public async Task A_damaged_book_is_replaced_and_kept_to_the_last_byte()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        var clock = new HandClock();
        string copy;
        await using (var book = await shelf.OpenAsync(clock))
        {
            await book.AppendMarksAsync(Some.Marks(1, 50));
            copy = (await Folder(shelf).MakeAsync(book, clock)).Value.Copy.Path;
        }

        var bytes = await File.ReadAllBytesAsync(shelf.Connection);
        new Random(5).NextBytes(bytes.AsSpan(100, 4000));
        await File.WriteAllBytesAsync(shelf.Connection, bytes);
        var restored = (await RestoreBook.RunAsync(copy, shelf.Connection, replace: true, clock)).Value;
        Assert.Equal(bytes, await File.ReadAllBytesAsync(restored.Kept!));
        await using var back = await shelf.OpenAsync();
        Assert.Equal(50, await back.UptoAsync());
    }

    [Fact]
    public async Task What_is_no_copy_is_not_brought_back()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        var copy = Path.Combine(shelf.Folder, "copy");
        Assert.Equal(FileProblems.NotThere, Assert.Single((await RestoreBook.RunAsync(copy, shelf.Connection, replace: false, TimeProvider.System)).Problems).Kind);
        await File.WriteAllTextAsync(copy, new string('x', 5000));
        Assert.Equal(BookProblems.NotABook, Assert.Single((await RestoreBook.RunAsync(copy, shelf.Connection, replace: false, TimeProvider.System)).Problems).Kind);
        await File.WriteAllTextAsync(copy, "PK\u0003\u0004 and no more");
        Assert.True((await RestoreBook.RunAsync(copy, shelf.Connection, replace: false, TimeProvider.System)).IsRefused);
        Assert.False(File.Exists(shelf.Connection));
    }

    private static CopyFolder Folder(Shelf shelf) => CopyFolder.Of(shelf.Connection, Path.Combine(shelf.Folder, "backups"));
}
