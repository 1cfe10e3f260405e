namespace Watersown.Seed;

/// <summary>What can be wrong with lots and batches as described.</summary>
public static class SeedProblems
{
    public static ProblemKind CodeTwice { get; } = new("SEED-001", ProblemWeight.Refuse,
        "the code '{value}' is used twice; {other} has it too. Give each its own code.",
        "la clave '{value}' está repetida; {other} también la tiene. Dé a cada uno su propia clave.");

    public static ProblemKind SecondVariety { get; } = new("SEED-002", ProblemWeight.Refuse,
        "the batch is said to be {value}, but its lot {lot} is {limit}; a batch is one lot of one variety. Correct the batch or the lot.",
        "el remojo dice ser {value}, pero su partida {lot} es {limit}; un remojo es una sola partida de una variedad. Corrija el remojo o la partida.");

    public static ProblemKind UnknownLot { get; } = new("SEED-003", ProblemWeight.Warn,
        "lot '{value}' is none of the farm's lots. Correct it, or add the lot so that its seed is counted.",
        "la partida '{value}' no está entre las del rancho. Corríjala, o agregue la partida para contar su semilla.");

    public static ProblemKind TrailerTwice { get; } = new("SEED-004", ProblemWeight.Refuse,
        "trailer {value} is said to hold {other} too; a trailer holds one batch. Correct one of the two.",
        "el remolque {value} también figura con {other}; un remolque lleva un solo remojo. Corrija uno de los dos.");

    public static ProblemKind DrainedBeforeSoak { get; } = new("SEED-005", ProblemWeight.Refuse,
        "drained {value}, before it went under water at {limit}. Correct one of the two.",
        "escurrido {value}, antes de entrar al agua el {limit}. Corrija uno de los dos.");

    public static ProblemKind SoakUnusual { get; } = new("SEED-006", ProblemWeight.Warn,
        "was under water for {value}; 18 h to 60 h is usual. Correct the times, or look at the sprouts before it is loaded.",
        "estuvo bajo el agua {value}; lo normal es de 18 h a 60 h. Corrija las horas, o revise el brote antes de cargarla.");

    public static ProblemKind OtherVariety { get; } = new("SEED-007", ProblemWeight.Warn,
        "is {value}, meant for {field}, which is to be sown with {limit}. Correct the batch, the field, or its variety.",
        "es {value}, destinado a {field}, que se sembrará con {limit}. Corrija el remojo, el lote o su variedad.");

    public static ProblemKind WeightUnusual { get; } = new("SEED-008", ProblemWeight.Warn,
        "{value} wet is {share} of its dry weight; 110 % to 140 % is usual. Wrong trailer, wrong lot or wrong scale?",
        "{value} mojada es el {share} de su peso seco; lo normal es de 110 % a 140 %. ¿Remolque, partida o báscula equivocados?");

    public static ProblemKind SoakHours { get; } = new("SEED-009", ProblemWeight.Refuse,
        "{value} is below {limit}; hours under water go from least to most to lost. Put them in that order.",
        "{value} está por debajo de {limit}; las horas bajo el agua van del mínimo al máximo y a la pérdida. Póngalas en ese orden.");
}
