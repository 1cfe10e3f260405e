using System.Globalization;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season.Texts;

/// <summary>Finds the fields, sources and batches of the farm in the words of a message.</summary>
internal sealed class TextSubjects
{
    private readonly ImmutableArray<(string Code, string Bare, ImmutableArray<string> Name)> fields;
    private readonly Dictionary<string, string> sources;
    private readonly Dictionary<string, string> batches;

    public TextSubjects(SeasonState state)
    {
        fields = [.. state.Farm.Fields.Select(f => (f.Code, TextWord.Bare(f.Code), Words(f.Name)))];
        sources = Codes(state.Farm.Sources.Select(s => s.Code));
        batches = Codes(state.Batches.Select(b => b.Code));
    }

    public string? Field(TextWord word) => fields.FirstOrDefault(f => f.Bare.Length > 0 && f.Bare == TextWord.Bare(word.Plain)).Code;

    public string? Source(TextWord word) => sources.GetValueOrDefault(TextWord.Bare(word.Plain));

    public string? Batch(TextWord word) => batches.GetValueOrDefault(TextWord.Bare(word.Plain));

    /// <summary>A name written to the letter from here on, the longest that fits.</summary>
    public (string Code, int Length)? Name(ReadOnlySpan<TextWord> words)
    {
        (string Code, int Length)? best = null;
        foreach (var (code, _, name) in fields)
        {
            if (name.Length == 0 || name.Length > words.Length || (best is { } found && found.Length >= name.Length)) continue;
            var same = true;
            for (var i = 0; i < name.Length && same; i++) same = words[i].Plain == name[i];
            if (same) best = (code, name.Length);
        }

        return best;
    }

    /// <summary>
    /// Names that are nearest to what is written from here on: one where one is nearest, more where the message could mean
    /// either.
    /// </summary>
    public (ImmutableArray<string> Codes, int Length) NearName(ReadOnlySpan<TextWord> words)
    {
        var least = int.MaxValue;
        var codes = new List<string>();
        var length = 0;
        foreach (var (code, _, name) in fields)
        {
            if (name.Length == 0 || name.Length > words.Length) continue;
            var said = words[0].Plain;
            for (var i = 1; i < name.Length; i++) said += " " + words[i].Plain;
            var meant = string.Join(' ', name);
            var off = Nearest.Distance(said, meant);
            if (meant.Length < 6 || off > (meant.Length >= 8 ? 2 : 1) || off > least) continue; // short words are too near each other
            if (off < least) codes.Clear();
            codes.Add(code);
            (least, length) = (off, name.Length);
        }

        return ([.. codes], length);
    }

    /// <summary>Looks like a code of a field: letters and a number.</summary>
    public static bool IsLikeCode(string plain)
    {
        var bare = TextWord.Bare(plain);
        var letters = bare.TakeWhile(char.IsLetter).Count();
        return letters is >= 1 and <= 2 && bare.Length - letters is >= 1 and <= 2 && bare[letters..].All(char.IsAsciiDigit);
    }

    /// <summary>Letters, then a number, run together: <c>ck5</c>, <c>t5</c>; none where the word is not so.</summary>
    public static (string Letters, int Number)? Glued(string plain)
    {
        var letters = plain.TakeWhile(char.IsLetter).Count();
        if (letters is 0 || letters == plain.Length || plain.Length - letters > 4) return null;
        return int.TryParse(plain[letters..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? (plain[..letters], number) : null;
    }

    private static ImmutableArray<string> Words(string name) => [.. name.Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries).Select(TextWord.Fold).Where(w => w.Length > 0)];

    private static Dictionary<string, string> Codes(IEnumerable<string> codes)
    {
        var found = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var code in codes) found.TryAdd(TextWord.Bare(code), code);
        return found;
    }
}
