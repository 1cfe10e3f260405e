namespace Watersown.Season.Filling;

/// <summary>One check cut through along the field, at a moment.</summary>
/// <param name="Check">The check.</param>
/// <param name="Moment">How it stands.</param>
public sealed record SectionStep(CheckScene Check, CheckMoment Moment)
{
    [PlainNumber("points of paper, to the right")]
    public required double Left { get; init; }

    [PlainNumber("points of paper, to the right")]
    public required double Right { get; init; }

    /// <summary>Its mean ground.</summary>
    [PlainNumber("points of paper, downward")]
    public required double Ground { get; init; }

    /// <summary>Tops of its boards.</summary>
    [PlainNumber("points of paper, downward")]
    public required double Boards { get; init; }

    /// <summary>How far from its upper end water covers it.</summary>
    [PlainNumber("points of paper, to the right")]
    public required double WaterTo { get; init; }

    /// <summary>The level of the water.</summary>
    [PlainNumber("points of paper, downward")]
    public required double Level { get; init; }
}

/// <summary>
/// A field cut through from the head to the tail at one moment: checks as steps as wide as they have land, boards between them,
/// water as deep and as far as it has come. Heights are drawn far too large beside lengths, or nobody would see any.
/// </summary>
/// <param name="Steps">From the head to the tail.</param>
public sealed record FillSection(ImmutableArray<SectionStep> Steps)
{
    private const double Foot = 132, Top = 12;

    [PlainNumber("points of paper")]
    public static double Width => 360;

    [PlainNumber("points of paper")]
    public static double Height => 150;

    /// <summary>Where the lowest ground is drawn to.</summary>
    [PlainNumber("points of paper, downward")]
    public static double Bottom => Foot + 8;

    public static FillSection Of(FillScene scene, DateTimeOffset moment)
    {
        var span = moment > scene.Now ? moment - scene.Now : TimeSpan.Zero;
        var land = scene.Checks.Sum(c => c.Land.Acres);
        var tall = scene.Checks.Max(c => c.Ground.Inches + Math.Max(c.Boards.Inches, c.Ahead.Select(d => d.Depth.Inches).Append(0).Max()) + 1);
        var inch = (Foot - Top) / Math.Max(8, tall);
        var steps = ImmutableArray.CreateBuilder<SectionStep>(scene.Checks.Length);
        var left = 2.0;
        foreach (var check in scene.Checks)
        {
            var (at, wide) = (check.After(span), (Width - 4) * check.Land.Acres / land);
            var ground = Foot - (check.Ground.Inches * inch);
            steps.Add(new SectionStep(check, at)
            {
                Left = Math.Round(left, 2),
                Right = Math.Round(left + wide, 2),
                Ground = Math.Round(ground, 2),
                Boards = Math.Round(ground - (check.Boards.Inches * inch), 2),
                WaterTo = Math.Round(left + (wide * at.Covered.Share), 2),
                Level = Math.Round(ground - (at.Depth.Inches * inch), 2),
            });
            left += wide;
        }

        return new FillSection(steps.ToImmutable());
    }
}
