namespace Watersown.Records.Database;

/// <summary>What can be wrong with a book, and with what somebody wants to put into it.</summary>
public static class BookProblems
{
    public static ProblemKind NotABook { get; } = new("BOOK-001", ProblemWeight.Refuse,
        "this is not a book of Watersown. Name another file or database, or a new one.",
        "esto no es un libro de Watersown. Dé otro archivo o base de datos, o uno nuevo.");

    public static ProblemKind NewerSchema { get; } = new("BOOK-002", ProblemWeight.Refuse,
        "the book has form {value}; this program knows forms up to {limit}. Use the newer program that wrote it.",
        "el libro tiene la forma {value}; este programa conoce hasta la {limit}. Use el programa más nuevo que lo escribió.");

    public static ProblemKind Damaged { get; } = new("BOOK-003", ProblemWeight.Refuse,
        "the book is damaged: {value}. Keep the file as it is, and restore the newest backup copy.",
        "el libro está dañado: {value}. Guarde el archivo como está y restaure la copia más reciente.");

    public static ProblemKind ServerRefuses { get; } = new("BOOK-004", ProblemWeight.Refuse,
        "the database server does not let the desk in: {value}. Check host, name, user and password, and that the server is running.",
        "el servidor de la base de datos no deja entrar: {value}. Revise servidor, nombre, usuario y contraseña, y que el servidor funcione.");

    public static ProblemKind NotAConnection { get; } = new("BOOK-005", ProblemWeight.Refuse,
        "this is neither the path of a file nor a connection text: {value}. Give a path, or a text such as Host=…;Database=…;Username=….",
        "esto no es la ruta de un archivo ni un texto de conexión: {value}. Dé una ruta, o un texto como Host=…;Database=…;Username=….");

    public static ProblemKind BeingRestored { get; } = new("BOOK-006", ProblemWeight.Refuse,
        "another program is putting a copy in the place of this book. Wait until it is done, then open it.",
        "otro programa está poniendo una copia en el lugar de este libro. Espere a que termine y ábralo.");

    public static ProblemKind MarkLacks { get; } = new("BOOK-010", ProblemWeight.Refuse,
        "the mark needs {value} here. Send it again with that.",
        "la anotación necesita {value} aquí. Envíela otra vez con eso.");

    public static ProblemKind MarkTooLarge { get; } = new("BOOK-011", ProblemWeight.Refuse,
        "the mark has {value}; the most is {limit}. Send a shorter one.",
        "la anotación tiene {value}; lo máximo es {limit}. Envíe una más corta.");

    public static ProblemKind MarkDiffers { get; } = new("BOOK-012", ProblemWeight.Refuse,
        "a mark with this name is in the book already and says something else. Correct with a new mark that replaces it.",
        "ya hay en el libro una anotación con este nombre que dice otra cosa. Corrija con una anotación nueva que la reemplace.");

    public static ProblemKind FarmChanged { get; } = new("BOOK-020", ProblemWeight.Refuse,
        "the farm was changed meanwhile: this change was made on version {value}, and the book has version {limit}. Look at the newer one, then change again.",
        "la finca cambió mientras tanto: este cambio se hizo sobre la versión {value} y el libro tiene la {limit}. Vea la más nueva y cambie otra vez.");

    public static ProblemKind PlanNumberTaken { get; } = new("BOOK-021", ProblemWeight.Refuse,
        "plan no. {value} cannot be issued; the next number is {limit}. Issue it with that number.",
        "el plan n.º {value} no se puede emitir; el número siguiente es {limit}. Emítalo con ese número.");

    public static ProblemKind NoSuchFarmVersion { get; } = new("BOOK-022", ProblemWeight.Refuse,
        "the plan is based on version {value} of the farm, which the book does not have. Save the farm first.",
        "el plan se basa en la versión {value} de la finca, que el libro no tiene. Guarde primero la finca.");

    public static ProblemKind NameTaken { get; } = new("BOOK-030", ProblemWeight.Refuse,
        "there is an account {value} already. Choose another name.",
        "ya existe una cuenta {value}. Elija otro nombre.");

    public static ProblemKind NoSuchAccount { get; } = new("BOOK-031", ProblemWeight.Refuse,
        "there is no account {value} that is open. Check the name.",
        "no existe una cuenta abierta {value}. Revise el nombre.");

    public static ProblemKind LastOwner { get; } = new("BOOK-032", ProblemWeight.Refuse,
        "{value} is the only owner left. Make somebody else an owner first.",
        "{value} es el único dueño que queda. Nombre primero a otro dueño.");

    public static ProblemKind NameNotFit { get; } = new("BOOK-033", ProblemWeight.Refuse,
        "the name has {value} letters; it needs 1 to {limit}, all visible. Choose such a name.",
        "el nombre tiene {value} letras; necesita de 1 a {limit}, todas visibles. Elija un nombre así.");

    public static ProblemKind PasskeyTaken { get; } = new("BOOK-034", ProblemWeight.Refuse,
        "this passkey is in the book already. Sign in with it.",
        "esta llave de acceso ya está en el libro. Entre con ella.");

    public static ProblemKind AttachmentTooLarge { get; } = new("BOOK-040", ProblemWeight.Refuse,
        "the photo has {value}; the most is {limit}. Send a smaller one.",
        "la foto tiene {value}; lo máximo es {limit}. Envíe una más pequeña.");

    public static ProblemKind AttachmentNotAPhoto { get; } = new("BOOK-041", ProblemWeight.Refuse,
        "what was sent is not a photo of the kind {value}. Send a JPEG, PNG or WebP photo.",
        "lo que se envió no es una foto de tipo {value}. Envíe una foto JPEG, PNG o WebP.");

    public static ProblemKind AttachmentDiffers { get; } = new("BOOK-042", ProblemWeight.Refuse,
        "a photo with this name is in the book already and is another one. Send it under a new name.",
        "ya hay en el libro una foto con este nombre y es otra. Envíela con un nombre nuevo.");

    public static ProblemKind AttachmentName { get; } = new("BOOK-043", ProblemWeight.Refuse,
        "'{value}' is no name of a photo. It needs 32 lower-case hexadecimal digits.",
        "'{value}' no es un nombre de foto. Necesita 32 cifras hexadecimales minúsculas.");
}
