using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>
/// Tells a mark again in the reader's language and units: what happened, in the words of somebody who was there. Who said so
/// and when stands beside it, not in it.
/// </summary>
public sealed partial class MarkTelling(Telling tell)
{
    private StoryWords Words => tell.Words.Story;

    /// <summary>What a fact says, its field left out where the page is about that field.</summary>
    public string Say(MarkFact fact) => Water(fact) ?? Ground(fact) ?? Held(fact) ?? Seed(fact) ?? Air(fact) ?? Harvest(fact) ?? Cost(fact) ?? People(fact);

    private string? Water(MarkFact fact) => fact switch
    {
        CheckWater f => Fill(Seen(f.Water), ("n", Count(f.Check))),
        DepthRead { Check: { } check } f => Fill(Words.DepthAt, ("depth", tell.Depth(f.Depth)), ("n", Count(check))),
        DepthRead f => Fill(Words.DepthWhole, ("depth", tell.Depth(f.Depth))),
        BoardsSet f => Fill(Words.Boards, ("n", Count(f.Box)), ("depth", tell.Depth(f.Height))),
        FlowSeen f => Joined(Fill(Words.FlowSeen, ("source", f.Source), ("flow", tell.Flow(f.Flow))), f.How),
        WaterOrdered f => Joined(Fill(Words.Ordered, ("source", f.Source), ("flow", tell.Flow(f.Flow)), ("when", tell.NearMoment(f.From)), ("state", Order(f.State))), f.OrderNumber, f.ByVoice ? Words.ByVoice : null),
        SourceSwitched f => Fill(f.Up ? Words.SourceUp : Words.SourceDown, ("source", f.Source)),
        WaterCurtailed { Left: null } f => Fill(Words.CurtailedNoLonger, ("source", f.Source), ("when", tell.NearMoment(f.From))),
        WaterCurtailed { Left: { } left } f => f.Until is { } until
            ? Fill(Words.CurtailedUntil, ("source", f.Source), ("flow", tell.Flow(left)), ("when", tell.NearMoment(f.From)), ("until", tell.NearMoment(until)))
            : Fill(Words.Curtailed, ("source", f.Source), ("flow", tell.Flow(left)), ("when", tell.NearMoment(f.From))),
        DitchesJoined f => Fill(f.Joined ? tell.Words.Ditch.MarkJoined : tell.Words.Ditch.MarkParted, ("one", f.Source), ("other", f.Other)),
        CapShared f => f.Cap is { } cap ? Fill(tell.Words.Ditch.MarkCap, ("name", f.Name), ("sources", string.Join(" + ", f.Sources)), ("cap", tell.Flow(cap))) : Fill(tell.Words.Ditch.MarkCapOver, ("name", f.Name)),
        TailwaterWaits f => f.Full is { } full ? Fill(tell.Words.Ditch.MarkWaits, ("source", f.Source), ("land", tell.Land(full)), ("fields", string.Join(", ", f.Fields))) : Fill(tell.Words.Ditch.MarkWaitsNone, ("source", f.Source)),
        FaultFound f => Fault(f),
        FaultMended => Words.Mended,
        _ => null,
    };

    private string Fault(FaultFound fault)
    {
        var what = fault switch
        {
            { Kind: FaultKind.Levee, Check: { } above, ToCheck: { } below } => Fill(Words.FaultLeveeBetween, ("n", Count(above)), ("m", Count(below))),
            { Kind: FaultKind.Box, Box: { } box } => Fill(Words.FaultBoxNumber, ("n", Count(box))),
            { Kind: FaultKind.Levee } => Words.FaultLevee,
            { Kind: FaultKind.Box } => Words.FaultBox,
            { Kind: FaultKind.Pump } => Words.FaultPump,
            _ => Words.FaultGate,
        };
        if (fault.Check is { } check && fault.ToCheck is null) what = Fill(Words.FaultAt, ("fault", what), ("n", Count(check)));
        return fault.Source is { } source ? source + ": " + what : what;
    }

    private string? Ground(MarkFact fact) => fact switch
    {
        StageReached f => Fill(Words.StageNow, ("stage", StageNames.Of(f.Stage, Words))),
        FieldCorrected f => Fill(Words.Corrected, ("what", Joined(
            f.Net is { } net ? Fill(Words.NetNow, ("land", tell.Land(net))) : null,
            f.Gross is { } gross ? Fill(Words.GrossNow, ("land", tell.Land(gross))) : null,
            f.Certified is { } held ? Fill(Words.CertifiedNow, ("land", tell.Land(held))) : null,
            f.Rate is { } rate ? Fill(Words.RateNow, ("rate", tell.Rate(rate) + " " + tell.RateUnit)) : null,
            f.Variety is { } variety ? Fill(Words.VarietyNow, ("variety", variety)) : null,
            f.Name is { } name ? Fill(Words.NameNow, ("name", name)) : null))),
        HazardSeen f => Joined(
            Fill(f.What switch { HazardSighting.New => tell.Words.Hazard.SeenMark, HazardSighting.Gone => tell.Words.Hazard.GoneMark, _ => tell.Words.Hazard.ThereMark }, ("name", f.Name)),
            f.Kind is { } kind ? MapSpeech.Kind(kind, tell.Words.Map) : null, f.Height is { } high ? tell.Long(high) : null),
        BoundaryDrawn f => Fill(Words.EdgeNow, ("land", tell.Land(Watersown.Land.GeodesicArea.Of(f.ToBoundary())))),
        RingsCounted f => Fill(Words.Counted, ("n", Count(f.Rings.Count)), ("zone", f.Zone)),
        Scouted f => f.What + ": " + f.Seen,
        Noted f => f.Text,
        Photographed => Words.Photo,
        WarmthRead f => Fill(Words.Warmth, ("high", tell.Warm(f.High)), ("low", tell.Warm(f.Low)), ("day", tell.ShortDay(f.Day))),
        _ => null,
    };

    private string? Held(MarkFact fact) => fact switch
    {
        TreatmentTold f => Joined(
            Fill(f.State switch { Holds.TreatmentState.Booked => tell.Words.Hold.MarkBooked, Holds.TreatmentState.Applied => tell.Words.Hold.MarkApplied, _ => tell.Words.Hold.MarkCalledOff },
                f.State == Holds.TreatmentState.CalledOff ? [("product", HoldSaid.Name(f.What))] : [("product", HoldSaid.Name(f.What)), ("window", HoldSaid.Days(new Holds.DaySpan(f.What.From, f.What.Until), tell))]),
            f.What.Rule.Days is { } days && f.State != Holds.TreatmentState.CalledOff ? Fill(tell.Words.Hold.MarkHold, ("n", Count(days))) : null),
        WaterWished f => f.Days is { } days
            ? Fill(tell.Words.Hold.MarkWish, ("want", HoldSaid.Wish(f.Wish, null, tell.Words.Hold)), ("window", HoldSaid.Days(days, tell)))
            : Fill(tell.Words.Hold.MarkWishOver, ("want", HoldSaid.Wish(f.Wish, null, tell.Words.Hold))),
        HeldWaterGone f => Joined(tell.Words.Hold.MarkGone, f.Reason, f.Reference),
        HoldSettingsTold f => Fill(tell.Words.Hold.MarkSettings, ("n", Count((int)f.Settings.Counting))),
        _ => null,
    };

    private string? Seed(MarkFact fact) => fact switch
    {
        BatchInSoak f => Joined(Fill(Words.InSoak, ("batch", f.Batch)), Dry(f.Dry), f.Variety, f.MeantFor.IsEmpty ? null : Fill(Words.For, ("field", string.Join(", ", f.MeantFor)))),
        BatchDrained f => Fill(Words.Drained, ("batch", f.Batch)),
        BatchDumped f => Joined(Fill(Words.Dumped, ("batch", f.Batch)), Dry(f.Dry)),
        TrailerSeen f => Joined(Fill(Words.TrailerSeen, ("n", f.Number)), f.Batch is { } batch ? Fill(Words.OfBatch, ("batch", batch)) : null, Wet(f.Weighed), f.Field is { } field ? Fill(Words.For, ("field", field)) : null, f.Place is { } place ? Fill(Words.At, ("place", place)) : null),
        SeedLeft f => Joined(Fill(Words.SeedLeft, ("n", f.Trailer)), Wet(f.Left)),
        _ => null,
    };

    private string? Dry(DrySeed? seed) => seed is { } dry ? Fill(Words.DryWeight, ("n", Wording.Say.Number(tell.Whole(dry))), ("unit", tell.MassUnit)) : null;

    private string? Wet(SoakedSeed? seed) => seed is { } wet ? Fill(Words.WetWeight, ("n", Wording.Say.Number(tell.Whole(wet))), ("unit", tell.MassUnit)) : null;

    private string Seen(WaterSeen water) => water switch
    {
        WaterSeen.Wet => Words.CheckWet,
        WaterSeen.Full => Words.CheckFull,
        WaterSeen.Dry => Words.CheckDry,
        _ => Words.CheckReflooded,
    };

    private string Order(OrderState state) => state switch
    {
        OrderState.Asked => Words.OrderAsked,
        OrderState.Accepted => Words.OrderAccepted,
        OrderState.Running => Words.OrderRunning,
        OrderState.Changed => Words.OrderChanged,
        _ => Words.OrderEnded,
    };

    private static string Count(int value) => Telling.Count(value);

    private static string Fill(string sentence, params ReadOnlySpan<(string Name, string Text)> facts) => Template.Fill(sentence, facts);

    private static string Joined(params ReadOnlySpan<string?> parts) => string.Join(", ", parts.ToArray().Where(p => !string.IsNullOrEmpty(p)));
}
