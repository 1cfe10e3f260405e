// Violations on purpose: the rules about problems must report each of these.
namespace Watersown.Planted;

internal static class PlantedProblems
{
    public static ProblemKind First { get; } = new("PLANT-001", ProblemWeight.Refuse, "{value} is above {limit}. Give less.", "{value} es demasiado. Dé menos.");

    public static ProblemKind Second { get; } = new("PLANT-001", ProblemWeight.Refuse, "nothing is right. Start again.", " ");

    public static ProblemKind Odd { get; } = new("plant 3", ProblemWeight.Refuse, "no end", "sin fin.");
}
