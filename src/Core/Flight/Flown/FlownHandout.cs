using Watersown.Flight.Handout;
using Watersown.Land;
using Watersown.Shapes;

namespace Watersown.Flight.Flown;

/// <summary>What was flown over a field, made ready for other programs.</summary>
public static class FlownHandout
{
    /// <summary>The field with every stretch flown with the gate open, at the aeroplane's own places.</summary>
    /// <param name="report">What was found.</param>
    /// <param name="name">What the field is called.</param>
    /// <param name="made">When this is put together.</param>
    [Source(nameof(Sources.Definition), "times between the ends of a stretch by the way along it")]
    public static FarmHandout Of(FlownReport report, string name, DateTimeOffset made)
    {
        var runs = report.Runs.Runs;
        var field = new Field { Code = name, Name = name, Net = report.Net };
        return new FarmHandout(name, made,
        [
            new FieldHandout(field, report.Question.Field)
            {
                Swath = report.Question.Swath,
                Dry = report.Question.Rate,
                Drawn = GeodesicArea.Of(report.Question.Field),
                Flown = [.. runs.Where(r => r.Line.Length > 1).Select((r, i) => new HandoutRun(i + 1, Fixes(report.Track.Plane, r)) { GateInferred = report.Runs.Gate != GateKnown.Told })],
            },
        ]);
    }

    private static ImmutableArray<HandoutFix> Fixes(LocalPlane plane, FlownRun run)
    {
        var whole = run.Length.Meters;
        var gone = 0.0;
        var fixes = ImmutableArray.CreateBuilder<HandoutFix>(run.Line.Length);
        for (var i = 0; i < run.Line.Length; i++)
        {
            if (i > 0) gone += Turn.Hypot(run.Line[i].East - run.Line[i - 1].East, run.Line[i].North - run.Line[i - 1].North);
            fixes.Add(new HandoutFix(plane.ToPlace(run.Line[i]), Moment(run.Began + ((run.Ended - run.Began) * (whole > 0 ? gone / whole : 0)))));
        }

        return fixes.ToImmutable();
    }

    private static DateTimeOffset? Moment(double seconds) => double.IsFinite(seconds) ? DateTimeOffset.UnixEpoch.AddMilliseconds(Math.Round(seconds * 1000)) : null;
}
