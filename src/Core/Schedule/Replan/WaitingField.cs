using Watersown.Land;

namespace Watersown.Schedule.Replan;

/// <summary>A field that stands under water and waits for seed, or will be full in time for a batch that is meant for it.</summary>
/// <param name="Land">The field.</param>
/// <param name="Season">How far it has come.</param>
/// <param name="Full">When it is, or by the plan will be, full.</param>
public sealed record WaitingField(Field Land, FieldSeason Season, DateTimeOffset Full)
{
    public string Code => Land.Code;

    /// <summary>Dry seed for the whole field.</summary>
    public DrySeed Needed => Season.Rate * Land.Net;

    /// <summary>The farm's day on which its head check first got water; none where nobody has said.</summary>
    public DateOnly? FirstWater { get; init; }

    /// <summary>Any seed will do where no variety is known; otherwise only its own.</summary>
    public bool Takes(string variety) => Season.Variety is null || string.Equals(Season.Variety, variety, StringComparison.Ordinal);

    /// <summary>Days from first water in the head check to a morning, counted as a calendar counts them.</summary>
    [PlainNumber("whole days")]
    public int? WaterAge(DateOnly morning) => FirstWater is { } first ? morning.DayNumber - first.DayNumber : null;
}
