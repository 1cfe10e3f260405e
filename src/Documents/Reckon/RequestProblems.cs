namespace Watersown.Documents.Reckon;

/// <summary>What can be wrong with the text that asks for a reckoning, before any of its values is looked at.</summary>
public static class RequestProblems
{
    public static ProblemKind Empty { get; } = new("JSON-001", ProblemWeight.Refuse,
        "nothing was given. Give one JSON object such as {example}, or type {typed}.",
        "no se dio nada. Dé un objeto JSON como {example}, o escriba {typed}.");

    public static ProblemKind NotJson { get; } = new("JSON-002", ProblemWeight.Refuse,
        "the text stops being JSON at line {line}, character {character}, at {near}. Give one JSON object and nothing after it.",
        "el texto deja de ser JSON en la línea {line}, carácter {character}, en {near}. Dé un solo objeto JSON y nada después.");

    public static ProblemKind NotAnObject { get; } = new("JSON-003", ProblemWeight.Refuse,
        "{value} is not a JSON object. Give keys and values in braces such as {example}.",
        "{value} no es un objeto JSON. Dé claves y valores entre llaves como {example}.");

    public static ProblemKind TooDeep { get; } = new("JSON-004", ProblemWeight.Refuse,
        "the lists and objects lie more than {limit} deep. Give them at most {limit} deep.",
        "las listas y los objetos tienen más de {limit} niveles. Use {limit} como máximo.");

    public static ProblemKind TooLong { get; } = new("JSON-005", ProblemWeight.Refuse,
        "the text is longer than {limit} characters. Give a shorter one.",
        "el texto tiene más de {limit} caracteres. Dé uno más corto.");

    public static ProblemKind NotUtf8 { get; } = new("JSON-006", ProblemWeight.Refuse,
        "the text is not in UTF-8. Save it as UTF-8 and give it again.",
        "el texto no está en UTF-8. Guárdelo como UTF-8 y delo de nuevo.");

    public static ProblemKind NumberTooLarge { get; } = new("JSON-007", ProblemWeight.Refuse,
        "{value} is larger than any number that can be worked with, about 1.8e308. Give a smaller one.",
        "{value} es mayor que cualquier número con el que se puede trabajar, cerca de 1.8e308. Dé uno menor.");

    public static ProblemKind BrokenText { get; } = new("JSON-008", ProblemWeight.Refuse,
        "the words hold half of a character pair, which is not text. Give whole characters.",
        "las palabras tienen medio par de caracteres, que no es texto. Dé caracteres completos.");

    public static ProblemKind NoEqualsSign { get; } = new("JSON-009", ProblemWeight.Refuse,
        "'{value}' is not a key and a value. Write key=value, such as {typed}.",
        "'{value}' no es una clave y un valor. Escriba clave=valor, como {typed}.");

    /// <summary>NaN and Infinity, which some programs write although JSON has no such numbers.</summary>
    public static ProblemKind NotFinite { get; } = new("JSON-010", ProblemWeight.Refuse,
        "{value} is not a number that can be worked with. Give a finite number, or leave the key out where it may be left out.",
        "{value} no es un número con el que se pueda trabajar. Dé un número finito, u omita la clave donde se pueda.");
}
