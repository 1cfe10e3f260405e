namespace Watersown.HouseRules;

/// <summary>Small files in rooms with a name that a grower would know.</summary>
internal static class Tidiness
{
    public const int LinesMost = 400;

    private static readonly string[] NamelessRooms = ["Services", "Helpers", "Managers", "Models", "Utils", "Utilities", "Common", "Misc", "Shared", "Handlers", "Processors"];

    public static IEnumerable<string> LongFiles(IEnumerable<TextFile> files) => files
        .Where(f => f.Path.EndsWith(".cs", StringComparison.Ordinal) && f.Lines.Length > LinesMost)
        .Select(f => f.Path + " has " + f.Lines.Length + " lines; " + LinesMost + " is the most");

    public static IEnumerable<string> NamelessFolders(IEnumerable<TextFile> files) => files
        .SelectMany(f => f.Path.Split('/')[..^1].Where(folder => NamelessRooms.Contains(folder, StringComparer.OrdinalIgnoreCase)).Select(folder => f.Path + " lies in a folder called " + folder))
        .Distinct(StringComparer.Ordinal);

    /// <summary>A folder of Core is a capability or a tool; anything else is a noun nobody farms with.</summary>
    public static IEnumerable<string> UnknownCoreFolders(IEnumerable<TextFile> files) => files
        .Where(f => f.Path.StartsWith("src/Core/", StringComparison.Ordinal) && f.Path.EndsWith(".cs", StringComparison.Ordinal))
        .Select(f => f.Path.Split('/'))
        .Where(parts => parts.Length > 3 && !SourceTree.Capabilities.Contains(parts[2], StringComparer.Ordinal) && !SourceTree.Tools.Contains(parts[2], StringComparer.Ordinal))
        .Select(parts => string.Join('/', parts) + " lies in a folder of Core that is neither a capability nor a tool");

    /// <summary>A namespace of Core follows its folder, so that a use to the right cannot hide in another room.</summary>
    public static IEnumerable<string> StrayNamespaces(IEnumerable<TextFile> files) => files
        .Where(f => f.Path.StartsWith("src/Core/", StringComparison.Ordinal) && f.Path.EndsWith(".cs", StringComparison.Ordinal))
        .Select(f => (f.Path, Said: f.Lines.FirstOrDefault(l => l.StartsWith("namespace ", StringComparison.Ordinal)), Due: Due(f.Path)))
        .Where(f => f.Said is not null && f.Said.TrimEnd() != f.Due)
        .Select(f => f.Path + " says '" + f.Said!.TrimEnd() + "' and not '" + f.Due + "'");

    private static string Due(string path)
    {
        var folders = path.Split('/')[2..^1];
        return "namespace Watersown" + string.Concat(folders.Select(f => "." + f)) + ";";
    }
}
