namespace Watersown.Wording;

public sealed partial record SignInWords
{
    public static SignInWords Spanish { get; } = new()
    {
        Title = "Entrar a {farm}",
        Why = "A este escritorio se llega desde otras máquinas, por eso pregunta quién es usted. No se pregunta a nadie de fuera ni se le manda nada a nadie.",
        Name = "Nombre",
        Password = "Contraseña",
        Enter = "Entrar",
        WithPasskey = "Entrar con una llave de acceso de este teléfono o computadora",
        HaveCode = "Tengo un código",
        CodeWhy = "Un código lo deja entrar una vez, para elegir una contraseña. Se lo da el dueño; el primero se muestra donde se arrancó el escritorio.",
        Code = "Código",
        NewPassword = "Contraseña nueva",
        NewPasswordRule = "Al menos {least} letras. Cuatro palabras que no van juntas se recuerdan fácil y se adivinan difícil.",
        SetPassword = "Guardar esta contraseña y entrar",
        PasskeyFailed = "La llave de acceso no sirvió. Entre con la contraseña.",
        Address = "El escritorio está abierto en {address}",
        OnlyHere = "Solo esta máquina llega a él; nadie tiene que entrar con contraseña.",
        FirstCode = "Para entrar como {name} por primera vez, abra {address} y dé este código: {code}",
        CodeLasts = "El código sirve una vez, hasta el {when}.",
        PlainHttp = "Las contraseñas viajan sin protección por {address}. Ponga delante un servidor con https, como dice docs/guide/desk.md.",
        NoPages = "Las páginas del escritorio no están en {folder}; solo se sirven sus datos.",
        StoryClock = "El reloj del escritorio se puso al {when} y corre desde ahí.",
    };
}
