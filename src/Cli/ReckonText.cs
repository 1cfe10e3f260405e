using System.Globalization;
using System.Text;
using Watersown.Documents.Reckon;
using Watersown.Reckon;
using Watersown.Wording;

namespace Watersown.Cli;

/// <summary>Reckonings as text for somebody at the keyboard.</summary>
internal static class ReckonText
{
    private const string ForTheShell = " {}[]\"*?&;<>|$()#";

    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    public static string List(ImmutableArray<Reckoning> reckonings)
    {
        var text = new StringBuilder();
        var width = reckonings.Max(r => r.Name.Length);
        foreach (var reckoning in reckonings.OrderBy(r => r.Name, StringComparer.Ordinal))
            text.Append(Plain, $"{reckoning.Name.PadRight(width)}  {reckoning.Question}\n");
        text.Append("\n'watersown reckon NAME --help' tells what each one takes.");
        return text.ToString();
    }

    public static string Answer(Reckoning reckoning, Reckoned reckoned)
    {
        var text = new StringBuilder();
        text.Append(Plain, $"{reckoning.Name}: {reckoning.Question}\n\n");
        var width = reckoning.Results.Max(r => r.Key.Length);
        foreach (var (key, value) in reckoned.Results)
        {
            var known = reckoning.Results.First(r => r.Key == key);
            var said = (value is Datum.Nothing && known.NullMeans is { } meaning ? meaning : Say.Datum(value)) + (known.Unit.Length == 0 || value is Datum.Nothing ? string.Empty : " " + known.Unit);
            text.Append(Plain, $"  {key.PadRight(width)}  {said}  ({known.Meaning})\n");
        }

        text.Append("\nHow it was worked out\n").Append(Say.Working(reckoned.Working));
        AppendCautions(text, reckoned.Cautions);
        return text.ToString().TrimEnd();
    }

    public static string Help(Reckoning reckoning)
    {
        var text = new StringBuilder();
        text.Append(Plain, $"{reckoning.Name}: {reckoning.Question}\n\nIt takes\n");
        AppendKeys(text, reckoning.Inputs, reckoning.ExactlyOneOf);
        foreach (var choice in reckoning.ExactlyOneOf) text.Append(Plain, $"  For {choice.Meaning} give exactly one of {choice.Choices}.\n");
        text.Append("\nIt gives\n");
        AppendKeys(text, reckoning.Results, []);
        if (reckoning.Limits.Length > 0) text.Append(Plain, $"\nWhen it holds: {reckoning.Limits}\n");
        text.Append(Plain, $"\nSource: {reckoning.Source}\n\nExample\n");
        text.Append(Plain, $"  watersown reckon {reckoning.Name} {string.Join(' ', ReckonRequest.Words(reckoning).Select(Quoted))}\n");
        text.Append(Plain, $"  echo '{ReckonRequest.Example(reckoning)}' | watersown reckon {reckoning.Name}");
        return text.ToString();
    }

    private static void AppendKeys(StringBuilder text, ImmutableArray<ReckoningKey> keys, ImmutableArray<Alternatives> choices, string indent = "  ")
    {
        var width = keys.Max(k => k.Key.Length);
        foreach (var key in keys)
        {
            text.Append(Plain, $"{indent}{key.Key.PadRight(width)}  {key.Meaning}");
            if (key.Unit.Length > 0) text.Append(Plain, $", {key.Unit}");
            foreach (var note in Notes(key, choices)) text.Append(Plain, $"; {note}");
            text.Append('\n');
            if (!key.Columns.IsEmpty) AppendKeys(text, key.Columns, [], indent + "    ");
        }
    }

    private static IEnumerable<string> Notes(ReckoningKey key, ImmutableArray<Alternatives> choices)
    {
        if (key.Least is { } least) yield return (key.AboveLeast ? "above " : "from ") + least.ToString("R", Plain);
        if (key.Most is { } most) yield return "up to " + most.ToString("R", Plain);
        if (!key.Choices.IsEmpty) yield return "one of " + string.Join(", ", key.Choices);
        if (choices.Any(c => c.Contains(key.Key))) yield return "see below";
        else if (key.Optional) yield return "may be left out";
        else if (key.NullMeans is { } meaning) yield return "null means " + meaning;
        else if (key.Nullable) yield return "may be null";
    }

    private static void AppendCautions(StringBuilder text, ImmutableArray<string> cautions)
    {
        if (cautions.IsEmpty) return;
        text.Append("\nCautions\n");
        foreach (var caution in cautions) text.Append(Plain, $"  - {caution}\n");
    }

    /// <summary>A word that the shell would take apart, in quotes.</summary>
    private static string Quoted(string word) => word.All(c => !ForTheShell.Contains(c, StringComparison.Ordinal)) ? word : "'" + word + "'";
}
