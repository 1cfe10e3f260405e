using Watersown.Flight;

namespace Watersown.Schedule.Replan;

/// <summary>A span in which one aeroplane may be planned to sow.</summary>
public sealed record OpenSpan(Aeroplane Aeroplane, DateTimeOffset From, DateTimeOffset Until)
{
    /// <summary>A wind forecast stands behind it.</summary>
    public bool Forecast { get; init; }
}

/// <summary>A day with calm hours inside the flying service's slot, as told and forecast. Whether anybody flies stays the pilot's.</summary>
/// <param name="Day">The farm's day.</param>
/// <param name="Spans">In order of their first moment.</param>
public sealed record OpenMorning(DateOnly Day, ImmutableArray<OpenSpan> Spans)
{
    /// <summary>The first load can leave then at the soonest.</summary>
    public DateTimeOffset From => Spans[0].From;

    public DateTimeOffset Until => Spans.Max(s => s.Until);
}
