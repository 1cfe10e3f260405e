using System.Reflection;
using System.Text.RegularExpressions;

namespace Watersown.HouseRules;

/// <summary>One sort of problem as it stands in the code: where it is declared, and what it says.</summary>
internal sealed record DeclaredProblem(string Owner, string Name, ProblemKind Kind)
{
    public string Place => Owner + "." + Name;
}

/// <summary>Problems: each code once, both languages with the same facts, and a test that provokes it.</summary>
internal static partial class ProblemWords
{
    public static IEnumerable<DeclaredProblem> In(IEnumerable<Assembly> assemblies) => assemblies
        .SelectMany(a => a.GetTypes())
        .Where(t => !t.ContainsGenericParameters)
        .SelectMany(t => t.GetProperties(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            .Where(p => p.PropertyType == typeof(ProblemKind))
            .Select(p => new DeclaredProblem(t.Name, p.Name, (ProblemKind)p.GetValue(null)!)))
        .OrderBy(p => p.Kind.Code, StringComparer.Ordinal).ThenBy(p => p.Place, StringComparer.Ordinal);

    public static IEnumerable<string> SharedCodes(IEnumerable<DeclaredProblem> problems) => problems
        .GroupBy(p => p.Kind.Code, StringComparer.Ordinal).Where(g => g.Count() > 1)
        .Select(g => g.Key + " is the code of " + string.Join(" and ", g.Select(p => p.Place)));

    public static IEnumerable<string> OddCodes(IEnumerable<DeclaredProblem> problems) => problems
        .Where(p => !Code().IsMatch(p.Kind.Code)).Select(p => p.Place + " has the code '" + p.Kind.Code + "'; the form is AREA-001");

    public static IEnumerable<string> Sentences(IEnumerable<DeclaredProblem> problems)
    {
        foreach (var problem in problems)
        {
            var (english, spanish) = (FactsOf(problem.Kind.English), FactsOf(problem.Kind.Spanish));
            // A meaning is English words: the Spanish sentence may do without it.
            if (!spanish.Contains("meaning", StringComparer.Ordinal)) english = [.. english.Where(f => f != "meaning")];
            if (!english.SequenceEqual(spanish, StringComparer.Ordinal))
                yield return problem.Place + " names {" + string.Join("} {", english) + "} in English and {" + string.Join("} {", spanish) + "} in Spanish";
            if (string.IsNullOrWhiteSpace(problem.Kind.English) || string.IsNullOrWhiteSpace(problem.Kind.Spanish)) yield return problem.Place + " is not said in both languages";
            else if (problem.Kind.English == problem.Kind.Spanish && english.Length == 0) yield return problem.Place + " says the same in both languages";
            // A warning may only tell; a refusal also says what to do, so it has two sentences.
            if (problem.Kind.Weight == ProblemWeight.Refuse && !Ends().IsMatch(problem.Kind.English))
                yield return problem.Place + " does not end like a sentence: '" + problem.Kind.English + "'";
        }
    }

    /// <summary>Sorts of problem that no test names, by its place in the code or by its own code.</summary>
    public static IEnumerable<string> Unprovoked(IEnumerable<DeclaredProblem> problems, IEnumerable<TextFile> tests)
    {
        var texts = tests.Select(t => t.Text).ToList();
        return problems
            .Where(p => !texts.Exists(t => Regex.IsMatch(t, @"\b" + Regex.Escape(p.Place) + @"\b", RegexOptions.None, TimeSpan.FromSeconds(5)) || t.Contains(p.Kind.Code, StringComparison.Ordinal)))
            .Select(p => p.Place + " (" + p.Kind.Code + ") is provoked by no test");
    }

    private static string[] FactsOf(string sentence) => [.. Fact().Matches(sentence).Select(m => m.Groups["fact"].Value).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    [GeneratedRegex(@"^[A-Z]+-\d{3}$", RegexOptions.NonBacktracking)]
    private static partial Regex Code();

    [GeneratedRegex(@"\{(?<fact>[A-Za-z]+)\}", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Fact();

    [GeneratedRegex(@"[.?}]$", RegexOptions.NonBacktracking)]
    private static partial Regex Ends();
}
