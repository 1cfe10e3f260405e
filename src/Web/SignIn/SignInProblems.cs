namespace Watersown.Web.SignIn;

/// <summary>What can be wrong with signing in, and with what somebody may do.</summary>
public static class SignInProblems
{
    public static ProblemKind NotSignedIn { get; } = new("SIGN-001", ProblemWeight.Refuse,
        "nobody is signed in here, so nothing was shown or kept. Sign in, then try again.",
        "nadie ha entrado aquí, así que no se mostró ni se guardó nada. Entre y pruebe otra vez.");

    public static ProblemKind NotAllowed { get; } = new("SIGN-002", ProblemWeight.Refuse,
        "{value} may not do this, so nothing was shown or kept. Ask the owner.",
        "{value} no puede hacer esto, así que no se mostró ni se guardó nada. Pida al dueño.");

    public static ProblemKind WrongPassword { get; } = new("SIGN-003", ProblemWeight.Refuse,
        "the name and the password or code do not go together. Check both and try again.",
        "el nombre y la contraseña o el código no van juntos. Revise los dos y pruebe otra vez.");

    public static ProblemKind PasswordLength { get; } = new("SIGN-004", ProblemWeight.Refuse,
        "the password has {value} letters. Give one of at least {limit}, such as four words.",
        "la contraseña tiene {value} letras. Dé una de al menos {limit}, como cuatro palabras.");

    public static ProblemKind UnknownRole { get; } = new("SIGN-005", ProblemWeight.Refuse,
        "'{value}' is not something a person can be here. Give one of {known}.",
        "'{value}' no es algo que una persona pueda ser aquí. Dé uno de {known}.");

    public static ProblemKind Passkey { get; } = new("SIGN-006", ProblemWeight.Refuse,
        "the passkey was not accepted: {value}. Try again, or sign in with the password.",
        "no se aceptó la llave de acceso: {value}. Pruebe otra vez, o entre con la contraseña.");

    public static ProblemKind NoSuchSession { get; } = new("SIGN-007", ProblemWeight.Refuse,
        "there is no such session, or it has ended. Load the list again.",
        "no hay tal sesión, o ya terminó. Cargue la lista otra vez.");
}
