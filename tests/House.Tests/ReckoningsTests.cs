using Watersown.Documents.Reckon;
using Watersown.Reckon;

namespace Watersown.HouseRules;

public sealed class ReckoningsTests
{
    public static TheoryData<string> Names => [.. Reckonings.All.Select(r => r.Name)];

    [Fact]
    public void Every_reckoning_answers_its_own_example() => Breach.None(Reckonings.All.SelectMany(Examples));

    [Fact]
    public void Planted_reckonings_that_do_not_keep_their_word_are_reported()
    {
        Breach.Found("planted: gives gal and promises gal_ac", Examples(Planted("a=1", new Reckoned([("gal", 1.0)], Working.Empty.Step("g", "gallons", 1.0, "gal", "a", Sources.Arithmetic)))));
        Breach.Found("planted: shows no working", Examples(Planted("a=1", new Reckoned([("gal_ac", 1.0)], Working.Empty))));
        Breach.Found("planted: refuses its own example", Examples(Planted("b=1", new Reckoned([("gal_ac", 1.0)], Working.Empty))));
        Breach.Found("planted: gives NaN", Extremes(Planted("a=1", new Reckoned([("gal_ac", double.NaN)], Working.Empty))));
    }

    [Fact]
    public void No_two_reckonings_share_a_name() => Assert.Equal(Reckonings.All.Length, Reckonings.All.Select(r => r.Name).Distinct(StringComparer.Ordinal).Count());

    // Whatever number stands in a key, there is an answer in numbers or a refusal, never a fault of the program.
    [Theory]
    [MemberData(nameof(Names))]
    public void Extreme_numbers_are_answered_or_refused(string name) => Breach.None(Extremes(Reckonings.Find(name)!));

    private static IEnumerable<string> Examples(Reckoning reckoning)
    {
        var outcome = reckoning.Run(Example(reckoning));
        if (outcome.IsRefused)
        {
            yield return reckoning.Name + ": refuses its own example: " + string.Join("; ", outcome.Problems.Select(p => Wording.Say.Problem(p, Wording.Language.English)));
            yield break;
        }

        var (given, promised) = (string.Join(", ", outcome.Value.Results.Select(r => r.Key)), string.Join(", ", reckoning.Results.Select(r => r.Key)));
        if (given != promised) yield return reckoning.Name + ": gives " + given + " and promises " + promised;
        if (!outcome.Value.Working.Lines.Any(l => l.Formula is not null && l.Source is not null)) yield return reckoning.Name + ": shows no working";
    }

    private static IEnumerable<string> Extremes(Reckoning reckoning)
    {
        var example = Example(reckoning);
        foreach (var given in example.Cells.SelectMany((cell, i) => Turned(cell.Value, Bounds(reckoning, cell.Key)).Select(v => new Datum.Table(example.Cells.SetItem(i, (cell.Key, v))))).Prepend(example))
        {
            string? fault = null;
            try
            {
                var outcome = reckoning.Run(given);
                if (outcome.HasValue && outcome.Value.Results.Any(r => !Finite(r.Value))) fault = "gives NaN or infinity";
                else if (outcome.HasValue && outcome.Value.Working.Lines.Any(l => !Finite(l.Value))) fault = "gives NaN or infinity in its working";
            }
            catch (Exception failure)
            {
                fault = failure.GetType().Name + " " + failure.Message.Split('\n')[0];
            }

            if (fault is not null) yield return reckoning.Name + ": " + fault + " for " + Wording.Say.Datum(given);
        }
    }

    /// <summary>The value with each of its numbers in turn at the ends of what is accepted, and far outside.</summary>
    private static IEnumerable<Datum> Turned(Datum value, double[] bounds) => value switch
    {
        Datum.Number => bounds.Concat([0, -1, 1e-300, 5e-324, -0.0, 1e-9, 1, 1e9, 1e300, double.MaxValue, double.NaN, double.PositiveInfinity]).Select(n => (Datum)n),
        Datum.Sequence list => list.Items.SelectMany((item, i) => Turned(item, []).Select(v => (Datum)new Datum.Sequence(list.Items.SetItem(i, v)))).Append(new Datum.Sequence([])),
        Datum.Table table => table.Cells.SelectMany((cell, i) => Turned(cell.Value, []).Select(v => (Datum)new Datum.Table(table.Cells.SetItem(i, (cell.Key, v))))),
        Datum.Text => [string.Empty, "x", Datum.None, 5],
        _ => [Datum.None, 5, "x"],
    };

    private static double[] Bounds(Reckoning reckoning, string key)
    {
        var known = reckoning.Inputs.First(k => k.Key == key);
        return [.. new[] { known.Least, known.Most }.OfType<double>().SelectMany(b => new[] { b, Math.BitIncrement(b), Math.BitDecrement(b) })];
    }

    private static bool Finite(Datum value) => value switch
    {
        Datum.Number number => double.IsFinite(number.Value),
        Datum.Sequence list => list.Items.All(Finite),
        Datum.Table table => table.Cells.All(c => Finite(c.Value)),
        _ => true,
    };

    private static Datum.Table Example(Reckoning reckoning) => ReckonRequest.FromWords(ReckonRequest.Words(reckoning), reckoning).Value;

    private static Reckoning Planted(string example, Reckoned answer) => new(
        "planted", "Does it keep its word?", [new("a", KeyKind.Number, string.Empty, "anything")], [new("gal_ac", KeyKind.Number, "gal/ac", "aqua")], Sources.Arithmetic, example, _ => Outcome<Reckoned>.Of(answer));
}
