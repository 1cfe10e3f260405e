using System.Text;

namespace Watersown.Wording;

/// <summary>Sentences with named places in braces.</summary>
public static class Template
{
    /// <summary>Puts facts into a sentence. A place without a fact, or a fact without a place, is a bug.</summary>
    public static string Fill(string sentence, params ReadOnlySpan<(string Name, string Text)> facts)
    {
        var text = new StringBuilder();
        var used = 0;
        for (var i = 0; i < sentence.Length; i++)
        {
            if (sentence[i] != '{')
            {
                text.Append(sentence[i]);
                continue;
            }

            var end = sentence.IndexOf('}', i);
            text.Append(Find(sentence[(i + 1)..end], facts, ref used));
            i = end;
        }

        if (System.Numerics.BitOperations.PopCount((uint)used) != facts.Length) throw new ArgumentException("A fact has no place in: " + sentence, nameof(facts));
        return text.ToString();
    }

    /// <summary>The names of the places of a sentence, in order.</summary>
    public static ImmutableArray<string> Places(string sentence)
    {
        var names = ImmutableArray.CreateBuilder<string>();
        for (var open = sentence.IndexOf('{', StringComparison.Ordinal); open >= 0; open = sentence.IndexOf('{', open + 1))
            names.Add(sentence[(open + 1)..sentence.IndexOf('}', open)]);
        return names.ToImmutable();
    }

    private static string Find(string name, ReadOnlySpan<(string Name, string Text)> facts, ref int used)
    {
        for (var i = 0; i < facts.Length; i++)
        {
            if (facts[i].Name != name) continue;
            used |= 1 << i;
            return facts[i].Text;
        }

        throw new ArgumentException("No fact was given for " + name + ".", nameof(facts));
    }
}
