namespace Watersown.Schedule.Board.Paper;

/// <summary>Where moments stand on a drawn board, and what time a shift along it means.</summary>
/// <param name="Span">What the board shows.</param>
public sealed record BoardScale(BoardSpan Span)
{
    /// <summary>How wide an hour is: whole days of the nearer views fill a desk's screen, and longer ones move in their frame.</summary>
    [PlainNumber("points of the board an hour")]
    public double Hour => Span.Zoom switch
    {
        BoardZoom.Day => 44,
        BoardZoom.ThreeDays => 15,
        BoardZoom.Week => 6.25,
        _ => 1.5,
    };

    [PlainNumber("points of the board")]
    public double Width => Span.Length.TotalHours * Hour;

    /// <summary>The least shift of a step: as fine as a hand can mean it on this view.</summary>
    public TimeSpan Step => Span.Zoom switch
    {
        BoardZoom.Day or BoardZoom.ThreeDays => TimeSpan.FromMinutes(15),
        BoardZoom.Week => TimeSpan.FromHours(1),
        _ => TimeSpan.FromDays(1),
    };

    /// <summary>Where a moment stands; what lies outside the board stands at its edge.</summary>
    [PlainNumber("points of the board, to the right")]
    public double At(DateTimeOffset moment) => Math.Round(Math.Clamp((moment - Span.From).TotalHours, 0, Span.Length.TotalHours) * Hour, 2);

    /// <summary>The time that a shift means, to the nearest whole step.</summary>
    public TimeSpan Shift([PlainNumber("points of the board, to the right")] double points) =>
        Step * Math.Round(points / Hour / Step.TotalHours, MidpointRounding.AwayFromZero);
}
