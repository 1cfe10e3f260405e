namespace Watersown.Documents.Farms;

/// <summary>What can be wrong with a farm document beyond its form, before its meaning is checked.</summary>
public static class FarmProblems
{
    public static ProblemKind UnknownZone { get; } = new("FARM-001", ProblemWeight.Refuse,
        "'{value}' is no time zone. Give its IANA name, such as America/Los_Angeles.",
        "'{value}' no es una zona horaria. Escriba su nombre IANA, como America/Los_Angeles.");

    public static ProblemKind SkippedHour { get; } = new("FARM-002", ProblemWeight.Warn,
        "{value} does not exist: clocks are put forward over it. {limit} was taken; correct it or give the offset from UTC.",
        "{value} no existe: el reloj se adelanta sobre esa hora. Se tomó {limit}; corríjala o dé el desfase de UTC.");

    public static ProblemKind DoubledHour { get; } = new("FARM-003", ProblemWeight.Warn,
        "{value} comes twice: clocks are put back over it. {limit}, the first, was taken; give the offset from UTC if it was the second.",
        "{value} ocurre dos veces: el reloj se atrasa sobre esa hora. Se tomó la primera, {limit}; dé el desfase de UTC si fue la segunda.");

    public static ProblemKind StageUnknown { get; } = new("FARM-004", ProblemWeight.Warn,
        "how far they have come is not said for {value}; unworked ground is taken. Say sown, full or flooding where it is so.",
        "no se dice qué tan adelantados van {value}; se toman como sin trabajar. Diga sembrado, lleno o inundándose donde sea así.");

    public static ProblemKind BoundariesNotRead { get; } = new("FARM-005", ProblemWeight.Warn,
        "the boundaries of '{value}' were not read; distances come from what the fields say themselves. {remedy}",
        "no se leyeron los linderos de '{value}'; las distancias salen de lo que dicen los lotes. {remedy}");

    public static ProblemKind NoFieldOfBoundary { get; } = new("FARM-006", ProblemWeight.Warn,
        "the boundary '{value}' belongs to no field of the farm.{nearest} Correct its name, or take it out.",
        "el lindero '{value}' no es de ningún lote del rancho.{nearest} Corrija su nombre, o quítelo.");

    public static ProblemKind NoBoundaryOfField { get; } = new("FARM-007", ProblemWeight.Warn,
        "no boundary was found for {value}. Add them to the file, or go on without.",
        "no se encontró lindero para {value}. Agréguelos al archivo, o siga sin ellos.");

    public static ProblemKind TestUnworkable { get; } = new("FARM-008", ProblemWeight.Warn,
        "the {value} rows of trays cannot be worked, and the test was left out. Give as many trays in every row, three at least, with something caught in each row.",
        "las {value} filas de charolas no se pueden calcular, y la prueba se dejó fuera. Dé igual número de charolas en cada fila, al menos tres, con algo en cada fila.");

    public static ProblemKind NormalUnworkable { get; } = new("FARM-009", ProblemWeight.Warn,
        "this month has neither a mean nor a high with a low not above it, and was left out. Give mean_f, or high_f and low_f.",
        "este mes no tiene ni media ni una máxima con una mínima que no la supere, y se dejó fuera. Dé mean_f, o high_f y low_f.");
}
