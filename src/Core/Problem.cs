namespace Watersown;

/// <summary>How heavily a problem weighs.</summary>
public enum ProblemWeight
{
    /// <summary>Usable, but unlikely: said once, kept as a flag.</summary>
    Warn,

    /// <summary>Cannot be physically or logically true, or not enough to work with.</summary>
    Refuse,
}

/// <summary>
/// One sort of problem: its code (area and number, never reused), and its sentence in both languages with named facts
/// in braces. Form of a sentence: what was found, what is acceptable, what to do next.
/// </summary>
/// <param name="Code">Such as <c>SEED-004</c>.</param>
/// <param name="Weight">Refuse or warn.</param>
/// <param name="English">The sentence, facts in braces: <c>{value} is above {limit}. Do this.</c></param>
/// <param name="Spanish">The same for people who read Spanish.</param>
public sealed record ProblemKind(string Code, ProblemWeight Weight, string English, string Spanish)
{
    /// <summary>
    /// A problem of this kind at a place, with the facts of its sentence. A fact that is words rather than a figure or a name
    /// can be told in Spanish too, under its own name and <c>:es</c>.
    /// </summary>
    public Problem At(string where, params (string Name, string Text)[] facts) =>
        new(this, where, facts.ToImmutableDictionary(f => f.Name, f => f.Text, StringComparer.Ordinal));
}

/// <summary>One problem found: its kind, the place (a field, a line, a key), and the facts as the user gave them.</summary>
public sealed record Problem(ProblemKind Kind, string Where, ImmutableDictionary<string, string> Facts);
