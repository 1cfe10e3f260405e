using Watersown.Flight.Cover;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Flight.Flown;

/// <summary>One figure in words: what it is, how much, and how far it can be off where that is known.</summary>
public sealed record FlownFigure(string What, string Value, string Error = "");

/// <summary>Tells what was flown in the reader's language and units.</summary>
/// <param name="words">The language.</param>
/// <param name="metric">Hectares and meters; else acres and feet.</param>
public sealed class FlownTelling(Words words, bool metric)
{
    private FlownWords W => words.Flown;

    /// <summary>The figures of a report, the weightiest first.</summary>
    public ImmutableArray<FlownFigure> Figures(FlownReport report) => [.. All(report)];

    /// <summary>Where to walk.</summary>
    public string Place(FlownReport report, ThinPlace place) => Template.Fill(W.ThinSaid,
        ("rank", Say.Number(place.Rank)), ("land", Land(place.Area)), ("place", PlaceWords.Of(report.Track.Plane.ToPlace(place.At))),
        ("long", Far(place.Long)), ("run", Axis(place.Heading)), ("wide", Far(place.Wide)),
        ("pass", place.NearestRuns.IsEmpty ? "-" : Say.Number(PassOf(report, place.NearestRuns[0]))));

    /// <summary>How many were dropped, why, and where the first is.</summary>
    public string Drop(Dropped dropped) => Template.Fill(W.DroppedSaid, ("n", Say.Number(dropped.Count)), ("first", Say.Number(dropped.First)), ("why", dropped.Reason switch
    {
        DropReason.BadChecksum => W.BadChecksum,
        DropReason.NoPosition => W.NoPosition,
        DropReason.Unreadable => W.Unreadable,
        DropReason.OffTheEarth => W.OffTheEarth,
        DropReason.NoTime => W.NoTime,
        DropReason.SameTime => W.SameTime,
        DropReason.TimeBack => W.TimeBack,
        _ => W.Jump,
    }));

    public string FarAway(FarPlace far) => Template.Fill(W.FarSaid, ("n", Say.Number(far.Count)), ("place", PlaceWords.Of(far.Around)));

    /// <summary>What to know, as sentences.</summary>
    public string Caution(FlownReport report, FlownCaution caution) => caution switch
    {
        FlownCaution.Always => W.CautionAlways,
        FlownCaution.SwathAsTold => W.CautionSwath,
        FlownCaution.GateWorkedOut => W.CautionWorkedOut,
        FlownCaution.DrawnApart => W.CautionDrawnApart,
        FlownCaution.SignalStuck => W.CautionStuck,
        FlownCaution.NoTime => W.CautionNoTime,
        FlownCaution.UnknownGround => Template.Fill(W.CautionUnknown, ("n", Say.Number(report.Runs.Unknown.Length)), ("length", Far(report.Runs.UnknownLength))),
        _ => Template.Fill(W.CautionOther, ("n", Say.Number(report.Runs.Elsewhere.Length)), ("place", PlaceWords.Of(report.Track.Plane.ToPlace(report.Runs.Elsewhere[0].Line[0])))),
    };

    /// <summary><c>077.9°</c>, there and back.</summary>
    public static string Axis(Bearing heading) => Say.Number(heading.Degrees % 180, 1) + "°";

    public string Land(Area area) => metric ? Say.Number(area.Hectares, 2) + " " + words.Common.Hectares : Say.Number(area.Acres, 2) + " " + words.Common.Acres;

    public string Far(Length length) => metric ? Say.Number(length.Meters, 1) + " m" : Say.Number(length.Feet, 1) + " " + words.Common.Feet;

    private static int PassOf(FlownReport report, int run)
    {
        var line = report.Runs.Runs[run].Line;
        return report.Passes.All.FirstOrDefault(p => p.Stretches.Any(s => s.Line[0] == line[0] || s.Line[^1] == line[^1]))?.Number ?? run + 1;
    }

    private IEnumerable<FlownFigure> All(FlownReport report)
    {
        yield return new(W.NetLand, Land(report.Net));
        yield return new(W.FlownLand, Land(report.Flown), Land(report.Net * report.Skip.Error.Share));
        yield return new(W.Skipped, Percent(report.Skip.Share) + ", " + Land(report.Net * report.Skip.Share.Share), Percent(report.Skip.Error));
        yield return new(W.Overlapped, Percent(report.Overlap.Share) + ", " + Land(report.Net * report.Overlap.Share.Share), Percent(report.Overlap.Error));
        yield return new(W.OffField, Percent(report.OffField.Share), Percent(report.OffField.Error));
        yield return new(W.PassCount, Say.Number(report.Passes.All.Length));
        if (report.Passes.Heading is { } heading) yield return new(W.Heading, Axis(heading));
        if (report.Passes.MeanSpacing is { } spacing) yield return new(W.Spacing, Far(spacing));
        if (report.Passes.SpacingError(report.Question.Swath) is { } off) yield return new(W.SpacingOff, Far(off));
        if (report.LineErrors is { } lines) yield return new(W.LineOff, Template.Fill(W.LineOffSaid, ("mean", Far(lines.Mean)), ("rms", Far(lines.RootMeanSquare)), ("most", Far(lines.Of95))));
        if (report.Runs.EndError is { } end) yield return new(W.EndsOff, Far(end));
        if (report.Question.Rate is { } rate)
        {
            var seed = rate * (report.Net - report.Flown);
            yield return new(W.SeedMissing, metric ? Say.Number(seed.Kilograms) + " kg " + words.Common.Dry : Say.Number(seed.Pounds) + " lb " + words.Common.Dry);
        }
    }

    private static string Percent(Fraction share) => Say.Number(share.Percent, 2) + " %";
}
