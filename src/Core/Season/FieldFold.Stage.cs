using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season;

internal sealed partial class FieldFold
{
    /// <summary>Two words of one sowing lie within this.</summary>
    private static readonly TimeSpan oneSowing = TimeSpan.FromHours(12);

    /// <summary>A second sowing this soon is no second season.</summary>
    private static readonly TimeSpan oneSeason = TimeSpan.FromDays(30);

    /// <summary>This much of a field sown is all of it: nobody measures the last turn.</summary>
    private const double WholeShare = 0.98;

    private bool wholeTold;

    private Area SownLand => sowings.Aggregate(Area.Zero, (sum, s) => sum + s.Land);

    private bool Whole(Area net) => wholeTold || Season?.Stage == FieldStage.Sown || (net > Area.Zero && SownLand / net >= WholeShare);

    private void TakeStage(Mark mark, FieldStage stage)
    {
        if (stage == FieldStage.Sown)
        {
            TakeSown(mark, new FieldSown(code));
            return;
        }

        if (Season is null) return;
        // A word from before the farm's own can carry a field forward, never back.
        if (!ground.IsOlderThan(mark) && stage <= Season.Stage && !Season.StageUntold) return;
        if (stage < Season.Stage && !Season.StageUntold)
        {
            Ask(SeasonProblems.StageBack, [mark.Id], ("limit", StageWords.Of(Season.Stage)), ("value", StageWords.Of(stage)));
            TurnBack(stage);
            return;
        }

        var at = Local(mark.Happened);
        Season = Advanced(Season, stage);
        if (stage == FieldStage.AquaOn) Season = Season with { AquaOn = Season.AquaOn ?? Day(at) };
        if (stage == FieldStage.Flooding) Season = Season with { FirstWater = Season.FirstWater ?? at };
        if (stage != FieldStage.Full) return;
        checks.FillAll();
        Season = Season with { FullSince = Season.FullSince ?? at, ChecksWet = Land is { Basins.Length: > 0 } land ? land.Basins.Length : null };
    }

    private void TurnBack(FieldStage stage)
    {
        Season = Season! with { Stage = stage, SownAt = null, WorkLeft = null };
        if (stage < FieldStage.Full) Season = Season with { FullSince = null };
        if (stage < FieldStage.Flooding)
        {
            Season = Season with { FirstWater = null, ChecksWet = null };
            checks.Clear();
        }

        wholeTold = false;
        sowings.Clear();
    }

    /// <summary>Further along, with the ground work that this proves done taken off what is left.</summary>
    private static FieldSeason Advanced(FieldSeason season, FieldStage stage) => season with
    {
        Stage = stage,
        StageUntold = false,
        FitFrom = null,
        WorkLeft = season.WorkLeft is { } left && Done(stage) is { } done ? [.. left.Where(w => w > done)] : null,
    };

    private static GroundWork? Done(FieldStage stage) => stage switch
    {
        FieldStage.Chiselled => GroundWork.Chisel,
        FieldStage.Disced => GroundWork.Disc,
        FieldStage.Planed => GroundWork.Plane,
        FieldStage.AquaOn => GroundWork.Aqua,
        _ => null,
    };

    private void TakeSown(Mark mark, FieldSown sown)
    {
        var at = Local(mark.Happened);
        var net = Land?.Net ?? Area.Zero;
        if (sown.Resow)
        {
            earlier.AddRange(sowings);
            sowings.Clear();
            wholeTold = false;
        }
        else if (LastWhole(net) is { } last && at - last < oneSeason)
        {
            // The same sowing told by two people is one sowing.
            if (at - last <= oneSowing && last - at <= oneSowing)
            {
                if (sowings.Count > 0) sowings[^1] = sowings[^1] with { Batch = sowings[^1].Batch ?? sown.Batch, Dry = sowings[^1].Dry ?? sown.Dry };
                return;
            }

            if (at > last) Ask(SeasonProblems.SownTwice, [mark.Id], ("value", Shown(at)), ("limit", Shown(last)));
        }

        sowings.Add(new Sowing(at, sown.Land ?? net, mark.Id) { Part = sown.Part, Batch = sown.Batch, Dry = sown.Dry, Resow = sown.Resow });
        if (sown.Land is null) wholeTold = true;
        if (Season is null) return;
        if (KnewOf(mark))
        {
            Season = Season with { SownAt = Season.SownAt ?? at };
            return;
        }

        if (Season.Stage == FieldStage.Flooding) Ask(SeasonProblems.SownBeforeFull, [mark.Id], ("value", Shown(at)));
        if (!wholeTold && !(net > Area.Zero && SownLand / net >= WholeShare)) return;
        checks.FillAll();
        Season = Advanced(Season, FieldStage.Sown) with { SownAt = at };
    }

    /// <summary>The mark told of a sowing that was not known before.</summary>
    public bool TookSowing(MarkId mark) => sowings.Exists(s => s.Mark == mark);

    private DateTimeOffset? LastWhole(Area net) => Whole(net) ? sowings.Count > 0 ? sowings[^1].At : Season?.SownAt : null;

    /// <summary>Said once, when all marks have gone by: a field sown in part.</summary>
    public void Close()
    {
        if (Season is null || Land is null || sowings.Count == 0 || Whole(Land.Net)) return;
        Ask(SeasonProblems.PartSown, [.. sowings.Select(s => s.Mark)], ("value", Acres(SownLand)), ("limit", Acres(Land.Net)));
    }

    private static string Acres(Area land) => Say.Number(land.Acres, 1) + " ac";

    private static DateOnly Day(DateTimeOffset moment) => new(moment.Year, moment.Month, moment.Day);
}
