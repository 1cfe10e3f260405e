using Watersown.Flight;
using Watersown.Flight.Patterns;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Says what a pattern test found, in the reader's units: swaths to the tenth of a meter or half foot below what was found.</summary>
public static class PatternSaid
{
    /// <summary>A swath, rounded down: a wider one would pass the limit.</summary>
    public static string Swath(Length swath, Telling tell) => tell.Metric
        ? Say.Number(Math.Floor((swath.Meters * 10) + 1e-6) / 10, 1) + " m"
        : Say.Number(Math.Floor((swath.Feet * 2) + 1e-6) / 2, 1) + " " + tell.Words.Common.Feet;

    /// <summary>A small distance, to the tenth.</summary>
    public static string Off(Length length, Telling tell) => tell.Metric ? Say.Number(length.Meters, 1) + " m" : Say.Number(length.Feet, 1) + " " + tell.Words.Common.Feet;

    public static string Mode(FlyingMode mode, PatternWords words) => mode == FlyingMode.OneWay ? words.OneWay : words.BackForth;

    /// <summary>Where a place lies beside the line.</summary>
    public static string Side(Length right, Telling tell)
    {
        var words = tell.Words.Pattern;
        return Math.Abs(right.Meters) < 0.05 ? words.MiddleOn : Template.Fill(right > Length.Zero ? words.MiddleRight : words.MiddleLeft, ("far", Off(Length.FromMeters(Math.Abs(right.Meters)), tell)));
    }

    /// <summary>The correction of the lines in one sentence.</summary>
    public static string Move(TrayAnswer answer, Telling tell)
    {
        var words = tell.Words.Pattern;
        return answer.Offset is not { } offset
            ? words.NoMove
            : Template.Fill(offset.ToLeft > Length.Zero ? words.MoveLeft : words.MoveRight,
                ("far", Off(Length.FromMeters(Math.Abs(offset.ToLeft.Meters)), tell)), ("swath", Swath(offset.Swath, tell)), ("before", Say.Number(offset.Before.Percent)), ("after", Say.Number(offset.After.Percent)));
    }

    /// <summary>What stands behind a swath.</summary>
    public static string Behind(ModeAnswer mode, Telling tell)
    {
        var words = tell.Words.Pattern;
        if (mode.Widest is not { } exact) return words.None;
        var said = new List<string>();
        if (mode.CvAtSteady is { } cv) said.Add(Template.Fill(words.AtSteady, ("cv", Say.Number(cv.Percent))));
        said.Add(words.Exact + " " + Swath(exact, tell));
        said.Add(mode.OfPasses is { } passes ? Template.Fill(words.OfPasses, ("least", Swath(passes.Least, tell)), ("most", Swath(passes.Most, tell))) : words.OnePass);
        return string.Join("; ", said);
    }
}
