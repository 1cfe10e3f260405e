using Microsoft.Data.Sqlite;
using Watersown.Records;
using Watersown.Records.Database;

namespace Watersown.Database;

public sealed class OpeningTests
{
    public static TheoryData<Engine> Engines => Shelf.Engines;

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_new_book_has_a_name_and_keeps_it(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        string name;
        await using (var book = await shelf.OpenAsync())
        {
            name = await book.IdentityAsync();
            Assert.Equal(0, await book.UptoAsync());
            await book.AppendMarksAsync([Some.Mark(1)]);
        }

        await using var again = await shelf.OpenAsync();
        Assert.Equal(name, await again.IdentityAsync());
        Assert.Equal(1, await again.UptoAsync());
        Assert.Equal(engine == Engine.Sqlite ? shelf.Connection : null, again.File);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_book_that_is_opened_by_many_at_once_is_made_once(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        var books = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => shelf.OpenAsync())));
        Assert.Single((await Task.WhenAll(books.Select(b => b.IdentityAsync()))).Distinct());
        foreach (var book in books) await book.DisposeAsync();
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_book_of_a_newer_program_is_left_alone(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using (await shelf.OpenAsync())
        {
        }

        await ExecuteAsync(engine, shelf, "INSERT INTO schema_versions VALUES (9999, 'of tomorrow', '-', '-')");
        Assert.Equal(BookProblems.NewerSchema, Assert.Single((await Book.OpenAsync(shelf.Connection)).Problems).Kind);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_database_of_something_else_is_left_alone(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await ExecuteAsync(engine, shelf, "CREATE TABLE cattle (ear BIGINT)");
        Assert.Equal(BookProblems.NotABook, Assert.Single((await Book.OpenAsync(shelf.Connection)).Problems).Kind);
    }

    [Fact]
    public async Task A_file_that_is_no_book_is_said_to_be_none_and_not_touched()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        var text = string.Join('\n', Enumerable.Repeat("Two Gates, 142 ac", 100));
        await File.WriteAllTextAsync(shelf.Connection, text);
        Assert.Equal(BookProblems.NotABook, Assert.Single((await Book.OpenAsync(shelf.Connection)).Problems).Kind);
        Assert.Equal(text, await File.ReadAllTextAsync(shelf.Connection));
    }

    [Fact]
    public async Task A_torn_book_is_said_to_be_damaged_and_not_touched()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        await using (var book = await shelf.OpenAsync()) await book.AppendMarksAsync(Some.Marks(1, 50));
        var bytes = await File.ReadAllBytesAsync(shelf.Connection);
        new Random(5).NextBytes(bytes.AsSpan(100, 4000));
        await File.WriteAllBytesAsync(shelf.Connection, bytes);
        Assert.Equal(BookProblems.Damaged, Assert.Single((await Book.OpenAsync(shelf.Connection)).Problems).Kind);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(shelf.Connection));
    }

    [Fact]
    public async Task A_place_where_no_file_can_be_is_a_problem()
    {
        Assert.Equal(FileProblems.NotWritable, Assert.Single((await Book.OpenAsync("/nowhere/at/all/farm.watersown")).Problems).Kind);
        Assert.Equal(BookProblems.NotAConnection, Assert.Single((await Book.OpenAsync("")).Problems).Kind);
        Assert.Equal(BookProblems.NotAConnection, Assert.Single((await Book.OpenAsync("Host=x;Nonsense=1")).Problems).Kind);
    }

    [Fact]
    public async Task A_server_that_does_not_answer_is_a_problem_that_tells_no_password()
    {
        var problem = Assert.Single((await Book.OpenAsync("Host=127.0.0.1;Port=1;Username=ada;Password=sesame;Timeout=2")).Problems);
        Assert.Equal(BookProblems.ServerRefuses, problem.Kind);
        Assert.DoesNotContain("sesame", problem.Where + string.Concat(problem.Facts.Values), StringComparison.Ordinal);
    }

    private static async Task ExecuteAsync(Engine engine, Shelf shelf, string sql)
    {
        if (engine == Engine.Postgres)
        {
            await PostgresServer.ExecuteAsync(shelf.Connection, sql);
            return;
        }

        await using var connection = new SqliteConnection("Pooling=false;Data Source=" + shelf.Connection);
        await connection.OpenAsync();
        await using var command = new SqliteCommand(sql, connection);
        await command.ExecuteNonQueryAsync();
    }
}
