using Watersown.Shapes;

namespace Watersown.Flight.Cover;

/// <summary>Which cells of each line lie in the field: pairs of where its land begins and ends, by the middles of the cells, even-odd.</summary>
internal sealed class FieldLines
{
    private readonly int[] starts;
    private readonly int[] ends;

    private FieldLines(int[] starts, int[] ends) => (this.starts, this.ends) = (starts, ends);

    public ReadOnlySpan<int> this[int line] => ends.AsSpan(starts[line], starts[line + 1] - starts[line]);

    public static FieldLines Of(CoverGrid grid, ImmutableArray<PlanePart> field)
    {
        (double Along, double Across)[][] rings = [.. field.SelectMany(MapGeometry.Rings).Select(r => r.Select(grid.ToCells).ToArray())];
        var counts = new int[grid.Along + 1];
        foreach (var (a, b) in rings.SelectMany(Edges))
        {
            var (from, to) = Lines(a, b, grid.Along);
            for (var line = from; line < to; line++) counts[line + 1]++;
        }

        for (var line = 0; line < grid.Along; line++) counts[line + 1] += counts[line];
        var found = new int[counts[^1]];
        var next = counts.AsSpan(0, grid.Along).ToArray();
        foreach (var (a, b) in rings.SelectMany(Edges))
        {
            var (from, to) = Lines(a, b, grid.Along);
            if (to <= from) continue;
            var slope = (b.Across - a.Across) / (b.Along - a.Along);
            for (var line = from; line < to; line++)
                found[next[line]++] = (int)Math.Clamp(Math.Ceiling(a.Across + ((line + 0.5 - a.Along) * slope) - 0.5), 0, grid.Across);
        }

        for (var line = 0; line < grid.Along; line++) found.AsSpan(counts[line], counts[line + 1] - counts[line]).Sort();
        return new FieldLines(counts, found);
    }

    private static (int From, int To) Lines((double Along, double Across) a, (double Along, double Across) b, int lines) =>
        ((int)Math.Clamp(Math.Ceiling(Math.Min(a.Along, b.Along) - 0.5), 0, lines), (int)Math.Clamp(Math.Ceiling(Math.Max(a.Along, b.Along) - 0.5), 0, lines));

    // From the lower end to the upper, so that a border of two pieces of land falls on the same cells for both.
    private static IEnumerable<((double Along, double Across) A, (double Along, double Across) B)> Edges((double Along, double Across)[] ring)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            yield return a.Along <= b.Along ? (a, b) : (b, a);
        }
    }
}
