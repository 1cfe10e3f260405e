using System.Text;
using Watersown.Flight.Flown;

namespace Watersown.Documents.Tracks;

/// <summary>Reads a track line by line; no more than one line and one piece of the file is held.</summary>
internal abstract class LineTrack(Action<Fix> take)
{
    /// <summary>A longer line is no line of a log.</summary>
    public const int LongestLine = 16_384;

    private readonly char[] letters = new char[LongestLine];

    public DropTally Drops { get; } = new();

    public long Given { get; private set; }

    /// <summary>What is wrong so that nothing more need be read.</summary>
    public Problem? Fault { get; protected set; }

    protected long Number { get; private set; }

    public async Task ReadAsync(Stream stream, CancellationToken stop)
    {
        var buffer = new byte[LongestLine * 4];
        var (held, skipping) = (0, false);
        for (int count; (count = await stream.ReadAsync(buffer.AsMemory(held), stop)) > 0;)
        {
            var filled = held + count;
            var start = 0;
            for (int end; (end = buffer.AsSpan(start, filled - start).IndexOfAny((byte)'\n', (byte)'\r')) >= 0; start += end + 1)
            {
                if (!skipping) Take(buffer.AsSpan(start, end));
                skipping = false;
                if (Fault is not null) return;
            }

            held = filled - start;
            buffer.AsSpan(start, held).CopyTo(buffer);
            if (held < LongestLine) continue;
            if (!skipping) Drops.Add(DropReason.Unreadable, ++Number);
            (held, skipping) = (0, true);
        }

        if (held > 0 && !skipping) Take(buffer.AsSpan(0, held));
        if (Fault is null) End();
    }

    /// <summary>One line, blanks at its ends taken off; never empty.</summary>
    protected abstract void Line(ReadOnlySpan<char> line);

    protected virtual void End()
    {
    }

    protected void Give(Fix fix)
    {
        Given++;
        take(fix);
    }

    private void Take(ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty) return;
        Number++;
        var line = letters.AsSpan(0, Math.Min(bytes.Length, LongestLine));
        line = letters.AsSpan(0, Encoding.UTF8.GetChars(bytes[..line.Length], letters)).Trim(" \t\0\uFEFF");
        if (!line.IsEmpty) Line(line);
    }
}
