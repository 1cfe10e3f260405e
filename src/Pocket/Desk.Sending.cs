using System.Globalization;
using System.Security.Cryptography;
using Watersown.Pocket.Keeping;
using Watersown.Pocket.Sending;

namespace Watersown.Pocket;

public sealed partial class Desk
{
    /// <summary>Most marks in one request: one bar of signal carries it.</summary>
    public const int MostAtOnce = 200;

    /// <summary>Looks for news this often while all is well.</summary>
    public static TimeSpan Between { get; } = TimeSpan.FromSeconds(60);

    /// <summary>A clock further off than this is put right by the host's.</summary>
    public static TimeSpan ClockSlack { get; } = TimeSpan.FromMinutes(10);

    private bool sending;
    private bool again;
    private int failures;
    private long round;

    /// <summary>Marks and pictures that are on this device only, as far as is known.</summary>
    public int Unsent => UnsentMarks.Count + photosUnsent;

    private int photosUnsent;

    /// <summary>Marks that the host would not take, with its reasons.</summary>
    public ImmutableArray<KeptMark> Refused => [.. kept.Values.Where(m => m.State == SendState.Refused).OrderBy(m => m.Id, StringComparer.Ordinal)];

    /// <summary>When the host last answered, by the farm's clock; none where it never did.</summary>
    public DateTimeOffset? HostHeard { get; private set; }

    /// <summary>Marks on this device.</summary>
    public int Held => kept.Count;

    /// <summary>How the last try ended.</summary>
    public LineState Line { get; private set; } = LineState.NoAnswer;

    /// <summary>Who was last heard from, and when: the newest mark of each person.</summary>
    public ImmutableArray<(string By, DateTimeOffset Entered)> LastHeard =>
        Book is null ? [] : [.. Book.Log.Marks.GroupBy(m => m.By, StringComparer.Ordinal).Select(g => (g.Key, g.Max(m => m.Entered))).OrderByDescending(p => p.Item2)];

    /// <summary>Sends what is unsent and asks for news. One page of a device does so at a time; calls while it runs are not lost.</summary>
    public async Task SendAsync()
    {
        if (closing.IsCancellationRequested) return;
        again = true;
        if (sending) return;
        sending = true;
        try
        {
            while (again && !closing.IsCancellationRequested)
            {
                again = false;
                if (!await device.HoldAsync("sending")) break;
                try
                {
                    Line = await RoundAsync();
                }
                finally
                {
                    await device.ReleaseAsync("sending");
                }

                failures = Line is LineState.Reached ? 0 : failures + 1;
                if (Line != LineState.Reached) break;
            }
        }
        finally
        {
            sending = false;
        }

        Tell();
        _ = LaterAsync(++round);
    }

    /// <summary>How long to wait after so many failures: twice as long each time, to five minutes, a little by chance.</summary>
    internal static TimeSpan Wait(int failures) => failures == 0
        ? Between
        : TimeSpan.FromSeconds(Math.Min(300, Math.Pow(2, Math.Min(failures, 9)))) + TimeSpan.FromMilliseconds(RandomNumberGenerator.GetInt32(1000));

    private async Task LaterAsync(long mine)
    {
        try
        {
            await Task.Delay(Wait(failures), clock, closing.Token);
        }
        catch (Exception closed) when (closed is OperationCanceledException or ObjectDisposedException)
        {
            return;
        }

        if (mine == round) await SendAsync();
    }

    private async Task<LineState> RoundAsync()
    {
        // Read from the device, not from this page: another page of it may have marked.
        await ReadMarksAsync();
        var sent = await SendMarksAsync([.. kept.Values.Where(m => m.State == SendState.Unsent).OrderBy(m => m.Id, StringComparer.Ordinal)]);
        if (sent != LineState.Reached) return sent;
        var photos = await SendPhotosAsync();
        if (photos != LineState.Reached) return photos;
        return await FetchAsync();
    }

    private async Task<LineState> SendMarksAsync(ImmutableArray<KeptMark> unsent)
    {
        for (var from = 0; from < unsent.Length; from += MostAtOnce)
        {
            var state = await SendSomeAsync([.. unsent.Skip(from).Take(MostAtOnce)]);
            if (state != LineState.Reached) return state;
        }

        return LineState.Reached;
    }

    private async Task<LineState> SendSomeAsync(ImmutableArray<KeptMark> some)
    {
        var answer = await host.SendAsync("api/marks", HostWords.Write(DeviceName, some.Select(m => m.Text)));
        if (answer.State == LineState.Refused)
        {
            // One bad mark must not hold up the others: halve until it stands alone.
            if (some.Length == 1) return await SettleAsync([some[0] with { State = SendState.Refused, Why = HostWords.Problems(answer.Body) }]);
            var half = some.Length / 2;
            var first = await SendSomeAsync([.. some.Take(half)]);
            return first == LineState.Reached ? await SendSomeAsync([.. some.Skip(half)]) : first;
        }

        if (answer.State != LineState.Reached) return answer.State;
        if (HostWords.Receipt(answer.Body) is not { } receipt) return LineState.NoAnswer;
        ImmutableArray<KeptMark> settled =
        [
            .. some.Where(m => receipt.Kept.Contains(m.Id)).Select(m => m with { State = SendState.Sent }),
            .. some.Where(m => receipt.Refused.ContainsKey(m.Id)).Select(m => m with { State = SendState.Refused, Why = receipt.Refused[m.Id] }),
        ];
        // A host that settles nothing would be asked the same for ever.
        return settled.IsEmpty ? LineState.NoAnswer : await SettleAsync(settled);
    }

    private async Task<LineState> SettleAsync(ImmutableArray<KeptMark> settled)
    {
        await device.KeepMarksAsync(settled);
        kept = kept.SetItems(settled.Select(m => KeyValuePair.Create(m.Id, m)));
        if (settled.Any(m => m.State == SendState.Refused)) Fold();
        await device.TellTabsAsync("settled");
        Tell();
        return LineState.Reached;
    }

    /// <summary>Sends a refused mark once more, as it is.</summary>
    public async Task TryAgainAsync(KeptMark mark)
    {
        await SettleAsync([mark with { State = SendState.Unsent, Why = null }]);
        Fold();
        await SendAsync();
    }

    /// <summary>A refused mark was seen and is let go of. It stays on the device.</summary>
    public Task LetGoAsync(KeptMark mark) => SettleAsync([mark with { State = SendState.LetGo }]);

    private static string Written(IFormattable number) => number.ToString(null, CultureInfo.InvariantCulture);
}
