using System.Diagnostics.CodeAnalysis;
using System.Threading.Channels;

namespace Watersown.Records.Database;

/// <summary>
/// Sends that wait together are written together: one trip to the disk serves all of them, and each is acknowledged only
/// when it is there.
/// </summary>
internal sealed class MarkQueue : IAsyncDisposable
{
    /// <summary>Enough for one trip to the disk; more would keep the first too long.</summary>
    private const int MarksAtOnce = 2_000;

    private readonly Channel<Send> waiting = Channel.CreateUnbounded<Send>(new UnboundedChannelOptions { SingleReader = true });

    private readonly Func<IReadOnlyList<Send>, Task<IReadOnlyList<Appended>>> write;

    private readonly Task loop;

    /// <summary>Begins to wait for sends.</summary>
    /// <param name="write">Writes several sends and returns the answer to each, in their order, once they are on disk.</param>
    public MarkQueue(Func<IReadOnlyList<Send>, Task<IReadOnlyList<Appended>>> write)
    {
        this.write = write;
        loop = Task.Run(RunAsync);
    }

    /// <summary>Waits its turn; the answer means that what is kept is on disk.</summary>
    public Task<Appended> AppendAsync(IReadOnlyList<StoredMark> marks, string? sender, CancellationToken stop)
    {
        var send = new Send(marks, sender, new(TaskCreationOptions.RunContinuationsAsynchronously));
        ObjectDisposedException.ThrowIf(!waiting.Writer.TryWrite(send), this);
        return send.Answer.Task.WaitAsync(stop);
    }

    /// <summary>What is waiting is still written.</summary>
    public async ValueTask DisposeAsync()
    {
        waiting.Writer.TryComplete();
        await loop;
    }

    private async Task RunAsync()
    {
        while (await waiting.Reader.WaitToReadAsync()) await WriteAsync(Take());
    }

    private List<Send> Take()
    {
        var sends = new List<Send>();
        for (var marks = 0; marks < MarksAtOnce && waiting.Reader.TryRead(out var send); marks += send.Marks.Count) sends.Add(send);
        return sends;
    }

    [SuppressMessage("Design", "CA1031", Justification = "Whatever failed is handed to everybody who waits for it; the next send may succeed.")]
    private async Task WriteAsync(List<Send> sends)
    {
        try
        {
            var answers = await write(sends);
            for (var i = 0; i < sends.Count; i++) sends[i].Answer.SetResult(answers[i]);
        }
        catch (Exception failure)
        {
            foreach (var send in sends) send.Answer.TrySetException(failure);
        }
    }

    internal sealed record Send(IReadOnlyList<StoredMark> Marks, string? Sender, TaskCompletionSource<Appended> Answer);
}
