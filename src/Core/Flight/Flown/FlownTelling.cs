using Watersown.Flight.Cover;
using Watersown.Land;
using Watersown.Shapes;
using Watersown.Wording;

namespace Watersown.Flight.Flown;

/// <summary>One figure in words: what it is, how much, and how far it can be off where that is known.</summary>
public sealed record FlownFigure(string What, string Value, string Error = "");

/// <summary>Two sources held against each other, in words.</summary>
/// <param name="What">What is held against what.</param>
/// <param name="One">The one.</param>
/// <param name="Other">The other.</param>
/// <param name="Verdict">Whether they agree, and within what.</param>
/// <param name="Agree">They do.</param>
public sealed record MatchLine(string What, string One, string Other, string Verdict, bool Agree);

/// <summary>Tells what was flown in the reader's language and units.</summary>
/// <param name="words">The language.</param>
/// <param name="metric">Hectares and meters; else acres and feet.</param>
public sealed class FlownTelling(Words words, bool metric)
{
    private FlownWords W => words.Flown;

    /// <summary>The figures of a report, the weightiest first.</summary>
    public ImmutableArray<FlownFigure> Figures(FlownReport report) => [.. Shares(report), .. Rest(report, brief: false)];

    /// <summary>All but how much was flown, skipped and flown twice.</summary>
    /// <param name="report">What was flown.</param>
    /// <param name="brief">Only what decides, for a page that is full.</param>
    public ImmutableArray<FlownFigure> Others(FlownReport report, bool brief) => [.. Rest(report, brief)];

    /// <summary>Where to walk.</summary>
    public string Place(FlownReport report, ThinPlace place) => Template.Fill(W.ThinSaid,
        ("rank", Say.Number(place.Rank)), ("land", Land(place.Area)), ("place", PlaceWords.Of(report.Track.Plane.ToPlace(place.At))),
        ("long", Far(place.Long)), ("run", Axis(place.Heading)), ("wide", Far(place.Wide)),
        ("pass", place.NearestRuns.IsEmpty ? "-" : Say.Number(PassOf(report, place.NearestRuns[0]))));

    /// <summary>Where seed lies thin though it was flown over.</summary>
    public string Thin(FlownReport report, ThinPlace place, string mark) => Template.Fill(W.LaidPlace,
        ("mark", mark), ("land", Land(place.Area)), ("place", PlaceWords.Of(report.Track.Plane.ToPlace(place.At))), ("long", Far(place.Long)), ("run", Axis(place.Heading)), ("wide", Far(place.Wide)));

    /// <summary>Track, scale and invoice against each other; empty where there is nothing to hold the track against.</summary>
    public ImmutableArray<MatchLine> Matches(FlownMatches matches)
    {
        var lines = ImmutableArray.CreateBuilder<MatchLine>();
        if (matches.Billed is { } billed) lines.Add(Match(W.MatchBilled, billed));
        if (matches.Missing is { } missing) lines.Add(Match(W.MatchMissing, missing));
        if (matches.Seed is { } seed) lines.Add(new MatchLine(W.MatchSeed, Weight(seed.Told), Weight(seed.Found), Verdict(seed.Agree, Weight(seed.Error)), seed.Agree));
        if (matches is { Dry: { } dry, Soaked: { } wet }) lines.Add(new MatchLine(W.RateFlown, Rate(dry), Rate(wet), string.Empty, Agree: true));
        return lines.ToImmutable();
    }

    /// <summary>Areas by the outlines themselves.</summary>
    public string Exact(LayerAreas areas) => Template.Fill(W.ExactSaid, ("none", Land(areas.None)), ("once", Land(areas.Once)), ("more", Land(areas.More)));

    /// <summary>A rate of soaked seed.</summary>
    public string Rate(SoakedRate rate) => (metric ? Say.Number(rate.KilogramsPerHectare, 1) + " kg/ha " : Say.Number(rate.PoundsPerAcre, 1) + " lb/ac ") + words.Common.Wet;

    /// <summary>A rate of dry seed.</summary>
    public string Rate(SeedRate rate) => (metric ? Say.Number(rate.KilogramsPerHectare, 1) + " kg/ha " : Say.Number(rate.PoundsPerAcre, 1) + " lb/ac ") + words.Common.Dry;

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
        FlownCaution.PatternTested => W.CautionTested,
        FlownCaution.PatternSupposed => W.CautionSupposed,
        FlownCaution.GateWorkedOut => W.CautionWorkedOut,
        FlownCaution.DrawnApart => W.CautionDrawnApart,
        FlownCaution.SignalStuck => W.CautionStuck,
        FlownCaution.NoTime => W.CautionNoTime,
        FlownCaution.UnknownGround when report.Runs.Unknown.Length == 1 => Template.Fill(W.CautionUnknownOne, ("length", Far(report.Runs.UnknownLength))),
        FlownCaution.UnknownGround => Template.Fill(W.CautionUnknown, ("n", Say.Number(report.Runs.Unknown.Length)), ("length", Far(report.Runs.UnknownLength))),
        _ when report.Runs.Elsewhere.Length == 1 => Template.Fill(W.CautionOtherOne, ("place", PlaceWords.Of(report.Track.Plane.ToPlace(report.Runs.Elsewhere[0].Line[0])))),
        _ => Template.Fill(W.CautionOther, ("n", Say.Number(report.Runs.Elsewhere.Length)), ("place", PlaceWords.Of(report.Track.Plane.ToPlace(report.Runs.Elsewhere[0].Line[0])))),
    };

    /// <summary><c>A</c>, <c>B</c> … <c>AA</c>: marks thin places, as numbers mark bare ones.</summary>
    public static string Letter(int place) => place < 26 ? ((char)('A' + place)).ToString() : ((char)('A' + (((place / 26) - 1) % 26))).ToString() + (char)('A' + (place % 26));

    /// <summary><c>077.9°</c>, there and back.</summary>
    public static string Axis(Bearing heading) => Say.Number(Math.Round(heading.Degrees % 180, 1) % 180, 1) + "°";

    public string Land(Area area) => metric ? Say.Number(area.Hectares, 2) + " " + words.Common.Hectares : Say.Number(area.Acres, 2) + " " + words.Common.Acres;

    public string Far(Length length) => metric ? Say.Number(length.Meters, 1) + " m" : Say.Number(length.Feet, 1) + " " + words.Common.Feet;

    private static int PassOf(FlownReport report, int run)
    {
        var line = report.Runs.Runs[run].Line;
        return report.Passes.All.FirstOrDefault(p => p.Stretches.Any(s => s.Line[0] == line[0] || s.Line[^1] == line[^1]))?.Number ?? run + 1;
    }

    private IEnumerable<FlownFigure> Shares(FlownReport report)
    {
        yield return new(W.NetLand, Land(report.Net));
        yield return new(W.FlownLand, Land(report.Flown), Land(report.Net * report.Skip.Error.Share));
        yield return new(W.Skipped, Percent(report.Skip.Share) + ", " + Land(report.Net * report.Skip.Share.Share), Percent(report.Skip.Error));
        yield return new(W.Overlapped, Percent(report.Overlap.Share) + ", " + Land(report.Net * report.Overlap.Share.Share), Percent(report.Overlap.Error));
    }

    private IEnumerable<FlownFigure> Rest(FlownReport report, bool brief)
    {
        yield return new(W.OffField, Percent(report.OffField.Share), Percent(report.OffField.Error));
        if (!brief) yield return new(W.PassCount, Say.Number(report.Passes.All.Length));
        if (!brief && report.Passes.Heading is { } heading) yield return new(W.Heading, Axis(heading));
        if (report.Passes.MeanSpacing is { } spacing) yield return new(W.Spacing, Far(spacing));
        if (!brief && report.Passes.SpacingError(report.Question.Swath) is { } off) yield return new(W.SpacingOff, Far(off));
        if (report.Question.Right.Feet is var right && Math.Abs(right) >= 0.05) yield return new(right > 0 ? W.SwathRight : W.SwathLeft, Far(Length.FromFeet(Math.Abs(right))));
        if (report.LineErrors is { } lines) yield return new(W.LineOff, Template.Fill(W.LineOffSaid, ("mean", Far(lines.Mean)), ("rms", Far(lines.RootMeanSquare)), ("most", Far(lines.Of95))));
        if (report.Runs.EndError is { } end) yield return new(W.EndsOff, Far(end));
        if (!brief && report.Question.Rate is { } rate)
        {
            var seed = rate * (report.Net - report.Flown);
            yield return new(W.SeedMissing, metric ? Say.Number(seed.Kilograms) + " kg " + words.Common.Dry : Say.Number(seed.Pounds) + " lb " + words.Common.Dry);
        }

        foreach (var figure in Laid(report).Where(f => !brief || f.What != W.LaidNear)) yield return figure;
    }

    private IEnumerable<FlownFigure> Laid(FlownReport report)
    {
        var (deposit, asked) = (report.Deposit, report.Question);
        if (asked.Rate is { } rate)
        {
            var dry = rate * deposit.Mean;
            var wet = asked.Out is { } seed ? SoakedRate.FromKilogramsPerSquareMeter(dry.KilogramsPerSquareMeter * seed.Factor) : (SoakedRate?)null;
            yield return new(W.LaidMean, Rate(dry) + (wet is { } soaked ? "; " + Rate(soaked) : string.Empty));
        }

        yield return new(W.LaidUneven, Say.Number(deposit.Cv.Percent, 1) + " %");
        yield return new(W.LaidNear, Say.Number(deposit.Near.Percent, 1) + " %");
        yield return new(W.LaidThin, Say.Number(deposit.Thin.Percent, 1) + " %, " + Land(report.Net * deposit.Thin.Share));
        yield return new(W.LaidOff, Say.Number(deposit.OffField.Percent, 1) + " %");
    }

    private MatchLine Match(string what, LandMatch match) => new(what, Land(match.Told), Land(match.Found), Verdict(match.Agree, Land(match.Error)), match.Agree);

    private string Weight(SoakedSeed seed) => (metric ? Say.Number(seed.Kilograms) + " kg " : Say.Number(seed.Pounds) + " lb ") + words.Common.Wet;

    private string Verdict(bool agree, string error) => Template.Fill(agree ? W.Agree : W.Differ, ("error", error));

    private static string Percent(Fraction share) => Say.Number(share.Percent, 2) + " %";
}
