using Watersown.Flight.Cover;
using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>What was skipped, flown once and flown twice by the outlines of the swaths themselves, without cells.</summary>
public static class ExactAreas
{
    /// <summary>More places than this take too long.</summary>
    [PlainNumber("places of runs")]
    public const int MostPlaces = 100_000;

    public static ProblemKind TooMany { get; } = new("FLOWN-005", ProblemWeight.Refuse,
        "exact areas are worked out for {limit} places of runs at most, and there are {value}. Leave --exact out: the areas by cells have their error beside them.",
        "las superficies exactas se calculan con {limit} lugares de tramos a lo más, y hay {value}. Quite --exact: las superficies por celdas llevan su error al lado.");

    /// <summary>The areas of a report.</summary>
    /// <param name="report">What was flown.</param>
    /// <param name="file">Name of the track, for problems.</param>
    [Source(nameof(Sources.Definition), "union and common ground of the swaths' outlines")]
    public static Outcome<LayerAreas> Of(FlownReport report, string file)
    {
        var places = report.Landed.Sum(r => r.Line.Length);
        if (places > MostPlaces) return Outcome<LayerAreas>.Refuse(TooMany.At(file, ("limit", Wording.Say.Number(MostPlaces)), ("value", Wording.Say.Number(places))));
        var question = report.Question;
        return Outcome<LayerAreas>.Of(LayerAreas.Of(report.Track.Plane.ToPlane(question.Field), SwathOutlines.Of([.. report.Landed.Select(r => r.Line)], question.Swath, question.Right)));
    }
}
