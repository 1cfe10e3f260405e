namespace Watersown.Bench;

/// <summary>How the host is measured.</summary>
/// <param name="Span">How long each part runs, after a short warm-up.</param>
/// <param name="Phones">How many ask at once, each with one request on its way.</param>
/// <param name="Folder">On the disk that is measured.</param>
/// <param name="Out">Where the table goes.</param>
internal sealed record BenchOptions(TimeSpan Span, int Phones, string Folder, string Out)
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "../../../.."));
}
