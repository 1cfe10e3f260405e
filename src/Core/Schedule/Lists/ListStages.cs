using Watersown.Wording;

namespace Watersown.Schedule.Lists;

/// <summary>Words by which a list tells how far a field has come.</summary>
internal static class ListStages
{
    private static readonly (string Word, FieldStage Stage)[] known =
    [
        ("sown", FieldStage.Sown), ("seeded", FieldStage.Sown), ("planted", FieldStage.Sown), ("flown", FieldStage.Sown), ("sembrado", FieldStage.Sown),
        ("full", FieldStage.Full), ("lleno", FieldStage.Full),
        ("flooding", FieldStage.Flooding), ("filling", FieldStage.Flooding), ("inundando", FieldStage.Flooding), ("llenando", FieldStage.Flooding),
        ("rolled", FieldStage.Rolled), ("rodillo", FieldStage.Rolled),
        ("aqua", FieldStage.AquaOn),
        ("landplaned", FieldStage.Planed), ("planed", FieldStage.Planed), ("nivelado", FieldStage.Planed),
        ("disced", FieldStage.Disced), ("disked", FieldStage.Disced), ("rastreado", FieldStage.Disced),
        ("chiseled", FieldStage.Chiselled), ("chiselled", FieldStage.Chiselled), ("cincelado", FieldStage.Chiselled),
        ("wet", FieldStage.TooWet), ("too wet", FieldStage.TooWet), ("mojado", FieldStage.TooWet),
        ("unworked", FieldStage.Unworked), ("stubble", FieldStage.Unworked),
    ];

    public static string Examples { get; } = "sown, full, flooding, rolled, aqua, planed, disced, chiseled, too wet, unworked";

    /// <summary>The stage told by the first word that tells one; "too" tells with the word behind it.</summary>
    public static FieldStage? Find(string cell)
    {
        var words = ListHeadings.Words(cell);
        if (words.Length > 1 && words[0] == "too" && words[1] == "wet") return FieldStage.TooWet;
        foreach (var word in words.Take(3))
        {
            foreach (var (said, stage) in known)
            {
                if (word == said || (word.Length > 4 && Nearest.Distance(word, said) <= 1)) return stage;
            }
        }

        return null;
    }
}
