namespace Watersown.Pocket.Keeping;

/// <summary>A shelf that lasts as long as the page, for a browser that keeps nothing. Pages given the same shelf share it.</summary>
public sealed class MemoryShelf
{
    internal Dictionary<string, string> Papers { get; } = new(StringComparer.Ordinal);

    internal Dictionary<string, (KeptMark Mark, long Turn)> Marks { get; } = new(StringComparer.Ordinal);

    internal long Turn { get; set; }

    internal Dictionary<string, (KeptPhoto Photo, byte[] Bytes)> Photos { get; } = new(StringComparer.Ordinal);

    internal HashSet<string> Held { get; } = new(StringComparer.Ordinal);

    internal event Action<MemoryDevice, string>? Told;

    internal void Tell(MemoryDevice from, string word) => Told?.Invoke(from, word);
}

/// <summary>Keeps everything in memory only, and says so.</summary>
public sealed class MemoryDevice : IDevice
{
    private readonly MemoryShelf shelf;

    public MemoryDevice(MemoryShelf shelf)
    {
        this.shelf = shelf;
        shelf.Told += (from, word) =>
        {
            if (from != this) Heard?.Invoke(word);
        };
    }

    public event Action<string>? Heard;

    public bool Keeps => false;

    public Task<string?> PaperAsync(string name) => Task.FromResult(shelf.Papers.GetValueOrDefault(name));

    public Task KeepPapersAsync(params ImmutableArray<(string Name, string? Text)> papers)
    {
        foreach (var (name, text) in papers)
        {
            if (text is null) shelf.Papers.Remove(name);
            else shelf.Papers[name] = text;
        }

        return Task.CompletedTask;
    }

    public Task<MarksSince> MarksAsync(long since) =>
        Task.FromResult(new MarksSince([.. shelf.Marks.Values.Where(m => m.Turn > since).Select(m => m.Mark).OrderBy(m => m.Id, StringComparer.Ordinal)], shelf.Turn));

    public Task KeepMarksAsync(ImmutableArray<KeptMark> marks)
    {
        shelf.Turn++;
        foreach (var mark in marks) shelf.Marks[mark.Id] = (mark, shelf.Turn);
        return Task.CompletedTask;
    }

    public Task<ImmutableArray<KeptPhoto>> PhotosAsync() => Task.FromResult(shelf.Photos.Values.Select(p => p.Photo).ToImmutableArray());

    public Task<byte[]?> PhotoAsync(string id) => Task.FromResult(shelf.Photos.TryGetValue(id, out var kept) ? kept.Bytes : null);

    public Task SettlePhotoAsync(string id, SendState state)
    {
        if (shelf.Photos.TryGetValue(id, out var kept)) shelf.Photos[id] = (kept.Photo with { State = state }, kept.Bytes);
        return Task.CompletedTask;
    }

    /// <summary>Keeps a picture.</summary>
    public void KeepPhoto(string id, byte[] bytes) => shelf.Photos[id] = (new KeptPhoto(id, SendState.Unsent, bytes.Length), bytes);

    public Task<bool> HoldAsync(string work) => Task.FromResult(shelf.Held.Add(work));

    public Task ReleaseAsync(string work)
    {
        shelf.Held.Remove(work);
        return Task.CompletedTask;
    }

    public Task TellTabsAsync(string word)
    {
        shelf.Tell(this, word);
        return Task.CompletedTask;
    }
}
