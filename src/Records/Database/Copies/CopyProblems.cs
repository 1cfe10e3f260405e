namespace Watersown.Records.Database.Copies;

/// <summary>What can be wrong with copying a book and with bringing a copy back.</summary>
public static class CopyProblems
{
    public static ProblemKind NotMade { get; } = new("COPY-001", ProblemWeight.Refuse,
        "no copy of the book was made: {value}. Check that the folder may be written to and has room for a book; the copies before stand as they were.",
        "no se hizo copia del libro: {value}. Revise que se pueda escribir en la carpeta y que quepa un libro; las copias anteriores siguen como estaban.");

    public static ProblemKind Lacks { get; } = new("COPY-002", ProblemWeight.Refuse,
        "the copy held less than the book, so it was thrown away. Try again; if it happens twice, check the disk.",
        "la copia tenía menos que el libro, así que se descartó. Pruebe otra vez; si pasa dos veces, revise el disco.");

    public static ProblemKind BookIsThere { get; } = new("COPY-003", ProblemWeight.Refuse,
        "there is a book already, and it was left as it is. Give --replace to put the copy in its place; the book is then kept beside it.",
        "ya hay un libro, y se dejó como está. Dé --replace para poner la copia en su lugar; el libro se guarda entonces al lado.");

    public static ProblemKind BookIsOpen { get; } = new("COPY-004", ProblemWeight.Refuse,
        "a desk or another program has the book open. Close it, then restore.",
        "un escritorio u otro programa tiene el libro abierto. Ciérrelo y luego restaure.");

    public static ProblemKind GoodCopy { get; } = new("COPY-005", ProblemWeight.Warn,
        "the newest good copy was made {value} and holds {count} marks. Bring it back with: watersown restore {copy} --book {book} --replace",
        "la copia buena más nueva se hizo {value} y tiene {count} anotaciones. Recupérela con: watersown restore {copy} --book {book} --replace");

    public static ProblemKind NoCopy { get; } = new("COPY-006", ProblemWeight.Warn,
        "no good copy of it stands in {value}. Look for copies elsewhere before anything is changed.",
        "no hay ninguna copia buena en {value}. Busque copias en otro lugar antes de cambiar nada.");

    public static ProblemKind WithoutSecrets { get; } = new("COPY-007", ProblemWeight.Warn,
        "the copy is a whole-farm file: people come without their passwords, and links have ended. Start the desk with --owner NAME for the first code.",
        "la copia es un archivo de la finca entera: las personas llegan sin contraseña y los enlaces terminaron. Arranque el escritorio con --owner NOMBRE para el primer código.");
}
