namespace Watersown.Wording;

public sealed partial record CalendarWords
{
    public static CalendarWords Spanish { get; } = new()
    {
        Name = "{farm} siembra {year}",
        Fill = "Llenar {field}",
        Soak = "Al agua: {batch} para {field}",
        Drain = "Escurrir {batch} para {field}, a la llamada",
        Haul = "Acarrear {batch} para {field}",
        Sow = "Sembrar {field}",
        Call = "Pedir remojo para {field}",
        Order = "Pedir agua para {field}",
        LastMoment = "Último momento seguro: {what}",
        Weight = "{dry} {unit} en seco, {wet} {unit} en mojado",
        Flow = "{flow}, todas las fuentes juntas",
        Plan = "Plan n.º {plan}, hecho el {when}.",
        PilotDecides = "Decide el piloto.",
        NewBatch = "tanda nueva",
    };
}
