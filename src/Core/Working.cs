namespace Watersown;

/// <summary>
/// One line of a working: a symbol of the formula, what it means, its value and unit; for a result the formula and
/// source; for an input where it came from and when it was true.
/// </summary>
/// <param name="Symbol">The letter of the formula, such as <c>H</c>.</param>
/// <param name="Meaning">What it is, in the trade's words.</param>
/// <param name="Value">A number or text, at full precision.</param>
/// <param name="Unit">Such as <c>ft</c>; empty for a plain number.</param>
public sealed record WorkingLine(string Symbol, string Meaning, Datum Value, string Unit)
{
    /// <summary>The formula in plain symbols, where this line is worked out.</summary>
    public string? Formula { get; init; }

    /// <summary>The published source of the formula or the constant.</summary>
    public Citation? Source { get; init; }

    /// <summary>Where an input came from, such as "typed", "field N4", "told by the warehouse".</summary>
    public string? From { get; init; }

    /// <summary>When an input was true; its age is shown against the moment of reading.</summary>
    public DateTimeOffset? At { get; init; }
}

/// <summary>
/// How a result was worked out. One mechanism for every figure that a person may act on, shown as text, as JSON and on
/// screen.
/// </summary>
public sealed class Working
{
    private Working(ImmutableArray<WorkingLine> lines) => Lines = lines;

    public static Working Empty { get; } = new([]);

    public ImmutableArray<WorkingLine> Lines { get; }

    /// <summary>An input: where it came from, and when it was true.</summary>
    public Working Given(string symbol, string meaning, Datum value, string unit, string? from = null, DateTimeOffset? at = null) =>
        new(Lines.Add(new WorkingLine(symbol, meaning, value, unit) { From = from, At = at }));

    /// <summary>A constant with its source.</summary>
    public Working Constant(string symbol, string meaning, Datum value, string unit, Citation source) =>
        new(Lines.Add(new WorkingLine(symbol, meaning, value, unit) { Source = source }));

    /// <summary>A step worked out by a formula with its source.</summary>
    public Working Step(string symbol, string meaning, Datum value, string unit, string formula, Citation source) =>
        new(Lines.Add(new WorkingLine(symbol, meaning, value, unit) { Formula = formula, Source = source }));

    /// <summary>The lines of another working after these.</summary>
    public Working Then(Working other) => new(Lines.AddRange(other.Lines));
}

/// <summary>A value together with how it was worked out.</summary>
public sealed record Worked<T>(T Value, Working Working)
    where T : notnull;
