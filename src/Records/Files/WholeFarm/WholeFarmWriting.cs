using System.Buffers;
using System.Data.Common;
using System.IO.Compression;
using System.Security.Cryptography;
using Watersown.Records.Database;

namespace Watersown.Records.Files.WholeFarm;

/// <summary>Writes all that a book keeps of its farm as one open file, as it stood at one moment.</summary>
internal static class WholeFarmWriting
{
    private const int MarksAtOnce = 2_000;

    /// <summary>Photos and marks pass through one by one, so that a large book needs little memory.</summary>
    public static Task<WholeFarmManifest> WriteAsync(Book book, Stream to, DateTimeOffset now, CancellationToken stop) => book.ReadAsync(async connection =>
    {
        var parts = ImmutableArray.CreateBuilder<WholeFarmPart>();
        var pen = new Pen(to, now, parts);
        await using (pen)
        {
            await FarmsAsync(connection, pen);
            await MarksAsync(connection, pen, stop);
            await PlansAsync(connection, pen);
            await PhotosAsync(connection, pen, stop);
            pen.List(WholeFarmForm.AccountList, await Book.AccountsAsync(connection), WholeFarmLines.Write);
            var manifest = new WholeFarmManifest(now, Book.Program, await Book.IdentityAsync(connection), parts.ToImmutable());
            using var last = pen.Open(WholeFarmForm.Manifest, CompressionLevel.Optimal);
            manifest.Write(last);
            return manifest;
        }
    }, stop);

    private static async Task FarmsAsync(DbConnection connection, Pen pen)
    {
        var farms = await Book.FarmsAsync(connection);
        foreach (var farm in farms.Reverse()) pen.Document(WholeFarmForm.FarmOf(farm.Version, farms.Length), farm.Document.Span);
        pen.List(WholeFarmForm.FarmList, farms, WholeFarmLines.Write);
    }

    private static async Task MarksAsync(DbConnection connection, Pen pen, CancellationToken stop)
    {
        using var part = pen.Part(WholeFarmForm.Marks, CompressionLevel.Optimal);
        var buffer = new ArrayBufferWriter<byte>();
        for (long after = 0; ;)
        {
            stop.ThrowIfCancellationRequested();
            var marks = await Book.MarksAfterAsync(connection, after, MarksAtOnce);
            if (marks.IsEmpty) return;
            foreach (var mark in marks) part.Line(WholeFarmLines.Write(buffer, mark));
            after = marks[^1].Seq;
        }
    }

    private static async Task PlansAsync(DbConnection connection, Pen pen)
    {
        var plans = await Book.PlanLinesAsync(connection);
        foreach (var plan in plans) pen.Document(WholeFarmForm.PlanOf(plan.Number), (await Book.PlanAsync(connection, plan.Number))!.Document.Span);
        pen.List(WholeFarmForm.PlanList, plans, WholeFarmLines.Write);
    }

    private static async Task PhotosAsync(DbConnection connection, Pen pen, CancellationToken stop)
    {
        var photos = await Book.AttachmentsAsync(connection);
        foreach (var photo in photos)
        {
            stop.ThrowIfCancellationRequested();
            using var part = pen.Part(WholeFarmForm.PhotoOf(photo.Id, photo.MediaType), CompressionLevel.NoCompression);
            part.Whole(await Book.ContentAsync(connection, photo.Id));
        }

        pen.List(WholeFarmForm.PhotoList, photos, WholeFarmLines.Write);
    }

    private delegate ReadOnlySpan<byte> Writing<T>(ArrayBufferWriter<byte> buffer, T item);

    /// <summary>Writes parts one after the other and notes each for the manifest.</summary>
    private sealed class Pen(Stream to, DateTimeOffset now, ImmutableArray<WholeFarmPart>.Builder parts) : IAsyncDisposable
    {
        private readonly ZipArchive archive = new(to, ZipArchiveMode.Create, leaveOpen: true);

        public Stream Open(string name, CompressionLevel level)
        {
            var entry = archive.CreateEntry(name, level);
            entry.LastWriteTime = now.ToUniversalTime();
            return entry.Open();
        }

        public PartPen Part(string name, CompressionLevel level) => new(Open(name, level), name, parts);

        public void Document(string name, ReadOnlySpan<byte> bytes)
        {
            using var part = Part(name, CompressionLevel.Optimal);
            part.Whole(bytes);
        }

        public void List<T>(string name, IEnumerable<T> items, Writing<T> write)
        {
            using var part = Part(name, CompressionLevel.Optimal);
            var buffer = new ArrayBufferWriter<byte>();
            foreach (var item in items) part.Line(write(buffer, item));
        }

        public ValueTask DisposeAsync() => archive.DisposeAsync();
    }

    private sealed class PartPen(Stream to, string name, ImmutableArray<WholeFarmPart>.Builder parts) : IDisposable
    {
        private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        private long count;
        private long bytes;

        public void Whole(ReadOnlySpan<byte> content)
        {
            count = 1;
            Put(content);
        }

        public void Line(ReadOnlySpan<byte> content)
        {
            count++;
            Put(content);
            Put("\n"u8);
        }

        public void Dispose()
        {
            to.Dispose();
            parts.Add(new WholeFarmPart(name, count, bytes, Convert.ToHexStringLower(hash.GetHashAndReset())));
            hash.Dispose();
        }

        private void Put(ReadOnlySpan<byte> content)
        {
            hash.AppendData(content);
            to.Write(content);
            bytes += content.Length;
        }
    }
}
