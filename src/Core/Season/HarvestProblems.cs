namespace Watersown.Season;

/// <summary>What can be wrong with what is told of a harvest.</summary>
public static class HarvestProblems
{
    public static ProblemKind TicketTwice { get; } = new("HARVEST-001", ProblemWeight.Warn,
        "ticket {value} is told twice; it is counted once. Take one of them back, or correct a number.",
        "el boleto {value} se dio dos veces; cuenta una. Retire uno, o corrija un número.");

    public static ProblemKind TruckHeavier { get; } = new("HARVEST-002", ProblemWeight.Refuse,
        "the truck, {value}, is as heavy as truck and grain, {limit}. Correct a weight.",
        "el camión, {value}, pesa tanto como camión y grano, {limit}. Corrija un peso.");

    public static ProblemKind PartsNotWhole { get; } = new("HARVEST-003", ProblemWeight.Refuse,
        "the fields' parts of the ticket come to {value}, not to {limit}. Correct a part.",
        "las partes de los campos en el boleto suman {value}, no {limit}. Corrija una parte.");

    public static ProblemKind VarietyDiffers { get; } = new("HARVEST-004", ProblemWeight.Warn,
        "ticket {value} says {limit}, and the field was sown with {other}. Which of the two? Ring the dryer before more is mixed.",
        "el boleto {value} dice {limit}, y el campo se sembró con {other}. ¿Cuál de los dos? Llame al secador antes de mezclar más.");

    public static ProblemKind CutTooMuch { get; } = new("HARVEST-005", ProblemWeight.Warn,
        "{value} is told cut, and the field has {limit} net. Correct the land cut, or the field.",
        "se dicen {value} cortados, y el campo tiene {limit} netos. Corrija lo cortado, o el campo.");

    public static ProblemKind SharesTooMuch { get; } = new("HARVEST-006", ProblemWeight.Warn,
        "the landlords' shares come to {value}, above {limit}. Correct a share.",
        "las partes de los dueños suman {value}, más de {limit}. Corrija una parte.");

    public static ProblemKind RangeReversed { get; } = new("HARVEST-007", ProblemWeight.Refuse,
        "cutting from {value} down to {limit} leaves nothing between. Give the wetter figure first.",
        "cortar de {value} hasta {limit} no deja nada en medio. Ponga primero lo más húmedo.");

    public static ProblemKind DaysReversed { get; } = new("HARVEST-008", ProblemWeight.Refuse,
        "the last day, {value}, is before the first, {limit}. Correct a day.",
        "el último día, {value}, es antes del primero, {limit}. Corrija un día.");

    public static ProblemKind YieldOdd { get; } = new("HARVEST-009", ProblemWeight.Warn,
        "the tickets give {value}; {limit} is usual. Is a ticket missing, or does one belong to another field?",
        "los boletos dan {value}; lo normal es {limit}. ¿Falta un boleto, o uno es de otro campo?");
}
