namespace Watersown.Bench;

/// <summary>A folder for the book of one run.</summary>
internal sealed class OwnFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("watersown-bench-").FullName;

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
