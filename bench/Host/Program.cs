using Watersown.Bench;

// dotnet run -c Release --project bench/Host -- [--seconds 10] [--phones 16] [--folder FOLDER] [--out FILE]
// The real host, as a program of its own, on a book on disk; baselines in the same run, on the same disk and database.
if (args is ["empty", var port])
{
    await EmptyHost.RunAsync(int.Parse(port, System.Globalization.CultureInfo.InvariantCulture));
    return;
}

var told = args.Chunk(2).Where(p => p.Length == 2).ToDictionary(p => p[0], p => p[1], StringComparer.Ordinal);
var options = new BenchOptions(
    TimeSpan.FromSeconds(Number("--seconds", 10)), Number("--phones", 16),
    told.GetValueOrDefault("--folder", Path.Combine(BenchOptions.Root, "out")), told.GetValueOrDefault("--out", Path.Combine(BenchOptions.Root, "bench", "results", "sync.md")));
await new SyncBench(options).RunAsync();

int Number(string name, int usual) => told.TryGetValue(name, out var text) ? int.Parse(text, System.Globalization.CultureInfo.InvariantCulture) : usual;
