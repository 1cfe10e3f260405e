using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using CsCheck;
using Watersown.Database;
using Watersown.Records.Database;
using Watersown.Records.Season;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>Files that were damaged, cut short or made by somebody who means ill: all of it is said, and nothing is taken.</summary>
public sealed class HostileFileTests : IAsyncLifetime
{
    private Shelf shelf = null!;
    private Book book = null!;
    private byte[] good = [];
    private string before = string.Empty;

    public async ValueTask InitializeAsync()
    {
        shelf = await Shelf.OfAsync(Engine.Sqlite);
        var clock = new HandClock();
        await using var from = (await Book.OpenAsync(Path.Combine(shelf.Folder, "from.book"), clock)).Value;
        await SomeBook.FillAsync(from, clock);
        await ExportFarm.RunAsync(from, FilePath, clock, replace: false);
        good = await File.ReadAllBytesAsync(FilePath);
        book = await shelf.OpenAsync();
        await book.AppendMarksAsync(Some.Marks(50, 3));
        before = await SomeBook.SaidAsync(book);
    }

    public async ValueTask DisposeAsync()
    {
        await book.DisposeAsync();
        await shelf.DisposeAsync();
    }

    private string FilePath => Path.Combine(shelf.Folder, "farm.zip");

    [Theory]
    [InlineData("../../etc/cron.d/evil")]
    [InlineData("photos/../../evil.jpg")]
    [InlineData("/etc/passwd")]
    [InlineData("..\\evil.json")]
    [InlineData("C:/evil.json")]
    public Task A_name_that_points_outside_is_refused(string name) => RefusedAsync(Changed(Put(name, "x"u8.ToArray())), WholeFarmProblems.PointsOutside);

    [Fact]
    public Task A_bomb_is_not_unpacked() => RefusedAsync(Listed(("plans/16.json", new byte[30 * 1024 * 1024], 1)), WholeFarmProblems.TooLarge);

    [Fact]
    public Task A_bomb_that_lies_about_its_size_is_stopped_at_it() => RefusedAsync(Changed(Put("marks.jsonl", new byte[200 * 1024 * 1024])), WholeFarmProblems.PartDiffers);

    [Fact]
    public Task A_line_without_end_is_refused() => RefusedAsync(Listed(("marks.jsonl", Encoding.UTF8.GetBytes(Convert.ToHexString(RandomNumberGenerator.GetBytes(400_000))), 1)), WholeFarmProblems.TooLarge);

    [Fact]
    public Task More_parts_than_a_farm_has_are_refused() => RefusedAsync(Changed(archive =>
    {
        for (var i = 0; i < WholeFarmForm.PartsMost + 1; i++) archive.CreateEntry("p" + i);
    }), WholeFarmProblems.TooLarge);

    [Fact]
    public Task Counts_beyond_all_reason_are_refused() =>
        RefusedAsync(WithManifest(text => text.Replace("\"count\": 12", "\"count\": 9223372036854775807", StringComparison.Ordinal)), WholeFarmProblems.Lacks);

    [Fact]
    public Task Sizes_beyond_all_reason_are_refused() => RefusedAsync(WithManifest(text => text.Replace("\"bytes\": ", "\"bytes\": 99999999999", StringComparison.Ordinal)), WholeFarmProblems.Lacks);

    [Fact]
    public Task A_count_that_is_wrong_is_told() => RefusedAsync(WithManifest(text => text.Replace("\"count\": 12", "\"count\": 13", StringComparison.Ordinal)), WholeFarmProblems.PartDiffers);

    [Fact]
    public Task One_changed_letter_is_told() => RefusedAsync(Changed(Put("plans/14.json", "{\"plan\":14,\"text\":\"!\"}"u8.ToArray())), WholeFarmProblems.PartDiffers);

    [Fact]
    public Task A_part_that_is_missing_is_told() => RefusedAsync(Changed(a => a.GetEntry("plans/14.json")!.Delete()), WholeFarmProblems.PartMissing);

    [Fact]
    public Task A_part_that_nobody_listed_is_told() => RefusedAsync(Changed(Put("extra.txt", "x"u8.ToArray())), WholeFarmProblems.PartUnknown);

    [Fact]
    public Task A_part_that_stands_twice_is_told() => RefusedAsync(Changed(a => a.CreateEntry("farm.json")), WholeFarmProblems.PartUnknown);

    [Fact]
    public Task A_listed_part_that_no_list_names_is_told() => RefusedAsync(Listed(("plans/99.json", "{}"u8.ToArray(), 1)), WholeFarmProblems.PartUnknown);

    [Fact]
    public Task A_newer_form_is_left_to_the_newer_program() => RefusedAsync(WithManifest(text => text.Replace("\"version\": 1", "\"version\": 2", StringComparison.Ordinal)), WholeFarmProblems.NewerForm);

    [Fact]
    public Task A_zip_of_something_else_is_none() => RefusedAsync(Changed(a => a.GetEntry("manifest.json")!.Delete()), WholeFarmProblems.NotOne);

    [Fact]
    public Task A_mark_that_the_book_would_refuse_is_told_with_its_line() => RefusedAsync(
        Listed(("marks.jsonl", "{\"received\":\"2026-05-08T11:50:00Z\",\"mark\":{\"id\":\"short\",\"kind\":\"note\"}}\n"u8.ToArray(), 1)), Watersown.Documents.Logbooks.LogbookProblems.NotAName, "marks.jsonl line 1");

    [Theory]
    [InlineData("farms.jsonl", """{"version":3,"saved":"2026-05-08T11:50:00Z","who":"-","why":"-"}""", "version")]
    [InlineData("plans.jsonl", """{"number":14,"made":"2026-05-08T11:50:00Z","who":"-","why":"-","farm_version":7,"marks_upto":0}""", "farm_version")]
    [InlineData("plans.jsonl", """{"number":14,"made":"2026-05-08T11:50:00Z","who":"-","why":"-","farm_version":1,"marks_upto":900}""", "marks_upto")]
    [InlineData("plans.jsonl", """{"number":14,"made":"yesterday","who":7,"why":"-","farm_version":1,"marks_upto":0}""", "made")]
    [InlineData("photos.jsonl", """{"id":"../../x","media_type":"image/svg+xml","received":"2026-05-08T11:50:00Z"}""", "id")]
    [InlineData("accounts.jsonl", """{"name":"","role":"king","created":"2026-05-08T11:50:00Z"}""", "name")]
    [InlineData("marks.jsonl", """{"received":"2026-05-08T11:50:00Z"}""", "mark")]
    public async Task A_line_that_lacks_something_is_told_with_what(string part, string line, string lacks)
    {
        var problems = await RefusedAsync(Listed((part, Encoding.UTF8.GetBytes(line + "\n"), 1)), WholeFarmProblems.Lacks);
        Assert.Contains(problems, p => p.Where.StartsWith(part, StringComparison.Ordinal) && p.Facts["value"] == lacks);
    }

    [Fact]
    public Task A_farm_that_no_desk_could_open_is_refused() => RefusedAsync(Listed(("farm.json", "{\"version\":1}"u8.ToArray(), 1)), null, "farm.json");

    [Fact]
    public Task A_photo_that_is_none_is_refused() => RefusedAsync(Listed(("photos/00000000000000000000000000000007.jpg", "<script>alert(1)</script>"u8.ToArray(), 1)), BookProblems.AttachmentNotAPhoto);

    [Fact]
    public async Task A_file_cut_short_anywhere_is_refused()
    {
        foreach (var length in Enumerable.Range(0, 60).Select(i => good.Length * i / 60)) await RefusedAsync(good[..length], null);
    }

    [Fact]
    public async Task No_damage_makes_it_throw_or_write() => await Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte.Array[1, 20]).Array[1, 3].SampleAsync(
        async cuts =>
        {
            var bytes = good.ToArray();
            foreach (var (at, put) in cuts) put.AsSpan(0, Math.Min(put.Length, bytes.Length - at)).CopyTo(bytes.AsSpan(at));
            await File.WriteAllBytesAsync(FilePath, bytes);
            var looked = WholeFarmFile.Open(FilePath);
            // Times of entries and other things that nobody reads may be damaged without harm.
            if (looked.HasValue) looked.Value.Dispose();
            else Assert.NotEmpty(looked.Problems);
        },
        iter: 400,
        threads: 1);

    [Fact]
    public async Task A_file_that_is_not_there_or_no_zip_is_a_problem()
    {
        Assert.Equal(FileProblems.NotThere, Assert.Single((await ImportFarm.RunAsync(Path.Combine(shelf.Folder, "none"), book)).Problems).Kind);
        Assert.Equal(FileProblems.NotReadable, Assert.Single((await ImportFarm.RunAsync(shelf.Folder, book)).Problems).Kind);
        await RefusedAsync("a list of fields"u8.ToArray(), WholeFarmProblems.NotOne);
    }

    [Fact]
    public async Task A_refused_file_makes_no_book()
    {
        await File.WriteAllBytesAsync(FilePath, good[..^30]);
        var path = Path.Combine(shelf.Folder, "new.book");
        Assert.True((await ImportFarm.RunAsync(FilePath, () => Book.OpenAsync(path))).IsRefused);
        Assert.False(File.Exists(path));
    }

    /// <summary>Refused with this problem, and the book is as it was.</summary>
    private async Task<ImmutableArray<Problem>> RefusedAsync(byte[] bytes, ProblemKind? kind, string where = "")
    {
        await File.WriteAllBytesAsync(FilePath, bytes);
        var joined = await ImportFarm.RunAsync(FilePath, book);
        Assert.True(joined.IsRefused);
        Assert.InRange(joined.Problems.Length, 1, LineFacts.ProblemsMost);
        Assert.Contains(joined.Problems, p => (kind is null || p.Kind == kind) && p.Where.StartsWith(where, StringComparison.Ordinal));
        Assert.Equal(before, await SomeBook.SaidAsync(book));
        return joined.Problems;
    }

    private static Action<ZipArchive> Put(string name, byte[] bytes) => archive =>
    {
        archive.GetEntry(name)?.Delete();
        using var entry = archive.CreateEntry(name, CompressionLevel.SmallestSize).Open();
        entry.Write(bytes);
    };

    private byte[] Changed(params Action<ZipArchive>[] changes)
    {
        using var stream = new MemoryStream();
        stream.Write(good);
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Update, leaveOpen: true))
        {
            foreach (var change in changes) change(archive);
        }

        return stream.ToArray();
    }

    private byte[] WithManifest(Func<string, string> change)
    {
        using var archive = new ZipArchive(new MemoryStream(good));
        using var reader = new StreamReader(archive.GetEntry("manifest.json")!.Open());
        var (text, changed) = (reader.ReadToEnd(), string.Empty);
        changed = change(text);
        Assert.NotEqual(text, changed);
        return Changed(Put("manifest.json", Encoding.UTF8.GetBytes(changed)));
    }

    /// <summary>With a part that the manifest names with its true size, count and digest.</summary>
    private byte[] Listed((string Name, byte[] Bytes, long Count) part)
    {
        using var archive = new ZipArchive(new MemoryStream(good));
        using var text = new MemoryStream();
        archive.GetEntry("manifest.json")!.Open().CopyTo(text);
        var manifest = WholeFarmManifest.Read(text.ToArray()).Value;
        var told = new WholeFarmPart(part.Name, part.Count, part.Bytes.Length, Convert.ToHexStringLower(SHA256.HashData(part.Bytes)));
        using var written = new MemoryStream();
        (manifest with { Parts = [.. manifest.Parts.Where(p => p.Name != part.Name), told] }).Write(written);
        return Changed(Put(part.Name, part.Bytes), Put("manifest.json", written.ToArray()));
    }
}
