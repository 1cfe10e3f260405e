namespace Watersown.Holds;

/// <summary>What can be wrong with a hold.</summary>
public static class HoldProblems
{
    public static ProblemKind YearOutside { get; } = new("HOLD-001", ProblemWeight.Refuse,
        "{value} is outside the years {least} to {most}. Check the year.",
        "{value} está fuera de los años {least} a {most}. Revise el año.");
}
