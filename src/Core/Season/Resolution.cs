namespace Watersown.Season;

/// <summary>
/// Which marks count: those that nobody replaced or took back. Marks that correct one and the same thing, however long the
/// chain, are one matter, of which the word put down last counts. A withdrawal takes back what it names, and can itself be
/// taken back.
/// </summary>
internal sealed class Resolution
{
    private readonly Logbook book;
    private readonly Dictionary<MarkId, MarkId> above = [];
    private readonly Dictionary<MarkId, List<Mark>> below = [];
    private readonly Dictionary<MarkId, StoryLine> lines = [];
    private readonly Dictionary<MarkId, MarkId> matters = [];
    private readonly ImmutableArray<Doubt>.Builder doubts = ImmutableArray.CreateBuilder<Doubt>();

    private Resolution(Logbook book) => this.book = book;

    public ImmutableArray<Doubt> Doubts => doubts.ToImmutable();

    /// <summary>Every mark of the logbook with how it stands, in order.</summary>
    public ImmutableArray<StoryLine> Lines => [.. book.Marks.Select(m => lines[m.Id])];

    public static Resolution Of(Logbook book)
    {
        var resolution = new Resolution(book);
        resolution.Link();
        resolution.Cut();
        foreach (var list in resolution.below.Values) list.Clear();
        foreach (var mark in book.Marks)
        {
            if (resolution.above.TryGetValue(mark.Id, out var up)) resolution.Below(up).Add(mark);
        }

        resolution.Decide(resolution.FromTheEnds());
        return resolution;
    }

    /// <summary>The mark that now speaks for another: itself, or what replaced it.</summary>
    public MarkId SpeaksFor(MarkId id) => lines.TryGetValue(id, out var line) && line is { Standing: Standing.Replaced, By: { } by } ? by : id;

    private void Link()
    {
        foreach (var mark in book.Marks)
        {
            if (mark.Replaces is { } other) above[mark.Id] = other;
        }
    }

    /// <summary>Every circle loses one link, that of the mark put down first.</summary>
    private void Cut()
    {
        var done = new HashSet<MarkId>();
        foreach (var mark in book.Marks)
        {
            var path = new List<MarkId>();
            var on = new Dictionary<MarkId, int>();
            var at = mark.Id;
            while (!done.Contains(at) && !on.ContainsKey(at))
            {
                on[at] = path.Count;
                path.Add(at);
                if (!above.TryGetValue(at, out var up)) break;
                at = up;
            }

            if (!done.Contains(at) && on.TryGetValue(at, out var start) && above.ContainsKey(path[^1]) && above[path[^1]] == at) CutCircle([.. path[start..].Select(id => book.Find(id)!)]);
            done.UnionWith(path);
        }
    }

    private void CutCircle(ImmutableArray<Mark> circle)
    {
        above.Remove(circle.Min(MarkOrder.Entered)!.Id);
        doubts.Add(new Doubt(
            SeasonProblems.CorrectionCircle.At(string.Empty, ("value", Wording.Say.Number(circle.Length))),
            [.. circle.Order(MarkOrder.Entered).Select(m => m.Id)]));
    }

    private List<Mark> Below(MarkId id)
    {
        if (!below.TryGetValue(id, out var list)) below[id] = list = [];
        return list;
    }

    /// <summary>Marks with those that correct them always before them.</summary>
    private List<Mark> FromTheEnds()
    {
        var open = book.Marks.ToDictionary(m => m.Id, m => below.TryGetValue(m.Id, out var list) ? list.Count : 0);
        var order = book.Marks.Where(m => open[m.Id] == 0).ToList();
        for (var i = 0; i < order.Count; i++)
        {
            if (above.TryGetValue(order[i].Id, out var up) && open.ContainsKey(up) && --open[up] == 0) order.Add(book.Find(up)!);
        }

        return order;
    }

    private void Decide(List<Mark> fromTheEnds)
    {
        var live = new HashSet<MarkId>(); // somebody below it speaks
        foreach (var mark in fromTheEnds)
        {
            var under = below.TryGetValue(mark.Id, out var list) ? list : [];
            var taker = under.Where(m => lines[m.Id].Standing == Standing.Withdraws).Max(MarkOrder.Entered);
            var speaks = under.Exists(m => live.Contains(m.Id) || lines[m.Id].Standing == Standing.Stands);
            if (speaks) live.Add(mark.Id);
            lines[mark.Id] = taker is not null ? new StoryLine(mark, Standing.Withdrawn) { By = taker.Id }
                : mark.Fact is not Withdrawn ? new StoryLine(mark, Standing.Stands)
                : speaks ? new StoryLine(mark, Standing.Replaced) : new StoryLine(mark, Standing.Withdraws);
        }

        for (var i = fromTheEnds.Count - 1; i >= 0; i--)
        {
            var mark = fromTheEnds[i];
            matters[mark.Id] = above.TryGetValue(mark.Id, out var up) ? matters.GetValueOrDefault(up, up) : mark.Id;
        }

        var speakers = fromTheEnds.Where(m => lines[m.Id].Standing == Standing.Stands).GroupBy(m => matters[m.Id]);
        foreach (var matter in speakers) Settle([.. matter], live);
    }

    private void Settle(ImmutableArray<Mark> matter, HashSet<MarkId> live)
    {
        ImmutableArray<Mark> last = [.. matter.Where(m => !live.Contains(m.Id)).OrderDescending(MarkOrder.Entered)];
        foreach (var mark in matter.Where(m => m.Id != last[0].Id)) lines[mark.Id] = new StoryLine(mark, Standing.Replaced) { By = last[0].Id };
        if (last.Length < 2) return;
        doubts.Add(new Doubt(
            SeasonProblems.TwoCorrections.At(last[0].Fact.AboutField ?? string.Empty, ("by", last[0].By), ("other", last[1].By), ("value", last[0].By)),
            [.. last.Select(m => m.Id)])
        {
            Field = last[0].Fact.AboutField,
        });
    }
}
