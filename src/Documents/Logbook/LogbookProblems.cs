namespace Watersown.Documents.Logbooks;

/// <summary>What can be wrong with marks as written.</summary>
public static class LogbookProblems
{
    public static ProblemKind NotAName { get; } = new("LOG-001", ProblemWeight.Refuse,
        "'{value}' is not the name of a mark. Give 32 hexadecimal digits in lower case.",
        "'{value}' no es el nombre de una anotación. Escriba 32 dígitos hexadecimales en minúsculas.");

    public static ProblemKind UnknownKind { get; } = new("LOG-002", ProblemWeight.Warn,
        "'{value}' is a kind of mark that this desk does not know; it is kept as it is. Update this desk to use it.",
        "'{value}' es un tipo de anotación que este escritorio no conoce; se guarda tal cual. Actualice este escritorio para usarla.");

    public static ProblemKind NothingReplaced { get; } = new("LOG-003", ProblemWeight.Refuse,
        "it withdraws nothing. Name the mark that it takes back.",
        "no retira nada. Nombre la anotación que quita.");

    public static ProblemKind UnknownWord { get; } = new("LOG-004", ProblemWeight.Warn,
        "'{value}' is a word that this desk does not know; the mark is kept as it is, and not understood here. Update this desk to use it.",
        "'{value}' es una palabra que este escritorio no conoce; la anotación se guarda tal cual, y aquí no se entiende. Actualice este escritorio para usarla.");
}
