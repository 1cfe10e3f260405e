using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season;

/// <summary>How water is led, as the marks about it go by: ditches joined and parted, shared caps, what tailwater waits for.</summary>
internal sealed class DitchFold(SeasonState ground)
{
    private readonly GroundTime time = new(ground.Now);
    private readonly Dictionary<DitchJoint, bool> joints = [];
    private readonly List<SharedCap> caps = [.. ground.Farm.SharedCaps];
    private readonly Dictionary<string, TailwaterNeed?> needs = new(StringComparer.Ordinal);

    public void Apply(Mark mark)
    {
        if (!time.IsOlderThan(mark)) return;
        switch (mark.Fact)
        {
            case DitchesJoined told when Known(told.Source) is { } one && Known(told.Other) is { } other && one != other:
                joints[DitchJoint.Of(one, other)] = told.Joined;
                break;
            case CapShared told:
                Share(told);
                break;
            case TailwaterWaits told when Known(told.Source) is { } source:
                ImmutableArray<string> fields = [.. told.Fields.Select(Field).OfType<string>().Distinct(StringComparer.Ordinal)];
                needs[source] = told.Full is { } full && !fields.IsEmpty ? new TailwaterNeed(fields, full) : null;
                break;
            default:
                break;
        }
    }

    /// <summary>The farm with its water led as it was last told.</summary>
    public Farm Close(Farm farm) => farm with
    {
        Fields = Ditches.Laid(farm, joints),
        SharedCaps = [.. caps],
        Sources = needs.Count == 0 ? farm.Sources : [.. farm.Sources.Select(s => needs.TryGetValue(s.Code, out var need) ? s with { Needs = need } : s)],
    };

    private void Share(CapShared told)
    {
        ImmutableArray<string> sources = [.. told.Sources.Select(Known).OfType<string>().Distinct(StringComparer.Ordinal)];
        var at = caps.FindIndex(c => string.Equals(c.Name, told.Name, StringComparison.OrdinalIgnoreCase));
        if (told.Cap is not { } cap)
        {
            if (at >= 0) caps.RemoveAt(at);
        }
        else if (!sources.IsEmpty)
        {
            var shared = new SharedCap(told.Name, sources, cap);
            if (at >= 0) caps[at] = shared;
            else caps.Add(shared);
        }
    }

    private string? Known(string code) => ground.Farm.Sources.FirstOrDefault(s => string.Equals(s.Code, code, StringComparison.OrdinalIgnoreCase))?.Code;

    private string? Field(string code) => ground.Farm.Fields.FirstOrDefault(f => string.Equals(f.Code, code, StringComparison.OrdinalIgnoreCase))?.Code;
}
