
namespace Watersown.Schedule.Lists;

/// <summary>One line of a list as somebody keeps it.</summary>
/// <param name="Line">Counted from 1.</param>
/// <param name="Cells">What stands in it, from left to right.</param>
public sealed record ListRow(int Line, ImmutableArray<string> Cells);

/// <summary>What a column of a list of fields says.</summary>
public enum ListColumn
{
    Name,
    Code,
    Net,
    Gross,
    Certified,
    Checks,
    Rate,
    DryPounds,
    Variety,
    Stage,
}

/// <summary>A column and how it was understood.</summary>
/// <param name="Index">From the left, 0 first.</param>
/// <param name="Heading">As written; empty where the list has no headings.</param>
/// <param name="Meaning">What it says; none where it is left out.</param>
public sealed record UnderstoodColumn(int Index, string Heading, ListColumn? Meaning)
{
    /// <summary>Told by what stands in it, not by its heading.</summary>
    public bool Guessed { get; init; }
}

/// <summary>One field of a list.</summary>
/// <param name="Line">Line it stands on.</param>
/// <param name="Name">Its name, never changed.</param>
/// <param name="Net">Net acres.</param>
/// <param name="Rate">Dry seed per acre.</param>
public sealed record ListedField(int Line, string Name, Area Net, SeedRate Rate)
{
    public string? Code { get; init; }

    public Area? Gross { get; init; }

    public Area? Certified { get; init; }

    public int? Checks { get; init; }

    public string? Variety { get; init; }

    public FieldStage? Stage { get; init; }

    /// <summary>Dry seed for the whole field.</summary>
    public DrySeed Dry => Rate * Net;
}

/// <summary>A list of fields as it was understood.</summary>
public sealed record FieldList(ImmutableArray<ListedField> Fields, ImmutableArray<UnderstoodColumn> Columns)
{
    /// <summary>Rate taken where a list gives none.</summary>
    [Source(nameof(Sources.FarmDefault), "150 lb an acre, dry")]
    public static SeedRate UsualRate { get; } = SeedRate.FromPoundsPerAcre(150);

    public Area Net => Fields.Aggregate(Area.Zero, (sum, f) => sum + f.Net);

    public DrySeed Dry => Fields.Aggregate(DrySeed.Zero, (sum, f) => sum + f.Dry);
}
