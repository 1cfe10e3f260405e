using System.Text;
using Watersown.Flight.Flown;
using Watersown.Records.Flight;
using Watersown.Shapes;
using Watersown.Wording;

namespace Watersown.Cli;

/// <summary>What was flown, as text for somebody at the keyboard.</summary>
internal static class FlownText
{
    private const int MostPlaces = 12;

    public static string Of(VerifiedTrack verified, (FlownMatches Matches, LayerAreas? Exact) beside, FlownTelling telling, FlownWords words)
    {
        var (report, told) = (verified.Report, verified.Told);
        var text = new StringBuilder();
        text.Append(TextTable.Write([words.Title, ">", ""], telling.Figures(report).Select(f =>
            (ImmutableArray<string>)[f.What, f.Value, f.Error.Length == 0 ? string.Empty : Template.Fill(words.GiveOrTake, ("error", f.Error))])));
        if (beside.Exact is { } exact) Part(text, words.ExactTitle, [telling.Exact(exact)]);
        var places = report.Cover.ThinPlaces;
        Part(text, words.ThinTitle, places.IsEmpty ? [words.ThinNone] : [.. places.Take(MostPlaces).Select(p => telling.Place(report, p)), .. More(places.Length - MostPlaces, words)]);
        var thin = report.ThinPlaces;
        Part(text, words.LaidPlaces, thin.IsEmpty ? [words.LaidNone] : [.. thin.Take(MostPlaces).Select((p, i) => telling.Thin(report, p, FlownTelling.Letter(i))), .. More(thin.Length - MostPlaces, words)]);
        Part(text, words.MatchTitle, [.. telling.Matches(beside.Matches).Select(l => l.What + ": " + l.One + " | " + l.Other + (l.Verdict.Length > 0 ? "; " + l.Verdict : string.Empty))]);
        Part(text, words.DroppedTitle, [.. told.Dropped.Concat(report.Track.Dropped).Select(telling.Drop), .. report.Track.Far.Take(5).Select(telling.FarAway)]);
        Part(text, words.ColumnsTitle, [.. told.Columns.Select(c => c.Column.ToString() + ": " + c.Heading)]);
        Part(text, words.KnowTitle, [.. report.Cautions.Select(c => telling.Caution(report, c))]);
        return text.Append('\n').Append(words.WorkingTitle).Append('\n').Append(Say.Working(report.Working)).ToString().TrimEnd();
    }

    private static ImmutableArray<string> More(int more, FlownWords words) => more > 0 ? [Template.Fill(words.ThinMore, ("n", Say.Number(more)))] : [];

    private static void Part(StringBuilder text, string title, ImmutableArray<string> lines)
    {
        if (lines.IsEmpty) return;
        text.Append('\n').Append(title).Append('\n');
        foreach (var line in lines) text.Append("  - ").Append(line).Append('\n');
    }
}
