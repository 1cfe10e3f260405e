namespace Watersown.Web.Season;

/// <summary>What can be wrong with what is sent to the season's book.</summary>
public static class SendProblems
{
    public static ProblemKind NoCopies { get; } = new("SEND-009", ProblemWeight.Refuse,
        "this desk makes no copies of its book. Start it with --copies FOLDER.",
        "este escritorio no hace copias de su libro. Arránquelo con --copies CARPETA.");

    public static ProblemKind AnothersMark { get; } = new("SEND-001", ProblemWeight.Refuse,
        "the mark that it replaces is {value}'s, so it was not kept. Put down a mark of your own, or ask who runs the farm.",
        "la anotación que reemplaza es de {value}, así que no se guardó. Haga una anotación propia, o pida a quien lleva la finca.");

    public static ProblemKind NoFarm { get; } = new("SEND-002", ProblemWeight.Refuse,
        "the book has no farm yet, so there is nothing to show. Send a farm document, or start the desk with one.",
        "el libro todavía no tiene finca, así que no hay nada que mostrar. Mande un documento de finca, o arranque el escritorio con uno.");

    public static ProblemKind NoSuchPlan { get; } = new("SEND-003", ProblemWeight.Refuse,
        "there is no plan no. {value}. Look at the list of plans.",
        "no hay plan n.º {value}. Mire la lista de planes.");

    public static ProblemKind NoVersion { get; } = new("SEND-004", ProblemWeight.Refuse,
        "it is not said which version of the farm was changed, so nothing was kept. Add ?version= with its number.",
        "no se dice qué versión de la finca se cambió, así que no se guardó nada. Agregue ?version= con su número.");

    public static ProblemKind NoPhoto { get; } = new("SEND-005", ProblemWeight.Refuse,
        "there is no photo of that name. It may not have been sent yet; try again later.",
        "no hay foto con ese nombre. Puede que todavía no se haya mandado; pruebe más tarde.");
}
