using Watersown.Land;
using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Schedule;

public static partial class Conflicts
{
    /// <summary>
    /// Water that can never be held: fields whose own sources, all together and without tailwater, give less than the fields
    /// lose once full. Says where the flood would stop.
    /// </summary>
    private static IEnumerable<Conflict> Holding(SeasonState state)
    {
        foreach (var group in Groups(state))
        {
            var sources = group.Sources.Select(s => state.Farm.Source(s)!).ToImmutableArray();
            var own = sources.Where(s => s.Needs is null && !s.Down).ToImmutableArray();
            // What lasts: turns at their mean, curtailments of which no end is told.
            var gives = FlowRate.FromCubicFeetPerSecond(own.Sum(s => SourceSupply.Most(state, s)[^1].Flow.CubicFeetPerSecond));
            var waters = group.Fields.Select(f => FieldWater.Of(state, f)).ToImmutableArray();
            var takes = FlowRate.FromCubicFeetPerSecond(waters.Sum(w => w.Holding.CubicFeetPerSecond));
            if (takes <= gives) continue;
            var acres = Area.FromAcres(waters.Sum(w => w.All.Acres));
            var loss = DepthRate.FromFeetPerDay(takes.AcreFeetPerDay / acres.Acres);
            var stall = Ponding.StallArea(gives, loss);
            var helpers = sources.Where(s => s.Needs is not null).ToImmutableArray();
            yield return new Conflict(group.Fields,
                $"{Block(group.Fields)} on {string.Join(" and ", own.Select(s => s.Code))} can never be held: once full it takes {Say.Number(takes.CubicFeetPerSecond, 2)} cfs, {(own.Length > 1 ? "they give" : "it gives")} {Say.Number(gives.CubicFeetPerSecond, 2)}, short by {Say.Number((takes - gives).CubicFeetPerSecond, 2)}. Filling would stop near {Say.Number(stall.Acres)} of {Say.Number(acres.Acres)} ac.",
                Help(helpers, takes - gives))
            {
                Kind = "water",
                Working = Working.Empty
                    .Given("A", "acres", acres.Acres, "ac", Block(group.Fields))
                    .Given("m", "lost from wet ground, mean of its soils", loss.InchesPerDay, "in/day", "evaporation and soils")
                    .Given("S", own.Any(s => s.Turns is not null || !s.Curtailments.IsEmpty) ? "its own sources together, as far as it lasts" : "its own sources together", gives.CubicFeetPerSecond, "cfs", string.Join(", ", own.Select(s => s.Code)))
                    .Step("H", "held with, once full", takes.CubicFeetPerSecond, "cfs", "m A / 12 / 1.983471", Sources.WaterBalance)
                    .Step("As", "acres at which filling stops", stall.Acres, "ac", "S / m", Sources.WaterBalance),
            };
        }
    }

    private static string Help(ImmutableArray<WaterSource> helpers, FlowRate missing)
    {
        if (helpers.IsEmpty) return "Leave a field of it dry, find other water, or sow it in two turns.";
        var more = helpers.Sum(s => s.Cap.CubicFeetPerSecond);
        var from = string.Join(" and ", helpers.Select(s => s.Code));
        return more >= missing.CubicFeetPerSecond
            ? $"It rests on {from} ({Say.Number(more, 1)} cfs), which comes only while its fields above are full. Leave a field dry if that fails."
            : $"Even {from} ({Say.Number(more, 1)} cfs) is not enough. Leave a field of it dry or find other water.";
    }

    /// <summary>Fields by the sources they share: each set of sources alone, then all that hang together.</summary>
    private static IEnumerable<(ImmutableArray<string> Fields, ImmutableArray<string> Sources)> Groups(SeasonState state)
    {
        var classes = state.Farm.Fields.Where(f => f.Sources.Any(s => state.Farm.Source(s) is not null))
            .GroupBy(f => string.Join('|', f.Sources), StringComparer.Ordinal)
            .Select(g => (Fields: g.Select(f => f.Code).ToImmutableArray(), Sources: g.First().Sources.Where(s => state.Farm.Source(s) is not null).ToImmutableArray()))
            .ToImmutableArray();
        foreach (var one in classes) yield return one;
        var seen = new HashSet<int>();
        for (var i = 0; i < classes.Length; i++)
        {
            if (!seen.Add(i)) continue;
            var fields = classes[i].Fields;
            var sources = classes[i].Sources;
            for (var j = i + 1; j < classes.Length; j++)
            {
                if (seen.Contains(j) || !classes[j].Sources.Intersect(sources, StringComparer.Ordinal).Any()) continue;
                seen.Add(j);
                fields = fields.AddRange(classes[j].Fields);
                sources = [.. sources.Union(classes[j].Sources, StringComparer.Ordinal)];
            }

            if (fields.Length > classes[i].Fields.Length) yield return (fields, sources);
        }
    }

    private static string Block(ImmutableArray<string> fields)
    {
        var letters = fields.Select(f => f[..1]).Distinct(StringComparer.Ordinal).ToImmutableArray();
        return letters.Length == 1 && fields.Length > 3 ? letters[0] + " block" : string.Join(", ", fields);
    }
}
