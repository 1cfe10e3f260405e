using Watersown.Flight.Cover;
using Watersown.Flight.Deposit;
using Watersown.Land;

namespace Watersown.Flight.Flown;

/// <summary>What can be wrong with a track as one over a field.</summary>
public static class FlownProblems
{
    public static ProblemKind NotHere { get; } = new("FLOWN-001", ProblemWeight.Refuse,
        "nothing of it was flown with the gate open over this field; most of its places lie about {value}. Give the track of this field, or the edge of the right one.",
        "nada se voló con la compuerta abierta sobre este campo; la mayoría de sus lugares está cerca de {value}. Dé el recorrido de este campo, o el lindero del correcto.");

    public static ProblemKind TooMany { get; } = new("FLOWN-002", ProblemWeight.Refuse,
        "there are more than {limit} places near the field. Give one day's track, or a log of fewer places a second.",
        "hay más de {limit} lugares cerca del campo. Dé el recorrido de un solo día, o un registro con menos lugares por segundo.");

    public static ProblemKind NotBelieved { get; } = new("FLOWN-003", ProblemWeight.Refuse,
        "{value} of its {count} places lie farther apart than an aeroplane gets in the time told. Its times cannot be right: ask to read it without them (--no-time).",
        "{value} de sus {count} lugares están más lejos de lo que llega un avión en el tiempo dicho. Las horas no pueden ser correctas: pida leerlo sin ellas (--no-time).");
}

/// <summary>Holds a track against a field: passes, coverage, skips, overlaps, and how far each figure can be off.</summary>
public static class Verification
{
    /// <summary>What was flown.</summary>
    /// <param name="track">The track, clean.</param>
    /// <param name="asked">The field and what is asked of it.</param>
    /// <param name="file">Its name, for problems.</param>
    [Source(nameof(Sources.Definition), "skip and overlap over the field's land; off the field over all that was swept")]
    public static Outcome<FlownReport> Of(FlownTrack track, FlownQuestion asked, string file)
    {
        if (track.Fixes.Length >= TrackLimits.Most) return Refuse(FlownProblems.TooMany.At(file, ("limit", Wording.Say.Number(TrackLimits.Most))));
        var jumps = track.Dropped.Where(d => d.Reason == DropReason.Jump).Sum(d => d.Count);
        if (jumps > track.Given / 2) return Refuse(FlownProblems.NotBelieved.At(file, ("value", Wording.Say.Number(jumps)), ("count", Wording.Say.Number(track.Given))));
        var field = track.Plane.ToPlane(asked.Field);
        var runs = RunFinding.Of(track, field, asked.Swath);
        if (runs.Runs.IsEmpty) return Refuse(FlownProblems.NotHere.At(file, ("value", MostAbout(track))));
        ImmutableArray<FlownRun> landed = asked.Carry is { } carry ? [.. runs.Runs.Select(r => carry.Landed(r, runs.Gate))] : runs.Runs;
        var passes = PassFinding.Of(runs.Runs, asked.Swath);
        var lines = asked.Planned is { } heading ? LineErrors.Of(passes, heading, asked.Swath) : null;
        return Coverage.Of(field, [.. landed.Select(r => r.Line)], asked.Swath, new CoverOptions { Cell = asked.Cell, Right = asked.Right })
            .Then(cover => DepositMap.Of(field, SeedFlow.Of(landed, asked), asked.Shape ?? LateralShape.Supposed(asked.Swath), new DepositOptions { Cell = asked.Cell })
                .Map(deposit => Report(new Found(track, asked, runs, landed, passes), (cover, deposit), lines)));
    }

    private sealed record Found(FlownTrack Track, FlownQuestion Asked, FlownRuns Runs, ImmutableArray<FlownRun> Landed, FlownPasses Passes);

    private static FlownReport Report(Found found, (FieldCover Cover, FieldDeposit Deposit) looked, LineErrors? lines)
    {
        var net = GeodesicArea.Of(found.Asked.Field);
        var (cover, deposit) = looked;
        var shares = cover.Shares;

        // Ends that are off at random, each anywhere within its limits: their spread adds up as squares.
        var ends = (found.Runs.EndError?.Meters ?? 0) / Math.Sqrt(3) * Math.Sqrt(2 * found.Runs.Runs.Length) * found.Asked.Swath.Meters;
        MeasuredShare Measured(Fraction share, CountedArea counted, Area whole) =>
            new(share, Fraction.FromShare(whole > Area.Zero ? Math.Min(1, (counted.Error.SquareMeters + ends) / whole.SquareMeters) : 0));
        var report = new FlownReport
        {
            Question = found.Asked,
            Track = found.Track,
            Runs = found.Runs,
            Landed = found.Landed,
            Passes = found.Passes,
            Cover = cover,
            Deposit = deposit,
            Net = net,
            Flown = net * (1 - shares.SkipShare.Share),
            Skip = Measured(shares.SkipShare, shares.Skipped, shares.Field),
            Overlap = Measured(shares.OverlapShare, shares.Overlapped, shares.Field),
            OffField = Measured(shares.OffFieldShare, shares.Outside, shares.Swept),
            LineErrors = lines,
            Cautions = [.. Cautions(found)],
            Working = Working.Empty,
        };
        return report with { Working = Show(report) };
    }

    private static IEnumerable<FlownCaution> Cautions(Found found)
    {
        yield return FlownCaution.Always;
        yield return FlownCaution.SwathAsTold;
        yield return found.Asked.Shape is { Tested: true } ? FlownCaution.PatternTested : FlownCaution.PatternSupposed;
        if (found.Runs.SignalStuck) yield return FlownCaution.SignalStuck;
        if (found.Runs.Gate == GateKnown.WorkedOut) yield return FlownCaution.GateWorkedOut;
        if (found.Runs.Gate == GateKnown.DrawnApart) yield return FlownCaution.DrawnApart;
        if (!found.Track.TimeTold) yield return FlownCaution.NoTime;
        if (!found.Runs.Unknown.IsEmpty) yield return FlownCaution.UnknownGround;
        if (!found.Runs.Elsewhere.IsEmpty) yield return FlownCaution.OtherGround;
    }

    private static Working Show(FlownReport report)
    {
        var (shares, passes, runs) = (report.Cover.Shares, report.Passes, report.Runs);
        var working = Working.Empty
            .Given("S", "swath", report.Question.Swath.Feet, "ft", "told")
            .Given("r", "middle of the swath right of the line", report.Question.Right.Feet, "ft", report.Question.Shape is null ? "taken as on it" : "middle of the pattern")
            .Given("c", "side of a cell", report.Cover.Grid.Cell.Meters, "m", report.Question.Cell is null ? "a twentieth of the swath, half a meter at most" : "told")
            .Given("n", "stretches flown with the gate open", runs.Runs.Length, string.Empty, "track")
            .Step("A", "net land, holes taken off", report.Net.Acres, "ac", "on the ellipsoid", Sources.Karney2013)
            .Step("k", "never flown over", report.Skip.Share.Percent, "%", "cells with count 0 / cells of the field", Sources.Definition)
            .Step("o", "flown over twice or more", report.Overlap.Share.Percent, "%", "cells with count 2 or more / cells of the field", Sources.Definition)
            .Step("f", "swept off the field", report.OffField.Share.Percent, "%", "swept outside / all swept, each pass by itself", Sources.Definition)
            .Step("F", "flown", report.Flown.Acres, "ac", "A (1 − k)", Sources.Arithmetic)
            .Step("x", "excess", shares.Excess.Acres, "ac", "land flown beyond the first time, each time counted", Sources.Definition);
        if (runs.EndError is { } end) working = working.Step("e", "each end of a run can be off by", end.Feet, "ft", "ground speed × step / 2", Sources.SamplingError);
        working = working.Step("ek", "what was skipped can be off by", report.Skip.Error.Percent, "%", "(half a cell along its edges + e / √3 √(2 n) S) / A", Sources.Definition);
        var deposit = report.Deposit;
        working = working
            .Given("p", "width of the pattern", deposit.Shape.Width.Feet, "ft", deposit.Shape.Tested ? "the farm's tray test" : "a trapezoid supposed: 2 S / 3 level, slopes S / 3")
            .Step("m", "mean laid on the field over the rate asked for", deposit.Mean * 100, "%", "pattern along each pass, summed at the middles of cells; gate steady", Sources.OverlapGeometry)
            .Step("CV", "unevenness from cell to cell", deposit.Cv.Percent, "%", "standard deviation / mean over the field", Sources.Definition)
            .Step("q", "within 15 % of the rate asked for", deposit.Near.Percent, "%", "cells with 0.85 to 1.15 / cells of the field", Sources.Definition)
            .Step("t", "less than 40 % of it", deposit.Thin.Percent, "%", "cells below 0.4 / cells of the field", Sources.Definition);
        if (report.Question.Out is { } seed)
            working = working.Given("O", "soaked seed out", seed.Soaked.Pounds, "lb wet", "scale").Given("w", "soaked weight over dry weight", seed.Factor, string.Empty, "told").Step("Od", "the same dry", seed.Dry.Pounds, "lb dry", "O / w", Sources.MassBalance);
        if (passes.MeanSpacing is { } spacing) working = working.Step("s", "mean distance of neighboring lines", spacing.Feet, "ft", "of their mean lines over the common stretch", Sources.TrackInterpolation);
        return report.Question.Rate is { } rate
            ? working.Given("R", "rate asked for", rate.PoundsPerAcre, "lb/ac dry", "told").Step("w", "seed that the skipped land did not get", (rate * (report.Net - report.Flown)).Pounds, "lb dry", "R (A − F)", Sources.Arithmetic)
            : working;
    }

    private static string MostAbout(FlownTrack track) => track.Far.Where(f => f.Count > track.Fixes.Length).Select(f => PlaceWords.Of(f.Around)).FirstOrDefault()
        ?? (track.Fixes.IsEmpty ? "-" : PlaceWords.Of(track.Plane.ToPlace(track.Fixes[track.Fixes.Length / 2].At)));

    private static Outcome<FlownReport> Refuse(Problem problem) => Outcome<FlownReport>.Refuse(problem);
}
