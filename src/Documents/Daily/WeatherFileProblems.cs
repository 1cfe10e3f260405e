namespace Watersown.Documents.Daily;

/// <summary>What can be wrong with a file of weather.</summary>
public static class WeatherFileProblems
{
    public static ProblemKind NoDays { get; } = new("DAYS-001", ProblemWeight.Refuse,
        "no day with a high or a low was found in it. Give a table with headings such as date, tmax_f and tmin_f, a GHCN-Daily file, or an EPW file.",
        "no se halló ningún día con máxima o mínima. Dé una tabla con encabezados como date, tmax_f y tmin_f, un archivo GHCN-Daily o uno EPW.");

    public static ProblemKind NoColumn { get; } = new("DAYS-002", ProblemWeight.Refuse,
        "no column for {value} among {known}. Name it in the heading, such as {example}.",
        "no hay columna para {value} entre {known}. Nómbrela en el encabezado, por ejemplo {example}.");

    public static ProblemKind NoScale { get; } = new("DAYS-003", ProblemWeight.Refuse,
        "the column '{value}' does not say whether it is °F or °C. Say it with --temperature f or --temperature c.",
        "la columna '{value}' no dice si son °F o °C. Dígalo con --temperature f o --temperature c.");

    public static ProblemKind NotADay { get; } = new("DAYS-004", ProblemWeight.Warn,
        "'{value}' is no day, and the line was left out. Write days as 2026-05-08; a day in front of the month needs --day-first.",
        "'{value}' no es un día, y la línea se dejó fuera. Escriba los días como 2026-05-08; el día antes del mes necesita --day-first.");

    public static ProblemKind NotANumber { get; } = new("DAYS-005", ProblemWeight.Warn,
        "'{value}' is no figure, and counts as missing. Correct it, or leave the cell empty.",
        "'{value}' no es una cifra, y cuenta como faltante. Corríjala, o deje la celda vacía.");

    public static ProblemKind LowAboveHigh { get; } = new("DAYS-006", ProblemWeight.Warn,
        "the low of {value} is above the high of {limit}; both count as missing. Check which of the two is which.",
        "la mínima de {value} está por encima de la máxima de {limit}; ambas cuentan como faltantes. Revise cuál es cuál.");

    public static ProblemKind Beyond { get; } = new("DAYS-007", ProblemWeight.Warn,
        "{value} is outside {limit} and counts as missing. Check the unit and the figure.",
        "{value} está fuera de {limit} y cuenta como faltante. Revise la unidad y la cifra.");

    public static ProblemKind Twice { get; } = new("DAYS-008", ProblemWeight.Warn,
        "{value} stands twice with different figures; the later line was taken. Keep one of them.",
        "{value} está dos veces con cifras distintas; se tomó la línea posterior. Deje una de ellas.");

    public static ProblemKind SeveralStations { get; } = new("DAYS-009", ProblemWeight.Refuse,
        "the file holds several stations, {value}. Name one with --station.",
        "el archivo tiene varias estaciones, {value}. Nombre una con --station.");

    public static ProblemKind MoreLike { get; } = new("DAYS-010", ProblemWeight.Warn,
        "{value} more lines like the ones above.",
        "{value} líneas más como las de arriba.");
}
