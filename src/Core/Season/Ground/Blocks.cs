using Watersown.Land;

namespace Watersown.Season.Ground;

/// <summary>
/// The parts of a farm. Nobody keeps a list of them: a farm that writes N1 to N8 means a block by the letters, and one that
/// does not means the fields on one source.
/// </summary>
public static class Blocks
{
    /// <summary>The block of a field: the letters of a code such as <c>N4</c>, else its first source, else none.</summary>
    public static string Of(Field field)
    {
        var letters = new string([.. field.Code.TakeWhile(char.IsLetter)]);
        var numbered = letters.Length > 0 && letters.Length < field.Code.Length && field.Code[letters.Length..].All(char.IsAsciiDigit);
        return numbered ? letters : field.Sources.FirstOrDefault() ?? string.Empty;
    }

    /// <summary>The blocks of rows in the order in which they first come.</summary>
    public static ImmutableArray<string> In(IEnumerable<LandRow> rows) => [.. rows.Select(r => r.Block).Distinct(StringComparer.Ordinal)];
}
