namespace Watersown.Records;

/// <summary>What can be wrong with a file itself, before anything in it is read.</summary>
public static class FileProblems
{
    public static ProblemKind NotThere { get; } = new("FILE-001", ProblemWeight.Refuse,
        "there is no such file. Check the name and the folder.",
        "no existe ese archivo. Revise el nombre y la carpeta.");

    public static ProblemKind NotReadable { get; } = new("FILE-002", ProblemWeight.Refuse,
        "the file could not be read: {value}. Check that it may be read and that its disk is there.",
        "no se pudo leer el archivo: {value}. Revise que se permita leerlo y que el disco esté conectado.");

    public static ProblemKind TooLarge { get; } = new("FILE-003", ProblemWeight.Refuse,
        "{value} is above {limit}, the most that is read. Give a smaller file.",
        "{value} supera {limit}, lo máximo que se lee. Entregue un archivo más pequeño.");

    public static ProblemKind Exists { get; } = new("FILE-004", ProblemWeight.Refuse,
        "the file is already there and was left as it is. Give another name, or --replace if it may go.",
        "el archivo ya existe y se dejó como está. Dé otro nombre, o --replace si se puede perder.");

    public static ProblemKind NotWritable { get; } = new("FILE-005", ProblemWeight.Refuse,
        "the file could not be written: {value}. Check that its folder is there, may be written to, and has room.",
        "no se pudo escribir el archivo: {value}. Revise que la carpeta exista, permita escribir y tenga espacio.");
}
