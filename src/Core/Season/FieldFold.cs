using Watersown.Land;
using Watersown.Schedule;
using Watersown.Weather;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>One field as the marks about it go by, from the oldest to the newest.</summary>
internal sealed partial class FieldFold
{
    private readonly string code;
    private readonly GroundTime ground;
    private readonly TimeSpan offset;
    private readonly ImmutableArray<Doubt>.Builder doubts;
    private readonly CheckFold checks;
    private readonly ImmutableArray<StoryLine>.Builder story = ImmutableArray.CreateBuilder<StoryLine>();
    private readonly List<Sowing> sowings = [];

    private readonly List<Sowing> earlier = [];
    private readonly List<LoadNote> loads = [];
    private readonly Dictionary<string, (Mark Mark, RingsCounted Count)> counts = new(StringComparer.OrdinalIgnoreCase);
    private readonly bool depthTold;
    private DepthNote? depth;
    private SoakedSeed? left;
    private DateTimeOffset? scouted;
    private readonly List<(Mark Mark, StageSeen Seen)> stages = [];
    private readonly List<(Mark Mark, PestLooked Look)> looks = [];
    private readonly Dictionary<DateOnly, DayWarmth> flood = [];
    private (Mark Mark, TrackLooked Look)? track;
    private FlightBilled? billed;

    public FieldFold(string code, SeasonState state, Field? land, FieldSeason? season, ImmutableArray<Doubt>.Builder doubts)
    {
        (this.code, Land, Season, this.doubts, offset) = (code, land, season, doubts, state.Offset);
        ground = new GroundTime(season?.AsOf ?? state.Now);
        checks = new CheckFold(land, season);
        depthTold = season?.Depth is not null;
        WasSown = season?.Stage == FieldStage.Sown;
    }

    /// <summary>The field as it now is; none for one that only marks tell of.</summary>
    public Field? Land { get; private set; }

    public FieldSeason? Season { get; private set; }

    /// <summary>The farm document has it sown.</summary>
    public bool WasSown { get; }

    /// <summary>Dry seed that the whole field wants.</summary>
    public DrySeed Wanted(Area land) => (Season?.Rate ?? default) * land;

    /// <summary>The farm document already knew of a sowing told by this mark.</summary>
    public bool KnewOf(Mark mark) => WasSown && !ground.IsOlderThan(mark);

    public FieldBook Book(Area net) => new(code)
    {
        Unknown = Land is null,
        Story = story.ToImmutable(),
        Checks = checks.Books,
        Depth = depth,
        Sowings = [.. sowings],
        SownBefore = [.. earlier],
        Sown = Whole(net) ? net : SownLand < net ? SownLand : net,
        Loads = [.. loads],
        Left = left,
        Counts = [.. counts.Values.OrderBy(c => c.Count.Zone, StringComparer.Ordinal)],
        Stages = [.. stages],
        Looks = [.. looks],
        Flood = [.. flood.Values.OrderBy(f => f.Day)],
        ScoutedAt = scouted,
        Track = track,
        Billed = billed,
    };

    /// <summary>A line that does not count still belongs to the story.</summary>
    public void Tell(StoryLine line) => story.Add(line);

    public void Apply(StoryLine line)
    {
        var (before, landBefore) = (Season, Land);
        Take(line.Mark);
        var changes = before is null || landBefore is null ? [] : Differences(before, Season!, landBefore, Land!);
        if (!changes.IsEmpty && (Season!.AsOf is not { } asOf || asOf < line.Mark.Happened)) Season = Season with { AsOf = Local(line.Mark.Happened) };
        story.Add(line with { Changes = changes });
    }

    private void Take(Mark mark)
    {
        switch (mark.Fact)
        {
            case CheckWater water: TakeWater(mark, water); break;
            case DepthRead read: TakeDepth(mark, read); break;
            case StageReached reached: TakeStage(mark, reached.Stage); break;
            case FieldSown sown: TakeSown(mark, sown); break;
            case LoadGone load: loads.Add(new LoadNote(load.Number, mark.Happened, mark.By) { Trailer = load.Trailer, Soaked = load.Soaked }); break;
            case BoardsSet boards: TakeBoards(mark, boards); break;
            case FieldCorrected or BoundaryDrawn: TakeGround(mark); break;
            case RingsCounted count: (counts[count.Zone], scouted) = ((mark, count), mark.Happened); break;
            case Scouted word: TakeWord(mark, word); break;
            case PestLooked look: looks.Add((mark, look)); scouted = mark.Happened; break;
            case StageSeen seen: stages.Add((mark, seen)); break;
            case FloodWarmth warm when warm.Low <= warm.High: flood[warm.Day] = new DayWarmth(warm.Day, warm.High, warm.Low); break;
            case TrackLooked look: track = (mark, look); break;
            case FlightBilled said: billed = said; break;
            default: break;
        }
    }

    private void TakeBoards(Mark mark, BoardsSet boards)
    {
        if (Land is null || !ground.IsOlderThan(mark)) return;
        Land = Land with { Boxes = [.. Land.Boxes.Select(b => b.Number == boards.Box ? b with { Boards = boards.Height } : b)] };
    }

    private void TakeGround(Mark mark)
    {
        if (Land is null) return;
        var newer = ground.IsOlderThan(mark);
        Land = GroundMarks.Lay(Land, newer ? mark.Fact : GroundMarks.Filling(Land, mark.Fact));
        if (Season is null || mark.Fact is not FieldCorrected said) return;
        Season = newer ? Season with { Rate = said.Rate ?? Season.Rate, Variety = said.Variety ?? Season.Variety } : Season with { Variety = Season.Variety ?? said.Variety };
    }

    /// <summary>What a text message said in words: shrimp there or not, and leaves.</summary>
    private void TakeWord(Mark mark, Scouted word)
    {
        scouted = mark.Happened;
        if (string.Equals(word.What, "shrimp", StringComparison.OrdinalIgnoreCase)) looks.Add((mark, new PestLooked(word.Field, Pest.Shrimp, !string.Equals(word.Seen, "none", StringComparison.OrdinalIgnoreCase))));
        else if (word.What == Texts.TextMarks.Leaf && double.TryParse(word.Seen, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out var leaves) && leaves is >= 1 and < Growth.StagePoint.LeafMost + 1)
            stages.Add((mark, new StageSeen(word.Field, Growth.StagePoint.OfLeaf((int)leaves))));
    }

    /// <summary>Soaked seed left after its sowing.</summary>
    public void LeftOver(SoakedSeed seed) => left = seed;

    /// <summary>A box that leaks, or does no more.</summary>
    public void Leak(int box, bool leaks)
    {
        if (Land is not null) Land = Land with { Boxes = [.. Land.Boxes.Select(b => b.Number == box ? b with { Leaks = leaks } : b)] };
    }

    private static ImmutableArray<FieldChange> Differences(FieldSeason before, FieldSeason after, Field landBefore, Field land)
    {
        var changes = ImmutableArray.CreateBuilder<FieldChange>();
        void If(bool changed, FieldChange change)
        {
            if (changed) changes.Add(change);
        }

        If(before.Stage != after.Stage, FieldChange.Stage);
        If(before.ChecksWet != after.ChecksWet, FieldChange.ChecksWet);
        If(before.FirstWater != after.FirstWater, FieldChange.FirstWater);
        If(before.FullSince != after.FullSince, FieldChange.FullSince);
        If(before.SownAt != after.SownAt, FieldChange.SownAt);
        If(before.Depth != after.Depth, FieldChange.Depth);
        If(landBefore.Net != land.Net, FieldChange.Net);
        If(before.Rate != after.Rate, FieldChange.Rate);
        If(before.Variety != after.Variety, FieldChange.Variety);
        If(landBefore.Name != land.Name, FieldChange.Name);
        If(landBefore.Gross != land.Gross, FieldChange.Gross);
        If(landBefore.Certified != land.Certified, FieldChange.Certified);
        If(!ReferenceEquals(landBefore.Boundary, land.Boundary), FieldChange.Boundary);
        return changes.ToImmutable();
    }

    private DateTimeOffset Local(DateTimeOffset moment) => moment.ToOffset(offset);

    private string Shown(DateTimeOffset moment) => When.Moment(Local(moment));

    private void Ask(ProblemKind kind, ImmutableArray<MarkId> marks, params (string, string)[] facts) =>
        doubts.Add(new Doubt(kind.At(code, facts), marks) { Field = code });
}
