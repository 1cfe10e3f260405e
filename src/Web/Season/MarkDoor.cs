using Watersown.Documents.Logbooks;
using Watersown.Records.Database;
using Watersown.Season;
using Watersown.Web.Schedule;

namespace Watersown.Web.Season;

/// <summary>
/// The one way of a mark into the book, whether a phone, a sheet behind a link or a text told it: kept on disk first, then
/// those who wait for news and the planner are told.
/// </summary>
internal sealed class MarkDoor(Book book, LiveSeason season, PlanRunner plans)
{
    /// <summary>Keeps marks. Not given up when the asker goes: sent again, what was kept is found to be there.</summary>
    /// <param name="marks">As they are stored.</param>
    /// <param name="facts">What they tell, for the planner.</param>
    /// <param name="sender">Whose they are; nobody's where the machine's own person sent them.</param>
    public async Task<Appended> KeepAsync(IReadOnlyList<StoredMark> marks, IEnumerable<MarkFact> facts, string? sender)
    {
        var appended = await book.AppendMarksAsync(marks, sender, CancellationToken.None);
        if (appended.Kept.IsEmpty) return appended;
        season.Marked();
        plans.Marked(facts);
        return appended;
    }

    /// <summary>Keeps marks that the host itself made of what somebody answered.</summary>
    public Task<Appended> KeepAsync(ImmutableArray<Mark> marks, string? sender) =>
        KeepAsync([.. marks.Select(m => StoredMark.Read(MarkDocument.Write(m)).Value)], marks.Select(m => m.Fact), sender);
}
