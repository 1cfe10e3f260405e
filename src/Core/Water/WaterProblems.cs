namespace Watersown.Water;

/// <summary>What can be wrong with what is told about water.</summary>
public static class WaterProblems
{
    public static ProblemKind WaterBelowTooHigh { get; } = new("WATER-001", ProblemWeight.Refuse,
        "{value} of water below the box must be under the {limit} above it, or nothing runs through. Measure both from the top of the boards.",
        "{value} de agua aguas abajo debe ser menor que los {limit} aguas arriba; si no, no pasa nada. Mida las dos desde lo alto de las tablas.");

    public static ProblemKind HeadTooGreat { get; } = new("WATER-002", ProblemWeight.Refuse,
        "{value} of head is too great for a box {width} wide: the contracted formula ends at {limit}. Measure again, or ask for kind=suppressed.",
        "{value} de carga es demasiado para una caja de {width} de ancho: la fórmula contraída termina en {limit}. Mida de nuevo, o use kind=suppressed.");
}
