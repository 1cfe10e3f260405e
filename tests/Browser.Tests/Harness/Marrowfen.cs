namespace Watersown.Journeys;

/// <summary>
/// The example farm, planned once: every desk of a run starts from a copy of this book. Beside it one desk that nobody marks
/// anything on, for looking at screens.
/// </summary>
public sealed class Marrowfen : IAsyncLifetime
{
    private readonly string folder = Directory.CreateTempSubdirectory("watersown-marrowfen-").FullName;

    private RunningHost? quiet;

    /// <summary>A desk for looking only.</summary>
    public RunningHost Quiet => quiet ?? throw new InvalidOperationException("The desk is not open.");

    private string Kept => Path.Combine(folder, "marrowfen.book");

    public async ValueTask InitializeAsync()
    {
        await using (var first = await RunningHost.StartAsync(Kept, farm: Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json"))) await first.PlannedAsync();
        quiet = await OpenAsync();
    }

    /// <summary>A desk of its own, on a copy of the book.</summary>
    public async Task<RunningHost> OpenAsync(string at = RunningHost.StoryMoment, params string[] more)
    {
        var copy = Path.Combine(folder, Guid.NewGuid().ToString("N") + ".book");
        File.Copy(Kept, copy);
        return await RunningHost.StartAsync(copy, farm: null, at, more);
    }

    /// <summary>A desk on a new book, without a farm.</summary>
    public Task<RunningHost> OpenEmptyAsync() => RunningHost.StartAsync(Path.Combine(folder, Guid.NewGuid().ToString("N") + ".book"));

    public async ValueTask DisposeAsync()
    {
        if (quiet is not null) await quiet.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }
}
