namespace Watersown.Schedule.Lists;

/// <summary>What can be wrong with a pasted or saved list of fields.</summary>
public static class ListProblems
{
    public static ProblemKind Empty { get; } = new("LIST-001", ProblemWeight.Refuse,
        "there is nothing in the list. Paste one line for each field: its name, acres and rate.",
        "la lista está vacía. Pegue una línea por lote: nombre, acres y dosis.");

    public static ProblemKind NotText { get; } = new("LIST-002", ProblemWeight.Refuse,
        "this is not text: {value}. Save the list as CSV, or copy and paste it.",
        "esto no es texto: {value}. Guarde la lista como CSV, o cópiela y péguela.");

    public static ProblemKind WesternText { get; } = new("LIST-003", ProblemWeight.Warn,
        "the text is not UTF-8 and was read as Western European. Look at the names with marks over letters.",
        "el texto no es UTF-8 y se leyó como europeo occidental. Revise los nombres con acentos.");

    public static ProblemKind QuoteOpen { get; } = new("LIST-004", ProblemWeight.Refuse,
        "a quote is opened here and the line ends before it is closed. Close it or take it out.",
        "aquí se abren comillas y la línea termina antes de cerrarlas. Ciérrelas o quítelas.");

    public static ProblemKind NoNames { get; } = new("LIST-005", ProblemWeight.Refuse,
        "no column of names was found among {value}. Put a heading such as Field over the names.",
        "no se encontró la columna de nombres entre {value}. Ponga un encabezado como Lote sobre los nombres.");

    public static ProblemKind NoAcres { get; } = new("LIST-006", ProblemWeight.Refuse,
        "no column of acres was found among {value}. Put a heading such as Acres over them.",
        "no se encontró la columna de acres entre {value}. Ponga un encabezado como Acres sobre ellos.");

    public static ProblemKind SameMeaning { get; } = new("LIST-007", ProblemWeight.Refuse,
        "the headings '{value}' and '{other}' both say {meaning}. Take one out or give it another heading.",
        "los encabezados '{value}' y '{other}' dicen ambos {meaning}. Quite uno o cambie su encabezado.");

    public static ProblemKind TooManyCells { get; } = new("LIST-008", ProblemWeight.Refuse,
        "the line has {value} cells, the list {limit} columns. Put a number with a thousands mark, or a name with a comma, in quotes.",
        "la línea tiene {value} celdas y la lista {limit} columnas. Ponga entre comillas el número con coma de miles o el nombre con coma.");

    public static ProblemKind AcresMissing { get; } = new("LIST-009", ProblemWeight.Refuse,
        "no acres are given. Fill them in, or take the line out.",
        "no se dan acres. Complételos, o quite la línea.");

    public static ProblemKind NotANumber { get; } = new("LIST-010", ProblemWeight.Refuse,
        "'{value}' is not a number of {meaning}. Write a plain number such as {limit}.",
        "'{value}' no es un número de {meaning}. Escriba un número como {limit}.");

    public static ProblemKind UnknownUnit { get; } = new("LIST-011", ProblemWeight.Refuse,
        "'{value}' has a unit that is not known for {meaning}; known are {limit}. Write the number in one of them.",
        "'{value}' tiene una unidad desconocida para {meaning}; se conocen {limit}. Escriba el número en una de ellas.");

    public static ProblemKind NameTwice { get; } = new("LIST-012", ProblemWeight.Refuse,
        "the name stands on line {other} too. Give each field its own name, or take one line out.",
        "el nombre también está en la línea {other}. Dé a cada lote su nombre, o quite una línea.");

    public static ProblemKind RateTaken { get; } = new("LIST-013", ProblemWeight.Warn,
        "no rate is given for {value}; {limit} was taken. Correct it in the farm document, or give your own with --rate.",
        "no se da dosis para {value}; se tomó {limit}. Corríjala en el documento del rancho, o dé la suya con --rate.");

    public static ProblemKind TotalDiffers { get; } = new("LIST-014", ProblemWeight.Warn,
        "the list says '{value}', but the fields above it add up to {limit}. Look for a field that is missing, doubled or mistyped.",
        "la lista dice '{value}', pero los lotes de arriba suman {limit}. Busque un lote que falte, se repita o esté mal escrito.");

    public static ProblemKind LineLeftOut { get; } = new("LIST-015", ProblemWeight.Warn,
        "'{value}' has no numbers and was left out. If it is a field, give its acres.",
        "'{value}' no tiene números y se dejó fuera. Si es un lote, dé sus acres.");

    public static ProblemKind NoFields { get; } = new("LIST-016", ProblemWeight.Refuse,
        "no line of the list is a field. Paste one line for each field: its name, acres and rate.",
        "ninguna línea de la lista es un lote. Pegue una línea por lote: nombre, acres y dosis.");

    public static ProblemKind HeadingNotUsed { get; } = new("LIST-017", ProblemWeight.Warn,
        "what stands under {value} was left out; headings that are known are {limit}. Rename one of them if it matters.",
        "lo que está bajo {value} se dejó fuera; los encabezados conocidos son {limit}. Cambie el nombre si importa.");

    public static ProblemKind ColumnGuessed { get; } = new("LIST-018", ProblemWeight.Warn,
        "columns were told by what stands in them: {value}. Put headings over them if that is wrong.",
        "las columnas se tomaron por su contenido: {value}. Póngales encabezados si no es así.");

    public static ProblemKind DryDiffers { get; } = new("LIST-019", ProblemWeight.Warn,
        "the list says {value} of seed, but acres times rate is {limit}. Correct one of the three.",
        "la lista dice {value} de semilla, pero acres por dosis da {limit}. Corrija uno de los tres.");

    public static ProblemKind TooManyLines { get; } = new("LIST-020", ProblemWeight.Refuse,
        "{value} lines are above {limit}, the most that are read. Leave some out.",
        "{value} líneas superan {limit}, lo máximo que se lee. Quite algunas.");

    public static ProblemKind UnknownStage { get; } = new("LIST-021", ProblemWeight.Warn,
        "'{value}' does not tell how far the field has come and was left open. Words that do: {limit}.",
        "'{value}' no dice qué tan adelantado va el lote y quedó abierto. Palabras que sí: {limit}.");

    public static ProblemKind NoName { get; } = new("LIST-022", ProblemWeight.Refuse,
        "there are numbers but no name. Give the field a name, or take the line out.",
        "hay números pero no nombre. Dé un nombre al lote, o quite la línea.");

    public static ProblemKind CodeUnfit { get; } = new("LIST-023", ProblemWeight.Warn,
        "'{value}' cannot be a short code ({limit}) and a new one was made. Give one yourself in the farm document if you like.",
        "'{value}' no puede ser clave corta ({limit}) y se hizo una nueva. Ponga la suya en el documento del rancho si quiere.");
}
