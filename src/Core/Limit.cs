using System.Globalization;

namespace Watersown;

/// <summary>
/// How far a figure that a person gives may go. What cannot be true is refused; what is merely unlikely is said once and
/// kept, because the person may know better.
/// </summary>
/// <param name="Key">The key of the figure, unit last: <c>net_ac</c>.</param>
/// <param name="Unit">For people: <c>ac</c>; empty for a plain number.</param>
public sealed record Limit(string Key, string Unit)
{
    /// <summary>The figure must be above this.</summary>
    [PlainNumber("in the unit of the limit")]
    public double? Above { get; init; }

    /// <summary>The smallest figure that can be.</summary>
    [PlainNumber("in the unit of the limit")]
    public double? Least { get; init; }

    /// <summary>The largest figure that can be.</summary>
    [PlainNumber("in the unit of the limit")]
    public double? Most { get; init; }

    /// <summary>Below this it is unlikely.</summary>
    [PlainNumber("in the unit of the limit")]
    public double? UsualLeast { get; init; }

    /// <summary>Above this it is unlikely.</summary>
    [PlainNumber("in the unit of the limit")]
    public double? UsualMost { get; init; }

    /// <summary>Only whole numbers.</summary>
    public bool Whole { get; init; }

    /// <summary>What is wrong with a figure, if anything.</summary>
    /// <param name="value">The figure in the unit of the limit.</param>
    /// <param name="where">The place it stands at.</param>
    public Problem? Judge([PlainNumber("in the unit of the limit")] double value, string where)
    {
        if (Above is { } above && value <= above) return Say(LimitProblems.NotAbove, value, where, above);
        if (Least is { } least && value < least) return Say(LimitProblems.TooSmall, value, where, least);
        if (Most is { } most && value > most) return Say(LimitProblems.TooLarge, value, where, most);
        if (UsualLeast is { } low && value < low) return Say(LimitProblems.Low, value, where, low);
        if (UsualMost is { } high && value > high) return Say(LimitProblems.High, value, where, high);
        return null;
    }

    private Problem Say(ProblemKind kind, double value, string where, double limit) =>
        kind.At(where, ("value", Text(value)), ("limit", Text(limit)));

    private string Text(double value)
    {
        var text = value.ToString(Math.Abs(value) is >= 1000 and < 1e15 ? "#,0.##########" : "0.##########", CultureInfo.InvariantCulture);
        return Unit.Length == 0 ? text : text + " " + Unit;
    }
}

/// <summary>What can be wrong with a single figure.</summary>
public static class LimitProblems
{
    public static ProblemKind NotAbove { get; } = new("LIMIT-001", ProblemWeight.Refuse,
        "{value} must be above {limit}. Give a value above {limit}.",
        "{value} debe ser mayor que {limit}. Escriba un valor mayor que {limit}.");

    public static ProblemKind TooSmall { get; } = new("LIMIT-002", ProblemWeight.Refuse,
        "{value} is below {limit}, the least that can be. Give {limit} or more.",
        "{value} está por debajo de {limit}, lo mínimo posible. Escriba {limit} o más.");

    public static ProblemKind TooLarge { get; } = new("LIMIT-003", ProblemWeight.Refuse,
        "{value} is above {limit}, the most that can be. Give {limit} or less.",
        "{value} está por encima de {limit}, lo máximo posible. Escriba {limit} o menos.");

    public static ProblemKind Low { get; } = new("LIMIT-004", ProblemWeight.Warn,
        "{value} is unusually low; {limit} or more is usual. Correct it, or leave it if it is true.",
        "{value} es más bajo de lo normal; lo normal es {limit} o más. Corríjalo, o déjelo si es cierto.");

    public static ProblemKind High { get; } = new("LIMIT-005", ProblemWeight.Warn,
        "{value} is unusually high; {limit} or less is usual. Correct it, or leave it if it is true.",
        "{value} es más alto de lo normal; lo normal es {limit} o menos. Corríjalo, o déjelo si es cierto.");
}
