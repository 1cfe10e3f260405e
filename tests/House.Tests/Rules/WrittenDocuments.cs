using System.Globalization;
using System.Reflection;
using System.Text;
using Watersown.Documents.Reckon;
using Watersown.Reckon;

namespace Watersown.HouseRules;

/// <summary>The documents that are written from the code, so that they cannot fall behind it.</summary>
internal static class WrittenDocuments
{
    private const string Notice = "<!-- Written from the code by tests/House.Tests. Do not edit: run script/test with UPDATE_DOCS=1. -->\n";

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>docs/problems.md: every sort of problem by code, in both languages.</summary>
    public static string Problems(IEnumerable<DeclaredProblem> problems)
    {
        var text = new StringBuilder("# Problems\n\n").Append(Notice).Append(
            "\nEverything the desk can find wrong, by code. Words in braces are filled with what was given. A *refuse* stops the answer; a *warn* is said once and kept.\n");
        foreach (var area in problems.GroupBy(p => p.Kind.Code.Split('-')[0], StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            text.Append(Plain, $"\n## {area.Key}\n\n| code | weight | sentence | en español |\n|---|---|---|---|\n");
            foreach (var problem in area)
                text.Append(Plain, $"| {problem.Kind.Code} | {(problem.Kind.Weight == ProblemWeight.Refuse ? "refuse" : "warn")} | {Cell(problem.Kind.English)} | {Cell(problem.Kind.Spanish)} |\n");
        }

        return text.ToString();
    }

    /// <summary>docs/sources.md: the bibliography.</summary>
    public static string Bibliography(IEnumerable<Source> sources)
    {
        var text = new StringBuilder("# Sources\n\n").Append(Notice).Append(
            "\nEvery formula and every constant names one of these. *Read* means read in the publication or in a document that reproduces it; *from memory* means believed right "
            + "and not read again, and is to be confirmed before it decides anything.\n\n| key | source | standing |\n|---|---|---|\n");
        foreach (var source in sources)
            text.Append(Plain, $"| `{source.Key}` | {Cell(source.Reference)} | {Standing(source.Standing)} |\n");
        return text.ToString();
    }

    /// <summary>docs/formulas.md: every reckoning with its keys and formulas, then every calculator with its source.</summary>
    public static string Formulas(IEnumerable<Reckoning> reckonings, IEnumerable<Assembly> assemblies)
    {
        var text = new StringBuilder("# Formulas\n\n").Append(Notice).Append(
            "\n## Reckonings\n\nEach can be asked for by name: `script/watersown reckon NAME key=value …`. The formulas are those of the example's working.\n");
        foreach (var reckoning in reckonings.OrderBy(r => r.Name, StringComparer.Ordinal)) Describe(text, reckoning);
        text.Append("\n## Calculators and constants\n\n| where | source | place |\n|---|---|---|\n");
        foreach (var (where, source) in assemblies.SelectMany(Cited).OrderBy(c => c.Where, StringComparer.Ordinal).ThenBy(c => c.Source.Key, StringComparer.Ordinal).ThenBy(c => c.Source.Place, StringComparer.Ordinal))
            text.Append(Plain, $"| `{where}` | `{source.Key}` | {Cell(source.Place)} |\n");
        return text.ToString();
    }

    private static void Describe(StringBuilder text, Reckoning reckoning)
    {
        text.Append(Plain, $"\n### {reckoning.Name}\n\n{reckoning.Question} Source: {reckoning.Source}.\n\n| key | unit | meaning |\n|---|---|---|\n");
        foreach (var key in reckoning.Inputs) Rows(text, key, string.Empty);
        foreach (var key in reckoning.Results) Rows(text, key, "→ ");
        if (reckoning.Limits.Length > 0) text.Append(Plain, $"\n{reckoning.Limits}\n");
        var answer = reckoning.Run(ReckonRequest.FromWords(ReckonRequest.Words(reckoning), reckoning).Value);
        var steps = answer.HasValue ? answer.Value.Working.Lines.Where(l => l.Formula is not null).ToList() : [];
        if (steps.Count == 0) return;
        text.Append("\n| symbol | meaning | formula | source |\n|---|---|---|---|\n");
        foreach (var step in steps) text.Append(Plain, $"| {Cell(step.Symbol)} | {Cell(step.Meaning)} | `{Cell(step.Formula!)}` | {Cell(step.Source?.ToString() ?? string.Empty)} |\n");
    }

    private static void Rows(StringBuilder text, ReckoningKey key, string mark)
    {
        text.Append(Plain, $"| {mark}`{key.Key}` | {Cell(key.Unit)} | {Cell(key.Meaning)} |\n");
        foreach (var column in key.Columns) text.Append(Plain, $"| {mark}`{key.Key}` `{column.Key}` | {Cell(column.Unit)} | {Cell(column.Meaning)} |\n");
    }

    private static IEnumerable<(string Where, SourceAttribute Source)> Cited(Assembly assembly) =>
        from type in assembly.GetTypes()
        from member in type.GetMembers(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Where(m => m is not Type).Append(type)
        from source in member.GetCustomAttributes<SourceAttribute>(inherit: false)
        select (member is Type ? Short(type) : Short(type) + "." + member.Name, source);

    private static string Short(Type type) => type.FullName!.Replace("Watersown.", string.Empty, StringComparison.Ordinal).Replace('+', '.');

    private static string Standing(SourceStanding standing) => standing switch
    {
        SourceStanding.Read => "read",
        SourceStanding.Derived => "derived",
        SourceStanding.FromMemory => "from memory",
        SourceStanding.CommonPractice => "common practice, no source",
        SourceStanding.Default => "planner default",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).Replace('\n', ' ');
}
