namespace Watersown.Web;

/// <summary>What can be wrong with how the desk is started, and with a request before anybody asks what it says.</summary>
public static class HostProblems
{
    public static ProblemKind UnknownOption { get; } = new("HOST-001", ProblemWeight.Refuse,
        "there is no option '{value}'. The options are {known}. Leave it out, or give one of them.",
        "no hay opción '{value}'. Las opciones son {known}. Quítela, o dé una de ellas.");

    public static ProblemKind BadOption { get; } = new("HOST-002", ProblemWeight.Refuse,
        "'{value}' cannot be used here. Give {limit}.",
        "'{value}' no sirve aquí. Dé {limit}.");

    public static ProblemKind OpenToOthers { get; } = new("HOST-003", ProblemWeight.Refuse,
        "{value} can be reached by others, and no owner can sign in yet. Start again with --owner NAME to make one, or leave the option out to stay on this machine.",
        "otros pueden llegar a {value}, y todavía ningún dueño puede entrar. Arranque otra vez con --owner NOMBRE para crear uno, o quite la opción para quedarse en esta máquina.");

    public static ProblemKind UnknownHost { get; } = new("HOST-004", ProblemWeight.Refuse,
        "this desk does not answer to the name '{value}'. Open it by its own address, or start it with --public-name.",
        "este escritorio no responde al nombre '{value}'. Ábralo por su propia dirección, o arránquelo con --public-name.");

    public static ProblemKind UnexpectedProxy { get; } = new("HOST-005", ProblemWeight.Refuse,
        "the request came through another server, but the desk was started for this machine alone. Start it with --behind-proxy and --public-name.",
        "la petición llegó por otro servidor, pero el escritorio se arrancó solo para esta máquina. Arránquelo con --behind-proxy y --public-name.");

    public static ProblemKind OtherOrigin { get; } = new("HOST-006", ProblemWeight.Refuse,
        "the request was sent by a page of another place, so nothing was kept. Open the desk itself and do it there.",
        "la petición la mandó una página de otro lugar, así que no se guardó nada. Abra el escritorio mismo y hágalo ahí.");

    public static ProblemKind MissingHeader { get; } = new("HOST-007", ProblemWeight.Refuse,
        "the header {value} is missing or is not the one of this session, so nothing was kept. Load the desk again.",
        "falta el encabezado {value} o no es el de esta sesión, así que no se guardó nada. Cargue el escritorio otra vez.");

    public static ProblemKind TooLarge { get; } = new("HOST-008", ProblemWeight.Refuse,
        "what was sent is above {limit}, so nothing of it was kept. Send it in smaller pieces.",
        "lo enviado pasa de {limit}, así que no se guardó nada. Mándelo en partes más pequeñas.");

    public static ProblemKind TooOften { get; } = new("HOST-009", ProblemWeight.Refuse,
        "that was asked too often. Wait {value} s, then try again.",
        "eso se pidió demasiadas veces. Espere {value} s y pruebe otra vez.");

    public static ProblemKind NothingHere { get; } = new("HOST-010", ProblemWeight.Refuse,
        "there is nothing at this address. Check it, or go back to the desk.",
        "no hay nada en esta dirección. Revísela, o vuelva al escritorio.");

    public static ProblemKind Failed { get; } = new("HOST-011", ProblemWeight.Refuse,
        "the desk failed at this, and what was sent was not kept unless it was said before. Its log tells more under {value}. Try again.",
        "el escritorio falló en esto, y lo enviado no se guardó salvo que se haya dicho antes. Su registro dice más bajo {value}. Pruebe otra vez.");

    public static ProblemKind NotThisBody { get; } = new("HOST-012", ProblemWeight.Refuse,
        "what was sent is not {limit}, so nothing was kept. Send it in that form.",
        "lo enviado no es {limit}, así que no se guardó nada. Mándelo en esa forma.");

    public static ProblemKind BookFails { get; } = new("HOST-014", ProblemWeight.Refuse,
        "the desk could not read or write its book: {value}. What was sent was not kept; send it again once the machine's disk or database is put right.",
        "el escritorio no pudo leer o escribir su libro: {value}. Lo enviado no se guardó; mándelo otra vez cuando el disco o la base de datos de la máquina esté en orden.");

    public static ProblemKind NotFull { get; } = new("HOST-013", ProblemWeight.Refuse,
        "'{value}' is not a number that can be used here. Give a whole number of 0 or more.",
        "'{value}' no es un número que sirva aquí. Dé un número entero de 0 o más.");

    public static ProblemKind Closing { get; } = new("HOST-015", ProblemWeight.Refuse,
        "the desk is being closed, and what was sent was not kept unless it was said before. Send it again when the desk is open.",
        "el escritorio se está cerrando, y lo enviado no se guardó salvo que se haya dicho antes. Mándelo otra vez cuando el escritorio esté abierto.");
}
