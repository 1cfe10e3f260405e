namespace Watersown.Wording;

public sealed partial record CommonWords
{
    public static CommonWords Spanish { get; } = new()
    {
        Tag = "es",
        LongDays = ["domingo", "lunes", "martes", "miércoles", "jueves", "viernes", "sábado"],
        ShortDays = ["dom", "lun", "mar", "mié", "jue", "vie", "sáb"],
        Months = ["ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"],
        LongMonths = ["enero", "febrero", "marzo", "abril", "mayo", "junio", "julio", "agosto", "septiembre", "octubre", "noviembre", "diciembre"],
        LongDate = "{weekday} {day} de {month} {year}",
        Plan = "{farm}, plan n.º {plan}",
        Made = "hecho el {when}",
        Folio = "Página {page} de {pages}",
        GoesOn = "Esta hoja sigue: página {page} de {pages}.",
        Dry = "en seco",
        Wet = "en mojado",
        Acres = "ac",
        Hectares = "ha",
        PerAcre = "lb/ac",
        PerHectare = "kg/ha",
        Feet = "pies",
        Miles = "mi",
        Inches = "pulg.",
        CubicFeetPerSecond = "cfs",
        AcreFeet = "ac-pie",
        LitersPerSecond = "L/s",
        MilesPerHour = "mi/h",
        Hours = "h",
        NotTold = "sin dato",
        Check = "cuadro",
        Box = "caja",
        Field = "Campo",
        ToTick = "para marcar",
        ToFillIn = "para llenar",
        AgeMinutes = "de hace {n} min",
        AgeHours = "de hace {n} h",
        AgeDays = "de hace {n} días",
    };
}
