using System.Globalization;
using System.Text;
using Watersown.Documents.Tracks;
using Watersown.Flight.Flown;

namespace Watersown.Tracks;

/// <summary>What lives in the process is measured, so nothing else may run beside it.</summary>
[CollectionDefinition(nameof(BigTracks), DisableParallelization = true)]
public sealed class BigTracks;

[Collection(nameof(BigTracks))]
public sealed class BigTrackTests
{
    private const long Size = 100L << 20;

    // What may live at the end of reading, beside what lived before: the places kept near the field, at 40 bytes each.
    private const long Most = 100L << 20;

    [Fact]
    public async Task A_hundred_megabytes_go_through_in_little_memory()
    {
        var track = new SomeTrack { Lines = [.. Enumerable.Range(0, 2000).Select(i => 10.0 + (i % 5 * 20))], Every = 0.02 };
        using var stream = new EndlessTrack(track.Fixes().GetEnumerator(), Size);
        var sieve = new TrackSieve(track.Field);
        long read = 0;
        var before = GC.GetTotalMemory(forceFullCollection: true);
        // What stood before may be let go meanwhile, so the growth seen can be below nothing: the looks are counted instead.
        var grown = new List<long>();
        var options = new TrackOptions
        {
            Progress = now =>
            {
                if (now / (10L << 20) > read / (10L << 20)) grown.Add(GC.GetTotalMemory(forceFullCollection: true) - before);
                read = now;
            },
        };
        var told = await TrackReading.ReadAsync(stream, "track", sieve.Add, options, TestContext.Current.CancellationToken);
        Assert.True(told.HasValue);
        Assert.InRange(read, Size, Size + (1 << 20));
        Assert.Equal(Size / (10L << 20), grown.Count);
        Assert.True(grown.Max() <= Most, $"{grown.Max()} bytes grew");
        var clean = sieve.Finish();
        Assert.InRange(clean.Given, 900_000, 3_000_000);
        Assert.Empty(clean.Dropped);
    }

    // A log as it is written, so that no file of its size need be kept anywhere.
    private sealed class EndlessTrack(IEnumerator<Fix> fixes, long size) : MemoryStream
    {
        private readonly StringBuilder text = new("time,lat,lon,height m,speed m/s,gate\n");
        private long given;

        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            if (given >= size) return new(0);
            while (text.Length < buffer.Length && fixes.MoveNext())
            {
                var f = fixes.Current;
                text.Append(CultureInfo.InvariantCulture, $"{f.Seconds:F3},{f.Latitude:F9},{f.Longitude:F9},{f.Height:F2},{f.Speed:F2},{(f.Gate == GateSign.Open ? 1 : 0)}\n");
            }

            var count = Math.Min(buffer.Length, text.Length);
            Encoding.ASCII.GetBytes(text.ToString(0, count), buffer.Span);
            text.Remove(0, count);
            given += count;
            return new(count);
        }

        protected override void Dispose(bool disposing)
        {
            fixes.Dispose();
            base.Dispose(disposing);
        }
    }
}
