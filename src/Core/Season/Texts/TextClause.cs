using System.Globalization;
using Watersown.Wording;

namespace Watersown.Season.Texts;

/// <summary>One sentence of a message taken apart: what it is about, its figures, and what it says.</summary>
internal sealed class TextClause
{
    private readonly ImmutableArray<TextWord> words;
    private readonly TextSubjects subjects;
    private readonly Dictionary<TextKey, int> keys = [];
    private readonly List<(double Value, TextKey Unit)> figures = [];

    private bool named; // a field stands in it to the letter, so that no other word is one written badly

    private TextClause(ImmutableArray<TextWord> words, TextSubjects subjects) => (this.words, this.subjects) = (words, subjects);

    public List<string> Fields { get; } = [];

    /// <summary>Names that the message could mean, none nearer than the other.</summary>
    public List<(string Word, ImmutableArray<string> Codes)> Unsure { get; } = [];

    public List<string> Strange { get; } = [];

    public List<string> Lost { get; } = [];

    public int? Check { get; private set; }

    public (int From, int To)? Range { get; private set; }

    public int? Box { get; private set; }

    public string? Source { get; private set; }

    public string? Batch { get; private set; }

    public string? Trailer { get; private set; }

    public int? LoadNumber { get; private set; }

    public int? Loads { get; private set; }

    public double? WindSpeed { get; private set; }

    public double? GustSpeed { get; private set; }

    public double? Leaves { get; private set; }

    public double? WindFrom { get; private set; }

    public (int Day, int Month)? Date { get; private set; }

    /// <summary>A number that stands for itself.</summary>
    public List<double> Bare { get; } = [];

    public int English { get; private set; }

    public int Spanish { get; private set; }

    public bool Has(TextKey key) => keys.ContainsKey(key);

    public int Value(TextKey key) => keys[key];

    public double? Figure(params ReadOnlySpan<TextKey> units)
    {
        foreach (var (value, unit) in figures)
        {
            if (units.Contains(unit)) return value;
        }

        return null;
    }

    public static TextClause Of(ImmutableArray<TextWord> words, TextSubjects subjects)
    {
        var clause = new TextClause(words, subjects);
        clause.named = words.Any(w => subjects.Field(w) is not null) || Enumerable.Range(0, words.Length).Any(i => subjects.Name(words.AsSpan()[i..]) is not null);
        for (var i = 0; i < words.Length;) i += clause.Take(i);
        return clause;
    }

    /// <summary>Takes what stands at a place and says how many words that was.</summary>
    private int Take(int i)
    {
        if (subjects.Name(words.AsSpan()[i..]) is { } name)
        {
            Fields.Add(name.Code);
            return name.Length;
        }

        var word = words[i];
        if (word.Number is { } number) return TakeNumber(i, number);
        if (word.Range is { } range)
        {
            Range = range;
            return 1;
        }

        if (TakeCode(i) is > 0 and var codes) return codes;
        if (Phrase(i) is { } phrase) return TakePhrase(i, phrase);
        if (Has(TextKey.Wind) && Direction(word.Plain) is { } from)
        {
            WindFrom = from;
            return 1;
        }

        return TakeNear(i);
    }

    private static double? Direction(string letters) => letters switch
    {
        "n" => 0,
        "ne" => 45,
        "e" => 90,
        "se" => 135,
        "s" => 180,
        "sw" or "so" => 225,
        "w" or "o" => 270,
        "nw" or "no" => 315,
        _ => null,
    };

    private int TakeCode(int i)
    {
        var word = words[i];
        if (subjects.Field(word) is { } field) Fields.Add(field);
        else if (subjects.Source(word) is { } source) Source = source;
        else if (subjects.Batch(word) is { } batch) Batch = batch;
        else if (!Has(TextKey.Wind) && i + 1 < words.Length && words[i + 1].Number is not null && subjects.Field(new TextWord(word.Raw, word.Plain + words[i + 1].Plain)) is { } apart)
        {
            Fields.Add(apart);
            return 2;
        }
        else return TakeGlued(word);
        return 1;
    }

    /// <summary>A word and its number run together, or a field and its check.</summary>
    private int TakeGlued(TextWord word)
    {
        if (TextSubjects.Glued(word.Plain) is { } glued)
        {
            switch (Of(glued.Letters))
            {
                case TextKey.Check: Check = glued.Number; return 1;
                case TextKey.Box: Box = glued.Number; return 1;
                case TextKey.Gust: GustSpeed = glued.Number; return 1;
                case TextKey.Trailer: Trailer = glued.Number.ToString(CultureInfo.InvariantCulture); return 1;
                default: return 0;
            }
        }

        // n4ck5
        var cut = word.Plain.LastIndexOf('c');
        if (cut > 0 && subjects.Field(new TextWord(word.Raw, word.Plain[..cut])) is { } field && TextSubjects.Glued(word.Plain[cut..]) is { Letters: "c" or "ck", Number: var check })
        {
            Fields.Add(field);
            Check = check;
            return 1;
        }

        return 0;
    }

    private static TextKey? Of(string letters) => letters switch
    {
        "c" or "ck" or "chk" or "check" or "cuadro" or "melga" or "m" => TextKey.Check,
        "box" or "caja" => TextKey.Box,
        "t" or "tr" or "trailer" or "remolque" => TextKey.Trailer,
        "g" => TextKey.Gust,
        _ => null,
    };

    private TextPhrase? Phrase(int i) => TextVocabulary.At([.. words.Skip(i).Take(4).Select(w => w.Plain)]);

    private int TakeNumber(int i, double number)
    {
        var unit = i + 1 < words.Length ? Phrase(i + 1) : null;
        switch (unit?.Key)
        {
            case TextKey.Inch or TextKey.Centimeter or TextKey.CubicFeet or TextKey.Gallons or TextKey.PoundDry or TextKey.PoundWet or TextKey.Pound or TextKey.Acre or TextKey.Mile or TextKey.Degree:
                figures.Add((number, unit.Key));
                Tell(unit);
                return 1 + unit.Words.Length;
            case TextKey.Loads when IsCount(number):
                Loads = (int)number;
                Tell(unit);
                return 2;
            case TextKey.Month when number is >= 1 and <= 31 && IsCount(number):
                Date = ((int)number, unit.Value);
                return 2;
            default:
                Bare.Add(number);
                return 1;
        }
    }

    private int TakePhrase(int i, TextPhrase phrase)
    {
        Tell(phrase);
        var used = phrase.Words.Length;
        var next = i + used < words.Length ? words[i + used] : null;
        switch (phrase.Key)
        {
            case TextKey.Check when next?.Number is { } n && IsCount(n): Check = (int)n; return used + 1;
            case TextKey.Box when next?.Number is { } n && IsCount(n): Box = (int)n; break;
            case TextKey.Load when next?.Number is { } n && IsCount(n): LoadNumber = (int)n; break;
            case TextKey.Wind when next?.Number is { } n: WindSpeed = n; break;
            case TextKey.Gust when next?.Number is { } n: GustSpeed = n; break;
            case TextKey.Leaf when next?.Number is { } n: Leaves = n; break;
            case TextKey.Trailer when IsName(next): Trailer = next!.Plain.ToUpperInvariant(); break;
            case TextKey.Batch when next is not null && (subjects.Batch(next) is not null || IsBatch(next.Plain)): Batch = subjects.Batch(next) ?? next.Plain.ToUpperInvariant(); break;
            case TextKey.Compass: WindFrom = phrase.Value; goto default;
            default: keys.TryAdd(phrase.Key, phrase.Value); return used;
        }

        keys.TryAdd(phrase.Key, phrase.Value);
        return used + 1;
    }

    /// <summary>A name or a word written nearly, or one that means nothing.</summary>
    private int TakeNear(int i)
    {
        var word = words[i];
        var (codes, length) = named ? ([], 0) : subjects.NearName(words.AsSpan()[i..]);
        if (codes.Length == 1)
        {
            Fields.Add(codes[0]);
            return length;
        }

        if (codes.Length > 1)
        {
            Unsure.Add((string.Join(' ', words.Skip(i).Take(length).Select(w => w.Raw.Trim(',', '.', ':'))), codes));
            return length;
        }

        if (TextVocabulary.Near(word.Plain) is { } near) return TakePhrase(i, near);
        if (TextSubjects.IsLikeCode(word.Plain)) Strange.Add(word.Raw.Trim(',', '.', ':'));
        else if (word.Plain.Any(char.IsLetterOrDigit)) Lost.Add(word.Raw.Trim(',', '.', ':'));
        return 1;
    }

    private void Tell(TextPhrase phrase)
    {
        if (phrase.Language == Language.English) English++;
        if (phrase.Language == Language.Spanish) Spanish++;
    }

    /// <summary>The one word of the sentence that could be the code of a batch nobody has told of yet.</summary>
    public string? NewBatch()
    {
        ImmutableArray<string> like = [.. Strange.Concat(Lost).Where(w => IsBatch(TextWord.Fold(w)))];
        if (like.Length != 1) return null;
        Strange.Remove(like[0]);
        Lost.Remove(like[0]);
        return TextWord.Fold(like[0]).ToUpperInvariant();
    }

    /// <summary>A letter first, a figure in it, and nothing else that a word with a figure could be.</summary>
    private bool IsBatch(string plain) =>
        plain.Length is >= 2 and <= 10 && char.IsAsciiLetter(plain[0]) && plain.Any(char.IsAsciiDigit) && plain.All(c => char.IsAsciiLetterOrDigit(c) || c == '-')
        && (TextSubjects.Glued(plain) is not { } glued || Of(glued.Letters) is null) && subjects.Field(new TextWord(plain, plain)) is null && subjects.Source(new TextWord(plain, plain)) is null;

    /// <summary>Trailers have a figure in their names; a plain word behind theirs is the next thing said.</summary>
    private static bool IsName(TextWord? word) => word is { Plain.Length: <= 12 } && word.Plain.Any(char.IsAsciiDigit) && word.Plain.All(c => char.IsAsciiLetterOrDigit(c) || c == '-');

    private static bool IsCount(double number) => number == Math.Floor(number) && number is >= 0 and <= 9999;
}
