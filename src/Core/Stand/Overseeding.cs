namespace Watersown.Stand;

/// <summary>How much of the best yield a stand gives.</summary>
/// <param name="Stand">Plants on the land.</param>
/// <param name="Share">Yield over the best yield.</param>
public readonly record struct ResponsePoint(PlantDensity Stand, Fraction Share);

/// <summary>A piece of land that may be sown a second time.</summary>
/// <param name="Land">Only the thin land; above zero.</param>
/// <param name="Now">Its stand today.</param>
/// <param name="After">Its stand after overseeding; not below <paramref name="Now"/>.</param>
/// <param name="Best">Grain of this land at a full stand.</param>
public sealed record ThinLand(Area Land, PlantDensity Now, PlantDensity After, Mass Best)
{
    /// <summary>Price of a hundredweight of grain.</summary>
    public required Money GrainPrice { get; init; }

    /// <summary>Seed, soaking, haul and flight for one acre.</summary>
    public required Money AcreCost { get; init; }

    /// <summary>How much later it ripens.</summary>
    [PlainNumber("days")]
    public double DaysLate { get; init; }

    /// <summary>What a day's delay costs on one acre.</summary>
    public Money AcreDay { get; init; }
}

/// <summary>What overseeding would bring, part by part.</summary>
public sealed record OverseedSum(Fraction ShareNow, Fraction ShareAfter, Mass Grain, Money Worth, Money Sowing, Money Delay)
{
    /// <summary>Worth of the grain less both costs; below zero it is a loss.</summary>
    public Money Gain => Worth - Sowing - Delay;

    public bool WorthIt => Gain > Money.Zero;
}

/// <summary>Whether sowing again pays.</summary>
public static class Overseeding
{
    /// <summary>
    /// Shares of the best yield by stand, for a farm that has none of its own: 25 plants on a square foot and more give
    /// all of it, half that stand gives nearly all, and thin stands fall off fast. A planner default around published
    /// trials, which disagree among countries; even spacing matters more than the mean.
    /// </summary>
    [Source(nameof(Sources.FarmDefault))]
    [Source(nameof(Sources.UcStand2024), "best about 25 plants/ft2; half of it compensates well")]
    [Source(nameof(Sources.NswPlantStand), "fig. 1: flat above 3.7 plants/ft2 where evenly spread")]
    public static ImmutableArray<ResponsePoint> UsualResponse { get; } =
    [
        At(0, 0), At(3, 0.55), At(5, 0.72), At(8, 0.86), At(10, 0.91), At(12.5, 0.95), At(15, 0.97), At(20, 0.99), At(25, 1),
    ];

    /// <summary>
    /// Share of the best yield at a stand: straight lines between the points, level beyond the first and the last.
    /// </summary>
    /// <param name="response">At least one point, by rising stand.</param>
    /// <param name="stand">The stand asked for.</param>
    [Source(nameof(Sources.Arithmetic), "straight lines between the points of the response")]
    public static Fraction ShareAt(ImmutableArray<ResponsePoint> response, PlantDensity stand)
    {
        if (stand <= response[0].Stand) return response[0].Share;
        for (var i = 1; i < response.Length; i++)
        {
            var (left, right) = (response[i - 1], response[i]);
            if (stand > right.Stand) continue;
            var way = (stand - left.Stand) / (right.Stand - left.Stand);
            return Fraction.FromShare(left.Share.Share + (way * (right.Share.Share - left.Share.Share)));
        }

        return response[^1].Share;
    }

    /// <summary>
    /// The sum of overseeding: grain gained at its price, less sowing, less the days lost. An estimate: it stands or
    /// falls with the stand that is really reached, and with the response.
    /// </summary>
    [Source(nameof(Sources.ReseedSum))]
    public static OverseedSum Reckon(ThinLand land, ImmutableArray<ResponsePoint> response)
    {
        var now = ShareAt(response, land.Now);
        var after = ShareAt(response, land.After);
        var grain = land.Best * (after.Share - now.Share);
        return new OverseedSum(now, after, grain,
            Exact(land.GrainPrice, grain.Hundredweights),
            Exact(land.AcreCost, land.Land.Acres),
            Exact(land.AcreDay, land.Land.Acres * land.DaysLate));
    }

    // Money × number rounds to a tenth of a cent; a sum that others divide again keeps every figure.
    private static Money Exact(Money each, double times) => new((decimal)((double)each.Amount * times));

    private static ResponsePoint At(double perSquareFoot, double share) => new(PlantDensity.FromPerSquareFoot(perSquareFoot), Fraction.FromShare(share));
}
