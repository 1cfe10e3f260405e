namespace Watersown.Wording;

public sealed partial record IndexWords
{
    public static IndexWords Spanish { get; } = new()
    {
        Title = "Hojas",
        ForDay = "Para el {day}.",
        Sheets = "Todo lo impreso de este plan",
        Sheet = "Hoja",
        What = "Para",
        Open = "Abrir",
        Others = "Mensajes y calendario",
        Texts = "mensajes para leer o mandar, uno por línea",
        TextsJson = "los mismos mensajes para otro programa",
        Calendar = "la temporada para cualquier calendario; al leerlo otra vez mueve sus citas",
    };
}
