namespace Watersown.Season;

/// <summary>What can be wrong with what is told of money.</summary>
public static class CostProblems
{
    public static ProblemKind BillTwice { get; } = new("COST-001", ProblemWeight.Warn,
        "bill {value} of {limit} is told twice. Both are counted; take one back if it is the same bill.",
        "la factura {value} de {limit} se dio dos veces. Cuentan las dos; retire una si es la misma.");

    public static ProblemKind FarAbovePlan { get; } = new("COST-002", ProblemWeight.Warn,
        "{value} is spent, more than three times the {limit} planned. Correct the bill or the plan, or leave both if they are true.",
        "se gastaron {value}, más del triple de los {limit} previstos. Corrija la factura o lo previsto, o déjelos si son ciertos.");
}
