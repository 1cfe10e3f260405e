namespace Watersown.Land;

/// <summary>What can be wrong with the ground and its water as described.</summary>
public static class LandProblems
{
    public static ProblemKind NameTwice { get; } = new("LAND-001", ProblemWeight.Refuse,
        "the name '{value}' is used twice; {other} has it too. Give each its own name.",
        "el nombre '{value}' está repetido; {other} también lo tiene. Dé a cada uno su propio nombre.");

    public static ProblemKind CodeTwice { get; } = new("LAND-002", ProblemWeight.Refuse,
        "the code '{value}' is used twice; {other} has it too. Give each its own code.",
        "la clave '{value}' está repetida; {other} también la tiene. Dé a cada uno su propia clave.");

    public static ProblemKind NoFields { get; } = new("LAND-003", ProblemWeight.Refuse,
        "there is no field; a farm has at least one. Add a field with its name, acres and rate.",
        "no hay ningún lote; un rancho tiene al menos uno. Agregue un lote con su nombre, acres y dosis.");

    public static ProblemKind NetAboveGross { get; } = new("LAND-004", ProblemWeight.Refuse,
        "net {value} is above gross {limit}; sown land lies inside its edge. Correct one of the two.",
        "el neto de {value} supera el bruto de {limit}; lo sembrado queda dentro del borde. Corrija uno de los dos.");

    public static ProblemKind NetShareUnusual { get; } = new("LAND-005", ProblemWeight.Warn,
        "net {value} is {share} of gross {limit}; 88 % to 99 % is usual. Correct one of the two, or leave them if they are true.",
        "el neto de {value} es el {share} del bruto de {limit}; lo normal es de 88 % a 99 %. Corrija uno de los dos, o déjelos si son ciertos.");

    public static ProblemKind CertifiedDiffers { get; } = new("LAND-006", ProblemWeight.Warn,
        "certified {value} differs from net {limit} by {share}; up to 8 % is usual. Correct one of the two, or leave them if they are true.",
        "lo certificado, {value}, difiere del neto de {limit} en {share}; lo normal es hasta 8 %. Corrija uno de los dos, o déjelos si son ciertos.");

    public static ProblemKind ChecksAboveNet { get; } = new("LAND-007", ProblemWeight.Refuse,
        "the checks add up to {value}; at most 2 % above net {limit} can be. Correct the acres of the checks or of the field.",
        "las melgas suman {value}; no pueden pasar del neto de {limit} en más de 2 %. Corrija los acres de las melgas o del lote.");

    public static ProblemKind ChecksBelowNet { get; } = new("LAND-008", ProblemWeight.Warn,
        "the checks add up to {value}; at least 95 % of net {limit} is usual. Add the missing check, or leave it if it is true.",
        "las melgas suman {value}; lo normal es al menos 95 % del neto de {limit}. Agregue la melga que falta, o déjelo si es cierto.");

    public static ProblemKind CheckNumbers { get; } = new("LAND-009", ProblemWeight.Refuse,
        "the checks are numbered {value}; from the head they count 1, 2, 3 with none left out. Number them so, or leave the numbers out.",
        "las melgas llevan los números {value}; desde la cabecera se cuentan 1, 2, 3 sin saltos. Numérelas así, o quite los números.");

    public static ProblemKind NoSuchCheck { get; } = new("LAND-010", ProblemWeight.Refuse,
        "check {value} is not there; the field has {limit}. Give the number of a check it has.",
        "la melga {value} no existe; el lote tiene {limit}. Escriba el número de una melga que tenga.");

    public static ProblemKind NoSuch { get; } = new("LAND-011", ProblemWeight.Refuse,
        "'{value}' is none of {known}.{nearest} Correct it, or add it to the farm.",
        "'{value}' no es ninguno de {known}.{nearest} Corríjalo, o agréguelo al rancho.");

    public static ProblemKind RunningAboveCap { get; } = new("LAND-012", ProblemWeight.Warn,
        "{value} is running, above the cap of {limit}. Correct one of the two, or leave them if they are true.",
        "corren {value}, más que el tope de {limit}. Corrija uno de los dos, o déjelos si son ciertos.");

    public static ProblemKind FinalPlantingUnusual { get; } = new("LAND-013", ProblemWeight.Warn,
        "{value} is outside 15 May to 15 June, where final planting dates usually lie. Correct it, or leave it if your policy says so.",
        "{value} queda fuera del 15 de mayo al 15 de junio, donde suele estar la fecha límite de siembra. Corríjala, o déjela si su póliza lo dice.");

    public static ProblemKind YearAhead { get; } = new("LAND-014", ProblemWeight.Refuse,
        "season {value} is more than two years ahead; {limit} is the last that can be planned. Correct the year.",
        "la temporada {value} está a más de dos años; {limit} es la última que se puede planear. Corrija el año.");

    public static ProblemKind HazardOld { get; } = new("LAND-015", ProblemWeight.Warn,
        "was last confirmed on {value}, {limit}. Have somebody look, then enter the day.",
        "se confirmó por última vez el {value}, {limit}. Pida que alguien lo revise y anote el día.");

    public static ProblemKind BoundaryDiffers { get; } = new("LAND-016", ProblemWeight.Warn,
        "the boundary encloses {value}, {share} off the gross {limit}; up to 3 % is usual. Look whether it is the right field, or correct the gross acres.",
        "el lindero encierra {value}, {share} distinto del bruto de {limit}; lo normal es hasta 3 %. Vea si es el lote correcto, o corrija los acres brutos.");

    public static ProblemKind TurnTooLong { get; } = new("LAND-017", ProblemWeight.Refuse,
        "a turn of {value} does not end before the next begins, {limit} later. Correct one of the two, or leave the turns out if water always runs.",
        "un turno de {value} no termina antes de que empiece el siguiente, {limit} después. Corrija uno de los dos, o quite los turnos si siempre corre agua.");

    public static ProblemKind CurtailedBackward { get; } = new("LAND-018", ProblemWeight.Refuse,
        "the curtailment ends {value}, not after it begins, {limit}. Correct one of the two, or leave the end out until it is told.",
        "el recorte termina {value}, no después de empezar, {limit}. Corrija uno de los dos, o quite el final hasta que se sepa.");

    public static ProblemKind NothingCurtailed { get; } = new("LAND-019", ProblemWeight.Warn,
        "{value} left is no less than the {limit} that it can give: nothing is curtailed. Correct it, or leave it if it is true.",
        "quedan {value}, no menos que los {limit} que puede dar: no se recorta nada. Corríjalo, o déjelo si es cierto.");
}
