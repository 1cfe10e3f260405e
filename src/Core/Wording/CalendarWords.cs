namespace Watersown.Wording;

/// <summary>Words of the calendar.</summary>
public sealed partial record CalendarWords
{
    public required string Name { get; init; }

    public required string Fill { get; init; }

    public required string Soak { get; init; }

    public required string Drain { get; init; }

    public required string Haul { get; init; }

    public required string Sow { get; init; }

    public required string LastMoment { get; init; }

    public required string Weight { get; init; }

    public required string Flow { get; init; }

    public required string Tell { get; init; }

    public required string Plan { get; init; }
}
