namespace Watersown;

/// <summary>Reads tests/Reference/TOPIC/FILE of the source tree, found from where the tests run.</summary>
public static class ReferenceFile
{
    public static string RepositoryRoot { get; } = FindRoot();

    public static string PathOf(string topic, string file) => Path.Combine(RepositoryRoot, "tests", "Reference", topic, file);

    /// <summary>Rows of a plain table, by column name; lines that start with # are remarks.</summary>
    public static IEnumerable<IReadOnlyDictionary<string, string>> Rows(string topic, string file = "cases.csv")
    {
        var lines = File.ReadLines(PathOf(topic, file)).Where(l => l.Length > 0 && l[0] != '#').ToList();
        var names = lines[0].Split(',');
        foreach (var line in lines.Skip(1))
        {
            var cells = line.Split(',');
            if (cells.Length != names.Length) throw new FormatException($"'{line}' has {cells.Length} cells, the head {names.Length}.");
            yield return names.Zip(cells).ToDictionary(c => c.First, c => c.Second, StringComparer.Ordinal);
        }
    }

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Watersown.slnx"))) return folder.FullName;
        }

        throw new DirectoryNotFoundException("No folder above the tests holds Watersown.slnx.");
    }
}
