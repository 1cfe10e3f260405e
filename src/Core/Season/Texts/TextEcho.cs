using System.Diagnostics;
using System.Globalization;
using Watersown.Wording;

namespace Watersown.Season.Texts;

/// <summary>
/// Says a fact back in the words of a text message, short and in US units as crew write; sent in, the line is understood to
/// say the same.
/// </summary>
/// <param name="language">The sender's language.</param>
internal sealed class TextEcho(Language language)
{
    private readonly EchoWords words = Words.In(language).Echo;

    private readonly StoryWords story = Words.In(language).Story;

    private readonly CommonWords common = Words.In(language).Common;

    public string Say(MarkFact fact) => Water(fact) ?? Ground(fact) ?? Seed(fact) ?? Air(fact);

    /// <summary>There are words for facts of its sort.</summary>
    public static bool Knows(MarkFact fact) => fact switch
    {
        FaultFound { Kind: FaultKind.Levee or FaultKind.Box } f => f.Field is not null,
        FaultFound f => f.Source is not null,
        WaterCurtailed f => f is { Left: not null, Until: null },
        CheckWater or DepthRead or BoardsSet or FlowSeen or SourceSwitched or StageReached or Scouted or Noted => true,
        BatchInSoak or BatchDrained or BatchDumped or TrailerSeen or SeedLeft or FieldSown or LoadGone or StoodDown or WindSeen => true,
        _ => false,
    };

    private string? Water(MarkFact fact) => fact switch
    {
        CheckWater f => Fill(words.Check, ("field", f.Field), ("n", Count(f.Check)), ("water", Seen(f.Water))),
        DepthRead { Check: { } check } f => Fill(words.DepthCheck, ("field", f.Field), ("n", Count(check)), ("depth", Depth(f.Depth))),
        DepthRead f => f.Field + " " + Depth(f.Depth),
        BoardsSet f => Fill(words.Boards, ("field", f.Field), ("n", Count(f.Box)), ("depth", Depth(f.Height))),
        FlowSeen f => Fill(words.Flow, ("source", f.Source), ("flow", Plain(f.Flow.CubicFeetPerSecond) + " " + common.CubicFeetPerSecond)),
        WaterCurtailed { Left: { } left } f => Fill(words.Curtailed, ("source", f.Source), ("flow", Plain(left.CubicFeetPerSecond) + " " + common.CubicFeetPerSecond), ("day", When.Day(new DateOnly(f.From.Year, f.From.Month, f.From.Day), language))),
        SourceSwitched f => Fill(f.Up ? words.SourceOn : words.SourceOff, ("source", f.Source)),
        FaultFound f => Fault(f),
        _ => null,
    };

    private string Fault(FaultFound f) => f switch
    {
        { Kind: FaultKind.Levee, Check: { } from, ToCheck: { } to } => Fill(words.LeveeOutAt, ("field", f.Field!), ("from", Count(from)), ("to", Count(to))),
        { Kind: FaultKind.Levee, Check: { } check } => Fill(words.LeveeOutCheck, ("field", f.Field!), ("n", Count(check))),
        { Kind: FaultKind.Levee } => Fill(words.LeveeOut, ("field", f.Field!)),
        { Kind: FaultKind.Box, Box: { } box } => Fill(words.BoxLeaks, ("field", f.Field!), ("n", Count(box))),
        { Kind: FaultKind.Box } => Fill(words.BoxLeaksSome, ("field", f.Field!)),
        _ => Fill(words.Broken, ("what", f.Kind == FaultKind.Pump ? words.PumpWord : words.GateWord), ("place", f.Source!)),
    };

    private string? Ground(MarkFact fact) => fact switch
    {
        StageReached f => f.Field + " " + StageNames.Of(f.Stage, story),
        Scouted f => f.Field + " " + (f.What == TextMarks.Leaf ? words.Leaf : words.Shrimp) + ": " + Seen(f.Seen),
        Noted { Field: { } field } f => Fill(words.NoteField, ("field", field), ("text", f.Text)),
        Noted f => Fill(words.Note, ("text", f.Text)),
        _ => null,
    };

    private string Seen(string seen) => seen switch { "none" => words.SeenNone, "small" => words.SeenSmall, "large" => words.SeenLarge, _ => seen };

    private string Seen(WaterSeen water) => water switch
    {
        WaterSeen.Wet => words.Wet,
        WaterSeen.Full => words.Full,
        WaterSeen.Dry => words.Dry,
        WaterSeen.Reflooded => words.Reflooded,
        _ => throw new UnreachableException(),
    };

    private string? Seed(MarkFact fact) => fact switch
    {
        BatchInSoak f => Dry(Fill(words.InSoak, ("batch", f.Batch)), f.Dry),
        BatchDrained f => Fill(words.Drained, ("batch", f.Batch)),
        BatchDumped f => Dry(Fill(words.Dumped, ("batch", f.Batch)), f.Dry),
        TrailerSeen f => Trailer(f),
        SeedLeft f => Fill(words.Left, ("n", f.Trailer), ("weight", Wording.Say.Number(f.Left.Pounds) + " lb")),
        _ => null,
    };

    private string Trailer(TrailerSeen f)
    {
        var said = Fill(words.Trailer, ("n", f.Number));
        if (f.Batch is { } batch) said = Fill(words.WithBatch, ("what", said), ("batch", batch));
        if (f.Field is { } field) said = Fill(words.WithField, ("what", said), ("field", field));
        said = Wet(said, f.Weighed);
        return f.Place is null ? said : Fill(words.Loaded, ("what", said));
    }

    private string Air(MarkFact fact) => fact switch
    {
        FieldSown f => Sown(f),
        LoadGone f => Load(f),
        StoodDown { Field: { } field } f => Fill(words.StoodDownField, ("field", field), ("day", When.Day(f.Day, language)), ("why", StageNames.Of(f.Why, story))),
        StoodDown f => Fill(words.StoodDown, ("day", When.Day(f.Day, language)), ("why", StageNames.Of(f.Why, story))),
        WindSeen { From: { } from } f => Fill(words.WindFrom, ("speed", Speed(f.Sustained)), ("gust", Speed(f.Gust)), ("from", Plain(from.Degrees) + "°")),
        WindSeen f => Fill(words.Wind, ("speed", Speed(f.Sustained)), ("gust", Speed(f.Gust))),
        Told f => f.Person + ": " + Told(f.State),
        _ => throw new UnreachableException(),
    };

    private string Sown(FieldSown f)
    {
        var said = Fill(f.Resow ? words.Resown : words.Sown, ("field", f.Field));
        if (f.Land is { } land) said += " " + Plain(land.Acres) + " " + common.Acres;
        if (f.Batch is { } batch) said = Fill(words.WithBatch, ("what", said), ("batch", batch));
        said = Dry(said, f.Dry);
        return f.Loads is { } loads ? Fill(words.WithLoads, ("what", said), ("n", Count(loads))) : said;
    }

    private string Load(LoadGone f)
    {
        var said = f.Number is { } number ? Fill(words.LoadGone, ("field", f.Field), ("n", Count(number))) : Fill(words.LoadGoneSome, ("field", f.Field));
        if (f.Trailer is { } trailer) said = Fill(words.WithTrailer, ("what", said), ("n", trailer));
        return Wet(said, f.Soaked);
    }

    private string Told(ToldState state) => state switch
    {
        ToldState.Told => words.ToldWord,
        ToldState.Heard => words.HeardWord,
        ToldState.Agreed => words.AgreedWord,
        ToldState.NotReached => words.NotReachedWord,
        _ => throw new UnreachableException(),
    };

    private string Dry(string said, DrySeed? dry) => dry is { } seed ? Fill(words.WithDry, ("what", said), ("weight", Wording.Say.Number(seed.Pounds) + " lb")) : said;

    private string Wet(string said, SoakedSeed? wet) => wet is { } seed ? Fill(words.WithWet, ("what", said), ("weight", Wording.Say.Number(seed.Pounds) + " lb")) : said;

    private string Depth(WaterDepth depth) => Plain(depth.Inches) + " " + words.InchWord;

    private string Speed(Speed speed) => Plain(speed.MilesPerHour) + " " + common.MilesPerHour;

    private static string Fill(string sentence, params ReadOnlySpan<(string Name, string Text)> facts) => Template.Fill(sentence, facts);

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Plain(double value) => Math.Round(value, 2, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture);
}
