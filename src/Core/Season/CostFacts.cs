using Watersown.Costs;

namespace Watersown.Season;

/// <summary>What the farm means to spend on one thing. The newest word for a category and field stands.</summary>
/// <param name="Category">What on.</param>
public sealed record CostPlanned(CostCategory Category) : MarkFact
{
    /// <summary>The one field it is meant for; all where not given.</summary>
    public string? Field { get; init; }

    /// <summary>For each acre of net land.</summary>
    public Money? PerAcre { get; init; }

    /// <summary>For each hundredweight of grain at 14 %.</summary>
    public Money? PerHundredweight { get; init; }

    public override string? AboutField => Field;
}

/// <summary>A bill, or money back where the amount is below nothing.</summary>
/// <param name="Category">What for.</param>
/// <param name="Amount">How much.</param>
public sealed record CostPaid(CostCategory Category, Money Amount) : MarkFact
{
    /// <summary>Fields it falls on; all of the farm's where none is named.</summary>
    public FactList<string> Fields { get; init; } = [];

    /// <summary>For what, in the farm's words.</summary>
    public string? What { get; init; }

    /// <summary>Number of the bill.</summary>
    public string? Invoice { get; init; }

    public override string? AboutField => Fields.Count == 1 ? Fields[0] : null;
}
