namespace Watersown.Documents.Json;

/// <summary>What can be wrong with the form of a document, before its meaning is looked at.</summary>
public static class JsonProblems
{
    public static ProblemKind Empty { get; } = new("DOC-001", ProblemWeight.Refuse,
        "there is nothing in it. Give a document that starts with '{'.",
        "no contiene nada. Entregue un documento que empiece con '{'.");

    public static ProblemKind NotUtf8 { get; } = new("DOC-002", ProblemWeight.Refuse,
        "{value} is not UTF-8 text. Save the file as UTF-8 and try again.",
        "{value} no es texto UTF-8. Guarde el archivo como UTF-8 e intente de nuevo.");

    public static ProblemKind NotJson { get; } = new("DOC-003", ProblemWeight.Refuse,
        "{value} cannot stand here in JSON. Look at this place and the one just before it for a missing comma, quote or bracket.",
        "{value} no puede ir aquí en JSON. Revise este lugar y el anterior: puede faltar una coma, comilla o corchete.");

    public static ProblemKind CutShort { get; } = new("DOC-004", ProblemWeight.Refuse,
        "the text ends before the document does; {value} still open. Copy the file again, whole.",
        "el texto termina antes que el documento; {value} sin cerrar. Copie el archivo de nuevo, completo.");

    public static ProblemKind TooDeep { get; } = new("DOC-005", ProblemWeight.Refuse,
        "it is nested more than {limit} deep. Take out what does not belong to the document.",
        "tiene más de {limit} niveles anidados. Quite lo que no es parte del documento.");

    public static ProblemKind TooLarge { get; } = new("DOC-006", ProblemWeight.Refuse,
        "{value} is above {limit}, the most that is read. Move boundaries to a file of their own or leave parts out.",
        "{value} supera {limit}, lo máximo que se lee. Ponga los linderos en otro archivo o quite partes.");

    public static ProblemKind Missing { get; } = new("DOC-007", ProblemWeight.Refuse,
        "nothing is given for {meaning}. Add the key with a value.",
        "no se da nada para {meaning}. Agregue la clave con un valor.");

    public static ProblemKind UnknownKey { get; } = new("DOC-008", ProblemWeight.Warn,
        "the key is not known and is left out of account.{nearest} Correct it or take it out.",
        "la clave no se conoce y no se toma en cuenta.{nearest} Corríjala o quítela.");

    public static ProblemKind GivenTwice { get; } = new("DOC-009", ProblemWeight.Refuse,
        "the key is given twice. Give it once.",
        "la clave está dos veces. Désela una sola vez.");

    public static ProblemKind WrongSort { get; } = new("DOC-010", ProblemWeight.Refuse,
        "{value} is not {wanted}. Give {wanted}, or leave the key out where it is not known.",
        "{value} no es {wanted}. Escriba {wanted}, o quite la clave si no se sabe.");

    public static ProblemKind NotAWord { get; } = new("DOC-011", ProblemWeight.Refuse,
        "'{value}' is none of {limit}.{nearest} Choose one of them.",
        "'{value}' no es ninguno de {limit}.{nearest} Elija uno de ellos.");

    public static ProblemKind EmptyText { get; } = new("DOC-012", ProblemWeight.Refuse,
        "the text is empty. Write something, or leave the key out where it is not known.",
        "el texto está vacío. Escriba algo, o quite la clave si no se sabe.");

    public static ProblemKind TooLong { get; } = new("DOC-013", ProblemWeight.Refuse,
        "{value} letters are above {limit}, the most that are kept. Shorten it.",
        "{value} letras superan {limit}, lo máximo que se guarda. Acórtelo.");

    public static ProblemKind TooMany { get; } = new("DOC-014", ProblemWeight.Refuse,
        "{value} entries are above {limit}, the most that are read. Leave some out.",
        "{value} entradas superan {limit}, lo máximo que se lee. Quite algunas.");

    public static ProblemKind BrokenLetter { get; } = new("DOC-015", ProblemWeight.Refuse,
        "a text holds half of a letter (a lone \\uD800 to \\uDFFF). Write the letter itself.",
        "un texto contiene media letra (un \\uD800 a \\uDFFF suelto). Escriba la letra misma.");

    public static ProblemKind NotThisDocument { get; } = new("DOC-016", ProblemWeight.Refuse,
        "there is no '{value}', so this is not {meaning}. Give a document that has \"{value}\": {limit}.",
        "falta '{value}', así que esto no es {meaning}. Entregue un documento que tenga \"{value}\": {limit}.");

    public static ProblemKind NewerVersion { get; } = new("DOC-017", ProblemWeight.Refuse,
        "the document is version {value}; this program reads up to version {limit}. Use a newer program, or export it again for version {limit}.",
        "el documento es versión {value}; este programa lee hasta la versión {limit}. Use un programa más nuevo, o expórtelo otra vez en versión {limit}.");

    public static ProblemKind NoneGiven { get; } = new("DOC-018", ProblemWeight.Refuse,
        "nothing is given for {meaning}. Add one of {limit}.",
        "no se da nada para {meaning}. Agregue uno de {limit}.");

    public static ProblemKind MoreThanOne { get; } = new("DOC-019", ProblemWeight.Refuse,
        "{value} are both given and say the same thing. Keep one of them.",
        "se dan {value}, que dicen lo mismo. Deje uno de ellos.");
}
