namespace Watersown.Season.Search;

/// <summary>What marks are about, as a reader of the logbook looks for them.</summary>
public enum LogKind
{
    Water,

    /// <summary>Broken, or mended again.</summary>
    Faults,
    Ground,

    /// <summary>Treatments, holds, and what is wanted of the water for them.</summary>
    Holds,
    Seed,
    Flight,
    Weather,

    /// <summary>Looked for or counted in a field.</summary>
    Scouting,

    /// <summary>Moisture, cutting and tickets.</summary>
    Harvest,

    /// <summary>Plans of money and bills.</summary>
    Money,

    /// <summary>Who was told what.</summary>
    Told,

    /// <summary>Plans and steps fixed in them.</summary>
    Plans,

    /// <summary>Words and pictures.</summary>
    Notes,

    /// <summary>Only takes another back.</summary>
    TakenBack,

    /// <summary>Of a sort that this desk does not know yet.</summary>
    Newer,
}

/// <summary>Sorts facts for the reader.</summary>
public static class LogKinds
{
    public static LogKind Of(MarkFact fact) => fact switch
    {
        CheckWater or DepthRead or BoardsSet or FlowSeen or WaterOrdered or SourceSwitched or WaterCurtailed or DitchesJoined or CapShared or TailwaterWaits => LogKind.Water,
        FaultFound or FaultMended => LogKind.Faults,
        StageReached or FieldCorrected or BoundaryDrawn or HazardSeen => LogKind.Ground,
        BatchInSoak or BatchDrained or BatchDumped or TrailerSeen or SeedLeft => LogKind.Seed,
        FieldSown or LoadGone or SlotGiven or StoodDown or PatternTested or FlightBilled or TrackLooked => LogKind.Flight,
        HarvestMeansTold or DryerRoomGiven or MoistureSampled or CropLodged or BoardsOut or FieldCut or GrainTicketed or CropShareTold => LogKind.Harvest,
        CostPlanned or CostPaid => LogKind.Money,
        WindSeen or ForecastHeard or WarmthRead or WeatherTaken or NormalsTaken or FloodWarmth => LogKind.Weather,
        TreatmentTold or WaterWished or HeldWaterGone or HoldSettingsTold => LogKind.Holds,
        NitrogenOn or NutrientRead or TopdressDecided or RingsCounted or Scouted or StageSeen or StageTargetsSet or PestLooked or StandResponseSet => LogKind.Scouting,
        Watersown.Season.Told or PersonNamed => LogKind.Told,
        PlanIssued or StepPinned or StepUnpinned or Overridden => LogKind.Plans,
        Noted or Photographed => LogKind.Notes,
        Withdrawn => LogKind.TakenBack,
        UnknownFact => LogKind.Newer,
        _ => throw new System.Diagnostics.UnreachableException("No kind for " + fact.GetType().Name),
    };

    /// <summary>Number of the check a fact is about; none where it is about none or several.</summary>
    internal static int? CheckOf(MarkFact fact) => fact switch
    {
        CheckWater f => f.Check,
        DepthRead f => f.Check,
        FaultFound f => f.Check,
        _ => null,
    };
}
