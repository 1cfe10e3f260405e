namespace Watersown.Growth;

/// <summary>What can be wrong with temperatures and thresholds.</summary>
public static class GrowthProblems
{
    public static ProblemKind HighBelowLow { get; } = new("GROWTH-001", ProblemWeight.Refuse,
        "the day's highest {high} is below its lowest {low}. Give the highest as the larger of the two.",
        "la máxima del día {high} está por debajo de la mínima {low}. Dé como máxima la mayor de las dos.");

    public static ProblemKind ThresholdsCross { get; } = new("GROWTH-002", ProblemWeight.Refuse,
        "the upper threshold {high} is not above the lower one {low}. Give an upper threshold above {low}, or null for none.",
        "el umbral superior {high} no está por encima del inferior {low}. Dé un umbral superior mayor que {low}, o null si no hay.");

    public static ProblemKind NextMorningMissing { get; } = new("GROWTH-003", ProblemWeight.Refuse,
        "nothing was given for the next morning's lowest, and {method} is drawn to it. Give next_tmin, or choose single-triangle or single-sine.",
        "no se dio la mínima de la mañana siguiente, y {method} la necesita. Dé next_tmin, o elija single-triangle o single-sine.");

    public static ProblemKind TargetsNotRising { get; } = new("GROWTH-004", ProblemWeight.Refuse,
        "{value} to heading does not lie between {low} to panicle initiation and {high} to mature. Give the warmth from sowing to each.",
        "{value} hasta el espigado no está entre {low} hasta el inicio de panícula y {high} hasta la madurez. Dé el calor desde la siembra hasta cada uno.");
}
