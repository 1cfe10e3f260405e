namespace Watersown.Wording;

/// <summary>Words of the seed screens: batches and their clocks, trailers, the stop on wrong seed, the short load.</summary>
public sealed partial record SeedScreenWords
{
    public required string Title { get; init; }

    public required string Batches { get; init; }

    public required string BatchesNone { get; init; }

    public required string InSoak { get; init; }

    public required string SoakLong { get; init; }

    public required string Draining { get; init; }

    public required string Usable { get; init; }

    public required string UsableLost { get; init; }

    public required string PastUse { get; init; }

    public required string Spent { get; init; }

    public required string Due { get; init; }

    public required string NowWord { get; init; }

    public required string PlanSows { get; init; }

    public required string LastSafe { get; init; }

    public required string Expected { get; init; }

    public required string AgeDue { get; init; }

    public required string AgeSoak { get; init; }

    public required string AgeDrained { get; init; }

    public required string BySoak { get; init; }

    public required string ByDrain { get; init; }

    public required string ByUse { get; init; }

    public required string WentBy { get; init; }

    public required string Left { get; init; }

    public required string DryWet { get; init; }

    public required string Weighed { get; init; }

    public required string ByFactor { get; init; }

    public required string For { get; init; }

    public required string ForNone { get; init; }

    public required string SowPlanned { get; init; }

    public required string DrainPlanned { get; init; }

    public required string LostWord { get; init; }

    public required string TrailerIs { get; init; }

    public required string PutInSoak { get; init; }

    public required string DrainedMark { get; init; }

    public required string DumpedMark { get; init; }

    public required string DumpAsk { get; init; }

    public required string DumpYes { get; init; }

    public required string NewBatch { get; init; }

    public required string NewBatchCode { get; init; }

    public required string NewBatchLot { get; init; }

    public required string NewBatchDry { get; init; }

    public required string NewBatchFor { get; init; }

    public required string ClockSpoken { get; init; }

    public required string ClockTable { get; init; }

    public required string Batch { get; init; }

    public required string Stage { get; init; }

    public required string Ready { get; init; }

    public required string UseBy { get; init; }

    public required string Trailers { get; init; }

    public required string TrailersNone { get; init; }

    public required string Trailer { get; init; }

    public required string Variety { get; init; }

    public required string Wet { get; init; }

    public required string DryHead { get; init; }

    public required string Where { get; init; }

    public required string Told { get; init; }

    public required string NotTold { get; init; }

    public required string TrailerHere { get; init; }

    public required string ScaleMark { get; init; }

    public required string Lots { get; init; }

    public required string Lot { get; init; }

    public required string InHand { get; init; }

    public required string LotsNone { get; init; }

    public required string Calls { get; init; }

    public required string CallsNone { get; init; }

    public required string CallDump { get; init; }

    public required string CallDrainHour { get; init; }

    public required string By { get; init; }

    public required string What { get; init; }

    public required string Waiting { get; init; }

    public required string Keep { get; init; }

    public required string Back { get; init; }

    public required string Yes { get; init; }

    public required string No { get; init; }
}
