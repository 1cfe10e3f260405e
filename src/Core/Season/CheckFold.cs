using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Season;

/// <summary>Water in the checks of one field as the marks go by.</summary>
internal sealed class CheckFold
{
    private readonly SortedDictionary<int, CheckBook> checks = [];
    private readonly ImmutableArray<int> inlets;
    private readonly int count;

    public CheckFold(Field? field, FieldSeason? season)
    {
        count = field?.Basins.Length ?? 0;
        inlets = [.. (field?.Boxes ?? []).Where(b => b is { Kind: BoxKind.Inlet, ToCheck: not null }).Select(b => b.ToCheck!.Value).Append(1).Distinct().Order()];
        var wet = season is { Stage: FieldStage.Full or FieldStage.Sown, ChecksWet: null } ? count : season?.ChecksWet ?? 0;
        for (var number = 1; number <= wet; number++) checks[number] = new CheckBook(number) { IsWet = true };
    }

    public ImmutableArray<CheckBook> Books => [.. checks.Values];

    public int Wet => checks.Values.Count(c => c.IsWet);

    /// <summary>Somebody saw every check full.</summary>
    public bool AllFull => count > 0 && checks.Values.Count(c => c.Number <= count && c.FullSince is not null) == count;

    public CheckBook Of(int number) => checks.GetValueOrDefault(number) ?? new CheckBook(number);

    /// <summary>Water stands in a check, so it went through those between it and the nearest inlet above.</summary>
    public void Wetten(int number, DateTimeOffset at, bool seen)
    {
        var check = Of(number);
        checks[number] = check with { IsWet = true, DrySince = null, Implied = check.Implied && !seen, FirstWet = check.FirstWet ?? at };
        for (var above = number - 1; above >= inlets.LastOrDefault(i => i <= number, 1); above--)
        {
            if (!Of(above).IsWet) checks[above] = Of(above) with { IsWet = true, DrySince = null, Implied = true };
        }
    }

    /// <summary>Seen wet, when something newer says how the check is now.</summary>
    public void Remember(int number, DateTimeOffset at) => checks[number] = Of(number) with { FirstWet = Of(number).FirstWet ?? at };

    public void Fill(int number, DateTimeOffset at) => checks[number] = Of(number) with { FullSince = Of(number).FullSince ?? at };

    public void Dry(int number, DateTimeOffset at) => checks[number] = Of(number) with { IsWet = false, Implied = false, FullSince = null, DrySince = at };

    public void Read(int number, DepthNote note) => checks[number] = Of(number) with { Depth = note };

    public void Clear() => checks.Clear();

    /// <summary>The whole field is full: every check has water.</summary>
    public void FillAll()
    {
        for (var number = 1; number <= count; number++)
        {
            if (!Of(number).IsWet) checks[number] = Of(number) with { IsWet = true, DrySince = null, Implied = true };
        }
    }
}
