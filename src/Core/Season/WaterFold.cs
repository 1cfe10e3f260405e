using Watersown.Land;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>Sources, their orders, and what is broken, as the marks go by.</summary>
internal sealed class WaterFold
{
    private readonly SeasonState ground;
    private readonly GroundTime time;
    private readonly ImmutableArray<Doubt>.Builder doubts;
    private readonly List<string> order = [];
    private readonly Dictionary<string, SourceFold> sources = new(StringComparer.OrdinalIgnoreCase);

    public WaterFold(SeasonState ground, ImmutableArray<Doubt>.Builder doubts)
    {
        (this.ground, time, this.doubts) = (ground, new GroundTime(ground.Now), doubts);
        foreach (var source in ground.Farm.Sources) Open(source.Code, source);
    }

    public void Apply(StoryLine line)
    {
        if (line.Mark.Fact.AboutSource is not { } code) return;
        var fold = sources.GetValueOrDefault(code);
        if (fold is null)
        {
            var nearest = Nearest.Of(code, ground.Farm.Sources.Select(s => s.Code));
            doubts.Add(new Doubt(SeasonProblems.UnknownSource.At(string.Empty, ("value", code), ("nearest", nearest is null ? string.Empty : " " + nearest + "?")), [line.Mark.Id]) { Field = line.Mark.Fact.AboutField });
            fold = Open(code, null);
        }

        fold.Take(line, time);
    }

    public void Mend(FaultFound fault, Mark mark)
    {
        if (fault is { Kind: FaultKind.Pump or FaultKind.Gate, Source: { } code } && sources.TryGetValue(code, out var source)) source.Switch(up: true, mark, time);
    }

    public (ImmutableArray<SourceBook> Books, ImmutableArray<WaterSource> Sources) Close(DateTimeOffset now)
    {
        ImmutableArray<SourceFold> all = [.. order.Select(code => sources[code])];
        foreach (var fold in all) fold.Close(now, ground, time, doubts);
        return ([.. all.Select(f => f.Book())], [.. all.Select(f => f.Source).OfType<WaterSource>()]);
    }

    private SourceFold Open(string code, WaterSource? source)
    {
        var fold = new SourceFold(code, source);
        if (!sources.TryAdd(code, fold)) return sources[code];
        order.Add(code);
        return fold;
    }
}
