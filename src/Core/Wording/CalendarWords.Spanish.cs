namespace Watersown.Wording;

public sealed partial record CalendarWords
{
    public static CalendarWords Spanish { get; } = new()
    {
        Name = "{farm}, siembra {year}",
        Fill = "Llenar {field}",
        Soak = "Semilla en agua para {field}",
        Drain = "Semilla escurriendo para {field}, solo a la llamada",
        Haul = "Acarrear semilla para {field}",
        Sow = "Sembrar {field}: decide el piloto",
        LastMoment = "Último momento: {what}",
        Weight = "{dry} {unit} en seco, {wet} {unit} en mojado.",
        Flow = "{flow}, todas las fuentes juntas.",
        Tell = "Avisar: {who}.",
        Plan = "Plan n.º {plan}, hecho el {when}.",
    };
}
