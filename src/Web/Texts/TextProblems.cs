namespace Watersown.Web.Texts;

/// <summary>What can be wrong with a text message that is sent to the desk.</summary>
public static class TextProblems
{
    public static ProblemKind WrongSecret { get; } = new("TEXT-001", ProblemWeight.Refuse,
        "the secret is missing or wrong, so the text was not read. The owner makes one on the desk.",
        "falta el secreto o no es el correcto, así que no se leyó el mensaje. El dueño hace uno en el escritorio.");

    public static ProblemKind UnknownNumber { get; } = new("TEXT-002", ProblemWeight.Refuse,
        "nobody of the farm has the number '{value}', so the text was not kept. Put the number beside its person on the farm.",
        "nadie de la finca tiene el número '{value}', así que no se guardó el mensaje. Ponga el número junto a su persona en la finca.");

    public static ProblemKind NothingSaid { get; } = new("TEXT-003", ProblemWeight.Refuse,
        "there is no text, or it has more than {limit} letters. Send a shorter one, such as N4 ck5 wet 2in.",
        "no hay mensaje, o tiene más de {limit} letras. Mande uno más corto, como N4 cuadro 5 mojado 2 pulg.");
}
