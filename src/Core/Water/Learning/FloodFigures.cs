namespace Watersown.Water.Learning;

/// <summary>
/// What a field takes and loses, each figure with its spread: by what share it may be off either way in about two cases of
/// three (one spread of a bell curve of its logarithm).
/// </summary>
public sealed record FloodFigures
{
    /// <summary>Drunk by the worked soil as it gets wet.</summary>
    public required WaterDepth TakeUp { get; init; }

    public required Fraction TakeUpSpread { get; init; }

    /// <summary>Mean depth of the pond when the water goes on to the next check.</summary>
    public required WaterDepth Pond { get; init; }

    public required Fraction PondSpread { get; init; }

    /// <summary>Lost down and sideways from covered ground.</summary>
    public required DepthRate Seepage { get; init; }

    public required Fraction SeepageSpread { get; init; }

    /// <summary>Water to wet the worked soil and stand over it.</summary>
    public WaterDepth Fill => TakeUp + Pond;

    /// <summary>The farm's figures for a soil, before the field itself has said anything.</summary>
    /// <param name="fill">Of the soil.</param>
    /// <param name="seepage">Of the soil.</param>
    /// <param name="pond">Depth that boards are set for.</param>
    /// <param name="seasons">How many seasons stand behind the two figures.</param>
    [Source(nameof(Sources.FarmDefault), "take-up within 18 %, pond within 35 %, seepage within 60 %; less by the root of 1 + seasons")]
    public static FloodFigures OfFarm(WaterDepth fill, DepthRate seepage, WaterDepth pond, [PlainNumber("count of seasons")] int seasons = 0)
    {
        // A fill that is hardly more than the pond still wets some soil.
        var shallow = pond.Meters < 0.8 * fill.Meters ? pond : fill * 0.8;
        var known = Math.Sqrt(1 + Math.Max(0, seasons));
        return new FloodFigures
        {
            TakeUp = fill - shallow,
            TakeUpSpread = Fraction.FromShare(LearningSpreads.TakeUp.Share / known),
            Pond = shallow,
            PondSpread = LearningSpreads.Pond,
            Seepage = seepage > LearningSpreads.LeastSeepage ? seepage : LearningSpreads.LeastSeepage,
            SeepageSpread = Fraction.FromShare(LearningSpreads.Seepage.Share / known),
        };
    }

    /// <summary>As they stand before the next flood: what was learned, a little less sure, because no two springs are alike.</summary>
    public FloodFigures BeforeNext() => this with
    {
        TakeUpSpread = Wider(TakeUpSpread, LearningSpreads.TakeUpBetween, LearningSpreads.TakeUp),
        PondSpread = Wider(PondSpread, LearningSpreads.PondBetween, LearningSpreads.Pond),
        SeepageSpread = Wider(SeepageSpread, LearningSpreads.SeepageBetween, LearningSpreads.Seepage),
    };

    private static Fraction Wider(Fraction spread, Fraction between, Fraction most) =>
        Fraction.FromShare(Math.Min(most.Share, Math.Sqrt((spread.Share * spread.Share) + (between.Share * between.Share))));
}
