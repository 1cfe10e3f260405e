using Watersown.Land;

namespace Watersown.Schedule;

/// <summary>Where a field's water comes from.</summary>
public static class FieldSource
{
    /// <summary>The source that the plan fills it from, or the first that reaches it; none known.</summary>
    public static string? First(SeasonPlan? plan, Field field) =>
        plan?.Task(field.Code, PlanTaskKind.Fill) is { From: [var first, ..] } ? first.Source : field.Sources.FirstOrDefault();
}
