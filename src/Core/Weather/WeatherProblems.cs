namespace Watersown.Weather;

/// <summary>What can be wrong with what is told about the weather and the sun.</summary>
public static class WeatherProblems
{
    public static ProblemKind LowAboveHigh { get; } = new("WX-001", ProblemWeight.Refuse,
        "the day's low of {value} is above its high of {limit}. Check which of the two is which.",
        "la mínima de {value} está por encima de la máxima de {limit}. Revise cuál es cuál.");

    public static ProblemKind LeastHumidityAboveMost { get; } = new("WX-002", ProblemWeight.Refuse,
        "the lowest humidity of {value} is above the highest of {limit}. Check which of the two is which.",
        "la humedad mínima de {value} está por encima de la máxima de {limit}. Revise cuál es cuál.");

    public static ProblemKind MoreVaporThanHeld { get; } = new("WX-003", ProblemWeight.Refuse,
        "{value} means more vapor than the air of that day can hold, {limit}. Check it against the temperatures.",
        "{value} es más vapor del que el aire de ese día puede tener, {limit}. Compárelo con las temperaturas.");

    public static ProblemKind SunshineBeyondDay { get; } = new("WX-004", ProblemWeight.Refuse,
        "{value} of sunshine is more than the {limit} of daylight on that day and latitude. Check the hours, the day and the latitude.",
        "{value} de sol es más que las {limit} de luz de ese día y latitud. Revise las horas, el día y la latitud.");

    public static ProblemKind MoreThanReachesTheAir { get; } = new("WX-005", ProblemWeight.Refuse,
        "{value} at the ground is more than the {limit} that reach the top of the air on that day. Check the unit (MJ/m² per day), the day and the latitude.",
        "{value} en el suelo es más que los {limit} que llegan a lo alto del aire ese día. Revise la unidad (MJ/m² por día), el día y la latitud.");

    public static ProblemKind YearOutside { get; } = new("WX-006", ProblemWeight.Refuse,
        "{value} is outside the years 1901 to 2099 for which the sun can be told. Give a day within them.",
        "{value} está fuera de los años 1901 a 2099 para los que se conoce el sol. Dé un día dentro de ellos.");
}
