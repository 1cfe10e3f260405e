namespace Watersown;

public static partial class Sources
{
    public static Source RiceBoardSoaking { get; } = new(nameof(RiceBoardSoaking),
        "California Rice Research Board, How rice is grown: seed soaking", SourceStanding.Read);

    public static Source UcLatePlanting2023 { get; } = new(nameof(UcLatePlanting2023),
        "University of California Cooperative Extension rice blog, late planting, 2023: about 5 cwt an acre lower at the end of May than at its start", SourceStanding.Read);

    public static Source BridgeFormula { get; } = new(nameof(BridgeFormula),
        "FHWA Bridge Formula Weights, as repeated in guides: W = 500 [L N / (N − 1) + 12 N + 36], nearest 500 lb", SourceStanding.Read);

    public static Source CapitalPressSaying { get; } = new(nameof(CapitalPressSaying),
        "Capital Press, Rice growers rush to catch up with planting (early 2010s): a grower's saying of 100 lb an acre a day in late May", SourceStanding.Read);
}
