namespace Watersown.Reckon;

/// <summary>What sort of value a key takes.</summary>
public enum KeyKind
{
    Number,
    WholeNumber,
    Text,
    Date,
    YesNo,
    Numbers,

    /// <summary>A list of rows: named values checked against the key's columns where it has some, else by the calculation itself.</summary>
    Rows,

    /// <summary>A group of named values, checked against the key's columns.</summary>
    Group,

    /// <summary>A GeoJSON Polygon or MultiPolygon in WGS 84, as a table.</summary>
    Boundary,
}

/// <summary>One input or result of a reckoning, as documented and as checked.</summary>
/// <param name="Key">The key on the wire, unit last: <c>net_ac</c>.</param>
/// <param name="Kind">Number, text, list and so on.</param>
/// <param name="Unit">For people: <c>ac</c>.</param>
/// <param name="Meaning">What it is, in the trade's words.</param>
public sealed record ReckoningKey(string Key, KeyKind Kind, string Unit, string Meaning)
{
    public bool Optional { get; init; }

    /// <summary>A null is an answer here ("no upper threshold").</summary>
    public bool Nullable { get; init; }

    /// <summary>What it means where a result is null: <c>never</c>.</summary>
    public string? NullMeans { get; init; }

    /// <summary>Smallest acceptable value.</summary>
    [PlainNumber("in the unit of the key")]
    public double? Least { get; init; }

    /// <summary>Largest acceptable value.</summary>
    [PlainNumber("in the unit of the key")]
    public double? Most { get; init; }

    /// <summary>The value must be above <see cref="Least"/>, not equal to it.</summary>
    public bool AboveLeast { get; init; }

    /// <summary>The words that are understood, where only some are.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>What each row, or the group, holds.</summary>
    public ImmutableArray<ReckoningKey> Columns { get; init; } = [];
}

/// <summary>
/// A calculation that can be asked for by name with values of its keys alone, shows its working, and documents itself.
/// </summary>
/// <param name="Name">Such as <c>box-flow</c>.</param>
/// <param name="Question">The question it answers, in one sentence.</param>
/// <param name="Inputs">What it takes.</param>
/// <param name="Results">What it gives.</param>
/// <param name="Source">The published source.</param>
/// <param name="Example">An example as it would be typed, <c>key=value</c> apart by spaces.</param>
/// <param name="Work">The calculation: values already checked against <paramref name="Inputs"/>.</param>
public sealed record Reckoning(
    string Name,
    string Question,
    ImmutableArray<ReckoningKey> Inputs,
    ImmutableArray<ReckoningKey> Results,
    Citation Source,
    string Example,
    Func<ReckoningInput, Outcome<Reckoned>> Work)
{
    /// <summary>When the answer is not valid, and how near it is.</summary>
    public string Limits { get; init; } = string.Empty;

    /// <summary>What can be given in several ways, of which exactly one must be.</summary>
    public ImmutableArray<Alternatives> ExactlyOneOf { get; init; } = [];

    /// <summary>
    /// What keys demand of one another beyond that. It is asked even where single values are wrong, so it may only look at
    /// whether keys are there and at what <see cref="ReckoningInput.TextOrNone"/> tells.
    /// </summary>
    public Func<ReckoningInput, IEnumerable<Problem>> Demands { get; init; } = _ => [];

    /// <summary>Checks the given values against the keys, all at once, then works it out.</summary>
    public Outcome<Reckoned> Run(Datum.Table given)
    {
        var input = new ReckoningInput(given);
        ImmutableArray<Problem> problems =
        [
            .. ReckoningInput.Check(this, given),
            .. ExactlyOneOf.SelectMany(choice => choice.Check(input)),
            .. Demands(input),
        ];
        return problems.IsEmpty ? Work(input) : Outcome<Reckoned>.Refuse(problems);
    }
}

/// <summary>What a reckoning gives: results by key in the documented order, the working, and cautions.</summary>
public sealed record Reckoned(ImmutableArray<(string Key, Datum Value)> Results, Working Working)
{
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>The result of one key; asking for one that is not there is a bug.</summary>
    public Datum this[string key] => Results.First(r => string.Equals(r.Key, key, StringComparison.Ordinal)).Value;
}
