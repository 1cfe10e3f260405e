namespace Watersown.Flight.AtStrip;

/// <summary>What a morning at the strip comes to: every time on its mean at best, scattered at random at worst, the truth between.</summary>
public sealed record StripSum
{
    public required StripCrew Crew { get; init; }

    /// <summary>The aeroplane, all of them alike.</summary>
    public required Aeroplane Aeroplane { get; init; }

    public required int Loads { get; init; }

    public required Area Land { get; init; }

    public required SoakedSeed Wet { get; init; }

    /// <summary>Mean time in the air and on the ground for one load, loading left out.</summary>
    public required TimeSpan Flight { get; init; }

    /// <summary>Loads leaving in an hour, at random and like clockwork.</summary>
    [PlainNumber("loads in an hour")]
    public required (double Random, double Clockwork) LoadsPerHour { get; init; }

    /// <summary>Share of the time a loader works, times at random.</summary>
    public required Fraction LoaderBusy { get; init; }

    /// <summary>Mean wait of an aeroplane before its loading, times at random.</summary>
    public required TimeSpan Wait { get; init; }

    public required Working Working { get; init; }

    /// <summary>Hours for all of it, like clockwork and at random.</summary>
    public (TimeSpan Least, TimeSpan Most) Hours => (TimeSpan.FromHours(Loads / LoadsPerHour.Clockwork), TimeSpan.FromHours(Loads / LoadsPerHour.Random));

    /// <summary>Land sown in an hour, at random and like clockwork.</summary>
    public (AreaRate Least, AreaRate Most) LandPerHour => (AreaRate.FromSquareMetersPerSecond(Land.SquareMeters / Hours.Most.TotalSeconds), AreaRate.FromSquareMetersPerSecond(Land.SquareMeters / Hours.Least.TotalSeconds));

    /// <summary>What the flying costs by the hour; none where no price is told.</summary>
    [Source(nameof(Sources.Arithmetic), "hours × aeroplanes × price")]
    public (Money Least, Money Most)? ByHour(StripBill bill) => bill.Hour is { } price ? (price * (Hours.Least.TotalHours * Crew.Aeroplanes), price * (Hours.Most.TotalHours * Crew.Aeroplanes)) : null;

    /// <summary>What it costs by acre and pound; none where neither price is told.</summary>
    [Source(nameof(Sources.Arithmetic), "acres × price + soaked pounds × price")]
    public Money? ByLandAndWeight(StripBill bill) =>
        bill is { Acre: null, WetPound: null } ? null : ((bill.Acre ?? Money.Zero) * Land.Acres) + ((bill.WetPound ?? Money.Zero) * Wet.Pounds);
}

/// <summary>One thing changed at the strip.</summary>
public enum StripChangeKind
{
    OneMoreAeroplane,
    OneMoreLoader,
    HundredPoundsMore,
    OneFootMore,
}

/// <summary>What one change would make of the morning. Swath and load are the pilot's, never the sum's.</summary>
public sealed record StripChange(StripChangeKind Kind, StripSum Sum);

/// <summary>A load that two neighboring fields of the same seed share.</summary>
/// <param name="First">Field flown first on it.</param>
/// <param name="Second">Field flown with the rest.</param>
/// <param name="Apart">Loads if each field has its own.</param>
/// <param name="Together">Loads if they share one.</param>
/// <param name="Each">Soaked weight of every load then.</param>
/// <param name="OnFirst">Soaked weight of the shared load that belongs to the first field.</param>
/// <param name="Saved">Ferry, ground and loading of the loads saved.</param>
public sealed record SharedLoad(string First, string Second, int Apart, int Together, SoakedSeed Each, SoakedSeed OnFirst, TimeSpan Saved)
{
    /// <summary>Soaked weight of the shared load that belongs to the second field.</summary>
    public SoakedSeed OnSecond => Each - OnFirst;
}
