namespace Watersown.Documents.Plan;

/// <summary>What can be wrong with a saved plan held against the farm as it stands.</summary>
public static class PlanProblems
{
    public static ProblemKind OtherFarm { get; } = new("PLAN-001", ProblemWeight.Refuse,
        "the plan was made for '{value}', and this farm is '{limit}'. Give the plan of this farm, or plan it anew.",
        "el plan se hizo para '{value}', y este rancho es '{limit}'. Entregue el plan de este rancho, o planee de nuevo.");

    public static ProblemKind FieldGone { get; } = new("PLAN-002", ProblemWeight.Warn,
        "the farm has no field {value} any more; its steps are left out. Plan anew.",
        "el rancho ya no tiene el lote {value}; sus pasos se omiten. Planee de nuevo.");

    public static ProblemKind SourceGone { get; } = new("PLAN-003", ProblemWeight.Warn,
        "the farm has no water source {value} any more; its orders are left out. Plan anew.",
        "el rancho ya no tiene la fuente de agua {value}; sus pedidos se omiten. Planee de nuevo.");

    public static ProblemKind BatchGone { get; } = new("PLAN-004", ProblemWeight.Warn,
        "the farm has no batch {value} any more; nothing more is said of its loss. Plan anew.",
        "el rancho ya no tiene el remojo {value}; ya no se habla de su pérdida. Planee de nuevo.");
}
