using Watersown.Reckon;
using Watersown.Wording;

namespace Watersown;

/// <summary>Asks a reckoning as a user would, by name and keys. The one door for tests of reckonings.</summary>
internal static class Ask
{
    public static Outcome<Reckoned> For(string name, params (string Key, Datum Value)[] given) =>
        (Reckonings.Find(name) ?? throw new ArgumentException("No reckoning is called " + name, nameof(name))).Run(new Datum.Table([.. given]));

    public static double Number(this Outcome<Reckoned> outcome, string key) => ((Datum.Number)outcome.Answer(key)).Value;

    public static string Text(this Outcome<Reckoned> outcome, string key) => ((Datum.Text)outcome.Answer(key)).Value;

    public static ImmutableArray<Datum.Table> Rows(this Outcome<Reckoned> outcome, string key) =>
        [.. ((Datum.Sequence)outcome.Answer(key)).Items.Cast<Datum.Table>()];

    public static double Number(this Datum.Table row, string key) => ((Datum.Number)row[key]!).Value;

    public static Datum Answer(this Outcome<Reckoned> outcome, string key)
    {
        Assert.True(outcome.HasValue, string.Join("; ", outcome.Problems.Select(p => Say.Problem(p, Language.English))));
        return outcome.Value[key];
    }

    public static Datum List(params double[] values) => Datum.ListOf(values);

    /// <summary>Asserts that exactly these problems were found, in this order, each at its place.</summary>
    public static void Refuses(this Outcome<Reckoned> outcome, params (ProblemKind Kind, string Where)[] expected)
    {
        Assert.True(outcome.IsRefused);
        Assert.Equal(expected, outcome.Problems.Select(p => (p.Kind, p.Where)));
        foreach (var problem in outcome.Problems)
        {
            Assert.DoesNotContain('{', Say.Problem(problem, Language.English));
            Assert.DoesNotContain('{', Say.Problem(problem, Language.Spanish));
        }
    }
}
