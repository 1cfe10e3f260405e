using System.Text;
using CsCheck;
using Watersown.Farms;
using Watersown.Documents.Farms;
using Watersown.Documents.Logbooks;
using Watersown.Records.Database;

namespace Watersown.Database;

/// <summary>Books with something of everything, and all that a whole-farm file must carry of one.</summary>
internal static class SomeBook
{
    private static readonly Lazy<byte[]> farm = new(() => File.ReadAllBytes(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json")));

    /// <summary>Two versions of the farm, marks, plans, a photo and three people.</summary>
    public static async Task FillAsync(Book book, HandClock clock, int marks = 12)
    {
        Assert.True((await book.SaveFarmAsync(Farm(1), 0, "Odalie Marrowfen", "first")).HasValue);
        clock.Now += TimeSpan.FromMinutes(1);
        await book.AppendMarksAsync(Some.Marks(1, marks / 2), "Lucero Quintabar");
        Assert.True((await book.SavePlanAsync(Plan(14, 1, 2))).HasValue);
        clock.Now += TimeSpan.FromMinutes(1);
        Assert.True((await book.SaveFarmAsync(Farm(2), 1, "Odalie Marrowfen", "N4 is 88 ac")).HasValue);
        await book.AppendMarksAsync(Some.Marks((marks / 2) + 1, marks - (marks / 2)));
        Assert.True((await book.SavePlanAsync(Plan(15, 2, marks))).HasValue);
        Assert.True((await book.AddAttachmentAsync(Some.Id(7), "image/jpeg", Some.Photo(), "Lucero Quintabar")).HasValue);
        Assert.True((await book.AddAccountAsync("Odalie Marrowfen", Role.Owner, "a secret of Odalie")).HasValue);
        Assert.True((await book.AddAccountAsync("Lucero Quintabar", Role.Crew, "a secret of Lucero")).HasValue);
        Assert.True((await book.AddAccountAsync("Tamsin Wexcombe", Role.Crew, null)).HasValue);
        Assert.True((await book.EndAccountAsync("Tamsin Wexcombe")).HasValue);
        await book.AddPasskeyAsync("key of Odalie", "Odalie Marrowfen", 1, "{\"secret\":\"of a key\"}");
        await book.StartSessionAsync("Odalie Marrowfen", "phone", TimeSpan.FromDays(1));
        await book.MakeLinkAsync("flight", "the pilot", "Odalie Marrowfen", TimeSpan.FromDays(1));
    }

    /// <summary>The example farm, which is another document for each number.</summary>
    public static byte[] Farm(int number) => [.. farm.Value, .. Encoding.UTF8.GetBytes(new string('\n', number))];

    public static IssuedPlan Plan(long number, long farmVersion, long upto, string text = "") =>
        new(number, new DateTimeOffset(2026, 5, 8, 11, 50, 0, TimeSpan.Zero), "Odalie Marrowfen", "the wind", farmVersion, upto, Encoding.UTF8.GetBytes($$"""{"plan":{{number}},"text":"{{text}}"}"""));

    /// <summary>All that a whole-farm file carries, as one text.</summary>
    public static async Task<string> SaidAsync(Book book)
    {
        var said = new StringBuilder();
        for (var version = 1; await book.FarmAsync(version) is { } kept; version++) said.AppendLine($"farm {kept.Version} {kept.Saved:O} {kept.Who} {kept.Why} {Hex(kept.Document)}");
        foreach (var mark in await book.MarksAfterAsync(0, int.MaxValue)) said.AppendLine($"mark {mark.Seq} {mark.Received:O} {mark.Sender} {mark.Mark}");
        foreach (var line in (await book.PlansAsync()).Reverse()) said.AppendLine($"{line} {Hex((await book.PlanAsync(line.Number))!.Document)}");
        foreach (var photo in await book.ReadAsync(Book.AttachmentsAsync)) said.AppendLine($"{photo} {Hex((await book.AttachmentContentAsync(photo.Id))!)}");
        foreach (var account in await book.AccountsAsync()) said.AppendLine($"{account with { PasswordHash = null }}");
        return said.ToString();
    }

    /// <summary>Marks of every kind as a phone writes them; each name once.</summary>
    public static Gen<StoredMark[]> Marks(int most) => AnyMark.Mark.Array[0, most].Select(marks =>
        marks.DistinctBy(m => m.Id).Select(m => StoredMark.Read(MarkDocument.Write(m)).Value).ToArray());

    /// <summary>Farms of every kind, as documents that can be read.</summary>
    public static Gen<byte[]> Farms { get; } = AnyState.Gen.Select(s => FarmWriting.Write(s).ToArray());

    private static string Hex(ReadOnlyMemory<byte> bytes) => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(bytes.Span));
}
