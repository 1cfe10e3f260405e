using System.Globalization;

namespace Watersown.Pocket.Keeping;

/// <summary>Which plans the device keeps whole, the newest number last; written as one short paper.</summary>
/// <param name="Numbers">Their numbers.</param>
internal sealed record KeptPlans(ImmutableArray<int> Numbers)
{
    /// <summary>Most plans that are kept whole: a week of mornings, and no more of the device's room than a few pictures.</summary>
    public const int Most = 8;

    public static KeptPlans Read(string? text) =>
        new([.. (text ?? string.Empty).Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => int.TryParse(n, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0).Where(n => n > 0).Distinct().Order()]);

    public string Write() => string.Join(' ', Numbers.Select(n => n.ToString(CultureInfo.InvariantCulture)));

    /// <summary>Papers that keep one more plan and let the oldest go; the one just wanted always stays.</summary>
    public ImmutableArray<(string Name, string? Text)> With(int number, string text)
    {
        ImmutableArray<int> all = [.. Numbers.Append(number).Distinct().Order()];
        ImmutableArray<int> gone = [.. all.Where(n => n != number).Take(Math.Max(0, all.Length - Most))];
        return [(Papers.PlanOf(number), text), .. gone.Select(n => (Papers.PlanOf(n), (string?)null)), (Papers.KeptPlans, new KeptPlans([.. all.Except(gone)]).Write())];
    }
}
