using Watersown.Flight;
using Watersown.Flight.Laying;

namespace Watersown.Schedule.Sheets;

/// <summary>Figures that somebody wants to see a field laid out for, in place of those that were told. Nothing of it is kept.</summary>
public sealed record PassTry
{
    /// <summary>As told.</summary>
    public static PassTry Nothing { get; } = new();

    /// <summary>A heading to see beside the others.</summary>
    public Bearing? Heading { get; init; }

    public Length? Swath { get; init; }

    public Speed? Working { get; init; }

    public TimeSpan? Turn { get; init; }

    /// <summary>Most in one load.</summary>
    public SoakedSeed? Load { get; init; }

    /// <summary>Strip to the middle of the field, in the direction where it lies.</summary>
    public Length? StripOff { get; init; }

    public PassWind? Wind { get; init; }

    internal Aeroplane Of(Aeroplane told) => told with
    {
        Swath = Swath ?? told.Swath,
        Working = Working ?? told.Working,
        Turn = Turn ?? told.Turn,
        WorkingLoad = Load ?? told.WorkingLoad,
    };
}
