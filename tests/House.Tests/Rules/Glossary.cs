using System.Reflection;
using System.Text.RegularExpressions;

namespace Watersown.HouseRules;

/// <summary>The glossary's code names are there: a type of the product, or a member of one.</summary>
internal static partial class Glossary
{
    public static IEnumerable<string> UnknownNames(TextFile glossary, IEnumerable<Assembly> assemblies)
    {
        var types = assemblies.SelectMany(a => a.GetExportedTypes()).ToLookup(t => t.Name.Split('`')[0], StringComparer.Ordinal);
        foreach (var line in glossary.Lines.Where(l => l.StartsWith('|')))
        {
            var last = line.TrimEnd().TrimEnd('|').Split('|')[^1];
            foreach (var name in Name().Matches(last).Select(m => m.Groups["name"].Value))
            {
                var parts = name.Split('.');
                var known = types[parts[0]].Any(t => parts.Length == 1 || (parts.Length == 2 && t.GetMember(parts[1]).Length > 0));
                if (!known) yield return glossary.Path + " names " + name + ", which the code does not have";
            }
        }
    }

    [GeneratedRegex("`(?<name>[^`]+)`", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Name();
}
