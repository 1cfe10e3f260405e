using System.Reflection;

namespace Watersown.HouseRules;

/// <summary>The tree as it lies on disk and the assemblies built from it: what the house rules are held against.</summary>
internal static class SourceTree
{
    private static readonly string[] NotOurs = ["artifacts", ".git", "bin", "obj", "out", ".vs", ".idea", "node_modules"];

    private static readonly string[] Written =
        [".cs", ".csproj", ".props", ".slnx", ".md", ".json", ".csv", ".txt", ".html", ".css", ".js", ".sql", ".geojson", ".editorconfig", ".gitignore", ".yml", ".razor", ".sh"];

    public static string Root { get; } = ReferenceFile.RepositoryRoot;

    public static Assembly Core { get; } = typeof(Problem).Assembly;

    /// <summary>Every assembly of the product.</summary>
    public static ImmutableArray<Assembly> Product { get; } =
    [
        Core,
        Assembly.Load("Watersown.Planner"),
        Assembly.Load("Watersown.Documents"),
        Assembly.Load("Watersown.Records"),
        typeof(Pocket.Desk).Assembly,
        Assembly.Load("Watersown.Web"),
        typeof(Cli.Desk).Assembly,
    ];

    /// <summary>Capabilities from left to right; each may use only those before it.</summary>
    public static ImmutableArray<string> Capabilities { get; } =
        ["Land", "Weather", "Growth", "Seed", "Nutrition", "Water", "Flight", "Holds", "Schedule", "Stand", "Harvest", "Costs", "Season"];

    /// <summary>Tools of thought below the capabilities: they know no farm.</summary>
    public static ImmutableArray<string> Tools { get; } = ["Quantities", "Shapes", "Hydraulics", "Wording", "Reckon"];

    /// <summary>Every text file a person wrote, by its path from the root with forward slashes, in path order.</summary>
    public static ImmutableArray<TextFile> Files { get; } = [.. Walk(new DirectoryInfo(Root)).Select(Read).OrderBy(f => f.Path, StringComparer.Ordinal)];

    public static IEnumerable<TextFile> Under(string folder) => Files.Where(f => f.Path.StartsWith(folder + "/", StringComparison.Ordinal));

    private static IEnumerable<FileInfo> Walk(DirectoryInfo folder) => folder.GetFiles().Where(IsWritten)
        .Concat(folder.GetDirectories().Where(d => !NotOurs.Contains(d.Name, StringComparer.Ordinal)).SelectMany(Walk));

    private static bool IsWritten(FileInfo file) =>
        Written.Contains(file.Extension, StringComparer.Ordinal) || (file.Extension.Length == 0 && file.Directory?.Name is "script" or ".ci");

    private static TextFile Read(FileInfo file) => new(System.IO.Path.GetRelativePath(Root, file.FullName).Replace('\\', '/'), File.ReadAllText(file.FullName));
}

/// <summary>A text file: its path from the root, and what stands in it.</summary>
internal sealed record TextFile(string Path, string Text)
{
    public string[] Lines => Text.Split('\n');
}
