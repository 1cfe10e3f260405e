namespace Watersown.Land;

/// <summary>How long a look at a hazard holds.</summary>
public enum HazardKeep
{
    TwelveMonths,

    /// <summary>Only a look in the year of the season counts.</summary>
    Season,
}

/// <summary>How fresh the farm's knowledge of a hazard is.</summary>
public enum HazardLook
{
    /// <summary>Nobody of the farm has looked.</summary>
    Never,

    /// <summary>Somebody looked, too long ago.</summary>
    Old,

    /// <summary>Somebody looked lately enough.</summary>
    Fresh,
}

/// <summary>Whether somebody has looked at a hazard lately. Fresh means that it was seen, never that nothing else stands there.</summary>
public static class HazardLooks
{
    /// <summary>How fresh a look is on a day. A line in a public file is nobody's look.</summary>
    [Source(nameof(Sources.FarmDefault), "12 months, or this season only, as the farm sets it")]
    public static HazardLook Of(Farm farm, Hazard hazard, DateOnly today)
    {
        if (hazard.Confirmed is not { } looked) return HazardLook.Never;
        var fresh = farm.HazardsKeep == HazardKeep.Season ? looked.Year >= farm.SeasonYear : today <= looked.AddMonths(12);
        return fresh ? HazardLook.Fresh : HazardLook.Old;
    }
}
