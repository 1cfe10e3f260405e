namespace Watersown.Wording;

/// <summary>Words that every sheet uses: days, units, and what stands on each page.</summary>
public sealed partial record CommonWords
{
    public required string Tag { get; init; }

    public required ImmutableArray<string> LongDays { get; init; }

    public required ImmutableArray<string> ShortDays { get; init; }

    public required ImmutableArray<string> Months { get; init; }

    public required ImmutableArray<string> LongMonths { get; init; }

    public required string LongDate { get; init; }

    public required string Plan { get; init; }

    public required string Made { get; init; }

    public required string Folio { get; init; }

    public required string GoesOn { get; init; }

    public required string Dry { get; init; }

    public required string Wet { get; init; }

    public required string Acres { get; init; }

    public required string Hectares { get; init; }

    public required string PerAcre { get; init; }

    public required string PerHectare { get; init; }

    public required string Feet { get; init; }

    public required string Miles { get; init; }

    public required string Inches { get; init; }

    public required string CubicFeetPerSecond { get; init; }

    public required string AcreFeet { get; init; }

    public required string LitersPerSecond { get; init; }

    public required string MilesPerHour { get; init; }

    public required string Hours { get; init; }

    public required string NotTold { get; init; }

    public required string Check { get; init; }

    public required string Box { get; init; }

    public required string Field { get; init; }

    public required string ToTick { get; init; }

    public required string ToFillIn { get; init; }

    public required string AgeMinutes { get; init; }

    public required string AgeHours { get; init; }

    public required string AgeDays { get; init; }
}
