namespace Watersown.Water.Flood;

/// <summary>Takes a network apart into what hangs together: fields that share nothing need not share their steps.</summary>
internal static class FloodParts
{
    public static List<FloodPart> Of(FloodNetwork network)
    {
        var root = Roots(network);
        var (checks, boxes, ditches) = (new Dictionary<int, List<int>>(), new Dictionary<int, List<int>>(), new Dictionary<int, List<int>>());
        var place = new int[network.Checks.Length];
        for (var i = 0; i < place.Length; i++)
        {
            var own = ListOf(checks, Find(root, i));
            place[i] = own.Count;
            own.Add(i);
        }

        for (var b = 0; b < network.Boxes.Length; b++) ListOf(boxes, Find(root, network.Boxes[b].From)).Add(b);
        for (var d = 0; d < network.Ditches.Length; d++) ListOf(ditches, Find(root, network.Checks.Length + d)).Add(d);
        var parts = checks.ToDictionary(p => p.Key, p => new FloodPart(network, p.Value, boxes.GetValueOrDefault(p.Key, []), ditches.GetValueOrDefault(p.Key, []), place));
        foreach (var levee in network.Levees)
        {
            parts[Find(root, levee.From)].Levees.Add(new LeveeLaw(place[levee.From], levee.To is { } to ? place[to] : -1,
                levee.Conductivity.MetersPerSecond * (levee.Length / levee.Width)));
        }

        AddChanges(network, parts, root, place);
        return [.. parts.OrderBy(p => p.Value.Checks[0]).Select(p => p.Value)];
    }

    private static void AddChanges(FloodNetwork network, Dictionary<int, FloodPart> parts, int[] root, int[] place)
    {
        foreach (var (inlet, flow) in FloodShares.Of(network))
        {
            var (part, before) = (parts[Find(root, inlet.To)], 0.0);
            foreach (var step in flow)
            {
                part.Changes.Add(new FloodChange(step.From.TotalSeconds, FloodChangeKind.Inflow, place[inlet.To], step.Flow.CubicMetersPerSecond - before));
                before = step.Flow.CubicMetersPerSecond;
            }
        }

        foreach (var move in network.Moves)
        {
            var part = parts[Find(root, network.Boxes[move.Box].From)];
            part.Changes.Add(new FloodChange(move.At.TotalSeconds, FloodChangeKind.Boards, part.Boxes.IndexOf(move.Box), move.Boards.Meters));
        }

        foreach (var part in parts.Values)
        {
            part.Changes.AddRange(network.Air.Select(a => new FloodChange(a.From.TotalSeconds, FloodChangeKind.Air, 0, a.Evaporation.MetersPerSecond, a.Rain.MetersPerSecond)));
            // Equal moments keep their order: the last word stands.
            var ordered = part.Changes.OrderBy(c => c.At).ToList();
            part.Changes.Clear();
            part.Changes.AddRange(ordered);
        }
    }

    private static int[] Roots(FloodNetwork network)
    {
        // Ditches stand behind the checks, so that fields that share one belong together.
        var root = Enumerable.Range(0, network.Checks.Length + network.Ditches.Length).ToArray();
        foreach (var box in network.Boxes)
        {
            if (box.To is { } to) Join(root, box.From, to);
            else if (box.Ditch is { } ditch) Join(root, box.From, network.Checks.Length + ditch);
        }

        foreach (var levee in network.Levees)
        {
            if (levee.To is { } to) Join(root, levee.From, to);
        }

        for (var d = 0; d < network.Ditches.Length; d++)
        {
            if (network.Ditches[d].To is { } to) Join(root, network.Checks.Length + d, to);
            if (network.Ditches[d].Next is { } next) Join(root, network.Checks.Length + d, network.Checks.Length + next);
        }

        return root;
    }

    private static void Join(int[] root, int a, int b)
    {
        var (x, y) = (Find(root, a), Find(root, b));
        if (x != y) root[Math.Max(x, y)] = Math.Min(x, y);
    }

    private static int Find(int[] root, int i)
    {
        while (root[i] != i) i = root[i] = root[root[i]];
        return i;
    }

    private static List<int> ListOf(Dictionary<int, List<int>> lists, int key)
    {
        if (!lists.TryGetValue(key, out var list)) lists[key] = list = [];
        return list;
    }
}
