namespace Watersown.Season;

/// <summary>What can be wrong with a mark by itself, and what marks can say against each other. Almost all only ask.</summary>
public static class SeasonProblems
{
    public static ProblemKind InFuture { get; } = new("SEASON-001", ProblemWeight.Refuse,
        "{value} is after now, {limit}, and cannot have happened yet. Correct the time, or the clock of this device.",
        "{value} es después de ahora, {limit}, y todavía no pudo pasar. Corrija la hora, o el reloj de este aparato.");

    public static ProblemKind UnknownField { get; } = new("SEASON-002", ProblemWeight.Warn,
        "'{value}' is none of the farm's fields; the mark is kept, to be confirmed.{nearest} Correct it, or add the field.",
        "'{value}' no está entre los campos del rancho; la anotación se guarda, por confirmar.{nearest} Corríjala, o agregue el campo.");

    public static ProblemKind UnknownSource { get; } = new("SEASON-003", ProblemWeight.Warn,
        "'{value}' is none of the farm's sources; the mark is kept, to be confirmed.{nearest} Correct it, or add the source.",
        "'{value}' no está entre las fuentes del rancho; la anotación se guarda, por confirmar.{nearest} Corríjala, o agregue la fuente.");

    public static ProblemKind UnknownCheck { get; } = new("SEASON-004", ProblemWeight.Warn,
        "check {value} is told of, but the field has {limit}. Correct the mark or the field.",
        "se habla del cuadro {value}, pero el campo tiene {limit}. Corrija la anotación o el campo.");

    public static ProblemKind FullBeforeWet { get; } = new("SEASON-005", ProblemWeight.Warn,
        "check {value} is said to be full at {limit}, and nobody saw it wet before. When did its water come in?",
        "se dice que el cuadro {value} está lleno a las {limit}, y nadie lo vio mojado antes. ¿Cuándo le entró el agua?");

    public static ProblemKind DrainedBeforeSoak { get; } = new("SEASON-006", ProblemWeight.Warn,
        "{value} is said to be drained at {limit}, before it went under water. Correct one of the two; the draining is left out.",
        "se dice que {value} se escurrió a las {limit}, antes de entrar al agua. Corrija uno de los dos; el escurrido no se toma.");

    public static ProblemKind DepthsDiffer { get; } = new("SEASON-007", ProblemWeight.Warn,
        "{by} read {value} and {other} read {limit} at the same place within half an hour. The later one is taken; look again.",
        "{by} leyó {value} y {other} leyó {limit} en el mismo lugar en menos de media hora. Vale la última; vuelva a mirar.");

    public static ProblemKind TwoCorrections { get; } = new("SEASON-008", ProblemWeight.Warn,
        "{by} and {other} both corrected the same mark. The later word, by {value}, is taken.",
        "{by} y {other} corrigieron la misma anotación. Vale la última palabra, la de {value}.");

    public static ProblemKind CorrectionCircle { get; } = new("SEASON-009", ProblemWeight.Warn,
        "{value} marks correct each other in a circle. The one put down first is taken as correcting nothing.",
        "{value} anotaciones se corrigen en círculo. La primera que se anotó se toma como que no corrige nada.");

    public static ProblemKind SownTwice { get; } = new("SEASON-010", ProblemWeight.Warn,
        "was sown on {limit} and is told sown again on {value}. Is it overseeded, resown, or the same sowing told twice?",
        "se sembró el {limit} y se dice sembrado otra vez el {value}. ¿Es resiembra, refuerzo, o la misma siembra dicha dos veces?");

    public static ProblemKind SownBeforeFull { get; } = new("SEASON-011", ProblemWeight.Warn,
        "is told sown on {value}, and nobody said that it was full. Was it?",
        "se dice sembrado el {value}, y nadie dijo que estuviera lleno. ¿Lo estaba?");

    public static ProblemKind StageBack { get; } = new("SEASON-012", ProblemWeight.Warn,
        "was {limit} and is told {value} now, which is a step back. Correct the mark, or leave it if it is true.",
        "estaba {limit} y ahora se dice {value}, que es un paso atrás. Corrija la anotación, o déjela si es cierta.");

    public static ProblemKind UnknownBatch { get; } = new("SEASON-013", ProblemWeight.Warn,
        "batch '{value}' is told of, and nobody said that it went under water; to be confirmed.{nearest}",
        "se habla del remojo '{value}', y nadie dijo que entrara al agua; por confirmar.{nearest}");

    public static ProblemKind TrailerHolds { get; } = new("SEASON-014", ProblemWeight.Warn,
        "trailer {value} is told to hold {limit}, and {other} was in it. Which of the two? The later word is taken.",
        "se dice que el remolque {value} lleva {limit}, y llevaba {other}. ¿Cuál de los dos? Vale la última palabra.");

    public static ProblemKind SeedOverdrawn { get; } = new("SEASON-015", ProblemWeight.Warn,
        "{value} dry is told sown or dumped of batch {batch}, which had {limit} dry. Correct a weight or the batch.",
        "se dicen {value} en seco sembradas o tiradas del remojo {batch}, que tenía {limit} en seco. Corrija un peso o el remojo.");

    public static ProblemKind BatchUnclear { get; } = new("SEASON-016", ProblemWeight.Warn,
        "batch {value} has no dry weight or no variety yet, so no plan counts on it. Add them.",
        "el remojo {value} aún no tiene peso en seco o variedad, y ningún plan cuenta con él. Agréguelos.");

    public static ProblemKind FlowOffOrder { get; } = new("SEASON-017", ProblemWeight.Warn,
        "{value} was seen at {source}, and {limit} is ordered; up to a quarter apart is usual. Ring the district, or measure again.",
        "en {source} se vieron {value}, y hay pedidos {limit}; lo normal es hasta un cuarto de diferencia. Llame al distrito, o mida otra vez.");

    public static ProblemKind TwoOrders { get; } = new("SEASON-018", ProblemWeight.Warn,
        "two orders are told to run at {value}: {limit} and {other}. The later one is taken; has the first ended?",
        "se dicen dos pedidos corriendo en {value}: {limit} y {other}. Vale el último; ¿terminó el primero?");

    public static ProblemKind PartSown { get; } = new("SEASON-019", ProblemWeight.Warn,
        "{value} of {limit} is sown. The plan counts the whole field as unsown until the rest is.",
        "se han sembrado {value} de {limit}. El plan cuenta el campo entero como sin sembrar hasta que se siembre el resto.");

    public static ProblemKind OrderOld { get; } = new("SEASON-020", ProblemWeight.Refuse,
        "the order is for {value}, more than 7 days before now, {limit}. Correct the day.",
        "el pedido es para el {value}, más de 7 días antes de ahora, {limit}. Corrija el día.");

    public static ProblemKind ShortNotice { get; } = new("SEASON-021", ProblemWeight.Warn,
        "the change at {value} is asked {span} ahead, and {source} wants {limit}. Ask whether they take it.",
        "el cambio de las {value} se pide con {span} de aviso, y {source} quiere {limit}. Pregunte si lo aceptan.");

    public static ProblemKind SeedShort { get; } = new("SEASON-022", ProblemWeight.Warn,
        "{value} dry went into soak of lot {lot}, and {limit} dry was in hand. Correct a weight, or the lot.",
        "entraron al remojo {value} en seco de la partida {lot}, y había {limit} en seco. Corrija un peso, o la partida.");

    public static ProblemKind BilledAboveField { get; } = new("SEASON-023", ProblemWeight.Warn,
        "the invoice bills {value}, and the field is {limit} net. Ask what else is on it, or correct the acres.",
        "la factura cobra {value}, y el campo tiene {limit} netos. Pregunte qué más incluye, o corrija la superficie.");
}
