namespace Watersown.Wording;

public sealed partial record BookWords
{
    public static BookWords Spanish { get; } = new()
    {
        Title = "El libro de la finca",
        LastCopy = "Última copia",
        LastChecked = "{day} {clock}, {age}, revisada",
        NoneYet = "ninguna todavía",
        Off = "este servidor no hace copias",
        Unknown = "el servidor no lo ha dicho todavía",
        Kept = "Copias",
        KeptSaid = "{n}; cada una se guarda {days} días, la última siempre",
        Failed = "No se hizo copia del libro {age}: {why}",
        CopyNow = "Hacer una copia ahora",
        Copying = "Copiando y revisando",
        Whole = "La finca entera en un archivo",
        WholeLead = "Finca, anotaciones, planes, fotos y personas, en un zip de partes sencillas. Sin contraseñas, sin enlaces.",
        Take = "Llevarse la finca entera",
        Bring = "Un archivo de la finca entera para traer",
        BringLead = "Se añade lo que tiene y este libro no. Nada se reemplaza.",
        BringNow = "Traerlo",
        Bringing = "Revisando el archivo",
        Brought = "Se trajo: {marks} anotaciones, {farms} versiones de la finca, {plans} planes, {photos} fotos, {people} personas.",
        NoAnswer = "El servidor no respondió. No se sabe que se haya guardado nada.",
    };
}
