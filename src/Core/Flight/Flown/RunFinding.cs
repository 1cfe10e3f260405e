using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>Finds what was flown with the gate open.</summary>
public static class RunFinding
{
    // Beyond this a step turns: the gate is not taken as open into it.
    private const double StraightOn = 30;

    // A line drawn apart is straight where it lies within this share of its length, or a swath, of its chord.
    private const double Sag = 0.02;

    /// <summary>The runs of a track over a field.</summary>
    /// <param name="track">The track, clean.</param>
    /// <param name="field">The field on the same plane.</param>
    /// <param name="swath">How wide a run sows.</param>
    [Source(nameof(Sources.SamplingError), "the gate turns at the field's edge where that lies between two places, else halfway")]
    public static FlownRuns Of(FlownTrack track, ImmutableArray<PlanePart> field, Length swath)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(swath.Meters, 0, nameof(swath));
        var ground = new SwathGround(field, swath);
        var (opens, shuts) = (track.Fixes.Any(f => f.Gate == GateSign.Open), track.Fixes.Any(f => f.Gate == GateSign.Shut));
        var (runs, known) = opens && shuts
            ? (Told(track.Fixes, ground), GateKnown.Told)
            : DrawnApart(track.Fixes, ground, logsOnlyOpen: opens) is { } apart ? (apart, opens ? GateKnown.Told : GateKnown.DrawnApart) : (new GateGuess(track.Fixes, ground).Runs(), GateKnown.WorkedOut);
        var touching = runs.ToLookup(r => Touches(r, ground));
        ImmutableArray<FlownRun> here = [.. touching[true]];
        return new FlownRuns
        {
            Runs = here,
            Gate = known,
            SignalStuck = known != GateKnown.Told && (opens || shuts),
            EndError = EndError(track, here, known),
            Elsewhere = [.. touching[false]],
            Unknown = Unknown(track, here, ground),
        };
    }

    private static ImmutableArray<FlownRun> Told(ImmutableArray<FlownFix> fixes, SwathGround ground)
    {
        var runs = new RunBuilder();
        var open = false;
        for (var i = 0; i < fixes.Length; i++)
        {
            var (fix, was) = (fixes[i], open);
            if (fix.Break != TrackBreak.None)
            {
                runs.Close();
                was = false;
            }

            // A place that does not say goes on as the one before.
            open = fix.Gate == GateSign.NotTold ? open : fix.Gate == GateSign.Open;
            var apart = i == 0 || fix.Break != TrackBreak.None;
            if (open && !was && !apart && StraightFrom(fixes, i - 1, i, i + 1)) Turned(runs, fix, fixes[i - 1], ground);
            if (open) runs.To(fix.At, fix.Seconds);
            else if (was && StraightFrom(fixes, i - 2, i - 1, i)) Turned(runs, fixes[i - 1], fix, ground);
            if (!open) runs.Close();
        }

        return runs.Runs;
    }

    private static void Turned(RunBuilder runs, FlownFix open, FlownFix shut, SwathGround ground)
    {
        var share = ground.TurnedAt(open.At, shut.At);
        runs.To(EdgeBands.Between(open.At, shut.At, share), open.Seconds + (share * (shut.Seconds - open.Seconds)));
    }

    // Three places in a row on a straight way; where one of them is missing there is nothing against it.
    private static bool StraightFrom(ImmutableArray<FlownFix> fixes, int a, int b, int c)
    {
        if (a < 0 || c >= fixes.Length || fixes[b].Break != TrackBreak.None || fixes[c].Break != TrackBreak.None) return true;
        if (fixes[a].At == fixes[b].At || fixes[b].At == fixes[c].At) return true;
        return Math.Abs(Math.IEEERemainder(Headings.Of(fixes[a].At, fixes[b].At) - Headings.Of(fixes[b].At, fixes[c].At), 360)) <= StraightOn;
    }

    // None where the file does not draw at least two lines apart that are all straight over the field.
    private static ImmutableArray<FlownRun>? DrawnApart(ImmutableArray<FlownFix> fixes, SwathGround ground, bool logsOnlyOpen)
    {
        if (!logsOnlyOpen && fixes.Count(f => f.Break == TrackBreak.Piece) < 2) return null;
        var runs = new RunBuilder();
        for (var i = 0; i < fixes.Length; i++)
        {
            if (fixes[i].Break != TrackBreak.None) runs.Close();
            runs.To(fixes[i].At, fixes[i].Seconds);
        }

        var all = runs.Runs;
        ImmutableArray<FlownRun> over = [.. all.Where(r => Touches(r, ground))];
        return over.Length > 1 && over.All(r => IsStraight(r, ground.Swath)) ? [.. over, .. all.Where(r => !Touches(r, ground))] : null;
    }

    private static bool IsStraight(FlownRun run, Length swath)
    {
        var (from, to) = (run.Line[0], run.Line[^1]);
        var (east, north) = (to.East - from.East, to.North - from.North);
        var chord = Turn.Hypot(east, north);
        if (chord < swath.Meters) return false;
        var most = Math.Max(swath.Meters, Sag * chord);
        return run.Line.All(p => Math.Abs(((p.East - from.East) * north) - ((p.North - from.North) * east)) / chord <= most)
            && run.Length.Meters < 2 * chord;
    }

    private static bool Touches(FlownRun run, SwathGround ground)
    {
        for (var i = 1; i < run.Line.Length; i++)
        {
            if (!ground.Sown(run.Line[i - 1], run.Line[i]).IsEmpty) return true;
        }

        return false;
    }

    private static Length? EndError(FlownTrack track, ImmutableArray<FlownRun> runs, GateKnown known)
    {
        if (known == GateKnown.DrawnApart || track.Every is not { } every) return null;
        var timed = runs.Where(r => r.Ended > r.Began).ToList();
        return timed.Count == 0 ? null : Length.FromMeters(timed.Sum(r => r.Length.Meters) / timed.Sum(r => r.Ended - r.Began) * every.TotalSeconds / 2);
    }

    private static ImmutableArray<TrackGap> Unknown(FlownTrack track, ImmutableArray<FlownRun> runs, SwathGround ground)
    {
        var axes = Headings.Axes(runs.Select(r => (Headings.Of(r.Line[0], r.Line[^1]), r.Length.Meters)));
        return [.. track.Gaps.Where(g => g.From != g.To
            && axes.Any(a => Headings.Apart(a, Headings.Of(g.From, g.To)) <= Headings.Along)
            && ground.Over(g.From, g.To) > ground.Swath.Meters)];
    }
}
