namespace Watersown.Documents.Tracks;

/// <summary>A stream that was looked into: what was seen comes again first, and what is read is counted.</summary>
internal sealed class TrackStream(ReadOnlyMemory<byte> seen, Stream rest, Action<long>? progress) : Stream
{
    private const long Step = 1 << 20;

    private ReadOnlyMemory<byte> seen = seen;
    private long read;
    private long told;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => read; set => throw new NotSupportedException(); }

    public override int Read(byte[] buffer, int offset, int count)
    {
        if (!seen.IsEmpty) return Again(buffer.AsSpan(offset, count));
        return Count(rest.Read(buffer, offset, count));
    }

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        if (!seen.IsEmpty) return Again(buffer.Span);
        return Count(await rest.ReadAsync(buffer, cancellationToken));
    }

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        ReadAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    private int Again(Span<byte> into)
    {
        var count = Math.Min(into.Length, seen.Length);
        seen.Span[..count].CopyTo(into);
        seen = seen[count..];
        return Count(count);
    }

    private int Count(int count)
    {
        read += count;
        if (progress is not null && (read - told >= Step || count == 0))
        {
            told = read;
            progress(read);
        }

        return count;
    }
}
