namespace Watersown.Documents.Tracks;

/// <summary>What can be wrong with a file of a track.</summary>
public static class TrackProblems
{
    public static ProblemKind UnknownKind { get; } = new("TRACK-001", ProblemWeight.Refuse,
        "this is no kind of track known here. Give GPX, NMEA 0183, GeoJSON, KML, or CSV with headings.",
        "este recorrido no es de un tipo conocido. Dé GPX, NMEA 0183, GeoJSON, KML, o CSV con encabezados.");

    public static ProblemKind NoFixes { get; } = new("TRACK-002", ProblemWeight.Refuse,
        "there is no place in it that can be used; {value} were dropped. Save the track again, or give the log of the right day.",
        "no tiene ningún lugar que se pueda usar; se quitaron {value}. Guarde de nuevo el recorrido, o dé el registro del día correcto.");

    public static ProblemKind Broken { get; } = new("TRACK-003", ProblemWeight.Warn,
        "the file is broken or cut short at {value}: {count} places before that were used. Save it again to have all of it.",
        "el archivo está dañado o cortado en {value}: se usaron los {count} lugares anteriores. Guárdelo de nuevo para tenerlo todo.");

    public static ProblemKind NoPlaceColumns { get; } = new("TRACK-004", ProblemWeight.Refuse,
        "no column is known to be {value}; its headings are: {known}. Name it, as in --columns lat=\"heading or number\".",
        "no se sabe qué columna es {value}; sus encabezados son: {known}. Nómbrela, como en --columns lat=\"encabezado o número\".");

    public static ProblemKind NoSuchColumn { get; } = new("TRACK-005", ProblemWeight.Refuse,
        "there is no column '{value}' in it; its headings are: {known}. Name one of them, or give its number from 1.",
        "no tiene la columna '{value}'; sus encabezados son: {known}. Nombre una de ellas, o dé su número desde 1.");

    public static ProblemKind NoUnit { get; } = new("TRACK-006", ProblemWeight.Warn,
        "the heading '{value}' does not say its unit, so it was not used. Write the unit behind it, such as '{value} mph', to have it used.",
        "el encabezado '{value}' no dice su unidad, así que no se usó. Escriba la unidad detrás, como '{value} mph', para que se use.");

    public static ProblemKind SeveralGates { get; } = new("TRACK-007", ProblemWeight.Warn,
        "several columns may tell the gate: {known}; '{value}' was taken. Name the right one with --columns gate=\"heading\".",
        "varias columnas pueden decir la compuerta: {known}; se tomó '{value}'. Nombre la correcta con --columns gate=\"encabezado\".");

    public static ProblemKind TooDeep { get; } = new("TRACK-008", ProblemWeight.Warn,
        "it is nested deeper than {limit} levels at {value}; what came before was used. Save it again from the program that made it.",
        "está anidado a más de {limit} niveles en {value}; se usó lo anterior. Guárdelo de nuevo en el programa que lo hizo.");

    public static ProblemKind LongLine { get; } = new("TRACK-009", ProblemWeight.Warn,
        "one line drawn in it has more than {limit} places; the rest of that line was left out. Save it in pieces.",
        "una línea dibujada tiene más de {limit} lugares; el resto de esa línea se dejó fuera. Guárdela por partes.");

    public static ProblemKind TwoDates { get; } = new("TRACK-010", ProblemWeight.Warn,
        "the date '{value}' can be read two ways; the month was taken first. Nothing need be done if only the order of the times matters.",
        "la fecha '{value}' se puede leer de dos modos; se tomó primero el día. No hay que hacer nada si sólo importa el orden de las horas.");

    public static ProblemKind UnknownMeaning { get; } = new("TRACK-011", ProblemWeight.Refuse,
        "'{value}' is nothing that a column can be. Give one of {known}, as in lat=3.",
        "'{value}' no es nada que pueda ser una columna. Dé una de {known}, como en lat=3.");
}
