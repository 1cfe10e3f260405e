using System.Globalization;

namespace Watersown.Holds;

/// <summary>What can be wrong with a hold.</summary>
public static class HoldProblems
{
    private const int FirstYear = 1990;
    private const int LastYear = 2200;

    public static ProblemKind YearOutside { get; } = new("HOLD-001", ProblemWeight.Refuse,
        "{value} is outside the years {least} to {most}. Check the year.",
        "{value} está fuera de los años {least} a {most}. Revise el año.");

    public static ProblemKind WindowBackward { get; } = new("HOLD-002", ProblemWeight.Refuse,
        "The last day {value} is before the first, {limit}. Turn them round.",
        "El último día {value} es anterior al primero, {limit}. Cámbielos de lugar.");

    /// <summary>What is wrong with a day of application that no farm has today.</summary>
    internal static Problem? Beside(DateOnly applied, string typed) => applied.Year is >= FirstYear and <= LastYear
        ? null
        : YearOutside.At("applied_on", ("value", typed), ("least", FirstYear.ToString(CultureInfo.InvariantCulture)), ("most", LastYear.ToString(CultureInfo.InvariantCulture)));
}
