using System.Globalization;

namespace Watersown.Web.Links;

/// <summary>Which sheet a link shows.</summary>
public enum LinkKind
{
    Flight,
    Seed,
    Water,
    Day,
}

/// <summary>What a link shows, as it is kept: <c>flight 2026-05-09 14</c>.</summary>
/// <param name="Kind">Which sheet.</param>
/// <param name="Day">Of which day.</param>
/// <param name="Plan">Number of the plan when the link was made.</param>
public sealed record LinkSheet(LinkKind Kind, DateOnly Day, int Plan)
{
    private static readonly ImmutableArray<(LinkKind Kind, string Name)> Names =
        [(LinkKind.Flight, "flight"), (LinkKind.Seed, "seed"), (LinkKind.Water, "water"), (LinkKind.Day, "day")];

    public static string Known => string.Join(", ", Names.Select(n => n.Name));

    /// <summary>The name of a kind on the wire; the keys of the sheets begin with it too.</summary>
    public static string Name(LinkKind kind) => Names.First(n => n.Kind == kind).Name;

    public static LinkKind? KindOf(string? name) => Names.Where(n => string.Equals(n.Name, name, StringComparison.Ordinal)).Select(n => (LinkKind?)n.Kind).FirstOrDefault();

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Name(Kind)} {Day:yyyy-MM-dd} {Plan}");

    public static LinkSheet Read(string kept)
    {
        var parts = kept.Split(' ');
        return new LinkSheet(KindOf(parts[0])!.Value, DateOnly.ParseExact(parts[1], "yyyy-MM-dd", CultureInfo.InvariantCulture), int.Parse(parts[2], CultureInfo.InvariantCulture));
    }
}
