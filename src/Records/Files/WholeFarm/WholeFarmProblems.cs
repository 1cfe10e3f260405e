namespace Watersown.Records.Files.WholeFarm;

/// <summary>What can be wrong with a whole-farm file, and what of it was not taken.</summary>
public static class WholeFarmProblems
{
    public static ProblemKind NotOne { get; } = new("WHOLE-001", ProblemWeight.Refuse,
        "this is not a whole-farm file, or it is cut short: {value}. Export it again from the desk that has the farm; nothing was taken.",
        "esto no es un archivo de la finca entera, o está cortado: {value}. Expórtelo otra vez desde el escritorio que tiene la finca; no se tomó nada.");

    public static ProblemKind NewerForm { get; } = new("WHOLE-002", ProblemWeight.Refuse,
        "the file has form {value}; this program knows forms up to {limit}. Use the newer program that wrote it.",
        "el archivo tiene la forma {value}; este programa conoce hasta la {limit}. Use el programa más nuevo que lo escribió.");

    public static ProblemKind PointsOutside { get; } = new("WHOLE-003", ProblemWeight.Refuse,
        "the file names a place outside itself, '{value}', which no desk writes. Do not trust where it came from; nothing was taken.",
        "el archivo nombra un lugar fuera de sí mismo, '{value}', cosa que ningún escritorio escribe. No confíe en su origen; no se tomó nada.");

    public static ProblemKind PartUnknown { get; } = new("WHOLE-004", ProblemWeight.Refuse,
        "'{value}' is not a part that the file's own list names, or it is named twice. Export it again; nothing was taken.",
        "'{value}' no es una parte que nombre la lista del archivo, o está dos veces. Expórtelo otra vez; no se tomó nada.");

    public static ProblemKind PartMissing { get; } = new("WHOLE-005", ProblemWeight.Refuse,
        "the part '{value}' is missing. Export it again; nothing was taken.",
        "falta la parte '{value}'. Expórtelo otra vez; no se tomó nada.");

    public static ProblemKind PartDiffers { get; } = new("WHOLE-006", ProblemWeight.Refuse,
        "the part is not as it was written: it has {value}, and the file's own list says {limit}. It was damaged or changed on the way; export it again.",
        "la parte no está como se escribió: tiene {value}, y la lista del archivo dice {limit}. Se dañó o se cambió por el camino; expórtelo otra vez.");

    public static ProblemKind TooLarge { get; } = new("WHOLE-007", ProblemWeight.Refuse,
        "{value} is above {limit}, the most that is taken in. Give a file that a desk exported; nothing was taken.",
        "{value} supera {limit}, lo máximo que se recibe. Dé un archivo que exportó un escritorio; no se tomó nada.");

    public static ProblemKind Lacks { get; } = new("WHOLE-008", ProblemWeight.Refuse,
        "this needs '{value}' with {limit}. Put it right, or export the file again; nothing was taken.",
        "aquí hace falta '{value}' con {limit}. Corríjalo, o exporte el archivo otra vez; no se tomó nada.");

    public static ProblemKind FarmDiffers { get; } = new("WHOLE-010", ProblemWeight.Warn,
        "the book's farm and the file's were changed apart from each other, so the book's own was kept. The file's is its part farm.json.",
        "la finca del libro y la del archivo se cambiaron cada una por su lado, así que se quedó la del libro. La del archivo es su parte farm.json.");

    public static ProblemKind PlansDiffer { get; } = new("WHOLE-011", ProblemWeight.Warn,
        "the book has issued plans of its own under numbers of the file's, so {value} plans of the file were left out.",
        "el libro emitió planes propios con números de los del archivo, así que se dejaron fuera {value} planes del archivo.");

    public static ProblemKind MarksDiffer { get; } = new("WHOLE-012", ProblemWeight.Warn,
        "{value} marks of the file say something else under names that the book has; the book's own were kept.",
        "{value} anotaciones del archivo dicen otra cosa con nombres que el libro ya tiene; se quedaron las del libro.");

    public static ProblemKind PhotosDiffer { get; } = new("WHOLE-013", ProblemWeight.Warn,
        "{value} photos of the file are others under names that the book has; the book's own were kept.",
        "{value} fotos del archivo son otras con nombres que el libro ya tiene; se quedaron las del libro.");
}
