using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Board;

namespace Watersown.Pocket.Schedule;

/// <summary>A step that a person has taken hold of, and where it would be put.</summary>
/// <param name="Key">Its bar on the board.</param>
/// <param name="Task">The step as the plan has it.</param>
/// <param name="Field">Its field.</param>
/// <param name="Start">Where it would begin.</param>
public sealed record Moving(string Key, PlanTask Task, Field Field, DateTimeOffset Start)
{
    public ToldTo? Told { get; init; }

    public TimeSpan By => Start - Task.Start;

    public DateTimeOffset End => Start + (Task.End - Task.Start);
}
