namespace Watersown.Schedule.Sheets;

/// <summary>What can be wrong with what is asked to be printed.</summary>
public static class SheetsProblems
{
    public static ProblemKind UnknownField { get; } = new("SHEET-001", ProblemWeight.Refuse,
        "the farm has no field '{value}'. Its fields are {known}. Give the code of one of them.",
        "la finca no tiene el campo '{value}'. Sus campos son {known}. Dé el código de uno de ellos.");

    public static ProblemKind NoFlight { get; } = new("SHEET-002", ProblemWeight.Refuse,
        "the plan has no flight for {value}. It has flights on {known}. Choose one of them, or leave the choice out.",
        "el plan no tiene ningún vuelo para {value}. Tiene vuelos el {known}. Elija uno, o quite la elección.");

    public static ProblemKind DayOutsidePlan { get; } = new("SHEET-003", ProblemWeight.Refuse,
        "{value} lies outside the plan, which runs from {first} to {last}. Give a day between them.",
        "{value} queda fuera del plan, que va del {first} al {last}. Dé un día entre ellos.");

    public static ProblemKind UnknownPerson { get; } = new("SHEET-004", ProblemWeight.Refuse,
        "nobody of the farm is called '{value}'. Its people are {known}. Give one of these names.",
        "nadie de la finca se llama '{value}'. Su gente es {known}. Dé uno de estos nombres.");

    public static ProblemKind NothingForPerson { get; } = new("SHEET-005", ProblemWeight.Refuse,
        "{value} ({role}) has no sheet and no text that day. Choose another day or person.",
        "{value} ({role}) no tiene hoja ni mensaje ese día. Elija otro día u otra persona.");

    public static ProblemKind FolderHasOtherFiles { get; } = new("SHEET-006", ProblemWeight.Refuse,
        "the folder holds files that were not printed here, such as {value}; it is replaced as a whole. Give an empty or new folder, or one that sheets were printed into.",
        "la carpeta tiene archivos que no se imprimieron aquí, como {value}; se reemplaza entera. Dé una carpeta vacía o nueva, o una donde ya se imprimieron hojas.");

    public static ProblemKind FolderIsAFile { get; } = new("SHEET-007", ProblemWeight.Refuse,
        "a file of that name is there already. Give the name of a folder.",
        "ya existe un archivo con ese nombre. Dé el nombre de una carpeta.");

    public static ProblemKind NoEdge { get; } = new("SHEET-008", ProblemWeight.Warn,
        "{value} has no drawn edge and is left out: a rectangle of its acres must not be flown by. Draw its edge or bring it in from a file.",
        "{value} no tiene el borde dibujado y queda fuera: no se debe volar por un rectángulo de sus acres. Dibuje su borde o tráigalo de un archivo.");

    public static ProblemKind NothingDrawn { get; } = new("SHEET-009", ProblemWeight.Refuse,
        "none of these fields has a drawn edge, so there is nothing to hand out. Draw the edge of one, or bring edges in from a file.",
        "ninguno de estos campos tiene el borde dibujado, así que no hay nada que entregar. Dibuje el borde de uno, o traiga los bordes de un archivo.");
}
