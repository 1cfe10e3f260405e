namespace Watersown.Records.Files.Obstacles;

/// <summary>What can be wrong with the public obstacle file.</summary>
public static class ObstacleProblems
{
    public static ProblemKind NoCurrency { get; } = new("OBST-001", ProblemWeight.Refuse,
        "the first line is '{value}' and names no day such as CURRENCY DATE = 04/16/26. Give the file as it was published, its head included.",
        "la primera línea es '{value}' y no nombra un día como CURRENCY DATE = 04/16/26. Entregue el archivo como se publicó, con su cabecera.");

    public static ProblemKind BadLine { get; } = new("OBST-002", ProblemWeight.Warn,
        "{reason}: '{value}'. The line was left out, and what it lists is not on the map.",
        "{reason}: '{value}'. Esta línea se dejó fuera, y lo que nombra no está en el mapa.");

    public static ProblemKind MoreBadLines { get; } = new("OBST-003", ProblemWeight.Warn,
        "{value} more lines could not be read and were left out.",
        "otras {value} líneas no se pudieron leer y se dejaron fuera.");

    public static ProblemKind NothingRead { get; } = new("OBST-004", ProblemWeight.Refuse,
        "no line of it is an obstacle in the fixed form of 128 columns. Give the .DAT file, not another form of it.",
        "ninguna línea es un obstáculo en la forma fija de 128 columnas. Entregue el archivo .DAT, no otra forma de él.");

    public static ProblemKind OldFile { get; } = new("OBST-005", ProblemWeight.Warn,
        "the file was current on {value}, and a new one is made every {limit} days. Fetch the newest before relying on it.",
        "el archivo valía el {value}, y se hace uno nuevo cada {limit} días. Consiga el más nuevo antes de confiar en él.");

    public static ProblemKind NowhereToLook { get; } = new("OBST-006", ProblemWeight.Refuse,
        "no field of the farm has an edge or a middle, so nothing can be told to be near. Draw or import an edge first.",
        "ningún lote de la finca tiene lindero ni centro, así que nada se puede decir cercano. Primero dibuje o importe un lindero.");
}
