namespace Watersown.Schedule;

/// <summary>The word for a step of a plan, as pins and documents write it.</summary>
public static class TaskWords
{
    public static string Of(PlanTaskKind task) => task switch
    {
        PlanTaskKind.Ground => "ground",
        PlanTaskKind.OrderWater => "order-water",
        PlanTaskKind.Fill => "fill",
        PlanTaskKind.CallSeed => "call-seed",
        PlanTaskKind.Soak => "soak",
        PlanTaskKind.Drain => "drain",
        PlanTaskKind.Haul => "haul",
        PlanTaskKind.Sow => "sow",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The step that a word names; none for a word of no step.</summary>
    public static PlanTaskKind? Kind(string word) => Enum.GetValues<PlanTaskKind>().Cast<PlanTaskKind?>().FirstOrDefault(k => string.Equals(Of(k!.Value), word, StringComparison.OrdinalIgnoreCase));
}
