namespace Watersown.Wording;

/// <summary>Words of the flight sheet.</summary>
public sealed partial record FlightWords
{
    public required string Kind { get; init; }

    public required string Lead { get; init; }

    public required string LeadPart { get; init; }

    public required string PilotDecides { get; init; }

    public required string DryRate { get; init; }

    public required string WetRate { get; init; }

    public required string Caption { get; init; }

    public required string Acres { get; init; }

    public required string Net { get; init; }

    public required string Share { get; init; }

    public required string Gross { get; init; }

    public required string GrossUnknown { get; init; }

    public required string Seed { get; init; }

    public required string Variety { get; init; }

    public required string Batch { get; init; }

    public required string BatchNotCalled { get; init; }

    public required string Trailer { get; init; }

    public required string TrailerCount { get; init; }

    public required string OneTrailer { get; init; }

    public required string DrySeed { get; init; }

    public required string DrySum { get; init; }

    public required string DryOff { get; init; }

    public required string WetSeed { get; init; }

    public required string FactorTicket { get; init; }

    public required string FactorLot { get; init; }

    public required string FactorFarm { get; init; }

    public required string UseBy { get; init; }

    public required string UseByNote { get; init; }

    public required string FromStrip { get; init; }

    public required string FromStripNote { get; init; }

    public required string TheStrip { get; init; }

    public required string Water { get; init; }

    public required string FullSince { get; init; }

    public required string FullBy { get; init; }

    public required string Told { get; init; }

    public required string Time { get; init; }

    public required string TimeNote { get; init; }

    public required string Limits { get; init; }

    public required string LimitsValue { get; init; }

    public required string LimitsNote { get; init; }

    public required string AeroplaneGuess { get; init; }

    public required string Loads { get; init; }

    public required string LoadNo { get; init; }

    public required string LoadWet { get; init; }

    public required string LoadDry { get; init; }

    public required string Gone { get; init; }

    public required string TimeGate { get; init; }

    public required string LoadSum { get; init; }

    public required string LoadSumOdd { get; init; }

    public required string WorkingLoad { get; init; }

    public required string WorkingLoadOnly { get; init; }

    public required string FewerOver { get; init; }

    public required string FewerWithin { get; init; }

    public required string FewerUnknown { get; init; }

    public required string TellLoader { get; init; }

    public required string Hazards { get; init; }

    public required string HazardWhat { get; init; }

    public required string HazardHeight { get; init; }

    public required string HazardWhere { get; init; }

    public required string HazardSeen { get; init; }

    public required string Mark { get; init; }

    public required string Unconfirmed { get; init; }

    public required string InField { get; init; }

    public required string PlaceUnknown { get; init; }

    public required string NearField { get; init; }

    public required string NoWires { get; init; }

    public required string SomeWires { get; init; }

    public required string Farther { get; init; }

    public required string Propeller { get; init; }

    public required string NoPeople { get; init; }

    public required string Tag { get; init; }

    public required string TagUnknown { get; init; }

    public required string Planning { get; init; }

    public required string NextTo { get; init; }

    public required string KeepOff { get; init; }

    public required string Done { get; init; }

    public required string NotDone { get; init; }

    public required string PartDone { get; init; }

    public required string LeftOver { get; init; }

    public required string WindSeen { get; init; }

    public required string GustSeen { get; init; }

    public required string Pilot { get; init; }

    public required string LoadDryShort { get; init; }

    public required string TimeShort { get; init; }

    public required string LoadWetShort { get; init; }
}
