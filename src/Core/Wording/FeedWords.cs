namespace Watersown.Wording;

/// <summary>Words of nutrition.</summary>
public sealed partial record FeedWords
{
    public required string Title { get; init; }

    public required string ToNutrition { get; init; }

    public required string Nitrogen { get; init; }

    public required string NitrogenNone { get; init; }

    public required string Timing { get; init; }

    public required string TimingAqua { get; init; }

    public required string TimingStarter { get; init; }

    public required string TimingTopdress { get; init; }

    public required string Rate { get; init; }

    public required string RateAsk { get; init; }

    public required string Ticket { get; init; }

    public required string TicketAsk { get; init; }

    public required string TicketTold { get; init; }

    public required string Aqua { get; init; }

    public required string AquaSum { get; init; }

    public required string AquaTanks { get; init; }

    public required string AquaTankAsk { get; init; }

    public required string AquaRateAsk { get; init; }

    public required string AquaUsual { get; init; }

    public required string WaitFine { get; init; }

    public required string WaitWarn { get; init; }

    public required string WaitAlarm { get; init; }

    public required string WaitDone { get; init; }

    public required string WaitDefault { get; init; }

    public required string Waiting { get; init; }

    public required string Readings { get; init; }

    public required string ReadOlsen { get; init; }

    public required string ReadLeafP { get; init; }

    public required string ReadSoilK { get; init; }

    public required string ReadFlagK { get; init; }

    public required string ReadStrip { get; init; }

    public required string ReadNow { get; init; }

    public required string SaidShort { get; init; }

    public required string SaidEnough { get; init; }

    public required string Levels { get; init; }

    public required string Topdress { get; init; }

    public required string TopdressWindow { get; init; }

    public required string TopdressUnknown { get; init; }

    public required string TopdressYes { get; init; }

    public required string TopdressNo { get; init; }

    public required string TopdressNoOf { get; init; }

    public required string TopdressAsk { get; init; }

    public required string TopdressNone { get; init; }

    public required string TopdressLate { get; init; }

    public required string Defers { get; init; }

    public required string MarkNitrogen { get; init; }

    public required string MarkRead { get; init; }

    public required string Blend { get; init; }

    public required string BlendLead { get; init; }

    public required string Need { get; init; }

    public required string Product { get; init; }

    public required string Price { get; init; }

    public required string BlendPart { get; init; }

    public required string BlendCost { get; init; }

    public required string BlendBrings { get; init; }

    public required string BlendEmpty { get; init; }

    public required string AddProduct { get; init; }
}
