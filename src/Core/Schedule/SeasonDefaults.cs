namespace Watersown.Schedule;

/// <summary>What is taken where the farm has not said.</summary>
public static class SeasonDefaults
{
    /// <summary>Last day a plan looks at: 60 days from now or 30 June, whichever is later.</summary>
    public static DateOnly Horizon(DateTimeOffset now)
    {
        var today = new DateOnly(now.Year, now.Month, now.Day);
        var june = new DateOnly(today.Year, 6, 30);
        var ahead = today.AddDays(60);
        return ahead > june ? ahead : june;
    }

    /// <summary>How far a field has come, told by its facts where nobody said it in a word.</summary>
    public static FieldStage StageFrom(DateTimeOffset? sownAt, DateTimeOffset? fullSince, DateTimeOffset? firstWater, int? checksWet, DateOnly? aquaOn)
    {
        if (sownAt is not null) return FieldStage.Sown;
        if (fullSince is not null) return FieldStage.Full;
        if (firstWater is not null || checksWet > 0) return FieldStage.Flooding;
        return aquaOn is null ? FieldStage.Unworked : FieldStage.AquaOn;
    }
}
