using Watersown.Land;
using Watersown.Pocket.Page;
using Watersown.Season.Ground;
using Watersown.Wording;

namespace Watersown.Pocket.Land;

/// <summary>What the land page says of a field, piece by piece.</summary>
internal static class LandFacts
{
    public static string Address(Field field) => "field/" + Uri.EscapeDataString(field.Code);

    /// <summary>Checks wet of all checks; nothing where the field is not filling.</summary>
    public static string? Wet(LandRow row, LandScreenWords words) => row.Wet switch
    {
        null => null,
        { } wet when row.Field.Basins.IsEmpty => Say.Number(wet),
        { } wet => Template.Fill(words.WetOf, ("wet", Say.Number(wet)), ("all", Say.Number(row.Field.Basins.Length))),
    };

    /// <summary>Depth, from the shallowest to the deepest check that was read.</summary>
    public static string? Depth(LandRow row, Desk desk) => row.Depth switch
    {
        null => null,
        { } span when span.Least == span.Most => desk.Telling.Depth(span.Most),
        { } span => Template.Fill(desk.Words.LandScreen.DepthSpan, ("least", desk.Telling.Depth(span.Least)), ("most", desk.Telling.Depth(span.Most))),
    };

    /// <summary>How old the newest reading is.</summary>
    public static string? DepthAge(LandRow row, Desk desk) =>
        row.Depth is not { } span ? null : span.At is { } at ? Ages.Old(at, desk.Now, desk.Words) : desk.Words.LandScreen.DepthFarm;

    public static string Rate(LandRow row, Desk desk) =>
        Template.Fill(desk.Words.LandScreen.RateLine, ("rate", desk.Telling.Rate(row.Season.Rate)), ("unit", desk.Telling.RateUnit));

    /// <summary>The field in one line, for somebody who has tapped it.</summary>
    public static string Line(LandRow row, Desk desk)
    {
        var words = desk.Words.LandScreen;
        string?[] parts =
        [
            Wet(row, words) is { } wet ? words.Wet + " " + wet : null,
            Depth(row, desk) is { } depth ? depth + ", " + DepthAge(row, desk) : null,
            Template.Fill(words.NetLine, ("land", desk.Telling.Land(row.Field.Net))),
            Rate(row, desk),
            row.Season.Variety,
        ];
        return string.Join(" · ", parts.OfType<string>());
    }
}
