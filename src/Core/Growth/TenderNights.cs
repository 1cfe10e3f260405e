namespace Watersown.Growth;

/// <summary>Nights in which cold makes blank heads.</summary>
/// <param name="From">First night.</param>
/// <param name="Until">Last night.</param>
/// <param name="ErrorDays">How far both can be off.</param>
public sealed record TenderNights(DateOnly From, DateOnly Until, int ErrorDays)
{
    /// <summary>Days before heading at which pollen is tender, first and last.</summary>
    [Source(nameof(Sources.ColdNights1974), "10 to 16 days before heading")]
    public static (int First, int Last) BeforeHeading => (16, 10);

    /// <summary>Nights at or below this are of concern, several of them.</summary>
    [Source(nameof(Sources.ColdNightLimit), "about 55 °F, several nights, by variety")]
    public static Temperature Cold { get; } = Temperature.FromFahrenheit(55);

    /// <summary>The nights before the heading of a calendar; none where it does not reach so far.</summary>
    [Source(nameof(Sources.ColdNights1974), "heading less 16 to less 10 days")]
    public static TenderNights? Of(StageCalendar calendar) => calendar.Of(CropStage.Heading) is { } heading
        ? new TenderNights(heading.Day.AddDays(-BeforeHeading.First), heading.Day.AddDays(-BeforeHeading.Last), heading.Seen ? 0 : heading.ErrorDays)
        : null;

    /// <summary>The first night that may be tender, with the error.</summary>
    public DateOnly Earliest => From.AddDays(-ErrorDays);

    public DateOnly Latest => Until.AddDays(ErrorDays);

    /// <summary>A night may fall into it.</summary>
    public bool MayHold(DateOnly night) => night >= Earliest && night <= Latest;
}
