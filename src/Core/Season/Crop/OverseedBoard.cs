using Watersown.Schedule;
using Watersown.Stand;

namespace Watersown.Season.Crop;

/// <summary>What a person says of sowing thin land again.</summary>
/// <param name="After">Stand expected after it.</param>
/// <param name="YieldAcre">Grain of an acre at a full stand.</param>
/// <param name="AcreCost">Seed, soaking, haul and flight for an acre.</param>
/// <param name="On">The day it would be sown again.</param>
public sealed record OverseedAsk(PlantDensity After, Mass YieldAcre, Money AcreCost, DateOnly On);

/// <summary>What one zone would gain by one published response.</summary>
/// <param name="Region">Where the best stand was found; none for the farm's own response.</param>
/// <param name="Trials">The sum with a day's delay priced after trials.</param>
/// <param name="Saying">The sum with a day's delay priced after the growers' saying.</param>
public sealed record OverseedView(ResponseRegion? Region, OverseedSum Trials, OverseedSum Saying)
{
    /// <summary>Both prices of a day say the same.</summary>
    public bool Agree => Trials.WorthIt == Saying.WorthIt;
}

/// <summary>One thin zone: sow again or keep.</summary>
public sealed record ZoneOverseed(CountedZone Zone, int DaysLate, ImmutableArray<OverseedView> Views)
{
    /// <summary>Every published response and every price of a day say the same.</summary>
    public bool AllAgree => Views.All(v => v.Agree) && Views.Select(v => v.Trials.WorthIt).Distinct().Count() == 1;

    public required Working Working { get; init; }
}

/// <summary>Sow again or keep, zone by zone, with the published disagreement in the open.</summary>
public static class OverseedBoards
{
    /// <summary>Grain that a day's delay costs an acre, after trials.</summary>
    [Source(nameof(Sources.UcLatePlanting2023), "about 5 cwt/ac over 28 to 30 days; 0.2 cwt/ac a day taken")]
    public static Mass TrialsDay { get; } = Mass.FromHundredweights(0.2);

    /// <summary>The same after the growers' saying.</summary>
    [Source(nameof(Sources.CapitalPressSaying), "100 lb/ac a day after mid-May, a grower quoted")]
    public static Mass SayingDay { get; } = Mass.FromHundredweights(1);

    /// <summary>The thin zones of a stand.</summary>
    [Source(nameof(Sources.ReseedSum))]
    public static ImmutableArray<ZoneOverseed> Of(StandBoard board, OverseedAsk ask, DateOnly sown, SeasonState state, ImmutableArray<ResponsePoint> own)
    {
        var late = Math.Max(0, ask.On.DayNumber - sown.DayNumber);
        return [.. board.Zones.Where(z => z.Thin).Select(z => Zone(z, ask, late, state.Prices.Grain, own))];
    }

    private static ZoneOverseed Zone(CountedZone zone, OverseedAsk ask, int late, Money grain, ImmutableArray<ResponsePoint> own)
    {
        ImmutableArray<(ResponseRegion? Region, ImmutableArray<ResponsePoint> Response)> responses =
            [.. Enum.GetValues<ResponseRegion>().Select(r => ((ResponseRegion?)r, PublishedResponses.Of(r))), .. own.IsEmpty ? (ImmutableArray<(ResponseRegion?, ImmutableArray<ResponsePoint>)>)[] : [(null, own)]];
        var views = responses.Select(r => new OverseedView(r.Region, Overseeding.Reckon(Land(zone, ask, late, grain, TrialsDay), r.Response), Overseeding.Reckon(Land(zone, ask, late, grain, SayingDay), r.Response))).ToImmutableArray();
        return new ZoneOverseed(zone, late, views) { Working = Show(zone, ask, late, grain, views) };
    }

    private static ThinLand Land(CountedZone zone, OverseedAsk ask, int late, Money grain, Mass day) =>
        new(zone.Zone.Land, zone.Stand.Mean, ask.After > zone.Stand.Mean ? ask.After : zone.Stand.Mean, ask.YieldAcre * zone.Zone.Land.Acres)
        {
            GrainPrice = grain,
            AcreCost = ask.AcreCost,
            DaysLate = late,
            AcreDay = new Money(grain.Amount * (decimal)day.Hundredweights),
        };

    private static Working Show(CountedZone zone, OverseedAsk ask, int late, Money grain, ImmutableArray<OverseedView> views)
    {
        var working = Working.Empty
            .Given("A", zone.Zone.Name + ", land", zone.Zone.Land.Acres, "ac", zone.LandGuessed ? "share of what is left of the field" : "typed")
            .Given("p0", "stand today", zone.Stand.Mean.PerSquareFoot, "plants/ft²", "rings", zone.Mark.Happened)
            .Given("p1", "stand after sowing again", ask.After.PerSquareFoot, "plants/ft²", "typed")
            .Given("Y", "yield at a full stand", ask.YieldAcre.Hundredweights, "cwt/ac", "typed")
            .Given("P", "price of grain", (double)grain.Amount, "$/cwt", "farm")
            .Given("C", "seed, soaking, haul and flight", (double)ask.AcreCost.Amount, "$/ac", "typed")
            .Given("d", "days later than the first sowing", late, "days", "calendar")
            .Constant("k1", "grain that a day costs, trials", TrialsDay.Hundredweights, "cwt/ac", Sources.UcLatePlanting2023)
            .Constant("k2", "grain that a day costs, growers' saying", SayingDay.Hundredweights, "cwt/ac", Sources.CapitalPressSaying);
        foreach (var view in views)
        {
            var name = view.Region?.ToString() ?? "own response";
            working = working
                .Step("f0", name + ": share of the best yield today", view.Trials.ShareNow.Share, string.Empty, "f at p0, straight lines between points", Basis(view.Region))
                .Step("f1", name + ": share after", view.Trials.ShareAfter.Share, string.Empty, "f at p1", Basis(view.Region))
                .Step("G1", name + ": gain, a day after trials", (double)view.Trials.Gain.Amount, "$", "A (Y (f1 − f0) P − C − d k1 P)", Sources.ReseedSum)
                .Step("G2", name + ": gain, a day after the saying", (double)view.Saying.Gain.Amount, "$", "A (Y (f1 − f0) P − C − d k2 P)", Sources.ReseedSum);
        }

        return working;
    }

    private static Citation Basis(ResponseRegion? region) => region switch
    {
        ResponseRegion.California => Sources.UcStand2024,
        ResponseRegion.MidSouth => Sources.MidSouthStand,
        ResponseRegion.Australia => Sources.NswPlantStand.At("fig. 1"),
        _ => Sources.FarmDefault,
    };
}
