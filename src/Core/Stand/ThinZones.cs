namespace Watersown.Stand;

/// <summary>Which zones are to be judged by themselves.</summary>
public static class ThinZones
{
    /// <summary>Below it sowing again is weighed over an area that can be told apart.</summary>
    [Source(nameof(Sources.ReseedTrigger), "below about 6 to 8 plants/ft²")]
    public static PlantDensity Trigger { get; } = PlantDensity.FromPerSquareFoot(8);

    /// <summary>A zone this thin, or half as thick as the field, is hidden by the field's mean.</summary>
    [Source(nameof(Sources.ReseedTrigger), "below 8 plants/ft²")]
    [Source(nameof(Sources.CommonPractice), "never average a bare strip into a good field")]
    public static bool IsThin(StandEstimate zone, StandEstimate whole) => zone.Mean < Trigger || zone.Mean < whole.Mean * 0.5;

    /// <summary>The field as a whole looks fine.</summary>
    public static bool IsFine(StandEstimate whole) => whole.Mean >= Trigger;
}
