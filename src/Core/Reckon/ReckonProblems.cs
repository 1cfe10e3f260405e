namespace Watersown.Reckon;

/// <summary>What can be wrong with values given to a reckoning.</summary>
public static class ReckonProblems
{
    public static ProblemKind UnknownKey { get; } = new("RECKON-001", ProblemWeight.Refuse,
        "'{value}' was given for a key that {name} does not have. Its keys are {keys}.",
        "se dio '{value}' a una clave que {name} no tiene. Sus claves son {keys}.");

    public static ProblemKind MissingKey { get; } = new("RECKON-002", ProblemWeight.Refuse,
        "nothing was given for {meaning}{unit}. Give it a value.",
        "no se dio nada para {meaning}{unit}. Dele un valor.");

    public static ProblemKind WrongSort { get; } = new("RECKON-003", ProblemWeight.Refuse,
        "'{value}' is not {wanted}. Give {wanted}.",
        "'{value}' no es {wanted}. Escriba {wanted}.");

    public static ProblemKind TooSmall { get; } = new("RECKON-004", ProblemWeight.Refuse,
        "{value} is below {limit}, the least that can be. Give {limit} or more.",
        "{value} está por debajo de {limit}, lo mínimo posible. Escriba {limit} o más.");

    public static ProblemKind TooLarge { get; } = new("RECKON-005", ProblemWeight.Refuse,
        "{value} is above {limit}, the most that can be. Give {limit} or less.",
        "{value} está por encima de {limit}, lo máximo posible. Escriba {limit} o menos.");

    public static ProblemKind NotAbove { get; } = new("RECKON-006", ProblemWeight.Refuse,
        "{value} must be above {limit}. Give a value above {limit}.",
        "{value} debe ser mayor que {limit}. Escriba un valor mayor que {limit}.");

    public static ProblemKind NotAChoice { get; } = new("RECKON-007", ProblemWeight.Refuse,
        "'{value}' is not one of {choices}. Choose one of them.",
        "'{value}' no es uno de {choices}. Elija uno de ellos.");

    public static ProblemKind GivenTwice { get; } = new("RECKON-008", ProblemWeight.Refuse,
        "the key was given twice. Give it once.",
        "la clave se dio dos veces. Désela una sola vez.");

    /// <summary>Values that are each fine but cannot be true together.</summary>
    public static ProblemKind Impossible { get; } = new("RECKON-009", ProblemWeight.Refuse,
        "{value} cannot be: {limit}. {remedy}",
        "{value} no puede ser: {limit}. {remedy}");

    public static ProblemKind UnknownName { get; } = new("RECKON-010", ProblemWeight.Refuse,
        "there is no reckoning of that name. Nearest: {nearest}. 'watersown reckon --list' shows all.",
        "no hay ningún cálculo con ese nombre. El más parecido: {nearest}. 'watersown reckon --list' los muestra todos.");
}
