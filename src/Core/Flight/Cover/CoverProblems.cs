namespace Watersown.Flight.Cover;

/// <summary>What can be wrong with tracks and a field whose coverage is asked for.</summary>
public static class CoverProblems
{
    public static ProblemKind NothingFlown { get; } = new("COVER-001", ProblemWeight.Refuse,
        "no stretch with the gate open has two places on it. Give at least one stretch of the flight with its gate open.",
        "ningún tramo con la compuerta abierta tiene dos puntos. Dé al menos un tramo de vuelo con la compuerta abierta.");

    public static ProblemKind TooManyCells { get; } = new("COVER-002", ProblemWeight.Refuse,
        "cells of {cell} would be {value}; no more than {limit} are held. Take larger cells, or look at one field at a time.",
        "con celdas de {cell} serían {value}; no se manejan más de {limit}. Use celdas más grandes o mire un campo a la vez.");

    public static ProblemKind CellTooLarge { get; } = new("COVER-003", ProblemWeight.Refuse,
        "cells of {value} are too coarse for a swath of {swath}. Take cells of {limit} or less.",
        "las celdas de {value} son demasiado grandes para una faja de {swath}. Use celdas de {limit} o menos.");

    public static ProblemKind FlownTooOften { get; } = new("COVER-004", ProblemWeight.Refuse,
        "some ground was flown over more than {limit} times. Give the flights of one sowing only.",
        "una parte del terreno se sobrevoló más de {limit} veces. Dé solo los vuelos de una siembra.");

    public static ProblemKind NoLand { get; } = new("COVER-005", ProblemWeight.Refuse,
        "no cell of {cell} has its middle in the field. Check the field's edge.",
        "ninguna celda de {cell} tiene su centro en el campo. Revise el contorno del campo.");
}
