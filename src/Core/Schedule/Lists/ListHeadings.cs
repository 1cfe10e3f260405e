using System.Globalization;
using System.Text;
using Watersown.Wording;

namespace Watersown.Schedule.Lists;

/// <summary>What the headings of a list mean, in English or Spanish, spelt well or nearly.</summary>
internal static class ListHeadings
{
    private static readonly (ListColumn Meaning, string[] Words)[] known =
    [
        (ListColumn.Name, ["field", "name", "field name", "fields", "nombre", "lote", "campo", "parcela", "nombre del lote", "nombre del campo"]),
        (ListColumn.Code, ["code", "id", "short code", "field id", "field code", "no", "clave", "codigo", "numero"]),
        (ListColumn.Gross, ["gross", "gross ac", "gross acres", "brutos", "acres brutos", "gross ha"]),
        (ListColumn.Certified, ["certified", "certified ac", "certified acres", "insured acres", "certificados", "acres certificados"]),
        (ListColumn.Net, ["acres", "ac", "net", "net ac", "net acres", "acreage", "sown acres", "planted acres", "acre", "acres netos", "netos", "superficie", "area", "acres sembrados", "ha", "hectares", "hectareas", "net ha"]),
        (ListColumn.Checks, ["checks", "check", "ck", "cks", "no of checks", "number of checks", "basins", "bays", "melgas", "cuadros", "numero de melgas"]),
        (ListColumn.Rate, ["rate", "seed rate", "seeding rate", "lb ac", "lbs ac", "lb acre", "lbs acre", "lb ac dry", "lb per acre", "lbs per acre", "pounds per acre", "rate lb ac", "dosis", "tasa", "densidad", "libras por acre", "lb por acre", "kg ha", "kg por hectarea"]),
        (ListColumn.DryPounds, ["dry lb", "lb dry", "dry lbs", "dry pounds", "seed lb", "seed lbs", "total lb", "libras secas", "semilla lb"]),
        (ListColumn.Variety, ["variety", "var", "variedad"]),
        (ListColumn.Stage, ["stage", "state", "status", "prep state", "estado", "etapa"]),
    ];

    /// <summary>Headings that are understood, one for each meaning.</summary>
    public static string Examples { get; } = "Field, Code, Acres, Gross, Certified, Checks, Rate, Dry lb, Variety, Stage";

    /// <summary>How well a heading says each meaning: 0 to the letter, more the further off; far-off ones are left out.</summary>
    public static ImmutableArray<(ListColumn Meaning, int Off)> Meanings(string heading)
    {
        var words = Words(heading);
        if (words.IsEmpty) return [];
        var text = string.Join(' ', words);
        var found = ImmutableArray.CreateBuilder<(ListColumn, int)>();
        foreach (var (meaning, said) in known)
        {
            var off = said.Min(s => Off(text, words, s));
            if (off < int.MaxValue) found.Add((meaning, off));
        }

        return found.ToImmutable();
    }

    /// <summary>Words of a heading in small plain letters, marks and signs left out.</summary>
    public static ImmutableArray<string> Words(string heading)
    {
        var text = new StringBuilder();
        foreach (var rune in string.Concat(heading.Take(200)).EnumerateRunes())
        {
            foreach (var part in rune.ToString().Normalize(NormalizationForm.FormD).EnumerateRunes())
            {
                if (Rune.GetUnicodeCategory(part) == UnicodeCategory.NonSpacingMark) continue;
                text.Append(Rune.IsLetterOrDigit(part) ? Rune.ToLowerInvariant(part).ToString() : " ");
            }
        }

        return [.. text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries)];
    }

    private static int Off(string text, ImmutableArray<string> words, string said)
    {
        if (text == said) return 0;
        var distance = Nearest.Distance(text, said);
        if (distance <= Allowed(said)) return 10 * distance;
        // "Net acres 2026" still says net acres; the more of the heading is left over, the less sure.
        var wanted = said.Split(' ');
        if (said.Length < 4 || !wanted.All(w => words.Any(h => Nearest.Distance(h, w) <= Allowed(w)))) return int.MaxValue;
        return 100 + (10 * (words.Length - wanted.Length)) - wanted.Length;
    }

    /// <summary>One wrong letter in a short word, more in a long one; none in two or three letters, where it would be another word.</summary>
    private static int Allowed(string word) => word.Length < 4 ? 0 : Math.Max(1, word.Length / 4);
}
