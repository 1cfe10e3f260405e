namespace Watersown.Web.Links;

/// <summary>What can be wrong with a link, and with an answer given through one.</summary>
public static class LinkProblems
{
    public static ProblemKind UnknownSheet { get; } = new("LINK-001", ProblemWeight.Refuse,
        "there is no sheet '{value}'. Give one of {known}.",
        "no hay hoja '{value}'. Dé una de {known}.");

    public static ProblemKind UnknownPerson { get; } = new("LINK-002", ProblemWeight.Refuse,
        "nobody of the farm is called '{value}'. Its people are {known}. Give one of these names.",
        "nadie de la finca se llama '{value}'. Su gente es {known}. Dé uno de estos nombres.");

    public static ProblemKind NothingToShow { get; } = new("LINK-003", ProblemWeight.Refuse,
        "the plan has no {value} sheet for {person} on {day}. Choose another day, sheet or person.",
        "el plan no tiene hoja {value} para {person} el {day}. Elija otro día, otra hoja u otra persona.");

    public static ProblemKind DaysOut { get; } = new("LINK-004", ProblemWeight.Refuse,
        "{value} days is not a time that a link can work for. Give 1 to {limit}.",
        "{value} días no es un tiempo que un enlace pueda servir. Dé de 1 a {limit}.");

    public static ProblemKind NoPlan { get; } = new("LINK-005", ProblemWeight.Refuse,
        "there is no plan yet, so there is no sheet to show. Plan first, then make the link.",
        "todavía no hay plan, así que no hay hoja que mostrar. Planifique primero y haga luego el enlace.");

    public static ProblemKind NoSuchLink { get; } = new("LINK-006", ProblemWeight.Refuse,
        "there is no such link. Load the list again.",
        "no hay tal enlace. Cargue la lista otra vez.");

    public static ProblemKind NotAnAnswer { get; } = new("LINK-007", ProblemWeight.Refuse,
        "'{value}' is no answer that belongs to this sheet. Use the buttons of the page.",
        "'{value}' no es una respuesta que vaya con esta hoja. Use los botones de la página.");

    public static ProblemKind BadFigure { get; } = new("LINK-008", ProblemWeight.Refuse,
        "'{value}' cannot be taken here. Give a number from {least} to {limit}.",
        "'{value}' no sirve aquí. Dé un número de {least} a {limit}.");

    public static ProblemKind TooLate { get; } = new("LINK-009", ProblemWeight.Refuse,
        "it was told more than {limit} min ago and can no longer be undone here. Ring the farm.",
        "se avisó hace más de {limit} min y ya no se puede deshacer aquí. Llame a la finca.");
}
