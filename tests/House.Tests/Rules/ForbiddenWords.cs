using System.Text.RegularExpressions;

namespace Watersown.HouseRules;

/// <summary>Words that must not stand in the tree: unfinished work, places of one machine, and leave that is not ours to give.</summary>
internal static class ForbiddenWords
{
    // Put together here so that this file does not report itself.
    private static readonly string[] Anywhere =
        ["TO" + "DO", "FIX" + "ME", "NotImplemented" + "Exception", "/wo" + "rk/", "/ho" + "me/", "/ro" + "ot/", "/Us" + "ers/", "C:" + "\\", "file:" + "///"];

    /// <summary>What the desk never says to anybody: the pilot, the label and the county decide.</summary>
    private static readonly string[] ToPeople =
        ["safe to fly", "approved", "clear of hazards", "may release", "can release", "legal to", "is legal", "seguro para volar", "aprobado", "puede soltar"];

    /// <summary>What no word of flying, of a map or of a hazard says at all, in whatever sense: somebody in a hurry reads one word.</summary>
    private static readonly Regex leave = new(@"\b(clear|safe|safely|approved?|permitted|seguro|segura|seguros|seguras|despejad[oa]s?|aprobad[oa]s?|autorizad[oa]s?|permitid[oa]s?)\b",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, TimeSpan.FromSeconds(5));

    public static IEnumerable<string> OfFlying(IEnumerable<TextFile> files) => files.SelectMany(f => Literals.Of(f.Text)
        .SelectMany(l => leave.Matches(l.Text).Select(m => f.Path + ":" + l.Line + " says '" + m.Value + "' of flying")));

    public static IEnumerable<string> InTree(IEnumerable<TextFile> files) => files.SelectMany(f => f.Lines
        .SelectMany((line, i) => Anywhere.Where(w => line.Contains(w, StringComparison.Ordinal)).Select(w => f.Path + ":" + (i + 1) + " says " + w)));

    /// <summary>Literals of the product's code, and whole pages for growers.</summary>
    public static IEnumerable<string> SaidToPeople(IEnumerable<TextFile> files) => files.SelectMany(f =>
        (f.Path.EndsWith(".cs", StringComparison.Ordinal) ? Literals.Of(f.Text) : f.Lines.Select((l, i) => (Line: i + 1, Text: l)))
        .SelectMany(l => ToPeople.Where(w => l.Text.Contains(w, StringComparison.OrdinalIgnoreCase)).Select(w => f.Path + ":" + l.Line + " says '" + w + "' to people")));
}
