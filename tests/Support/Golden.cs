namespace Watersown;

/// <summary>Whole outputs that a person approved, kept under tests/Golden. <c>UPDATE_GOLDEN=1</c> rewrites them.</summary>
public static class Golden
{
    /// <summary>Fails where the output differs from the approved one, telling the first line that does.</summary>
    /// <param name="path">Below tests/Golden, such as <c>Reckon/wet-weight.txt</c>.</param>
    /// <param name="actual">What the product wrote; line ends are compared as line feeds.</param>
    public static void Matches(string path, string actual)
    {
        var file = Path.Combine(ReferenceFile.RepositoryRoot, "tests", "Golden", path);
        var now = actual.ReplaceLineEndings("\n");
        if (Environment.GetEnvironmentVariable("UPDATE_GOLDEN") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, now);
            return;
        }

        Assert.True(File.Exists(file), $"There is no approved output {path} yet. Run with UPDATE_GOLDEN=1, read it, and keep it.");
        var approved = File.ReadAllText(file).ReplaceLineEndings("\n");
        if (approved == now) return;
        var (was, got) = (approved.Split('\n'), now.Split('\n'));
        var line = Enumerable.Range(0, Math.Max(was.Length, got.Length)).First(i => was.ElementAtOrDefault(i) != got.ElementAtOrDefault(i));
        Assert.Fail($"{path} differs from line {line + 1}:\n  approved: {was.ElementAtOrDefault(line)}\n  now:      {got.ElementAtOrDefault(line)}");
    }
}
