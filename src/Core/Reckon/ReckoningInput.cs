using System.Globalization;

namespace Watersown.Reckon;

/// <summary>The values given to a reckoning, once checked against its keys.</summary>
public sealed class ReckoningInput
{
    // No scale, watch or tape tells this from nothing; dividing by it would only make a number that is too large to be one.
    private const double NoDifference = 1e-6;

    private readonly Datum.Table given;

    internal ReckoningInput(Datum.Table given) => this.given = given;

    public bool Has(string key) => given[key] is not null and not Datum.Nothing;

    [PlainNumber("in the unit of the key")]
    public double Number(string key) => ((Datum.Number)given[key]!).Value + 0.0; // makes minus zero plain

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

    /// <summary>The rows of a key without columns, as they came.</summary>
    public ImmutableArray<Datum> Items(string key) => ((Datum.Sequence)given[key]!).Items;

    public Datum.Table Table(string key) => (Datum.Table)given[key]!;

    /// <summary>Each row of a key with columns, to be read like an input of its own.</summary>
    public ImmutableArray<ReckoningInput> Each(string key) => [.. Rows(key).Select(row => new ReckoningInput(row))];

    /// <summary>A group of named values, to be read like an input of its own.</summary>
    public ReckoningInput Group(string key) => new(Table(key));

    /// <summary>Every fault of the given values at once: unknown, missing, of the wrong sort, outside the limits.</summary>
    internal static ImmutableArray<Problem> Check(Reckoning reckoning, Datum.Table given)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        CheckCells(new Place(reckoning.Name, string.Empty), reckoning.Inputs, given, problems);
        return problems.ToImmutable();
    }

    private static void CheckCells(Place place, ImmutableArray<ReckoningKey> keys, Datum.Table given, ImmutableArray<Problem>.Builder problems)
    {
        foreach (var (key, value) in given.Cells)
        {
            var known = keys.FirstOrDefault(k => string.Equals(k.Key, key, StringComparison.Ordinal));
            if (known is null)
                problems.Add(ReckonProblems.UnknownKey.At(place.Of(key), ("value", Wording.Say.Datum(value)), ("name", place.Name), ("keys", string.Join(", ", keys.Select(k => k.Key)))));
            else if (given.Cells.Count(c => string.Equals(c.Key, key, StringComparison.Ordinal)) > 1)
                problems.Add(ReckonProblems.GivenTwice.At(place.Of(key)));
            else
                CheckValue(place, known, value, problems);
        }

        foreach (var key in keys)
        {
            if (!key.Optional && given[key.Key] is null)
                problems.Add(ReckonProblems.MissingKey.At(place.Of(key.Key), ("meaning", key.Meaning), ("meaning:es", "esta clave"), ("unit", key.Unit.Length == 0 ? string.Empty : " (" + key.Unit + ")")));
        }
    }

    private static void CheckRows(Place place, ReckoningKey key, ImmutableArray<Datum> rows, ImmutableArray<Problem>.Builder problems)
    {
        if (rows.IsEmpty)
            problems.Add(SortWords.NoRows(place.Of(key.Key)));
        for (var i = 0; i < rows.Length; i++)
        {
            var row = new Place("a row of " + key.Key, string.Create(CultureInfo.InvariantCulture, $"{place.Of(key.Key)} #{i + 1} "));
            if (rows[i] is Datum.Table cells) CheckCells(row, key.Columns, cells, problems);
            else problems.Add(SortWords.WrongRow(row.Prefix.TrimEnd(), Wording.Say.Datum(rows[i]), key.Columns.Select(c => c.Key)));
        }
    }

    private static void CheckValue(Place place, ReckoningKey key, Datum value, ImmutableArray<Problem>.Builder problems)
    {
        switch (key.Kind, value)
        {
            case (_, Datum.Nothing) when key.Nullable || key.Optional:
            case (KeyKind.Boundary, Datum.Table):
            case (KeyKind.YesNo, Datum.Flag):
            case (KeyKind.Rows, Datum.Sequence) when key.Columns.IsEmpty:
                return;
            case (KeyKind.Rows, Datum.Sequence { Items: var rows }) when !key.Columns.IsEmpty:
                CheckRows(place, key, rows, problems);
                return;
            case (KeyKind.Group, Datum.Table cells):
                CheckCells(new Place(key.Key, place.Of(key.Key) + " "), key.Columns, cells, problems);
                return;
            case (KeyKind.Number or KeyKind.WholeNumber, Datum.Number { Value: var number }):
                CheckNumber(place, key, number, problems);
                return;
            case (KeyKind.Numbers, Datum.Sequence { Items: var items }) when items.Length > 0 && items.All(i => i is Datum.Number):
                foreach (var item in items.Cast<Datum.Number>()) CheckNumber(place, key, item.Value, problems);
                return;
            case (KeyKind.Text, Datum.Text { Value: var text }):
                if (key.Choices.IsEmpty || key.Choices.Contains(text, StringComparer.Ordinal)) return;
                problems.Add(ReckonProblems.NotAChoice.At(place.Of(key.Key), ("value", text), ("choices", string.Join(", ", key.Choices))));
                return;
            case (KeyKind.Date, Datum.Text { Value: var day }) when DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _):
                return;
            default:
                problems.Add(SortWords.Wrong(place.Of(key.Key), Wording.Say.Datum(value), key.Kind));
                return;
        }
    }

    private static void CheckNumber(Place place, ReckoningKey key, double number, ImmutableArray<Problem>.Builder problems)
    {
        var unit = key.Unit.Length == 0 ? string.Empty : " " + key.Unit;
        var said = number.ToString("R", CultureInfo.InvariantCulture) + unit;
        if (!double.IsFinite(number) || (key.Kind == KeyKind.WholeNumber && number != Math.Floor(number)))
            problems.Add(SortWords.Wrong(place.Of(key.Key), said, key.Kind));
        else if (key.Least is { } least && (number < least || (key.AboveLeast && number - least < NoDifference)))
            problems.Add((key.AboveLeast ? ReckonProblems.NotAbove : ReckonProblems.TooSmall).At(place.Of(key.Key), ("value", said), ("limit", Limit(least) + unit)));
        else if (key.Most is { } most && number > most)
            problems.Add(ReckonProblems.TooLarge.At(place.Of(key.Key), ("value", said), ("limit", Limit(most) + unit)));
    }

    private static string Limit(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>Where values stand: whose keys they are, and what comes before a key when it is named to people.</summary>
    private sealed record Place(string Name, string Prefix)
    {
        public string Of(string key) => Prefix + key;
    }
}
