using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season;

internal sealed partial class FieldFold
{
    /// <summary>Readings nearer together than this are of one round.</summary>
    private static readonly TimeSpan oneRound = TimeSpan.FromHours(12);

    private static readonly TimeSpan oneLook = TimeSpan.FromMinutes(30);

    private readonly Dictionary<int, (DepthNote Note, MarkId Mark)> readings = []; // 0 is the field as a whole

    private void TakeWater(Mark mark, CheckWater water)
    {
        if (Land is { Basins.Length: > 0 } land && water.Check > land.Basins.Length)
            Ask(SeasonProblems.UnknownCheck, [mark.Id], ("value", Say.Number(water.Check)), ("limit", Say.Number(land.Basins.Length)));
        // How a check stands now is the newest word; that it was wet once, any word can tell.
        var newer = ground.IsOlderThan(mark) || Season is null or { ChecksWet: null, Stage: < FieldStage.Full };
        var at = Local(mark.Happened);
        switch (water.Water)
        {
            case WaterSeen.Dry when newer:
                checks.Dry(water.Check, at);
                break;
            case WaterSeen.Full:
                if (!checks.Of(water.Check).IsWet) Ask(SeasonProblems.FullBeforeWet, [mark.Id], ("value", Say.Number(water.Check)), ("limit", Shown(mark.Happened)));
                if (newer) checks.Wetten(water.Check, at, seen: true);
                checks.Fill(water.Check, at);
                break;
            case WaterSeen.Wet or WaterSeen.Reflooded when newer:
                checks.Wetten(water.Check, at, seen: true);
                break;
            case WaterSeen.Wet:
                checks.Remember(water.Check, at);
                break;
            default:
                break;
        }

        if (Season is not null) FollowWater(water.Water, at);
    }

    private void FollowWater(WaterSeen water, DateTimeOffset at)
    {
        if (water != WaterSeen.Dry && Season!.Stage < FieldStage.Flooding) Season = Advanced(Season, FieldStage.Flooding);
        if (water != WaterSeen.Dry) Season = Season! with { FirstWater = Season.FirstWater ?? at };
        if (Season!.Stage == FieldStage.Flooding) Season = Season with { ChecksWet = Land is { Basins.Length: > 0 } land ? Math.Min(checks.Wet, land.Basins.Length) : checks.Wet };
        if (Season.Stage == FieldStage.Flooding && checks.AllFull) Season = Season with { Stage = FieldStage.Full, FullSince = Season.FullSince ?? at };
    }

    private void TakeDepth(Mark mark, DepthRead read)
    {
        var note = new DepthNote(read.Depth, Local(mark.Happened), mark.By, mark.Sure);
        var place = read.Check ?? 0;
        if (readings.TryGetValue(place, out var last) && last.Note.By != mark.By && note.At - last.Note.At <= oneLook && Math.Abs((note.Depth - last.Note.Depth).Inches) > 1)
        {
            Ask(SeasonProblems.DepthsDiffer, [last.Mark, mark.Id], ("by", mark.By), ("other", last.Note.By), ("value", Inches(note.Depth)), ("limit", Inches(last.Note.Depth)));
        }

        readings[place] = (note, mark.Id);
        if (read.Check is { } check) checks.Read(check, note);
        else depth = note;
        if (Season is not null && (ground.IsOlderThan(mark) || !depthTold)) Season = Season with { Depth = MeanDepth(note.At) };
    }

    /// <summary>The newest word for the field as a whole, or the checks read since, each by its acres.</summary>
    private WaterDepth? MeanDepth(DateTimeOffset newest)
    {
        ImmutableArray<(int Check, DepthNote Note)> round =
            [.. readings.Where(r => r.Key > 0 && newest - r.Value.Note.At <= oneRound && (depth is null || r.Value.Note.At > depth.At)).Select(r => (r.Key, r.Value.Note)).OrderBy(r => r.Key)];
        if (round.IsEmpty) return depth?.Depth;
        var land = round.Sum(r => AcresOf(r.Check));
        return round.Aggregate(WaterDepth.Zero, (sum, r) => sum + (r.Note.Depth * (AcresOf(r.Check) / land)));
    }

    private double AcresOf(int check) => Land?.Basins.FirstOrDefault(b => b.Number == check) is { } basin && basin.Area > Area.Zero ? basin.Area.Acres : 1;

    private static string Inches(WaterDepth depth) => Say.Number(depth.Inches, 1) + " in";
}
