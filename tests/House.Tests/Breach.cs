namespace Watersown.HouseRules;

/// <summary>How a rule is held: nothing may be found in the tree, and the planted violation must be found.</summary>
internal static class Breach
{
    /// <summary>Breaches known and still to be put right, by how they begin. This list only ever gets shorter.</summary>
    private static readonly string[] Owed =
    [
    ];

    public static void None(IEnumerable<string> found)
    {
        var all = found.Where(f => !Owed.Any(o => f.StartsWith(o, StringComparison.Ordinal))).ToList();
        Assert.True(all.Count == 0, all.Count + " found:\n" + string.Join('\n', all));
    }

    public static void Found(string expected, IEnumerable<string> found)
    {
        var all = found.ToList();
        Assert.True(all.Any(f => f.Contains(expected, StringComparison.Ordinal)), "The planted '" + expected + "' was not reported. Reported:\n" + string.Join('\n', all));
    }
}
