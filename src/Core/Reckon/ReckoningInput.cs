using System.Globalization;

namespace Watersown.Reckon;

/// <summary>The values given to a reckoning, once checked against its keys.</summary>
public sealed class ReckoningInput
{
    private readonly Datum.Table given;

    internal ReckoningInput(Datum.Table given) => this.given = given;

    public bool Has(string key) => given[key] is not null and not Datum.Nothing;

    [PlainNumber("in the unit of the key")]
    public double Number(string key) => ((Datum.Number)given[key]!).Value;

    [PlainNumber("in the unit of the key")]
    public double? NumberOrNone(string key) => Has(key) ? Number(key) : null;

    public int Whole(string key) => (int)Number(key);

    public string Text(string key) => ((Datum.Text)given[key]!).Value;

    /// <summary>The word of a key where it is one, whether or not it has been checked.</summary>
    public string? TextOrNone(string key) => (given[key] as Datum.Text)?.Value;

    public DateOnly Date(string key) => DateOnly.ParseExact(Text(key), "yyyy-MM-dd", CultureInfo.InvariantCulture);

    [PlainNumber("in the unit of the key")]
    public ImmutableArray<double> Numbers(string key) => [.. ((Datum.Sequence)given[key]!).Items.Select(i => ((Datum.Number)i).Value)];

    public ImmutableArray<Datum.Table> Rows(string key) => [.. ((Datum.Sequence)given[key]!).Items.Cast<Datum.Table>()];

    public Datum.Table Table(string key) => (Datum.Table)given[key]!;

    /// <summary>Every fault of the given values at once: unknown, missing, of the wrong sort, outside the limits.</summary>
    internal static ImmutableArray<Problem> Check(Reckoning reckoning, Datum.Table given)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        foreach (var (key, value) in given.Cells)
        {
            var known = reckoning.Inputs.FirstOrDefault(k => string.Equals(k.Key, key, StringComparison.Ordinal));
            if (known is null)
                problems.Add(ReckonProblems.UnknownKey.At(key, ("value", Wording.Say.Datum(value)), ("name", reckoning.Name), ("keys", string.Join(", ", reckoning.Inputs.Select(k => k.Key)))));
            else if (given.Cells.Count(c => string.Equals(c.Key, key, StringComparison.Ordinal)) > 1)
                problems.Add(ReckonProblems.GivenTwice.At(key));
            else
                CheckValue(known, value, problems);
        }

        foreach (var key in reckoning.Inputs)
        {
            if (!key.Optional && given[key.Key] is null)
                problems.Add(ReckonProblems.MissingKey.At(key.Key, ("meaning", key.Meaning), ("unit", key.Unit.Length == 0 ? string.Empty : " (" + key.Unit + ")")));
        }

        return problems.ToImmutable();
    }

    private static void CheckValue(ReckoningKey key, Datum value, ImmutableArray<Problem>.Builder problems)
    {
        switch (key.Kind, value)
        {
            case (_, Datum.Nothing) when key.Nullable || key.Optional:
            case (KeyKind.Boundary, Datum.Table):
            case (KeyKind.Rows, Datum.Sequence { Items: var rows }) when rows.All(r => r is Datum.Table or Datum.Sequence):
                return;
            case (KeyKind.Number or KeyKind.WholeNumber, Datum.Number { Value: var number }):
                CheckNumber(key, number, problems);
                return;
            case (KeyKind.Numbers, Datum.Sequence { Items: var items }) when items.Length > 0 && items.All(i => i is Datum.Number):
                foreach (var item in items.Cast<Datum.Number>()) CheckNumber(key, item.Value, problems);
                return;
            case (KeyKind.Text, Datum.Text { Value: var text }):
                if (key.Choices.IsEmpty || key.Choices.Contains(text, StringComparer.Ordinal)) return;
                problems.Add(ReckonProblems.NotAChoice.At(key.Key, ("value", text), ("choices", string.Join(", ", key.Choices))));
                return;
            case (KeyKind.Date, Datum.Text { Value: var day }) when DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _):
                return;
            default:
                problems.Add(ReckonProblems.WrongSort.At(key.Key, ("value", Wording.Say.Datum(value)), ("wanted", Wanted(key.Kind))));
                return;
        }
    }

    private static void CheckNumber(ReckoningKey key, double number, ImmutableArray<Problem>.Builder problems)
    {
        var unit = key.Unit.Length == 0 ? string.Empty : " " + key.Unit;
        var said = number.ToString("R", CultureInfo.InvariantCulture) + unit;
        if (!double.IsFinite(number) || (key.Kind == KeyKind.WholeNumber && number != Math.Floor(number)))
            problems.Add(ReckonProblems.WrongSort.At(key.Key, ("value", said), ("wanted", Wanted(key.Kind))));
        else if (key.Least is { } least && (number < least || (key.AboveLeast && number == least)))
            problems.Add((key.AboveLeast ? ReckonProblems.NotAbove : ReckonProblems.TooSmall).At(key.Key, ("value", said), ("limit", Limit(least) + unit)));
        else if (key.Most is { } most && number > most)
            problems.Add(ReckonProblems.TooLarge.At(key.Key, ("value", said), ("limit", Limit(most) + unit)));
    }

    private static string Limit(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static string Wanted(KeyKind kind) => kind switch
    {
        KeyKind.Number => "a number",
        KeyKind.WholeNumber => "a whole number",
        KeyKind.Text => "a word",
        KeyKind.Date => "a day such as 2026-05-08",
        KeyKind.Numbers => "a list of numbers such as [1, 2, 3]",
        KeyKind.Rows => "a list of rows",
        KeyKind.Boundary => "a GeoJSON Polygon or MultiPolygon",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
