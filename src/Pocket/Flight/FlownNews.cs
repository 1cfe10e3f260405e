using Watersown.Flight.Flown;
using Watersown.Land;
using Watersown.Season;

namespace Watersown.Pocket.Flight;

/// <summary>What of a report is kept in the book.</summary>
internal static class FlownNews
{
    // As many as anybody walks to.
    private const int MostPlaces = 40;

    public static TrackLooked Of(string code, FlownReport report, ImmutableArray<ImmutableArray<GeoPoint>> sketch) => new(code, report.Question.Swath, report.Net)
    {
        Skip = report.Skip.Share,
        SkipError = report.Skip.Error,
        Overlap = report.Overlap.Share,
        OffField = report.OffField.Share,
        Passes = report.Passes.All.Length,
        Heading = report.Passes.Heading,
        Spacing = report.Passes.MeanSpacing,
        GateTold = report.Runs.Gate == GateKnown.Told,
        Places = [.. report.Cover.ThinPlaces.Concat(report.ThinPlaces).OrderByDescending(p => p.Area).Take(MostPlaces).Select(p => new BarePlace(report.Track.Plane.ToPlace(p.At), p.Area, p.Heading))],
        Lines = [.. sketch.Select(l => (FactList<GeoPoint>)[.. l])],
    };
}
