using System.Text;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>What every sheet of a plan has in common.</summary>
internal static class PageParts
{
    /// <summary>A sheet with its plan number and moment, its content still to be arranged.</summary>
    public static SheetPage Start(SeasonPlan plan, Telling tell, string key, string kind, string title) => new()
    {
        Key = key,
        Language = tell.Words == Words.Spanish ? Language.Spanish : Language.English,
        Kind = kind,
        Title = title,
        Lead = string.Empty,
        Corner =
        [
            Template.Fill(tell.Words.Common.Plan, ("farm", plan.State.Farm.Name), ("plan", Telling.Count(plan.Number))),
            Template.Fill(tell.Words.Common.Made, ("when", tell.Moment(plan.MadeAt))),
        ],
        Arrangements = [],
        Folio = tell.Words.Common.Folio,
        GoesOn = tell.Words.Common.GoesOn,
    };

    /// <summary>Words as a safe piece of a file name: small letters and digits of the English alphabet, hyphens between.</summary>
    public static string Slug(string words)
    {
        var slug = new StringBuilder();
        foreach (var c in words.Normalize(NormalizationForm.FormD))
        {
            if (char.IsAsciiLetterOrDigit(c)) slug.Append(char.ToLowerInvariant(c));
            else if (slug.Length > 0 && slug[^1] != '-' && !IsMark(c)) slug.Append('-');
        }

        var text = slug.ToString().Trim('-');
        return text.Length == 0 ? "x" : text[..Math.Min(text.Length, 40)].Trim('-');
    }

    /// <summary>Day as it stands in file names.</summary>
    public static string DaySlug(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static bool IsMark(char c) => System.Globalization.CharUnicodeInfo.GetUnicodeCategory(c) == System.Globalization.UnicodeCategory.NonSpacingMark;
}
