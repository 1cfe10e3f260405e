using System.Diagnostics;
using System.Globalization;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>
/// Tells in one line what a mark says: in the story of a field, in the logbook, and as the answer to a text message. In US
/// units the line of a fact that a text can tell is itself such a text.
/// </summary>
public sealed partial class FactSpeech
{
    private readonly FactWords words;
    private readonly CommonWords common;
    private readonly Language language;
    private readonly bool metric;
    private readonly TimeSpan offset;

    private FactSpeech(Language language, UnitSystem units, TimeSpan offset) =>
        (this.language, words, common, metric, this.offset) = (language, Words.In(language).Fact, Words.In(language).Common, units == UnitSystem.Metric, offset);

    /// <summary>The line of a fact.</summary>
    /// <param name="fact">What a mark says.</param>
    /// <param name="language">The reader's language.</param>
    /// <param name="units">The reader's units.</param>
    /// <param name="offset">The farm's offset from UTC, for hours.</param>
    public static string Of(MarkFact fact, Language language, UnitSystem units, TimeSpan offset) => new FactSpeech(language, units, offset).Say(fact);

    private string Say(MarkFact fact) => fact switch
    {
        CheckWater f => Fill(words.Check, ("field", f.Field), ("n", Count(f.Check)), ("water", Water(f.Water))),
        DepthRead { Check: { } check } f => Fill(words.DepthCheck, ("field", f.Field), ("n", Count(check)), ("depth", Depth(f.Depth))),
        DepthRead f => f.Field + " " + Depth(f.Depth),
        BoardsSet f => Fill(words.Boards, ("field", f.Field), ("n", Count(f.Box)), ("depth", Depth(f.Height))),
        FlowSeen f => Fill(words.Flow, ("source", f.Source), ("flow", Flow(f.Flow))),
        WaterOrdered f => Fill(words.Order, ("source", f.Source), ("flow", Flow(f.Flow)), ("when", Moment(f.From)), ("state", Order(f.State))),
        SourceSwitched f => Fill(f.Up ? words.SourceOn : words.SourceOff, ("source", f.Source)),
        FaultFound f => Fault(f),
        FaultMended => words.Mended,
        StageReached f => f.Field + " " + Stage(f.Stage),
        FieldCorrected f => f.Field + ": " + string.Join(", ", Corrections(f)),
        BoundaryDrawn f => Fill(words.Edge, ("field", f.Field)),
        RingsCounted f => Fill(words.Rings, ("field", f.Field), ("zone", f.Zone), ("n", Count(f.Rings.Count))),
        Scouted f => f.Field + " " + Looked(f.What) + ": " + Seen(f.Seen),
        Noted { Field: { } field } f => Fill(words.NoteField, ("field", field), ("text", f.Text)),
        Noted f => Fill(words.Note, ("text", f.Text)),
        Photographed f => f.Field is { } field ? Fill(words.PhotoField, ("field", field)) : words.Photo,
        BatchInSoak or BatchDrained or BatchDumped or TrailerSeen or SeedLeft => Seed(fact),
        FieldSown or LoadGone or SlotGiven or StoodDown => Flight(fact),
        WindSeen or ForecastHeard or WarmthRead => Weather(fact),
        UnknownFact f => Fill(words.Unknown, ("kind", f.Kind)),
        _ => Talk(fact),
    };

    private string Fault(FaultFound f)
    {
        var place = f.Field ?? f.Source ?? string.Empty;
        var said = f switch
        {
            { Kind: FaultKind.Levee, Field: { } field, Check: { } from, ToCheck: { } to } => Fill(words.LeveeOutAt, ("field", field), ("from", Count(from)), ("to", Count(to))),
            { Kind: FaultKind.Levee, Field: { } field, Check: { } check } => Fill(words.LeveeOutCheck, ("field", field), ("n", Count(check))),
            { Kind: FaultKind.Levee, Field: { } field } => Fill(words.LeveeOut, ("field", field)),
            { Kind: FaultKind.Box, Field: { } field, Box: { } box } => Fill(words.BoxLeaks, ("field", field), ("n", Count(box))),
            { Kind: FaultKind.Box, Field: { } field } => Fill(words.BoxLeaksSome, ("field", field)),
            _ => Spaced(Fill(words.Broken, ("what", f.Kind switch { FaultKind.Pump => words.PumpWord, FaultKind.Gate => words.GateWord, FaultKind.Levee => words.LeveeWord, _ => words.BoxWord }), ("place", f.Source ?? place))),
        };
        return f.Width is { } width ? Fill(words.Wide, ("what", said), ("width", metric ? Wording.Say.Number(width.Meters, 1) + " m" : Wording.Say.Number(width.Feet, 1) + " ft")) : said;
    }

    private IEnumerable<string> Corrections(FieldCorrected f)
    {
        if (f.Net is { } net) yield return Fill(words.NetIs, ("area", Land(net)));
        if (f.Gross is { } gross) yield return Fill(words.GrossIs, ("area", Land(gross)));
        if (f.Certified is { } certified) yield return Fill(words.CertifiedIs, ("area", Land(certified)));
        if (f.Rate is { } rate) yield return Fill(words.RateIs, ("rate", metric ? Plain(rate.KilogramsPerSquareMeter * 10_000, 1) + " " + common.PerHectare : Plain(rate.PoundsPerAcre, 1) + " " + common.PerAcre));
        if (f.Variety is { } variety) yield return Fill(words.VarietyIs, ("name", variety));
        if (f.Name is { } name) yield return Fill(words.NameIs, ("name", name));
    }

    private string Looked(string what) => what switch { "shrimp" => words.Shrimp, "leaf" => words.Leaf, _ => what };

    private string Seen(string seen) => seen switch { "none" => words.SeenNone, "small" => words.SeenSmall, "large" => words.SeenLarge, _ => seen };

    private string Water(WaterSeen water) => water switch
    {
        WaterSeen.Wet => words.Wet,
        WaterSeen.Full => words.Full,
        WaterSeen.Dry => words.Dry,
        WaterSeen.Reflooded => words.Reflooded,
        _ => throw new UnreachableException(),
    };

    private string Order(OrderState state) => state switch
    {
        OrderState.Asked => words.Asked,
        OrderState.Accepted => words.Accepted,
        OrderState.Running => words.Running,
        OrderState.Changed => words.Changed,
        OrderState.Ended => words.Ended,
        _ => throw new UnreachableException(),
    };

    private string Stage(FieldStage stage) => stage switch
    {
        FieldStage.TooWet => words.StageTooWet,
        FieldStage.Unworked => words.StageUnworked,
        FieldStage.Chiselled => words.StageChiseled,
        FieldStage.Disced => words.StageDisced,
        FieldStage.Planed => words.StagePlaned,
        FieldStage.AquaOn => words.StageAqua,
        FieldStage.Rolled => words.StageRolled,
        FieldStage.Flooding => words.StageFlooding,
        FieldStage.Full => words.Full,
        FieldStage.Sown => words.StageSown,
        _ => throw new UnreachableException(),
    };

    private static string Fill(string sentence, params ReadOnlySpan<(string Name, string Text)> facts) => Template.Fill(sentence, facts);

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Plain(double value, int decimals) => Math.Round(value, decimals, MidpointRounding.AwayFromZero).ToString("0.####", CultureInfo.InvariantCulture);

    private static string Spaced(string text) => string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
