using System.IO.Compression;
using System.Text;
using System.Text.Json;
using CsCheck;
using Watersown.Database;
using Watersown.Records.Database;
using Watersown.Records.Season;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>What goes out of a book comes into another one whole, and joins with what is there.</summary>
public sealed class WholeFarmTests
{
    public static TheoryData<Engine, Engine> Pairs => new() { { Engine.Sqlite, Engine.Postgres }, { Engine.Postgres, Engine.Sqlite } };

    public static TheoryData<Engine> Engines => Shelf.Engines;

    [Theory]
    [MemberData(nameof(Pairs))]
    public async Task A_farm_goes_from_one_engine_to_the_other_whole(Engine from, Engine to)
    {
        await using var shelf = await Shelf.OfAsync(from);
        await using var other = await Shelf.OfAsync(to);
        var (clock, path) = (new HandClock(), Path.Combine(shelf.Folder, "farm.zip"));
        await using var book = await shelf.OpenAsync(clock);
        await SomeBook.FillAsync(book, clock);
        var manifest = (await ExportFarm.RunAsync(book, path, clock, replace: false)).Value;
        Assert.Equal((2L, 12L, 2L, 1L, 3L), (manifest.Farms, manifest.Marks, manifest.Plans, manifest.Photos, manifest.Accounts));
        await using var second = await other.OpenAsync(clock);
        var joined = await ImportFarm.RunAsync(path, second);
        Assert.Equal((new Joined(2, 12, 2, 1, 3), 0), (joined.Value, joined.Problems.Length));
        Assert.Equal(await SomeBook.SaidAsync(book), await SomeBook.SaidAsync(second));
        Assert.NotEqual(await book.IdentityAsync(), await second.IdentityAsync());
        // The same again adds nothing.
        Assert.Equal(new Joined(0, 0, 0, 0, 0), (await ImportFarm.RunAsync(path, second)).Value);
        Assert.Equal(await SomeBook.SaidAsync(book), await SomeBook.SaidAsync(second));
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task Any_book_comes_back_as_it_was(Engine engine)
    {
        await Gen.Select(SomeBook.Farms.Array[1, 3], SomeBook.Marks(30), Gen.Byte.Array[0, 300]).SampleAsync(
            async (farms, marks, photo) =>
            {
                await using var shelf = await Shelf.OfAsync(engine);
                await using var other = await Shelf.OfAsync(engine);
                var (clock, path) = (new HandClock(), Path.Combine(shelf.Folder, "farm.zip"));
                await using var book = await shelf.OpenAsync(clock);
                foreach (var farm in farms) await book.SaveFarmAsync(farm, (await book.LatestFarmAsync())?.Version ?? 0, "who \u00f1 \"", "why\n<b>");
                foreach (var some in marks.Chunk(7))
                {
                    clock.Now += TimeSpan.FromTicks(12_345);
                    await book.AppendMarksAsync(some, some.Length % 2 == 0 ? null : "somebody \u4e0a");
                }

                await book.SavePlanAsync(SomeBook.Plan(3, 1, marks.Length / 2));
                await book.AddAttachmentAsync(Some.Id(1), "image/jpeg", (byte[])[0xFF, 0xD8, 0xFF, .. photo]);
                Assert.Empty((await ExportFarm.RunAsync(book, path, clock, replace: false)).Problems);
                await using var second = await other.OpenAsync();
                var joined = await ImportFarm.RunAsync(path, second);
                Assert.Empty(joined.Problems);
                Assert.Equal(await SomeBook.SaidAsync(book), await SomeBook.SaidAsync(second));
            },
            iter: engine == Engine.Sqlite ? 20 : 5,
            threads: 1);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task Two_books_that_went_apart_have_all_marks_in_the_end(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var other = await Shelf.OfAsync(engine);
        var (clock, path) = (new HandClock(), Path.Combine(shelf.Folder, "farm.zip"));
        await using var book = await shelf.OpenAsync(clock);
        await using var second = await other.OpenAsync(clock);
        await SomeBook.FillAsync(book, clock);
        await ExportFarm.RunAsync(book, path, clock, replace: false);
        await ImportFarm.RunAsync(path, second);
        await book.AppendMarksAsync(Some.Marks(100, 5));
        await second.AppendMarksAsync([.. Some.Marks(103, 4), Some.Mark(900, "says one thing")]);
        await book.AppendMarksAsync([Some.Mark(900, "says another")]);
        await second.SaveFarmAsync(SomeBook.Farm(3), 2, "Odalie Marrowfen", "on the laptop");
        await second.SavePlanAsync(SomeBook.Plan(16, 3, 14));
        var name = await book.IdentityAsync();
        await ExportFarm.RunAsync(second, path, clock, replace: true);
        var joined = await ImportFarm.RunAsync(path, book);
        Assert.Equal(new Joined(1, 2, 1, 0, 0), joined.Value);
        Assert.Equal((WholeFarmProblems.MarksDiffer, "1"), (joined.Problems.Single().Kind, joined.Problems.Single().Facts["value"]));
        Assert.Equal(Enumerable.Range(1, 12).Concat(Enumerable.Range(100, 7)).Append(900).Select(Some.Id).Order(), (await book.MarksAfterAsync(0, 999)).Select(m => m.Mark.Id).Order());
        Assert.Equal(20, await book.UptoAsync());
        // The plan of the laptop knew the first twelve marks and two of its own, of which the book had one as its 16th and one as its 17th.
        Assert.Equal(17, (await book.PlanAsync(16))!.MarksUpto);
        Assert.Equal((3L, name), ((await book.LatestFarmAsync())!.Version, await book.IdentityAsync()));
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task What_was_changed_on_both_sides_stays_the_books_own_and_is_said(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var other = await Shelf.OfAsync(engine);
        var (clock, path) = (new HandClock(), Path.Combine(shelf.Folder, "farm.zip"));
        await using var book = await shelf.OpenAsync(clock);
        await using var second = await other.OpenAsync(clock);
        await SomeBook.FillAsync(book, clock);
        await second.SaveFarmAsync(SomeBook.Farm(9), 0, "Odalie Marrowfen", "another farm");
        await second.AddAttachmentAsync(Some.Id(7), "image/jpeg", Some.Photo(500, 9));
        await second.AddAccountAsync("Odalie Marrowfen", Role.Owner, "her own secret");
        var before = await SomeBook.SaidAsync(second);
        await ExportFarm.RunAsync(book, path, clock, replace: false);
        var joined = await ImportFarm.RunAsync(path, second);
        Assert.Equal(new Joined(0, 12, 0, 0, 2), joined.Value);
        Assert.Equal([WholeFarmProblems.FarmDiffers, WholeFarmProblems.PlansDiffer, WholeFarmProblems.PhotosDiffer], joined.Problems.Select(p => p.Kind));
        Assert.Equal(before.Split('\n').Where(l => !l.StartsWith("Account", StringComparison.Ordinal)), (await SomeBook.SaidAsync(second)).Split('\n').Where(l => !l.StartsWith("mark", StringComparison.Ordinal) && !l.StartsWith("Account", StringComparison.Ordinal)));
        Assert.Equal("her own secret", (await second.AccountAsync("Odalie Marrowfen"))!.PasswordHash);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task Nothing_that_lets_anybody_in_leaves_the_book(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        var (clock, path) = (new HandClock(), Path.Combine(shelf.Folder, "farm.zip"));
        await using var book = await shelf.OpenAsync(clock);
        await SomeBook.FillAsync(book, clock);
        await book.SetAsync("text-secret", "of the texts");
        await ExportFarm.RunAsync(book, path, clock, replace: false);
        using var archive = await ZipFile.OpenReadAsync(path);
        foreach (var entry in archive.Entries)
        {
            using var reader = new StreamReader(await entry.OpenAsync(), Encoding.Latin1);
            var text = await reader.ReadToEndAsync();
            foreach (var secret in new[] { "a secret of", "of a key", "of the texts", "password" }) Assert.DoesNotContain(secret, text, StringComparison.Ordinal);
        }

        Assert.Equal(["accounts.jsonl", "farm.json", "farms.jsonl", "farms/1.json", "manifest.json", "marks.jsonl", "photos.jsonl", "photos/00000000000000000000000000000007.jpg", "plans.jsonl", "plans/14.json", "plans/15.json"], archive.Entries.Select(e => e.FullName).Order(StringComparer.Ordinal));
        using var manifest = await JsonDocument.ParseAsync(await archive.GetEntry("manifest.json")!.OpenAsync());
        Assert.Equal(["watersown-farm", "1"], [manifest.RootElement.GetProperty("format").GetString(), manifest.RootElement.GetProperty("version").GetRawText()]);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task The_same_book_is_written_as_the_same_bytes(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        var clock = new HandClock();
        await using var book = await shelf.OpenAsync(clock);
        await SomeBook.FillAsync(book, clock);
        foreach (var name in new[] { "one", "two" }) Assert.True((await ExportFarm.RunAsync(book, Path.Combine(shelf.Folder, name), clock, replace: false)).HasValue);
        Assert.Equal(await File.ReadAllBytesAsync(Path.Combine(shelf.Folder, "one")), await File.ReadAllBytesAsync(Path.Combine(shelf.Folder, "two")));
        Assert.Equal(FileProblems.Exists, Assert.Single((await ExportFarm.RunAsync(book, Path.Combine(shelf.Folder, "one"), clock, replace: false)).Problems).Kind);
        Assert.Equal(FileProblems.NotWritable, Assert.Single((await ExportFarm.RunAsync(book, Path.Combine(shelf.Folder, "no", "such", "folder"), clock, replace: false)).Problems).Kind);
    }

    [Fact]
    public async Task An_empty_book_is_a_file_too()
    {
        await using var shelf = await Shelf.OfAsync(Engine.Sqlite);
        await using var book = await shelf.OpenAsync();
        var path = Path.Combine(shelf.Folder, "farm.zip");
        Assert.True((await ExportFarm.RunAsync(book, path, TimeProvider.System, replace: false)).HasValue);
        Assert.Equal(new Joined(0, 0, 0, 0, 0), (await ImportFarm.RunAsync(path, book)).Value);
    }
}
