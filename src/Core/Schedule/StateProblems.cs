namespace Watersown.Schedule;

/// <summary>What can be wrong with a season as it stands.</summary>
public static class StateProblems
{
    public static ProblemKind InFuture { get; } = new("STATE-001", ProblemWeight.Refuse,
        "{value} is after now, {limit}, and cannot have happened yet. Correct the time.",
        "{value} es después de ahora, {limit}, y todavía no pudo pasar. Corrija la hora.");

    public static ProblemKind OutOfOrder { get; } = new("STATE-002", ProblemWeight.Warn,
        "{value} is before {other} on {limit}; usually it comes after. Correct one of the two, or leave them if they are true.",
        "{value} es antes de {other}, {limit}; lo normal es después. Corrija uno de los dos, o déjelos si son ciertos.");

    public static ProblemKind StageAgainstFact { get; } = new("STATE-003", ProblemWeight.Warn,
        "the stage is '{value}', but {fact} says '{limit}'. Correct one of the two; the stage is taken.",
        "la etapa es '{value}', pero {fact} dice '{limit}'. Corrija uno de los dos; se toma la etapa.");

    public static ProblemKind TooManyWet { get; } = new("STATE-004", ProblemWeight.Refuse,
        "{value} checks are said to be wet, but the field has {limit}. Correct one of the two.",
        "se dice que {value} melgas tienen agua, pero el lote tiene {limit}. Corrija uno de los dos.");

    public static ProblemKind HorizonPast { get; } = new("STATE-005", ProblemWeight.Refuse,
        "the plan is to look until {value}, which is before {limit}. Give a later day, or leave it out.",
        "el plan debe mirar hasta el {value}, antes del {limit}. Escriba un día posterior, o quítelo.");

    public static ProblemKind Phone { get; } = new("STATE-006", ProblemWeight.Warn,
        "'{value}' does not have the 10 digits of a phone number. Correct it, or leave it if it can be rung.",
        "'{value}' no tiene los 10 dígitos de un teléfono. Corríjalo, o déjelo si se puede llamar.");

    public static ProblemKind HoursReversed { get; } = new("STATE-007", ProblemWeight.Refuse,
        "{value} is before {limit}, when it starts. Put the earlier hour first.",
        "{value} es antes de {limit}, cuando empieza. Ponga primero la hora más temprana.");

    public static ProblemKind GustBelowWind { get; } = new("STATE-008", ProblemWeight.Warn,
        "a gust of {value} is below the steady wind of {limit}. Correct one of the two.",
        "una ráfaga de {value} es menor que el viento sostenido de {limit}. Corrija uno de los dos.");

    public static ProblemKind LowAboveHigh { get; } = new("STATE-009", ProblemWeight.Refuse,
        "the low of {value} is above the high of {limit}. Correct one of the two.",
        "la mínima de {value} supera la máxima de {limit}. Corrija una de las dos.");

    public static ProblemKind ForecastOld { get; } = new("STATE-010", ProblemWeight.Warn,
        "the newest forecast was issued {value}, {limit} before now. Get a fresh one before you rely on it.",
        "el pronóstico más nuevo se emitió {value}, {limit} antes de ahora. Consiga uno reciente antes de confiar en él.");

    public static ProblemKind LoadAboveTop { get; } = new("STATE-011", ProblemWeight.Warn,
        "{value} is above the {limit} that the pilot named as the most. Plan with less.",
        "{value} supera los {limit} que el piloto dio como máximo. Planee con menos.");

    public static ProblemKind SameMoment { get; } = new("STATE-012", ProblemWeight.Warn,
        "wind at {value} is given twice; the later entry counts. Leave one of them out.",
        "el viento de {value} está dos veces; vale el último. Quite uno de los dos.");
}
