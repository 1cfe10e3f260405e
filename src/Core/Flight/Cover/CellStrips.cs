namespace Watersown.Flight.Cover;

/// <summary>Cells side by side in one line.</summary>
/// <param name="Line">The line.</param>
/// <param name="From">The first cell.</param>
/// <param name="End">The one after the last.</param>
internal readonly record struct CellStrip(int Line, int From, int End)
{
    public int Cells => End - From;
}

/// <summary>Strips of cells joined to the regions that they form.</summary>
internal static class CellStrips
{
    /// <summary>Strips of cells of a field that were never flown over, in order.</summary>
    public static List<CellStrip> Bare(ReadOnlySpan<byte> cells, CoverGrid grid, FieldLines field)
    {
        var strips = new List<CellStrip>();
        for (var line = 0; line < grid.Along; line++)
        {
            var ends = field[line];
            for (var i = 0; i + 1 < ends.Length; i += 2)
            {
                var counts = cells.Slice((line * grid.Stride) + ends[i], ends[i + 1] - ends[i]);
                var at = 0;
                while (counts[at..].IndexOf((byte)0) is var bare and >= 0)
                {
                    var from = at + bare;
                    var length = counts[from..].IndexOfAnyExcept((byte)0);
                    at = length < 0 ? counts.Length : from + length;
                    strips.Add(new CellStrip(line, ends[i] + from, ends[i] + at));
                    if (at == counts.Length) break;
                }
            }
        }

        return strips;
    }

    /// <summary>Regions: strips are of one where no more than so many cells lie between them, along and across.</summary>
    public static List<List<CellStrip>> Regions(List<CellStrip> strips, int apart)
    {
        var parents = new int[strips.Count];
        for (var i = 0; i < parents.Length; i++) parents[i] = i;
        var oldest = 0;
        for (var i = 0; i < strips.Count; i++)
        {
            while (strips[oldest].Line < strips[i].Line - apart - 1) oldest++;
            JoinBefore(strips, parents, i, oldest, apart);
        }

        var regions = new Dictionary<int, List<CellStrip>>();
        var ordered = new List<List<CellStrip>>();
        for (var i = 0; i < strips.Count; i++)
        {
            var root = Root(parents, i);
            if (!regions.TryGetValue(root, out var region))
            {
                regions.Add(root, region = []);
                ordered.Add(region);
            }

            region.Add(strips[i]);
        }

        return ordered;
    }

    private static void JoinBefore(List<CellStrip> strips, int[] parents, int i, int oldest, int apart)
    {
        var strip = strips[i];
        var from = oldest;
        while (from < i)
        {
            // Strips of one line lie in order: jump to the first that reaches near enough, leave the line at the first beyond.
            var line = strips[from].Line;
            var j = FirstEndingAfter(strips, from, i, line, strip.From - apart - 1);
            for (; j < i && strips[j].Line == line && strips[j].From <= strip.End + apart; j++) Join(parents, i, j);
            from = FirstOfLine(strips, j, i, line + 1);
        }
    }

    private static int FirstEndingAfter(List<CellStrip> strips, int low, int high, int line, int end)
    {
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (strips[middle].Line > line || strips[middle].End > end) high = middle;
            else low = middle + 1;
        }

        return low;
    }

    private static int FirstOfLine(List<CellStrip> strips, int low, int high, int line)
    {
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (strips[middle].Line >= line) high = middle;
            else low = middle + 1;
        }

        return low;
    }

    private static int Root(int[] parents, int i)
    {
        while (parents[i] != i) i = parents[i] = parents[parents[i]];
        return i;
    }

    private static void Join(int[] parents, int a, int b)
    {
        var (first, second) = (Root(parents, a), Root(parents, b));
        if (first != second) parents[Math.Max(first, second)] = Math.Min(first, second);
    }
}
