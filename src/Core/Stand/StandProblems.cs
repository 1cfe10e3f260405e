namespace Watersown.Stand;

/// <summary>What can be wrong with counts and with the sum of sowing again.</summary>
public static class StandProblems
{
    public static ProblemKind TooFewCounts { get; } = new("STAND-001", ProblemWeight.Refuse,
        "{value} count shows no spread. Count at least two rings first.",
        "{value} conteo no muestra variación. Cuente primero al menos dos aros.");

    public static ProblemKind NothingCounted { get; } = new("STAND-002", ProblemWeight.Refuse,
        "all counts are 0, and no number of rings is near a share of nothing. Count where something stands.",
        "todos los conteos son 0, y ningún número de aros se acerca a una parte de nada. Cuente donde haya plantas.");

    public static ProblemKind ThinnerAfter { get; } = new("STAND-003", ProblemWeight.Refuse,
        "{after} plants/ft² after overseeding is below the {now} of today. Sowing more never thins a stand: check which is which.",
        "{after} plantas/pie² después de resembrar es menos que las {now} de hoy. Sembrar más nunca ralea: revise cuál es cuál.");

    public static ProblemKind ResponseShape { get; } = new("STAND-004", ProblemWeight.Refuse,
        "'{value}' is not a pair of plants/ft² and a share of the best yield. Give pairs such as [8,0.86].",
        "'{value}' no es un par de plantas/pie² y parte del mejor rendimiento. Dé pares como [8,0.86].");

    public static ProblemKind ResponseRange { get; } = new("STAND-005", ProblemWeight.Refuse,
        "{value} is outside {least} to {most}. Give {what} within it.",
        "{value} está fuera de {least} a {most}. Dé {what} dentro de ese margen.");

    public static ProblemKind ResponseOrder { get; } = new("STAND-006", ProblemWeight.Refuse,
        "{value} plants/ft² does not come after {before}. Give the pairs by rising stand, each stand once.",
        "{value} plantas/pie² no sigue a {before}. Dé los pares de menor a mayor población, cada una una vez.");

    public static ProblemKind ResponseEmpty { get; } = new("STAND-007", ProblemWeight.Refuse,
        "the response has {value} pairs. Give at least two, or leave it out for the usual one.",
        "la respuesta tiene {value} pares. Dé al menos dos, o déjela fuera para usar la habitual.");
}
