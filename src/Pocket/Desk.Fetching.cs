using System.Globalization;
using Watersown.Pocket.Keeping;
using Watersown.Pocket.Sending;

namespace Watersown.Pocket;

public sealed partial class Desk
{
    private async Task<LineState> FetchAsync()
    {
        if (farmText is null) return await FetchAllAsync();
        var answer = await host.AskAsync("api/changes?after=" + Written(upto));
        if (answer.State != LineState.Reached) return answer.State;
        if (HostWords.Changes(answer.Body) is not { } changes) return LineState.NoAnswer;
        // A book of another name, or that counts lower than it did, has been restored from a copy: everything is asked for and told anew.
        Copies = changes.Copies ?? Copies;
        if ((changes.Book is { } heard && heard != bookName) || changes.Upto < upto || changes.FarmVersion != farmVersion || changes.PlanNumber != planNumber) return await FetchAllAsync();
        await HearMarksAsync(changes.Marks);
        upto = changes.Upto;
        await HeardHostAsync((Papers.Upto, Written(upto)));
        // Nothing new: the season stands as it was laid this minute.
        if (!changes.Marks.IsEmpty) Fold();
        return LineState.Reached;
    }

    private async Task<LineState> FetchAllAsync()
    {
        var answer = await host.AskAsync("api/desk");
        if (answer.State != LineState.Reached) return answer.State;
        if (HostWords.Desk(answer.Body) is not { } desk) return LineState.NoAnswer;
        host.Token = desk.Token ?? host.Token;
        await SendAnewAsync(desk);
        Copies = desk.Copies ?? Copies;
        await device.KeepPapersAsync((Papers.Tiles, desk.Tiles));
        await HearMarksAsync(desk.Marks);
        SetClock(desk.Now);
        await HeardHostAsync(
            (Papers.Farm, desk.Farm), (Papers.FarmVersion, Written(desk.FarmVersion)), (Papers.Plan, desk.Plan), (Papers.PlanNumber, Written(desk.PlanNumber)),
            (Papers.Upto, Written(desk.Upto)), (Papers.Name, desk.Name), (Papers.Role, desk.Role), (Papers.Book, desk.Book), (Papers.Skew, Written(skew.TotalSeconds)));
        if (desk.Plan is { } whole) await device.KeepPapersAsync(KeptPlans.Read(await device.PaperAsync(Papers.KeptPlans)).With(desk.PlanNumber, whole));
        await ReadPapersAsync();
        await device.TellTabsAsync("papers");
        Fold();
        return LineState.Reached;
    }

    /// <summary>A host restored from an older copy may lack marks that it once had: they are sent again, which doubles nothing.</summary>
    private async Task SendAnewAsync(DeskAnswer desk)
    {
        if (desk.Upto >= upto && (desk.Book ?? bookName) == bookName) return;
        var there = desk.Marks.Select(m => m.Id).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<KeptMark> lost = [.. kept.Values.Where(m => m.State == SendState.Sent && !there.Contains(m.Id)).Select(m => m with { State = SendState.Unsent })];
        if (lost.IsEmpty) return;
        await SettleAsync(lost);
        again = true;
    }

    private async Task HearMarksAsync(ImmutableArray<(string Id, string Text)> marks)
    {
        ImmutableArray<KeptMark> news =
        [
            .. marks.Where(m => !kept.TryGetValue(m.Id, out var ours) || ours.State != SendState.Sent).Select(m => new KeptMark(m.Id, m.Text, SendState.Sent)),
        ];
        if (news.IsEmpty) return;
        await device.KeepMarksAsync(news);
        kept = kept.SetItems(news.Select(m => KeyValuePair.Create(m.Id, m)));
        foreach (var mark in news) Take(mark);
        await device.TellTabsAsync("heard-marks");
    }

    private async Task HeardHostAsync(params ImmutableArray<(string Name, string? Text)> papers)
    {
        HostHeard = Now;
        await device.KeepPapersAsync(papers.Add((Papers.Heard, Now.ToString("O", CultureInfo.InvariantCulture))));
    }

    private void SetClock(DateTimeOffset? hostNow)
    {
        if (hostNow is not { } now) return;
        var off = now - clock.GetUtcNow();
        skew = off.Duration() > ClockSlack ? off : TimeSpan.Zero;
    }

    private async Task<LineState> SendPhotosAsync()
    {
        var photos = await device.PhotosAsync();
        photosUnsent = photos.Count(p => p.State == SendState.Unsent);
        foreach (var photo in photos.Where(p => p.State == SendState.Unsent))
        {
            if (await device.PhotoAsync(photo.Id) is not { } bytes) continue;
            var answer = await host.PutAsync("api/attachments/" + photo.Id, bytes, "image/jpeg");
            if (answer.State is not (LineState.Reached or LineState.Refused)) return answer.State;
            await device.SettlePhotoAsync(photo.Id, answer.State == LineState.Reached ? SendState.Sent : SendState.Refused);
            photosUnsent--;
        }

        return LineState.Reached;
    }
}
