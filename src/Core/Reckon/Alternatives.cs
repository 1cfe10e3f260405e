namespace Watersown.Reckon;

/// <summary>One thing that can be told in several ways, of which exactly one must be given.</summary>
/// <param name="Meaning">What is told: <c>humidity</c>.</param>
/// <param name="Ways">Each way with the keys that belong together.</param>
public sealed record Alternatives(string Meaning, ImmutableArray<ImmutableArray<string>> Ways)
{
    /// <summary>For people: <c>rh_max_pct with rh_min_pct, vapour_kpa, or dewpoint_c</c>.</summary>
    public string Choices => string.Join(", ", Ways.Take(Ways.Length - 1).Select(Together)) + (Ways.Length > 2 ? ", or " : " or ") + Together(Ways[^1]);

    public bool Contains(string key) => Ways.Any(way => way.Contains(key, StringComparer.Ordinal));

    internal IEnumerable<Problem> Check(ReckoningInput given)
    {
        var begun = Ways.Where(way => way.Any(given.Has)).ToList();
        if (begun.Count == 0)
            yield return AlternativeProblems.NoneGiven.At(string.Join(" ", Ways.SelectMany(w => w)), ("meaning", Meaning), ("choices", Choices));
        if (begun.Count > 1)
            yield return AlternativeProblems.SeveralGiven.At(string.Join(" ", begun.SelectMany(w => w).Where(given.Has)), ("meaning", Meaning), ("choices", Choices));
        if (begun.Count != 1) yield break;
        foreach (var key in begun[0].Where(k => !given.Has(k)))
            yield return AlternativeProblems.HalfGiven.At(key, ("given", string.Join(", ", begun[0].Where(given.Has))));
    }

    private static string Together(ImmutableArray<string> way) => string.Join(" with ", way);
}

/// <summary>What can be wrong where one of several ways must be chosen.</summary>
public static class AlternativeProblems
{
    public static ProblemKind NoneGiven { get; } = new("RECKON-021", ProblemWeight.Refuse,
        "nothing was given for {meaning}. Give exactly one of {choices}.",
        "falta un dato y hay varias maneras de darlo. Dé solo una: {choices}.");

    public static ProblemKind SeveralGiven { get; } = new("RECKON-022", ProblemWeight.Refuse,
        "{meaning} was given in more than one way. Give exactly one of {choices}.",
        "el mismo dato se dio de varias maneras. Dé solo una: {choices}.");

    public static ProblemKind HalfGiven { get; } = new("RECKON-023", ProblemWeight.Refuse,
        "nothing was given, but {given} needs it. Give both, or neither.",
        "no se dio nada, pero {given} lo necesita. Dé los dos o ninguno.");
}
