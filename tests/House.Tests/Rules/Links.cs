using System.Text.RegularExpressions;

namespace Watersown.HouseRules;

/// <summary>Links of the documents lead somewhere: files exist, and headings that are pointed at are there.</summary>
internal static partial class Links
{
    public static IEnumerable<string> Broken(IEnumerable<TextFile> documents, Func<string, string?> textOf)
    {
        foreach (var document in documents)
        {
            foreach (Match match in Link().Matches(WithoutCode(document.Text)))
            {
                var target = match.Groups["target"].Value;
                if (target.Contains("://", StringComparison.Ordinal) || target.StartsWith("mailto:", StringComparison.Ordinal)) continue;
                var parts = target.Split('#');
                var path = parts[0].Length == 0 ? document.Path : Resolve(document.Path, parts[0]);
                if (textOf(path) is not { } text) yield return document.Path + " links to " + target + ", which is not there";
                else if (parts.Length > 1 && !Headings(text).Contains(parts[1], StringComparer.Ordinal)) yield return document.Path + " links to the heading " + target + ", which is not there";
            }
        }
    }

    /// <summary>Text of a file or folder of the tree, empty where it is not text; none where it does not exist.</summary>
    public static string? OnDisk(string path)
    {
        var full = Path.Combine(SourceTree.Root, path);
        return SourceTree.Files.FirstOrDefault(f => f.Path == path)?.Text ?? (File.Exists(full) || Directory.Exists(full) ? string.Empty : null);
    }

    private static string Resolve(string from, string target) =>
        Path.GetRelativePath(SourceTree.Root, Path.GetFullPath(Path.Combine(SourceTree.Root, Path.GetDirectoryName(from) ?? string.Empty, target))).Replace('\\', '/');

    private static IEnumerable<string> Headings(string text) => text.Split('\n').Where(l => l.StartsWith('#'))
        .Select(l => new string([.. l.TrimStart('#').Trim().ToLowerInvariant().Where(c => char.IsLetterOrDigit(c) || c is ' ' or '-' or '_').Select(c => c == ' ' ? '-' : c)]));

    private static string WithoutCode(string text) => Code().Replace(text, string.Empty);

    [GeneratedRegex(@"\]\((?<target>[^)\s]+)\)", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Link();

    [GeneratedRegex(@"```.*?```|`[^`\n]*`", RegexOptions.Singleline | RegexOptions.NonBacktracking)]
    private static partial Regex Code();
}
