using Watersown.Land;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season.Boards;

/// <summary>A source as a box at the head of its ditch.</summary>
/// <param name="Balance">What it gives, and what its fields take up.</param>
public sealed record DitchHead(SourceBalance Balance)
{
    /// <summary>Top of its box.</summary>
    [PlainNumber("points of paper, downward")]
    public required double Top { get; init; }

    /// <summary>Where its ditch leaves the box.</summary>
    [PlainNumber("points of paper, downward")]
    public double Mouth => Top + (DitchPicture.BoxHeight / 2);
}

/// <summary>A field beside its own ditch.</summary>
/// <param name="Field">The field.</param>
/// <param name="Season">How far it has come.</param>
/// <param name="Takes">What its wet ground takes up now.</param>
public sealed record DitchPlot(Field Field, FieldSeason Season, FlowRate Takes)
{
    [PlainNumber("points of paper, downward")]
    public required double Middle { get; init; }
}

/// <summary>What a line of the picture stands for.</summary>
public enum DitchLineKind
{
    /// <summary>A ditch from its source along its own fields.</summary>
    Ditch,

    /// <summary>Two ditches led together.</summary>
    Joint,

    /// <summary>Water that comes back, into a ditch.</summary>
    Return,

    /// <summary>From the fields whose tailwater it is.</summary>
    Drains,

    /// <summary>Sources under one cap.</summary>
    Cap,
}

/// <summary>A line of the picture.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="Points">Where it runs.</param>
public sealed record DitchLine(DitchLineKind Kind, ImmutableArray<PaperPoint> Points);

/// <summary>
/// How water is led on a farm, as a drawing without a map: sources down the left side, the fields of each beside its ditch, joints, returns
/// and caps as lines between them.
/// </summary>
public sealed record DitchPicture
{
    private const double BoxLeft = 18, BoxRight = 148, Spine = 158, PlotLeft = 214, Row = 21, Gap = 16, Lane = 9;
    private const int Lanes = 5;

    [PlainNumber("points of paper")]
    public static double Width => 370;

    [PlainNumber("points of paper")]
    public static double BoxHeight => 62;

    /// <summary>Left and right side of the boxes.</summary>
    public static PaperPoint Box => new(BoxLeft, BoxRight);

    [PlainNumber("points of paper, to the right")]
    public static double PlotsAt => PlotLeft;

    public required ImmutableArray<DitchHead> Heads { get; init; }

    public required ImmutableArray<DitchPlot> Plots { get; init; }

    public required ImmutableArray<DitchLine> Lines { get; init; }

    [PlainNumber("points of paper")]
    public required double Height { get; init; }

    /// <summary>The picture of a farm.</summary>
    /// <param name="state">The season as it stands.</param>
    /// <param name="plan">The plan, which says what is held and filled from where.</param>
    public static DitchPicture Of(SeasonState state, SeasonPlan? plan)
    {
        var top = 4.0;
        var heads = ImmutableArray.CreateBuilder<DitchHead>();
        var plots = ImmutableArray.CreateBuilder<DitchPlot>();
        foreach (var balance in SourceBalances.Of(state, plan))
        {
            heads.Add(new DitchHead(balance) { Top = top });
            var own = Own(state.Farm, balance.Source.Code).ToImmutableArray();
            plots.AddRange(own.Select((f, i) => new DitchPlot(f, state.Season(f.Code), FieldWater.Of(state, f.Code).HoldingNow) { Middle = top + (Row * (i + 0.5)) }));
            top += Math.Max(BoxHeight, own.Length * Row) + Gap;
        }

        return new DitchPicture { Heads = heads.ToImmutable(), Plots = plots.ToImmutable(), Lines = [.. Drawn(state.Farm, [.. heads], [.. plots])], Height = top };
    }

    private static IEnumerable<Field> Own(Farm farm, string source) => farm.Fields.Where(f => f.Sources.FirstOrDefault() == source);

    private static IEnumerable<DitchLine> Drawn(Farm farm, ImmutableArray<DitchHead> heads, ImmutableArray<DitchPlot> plots)
    {
        var mouths = heads.ToDictionary(h => h.Balance.Source.Code, h => h.Mouth, StringComparer.Ordinal);
        foreach (var head in heads)
        {
            ImmutableArray<double> rows = [.. plots.Where(p => p.Field.Sources[0] == head.Balance.Source.Code).Select(p => p.Middle)];
            if (rows.IsEmpty) continue;
            yield return new DitchLine(DitchLineKind.Ditch, [new(BoxRight, head.Mouth), new(Spine, head.Mouth)]);
            yield return new DitchLine(DitchLineKind.Ditch, [new(Spine, Math.Min(head.Mouth, rows[0])), new(Spine, Math.Max(head.Mouth, rows[^1]))]);
            foreach (var row in rows) yield return new DitchLine(DitchLineKind.Ditch, [new(Spine, row), new(PlotLeft, row)]);
        }

        var lane = 0;
        foreach (var joint in Ditches.Joints(farm).Where(j => mouths.ContainsKey(j.One) && mouths.ContainsKey(j.Other)))
        {
            var (from, to) = farm.Source(joint.One)!.Kind == WaterSourceKind.Tailwater ? (joint.One, joint.Other) : (joint.Other, joint.One);
            var kind = farm.Source(from)!.Kind == WaterSourceKind.Tailwater ? DitchLineKind.Return : DitchLineKind.Joint;
            yield return Across(kind, mouths[from], mouths[to], lane++);
        }

        foreach (var (source, need) in farm.Sources.Where(s => s.Needs is not null).Select(s => (s, s.Needs!)))
        {
            foreach (var above in need.Fields.Select(f => farm.Field(f).Sources.FirstOrDefault()).OfType<string>().Distinct(StringComparer.Ordinal).Where(mouths.ContainsKey))
                yield return Across(DitchLineKind.Drains, mouths[above] + 8, mouths[source.Code] + 8, lane++);
        }

        foreach (var under in farm.SharedCaps.Select(c => c.Sources.Where(mouths.ContainsKey).Select(s => mouths[s]).Order().ToImmutableArray()).Where(m => m.Length > 1))
        {
            yield return new DitchLine(DitchLineKind.Cap, [new(BoxLeft, under[0]), new(8, under[0]), new(8, under[^1]), new(BoxLeft, under[^1])]);
            foreach (var between in under[1..^1]) yield return new DitchLine(DitchLineKind.Cap, [new(8, between), new(BoxLeft, between)]);
        }
    }

    private static DitchLine Across(DitchLineKind kind, double from, double to, int lane)
    {
        var x = Spine + (Lane * ((lane % Lanes) + 1));
        return new DitchLine(kind, [new(BoxRight, from), new(x, from), new(x, to), new(BoxRight, to)]);
    }
}
