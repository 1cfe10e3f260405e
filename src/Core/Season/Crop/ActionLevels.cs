namespace Watersown.Season.Crop;

/// <summary>What a published level says of what was seen.</summary>
public enum LevelAnswer
{
    /// <summary>Not enough is known to hold it against the level.</summary>
    Unknown,
    NotReached,
    Reached,
}

/// <summary>Published action levels as plain conditions. They say what was published, and give no advice on treatment.</summary>
public static class ActionLevels
{
    /// <summary>Share of plants with a quarter of their leaves gone.</summary>
    [Source(nameof(Sources.ArmywormUc), "half of the plants with 25 % defoliation, and worms present")]
    public static Fraction ArmywormPlants { get; } = Fraction.FromPercent(50);

    /// <summary>Share of panicles damaged.</summary>
    [Source(nameof(Sources.ArmywormUc), "10 % of the panicles damaged, and worms present")]
    public static Fraction ArmywormPanicles { get; } = Fraction.FromPercent(10);

    /// <summary>Stand below which midge injury counts.</summary>
    [Source(nameof(Sources.MidgeLouisiana), "injury present and stand under 15 plants/ft²")]
    public static PlantDensity MidgeStand { get; } = PlantDensity.FromPerSquareFoot(15);

    /// <summary>Plants with fresh scars; the published threshold was not read.</summary>
    [Source(nameof(Sources.WeevilMemory), "about 10 to 20 % of plants at 2 to 4 leaves")]
    public static Fraction WeevilPlants { get; } = Fraction.FromPercent(10);

    /// <summary>Armyworm on leaves or panicles: enough damage and worms still there.</summary>
    [Source(nameof(Sources.ArmywormUc))]
    public static LevelAnswer Armyworm(Fraction? damaged, bool worms, Fraction level)
    {
        if (!worms) return LevelAnswer.NotReached;
        return damaged is not { } share ? LevelAnswer.Unknown : share.Share >= level.Share ? LevelAnswer.Reached : LevelAnswer.NotReached;
    }

    /// <summary>Midge: injury and a thin stand.</summary>
    [Source(nameof(Sources.MidgeLouisiana))]
    public static LevelAnswer Midge(bool injury, PlantDensity? stand)
    {
        if (!injury) return LevelAnswer.NotReached;
        return stand is not { } known ? LevelAnswer.Unknown : known < MidgeStand ? LevelAnswer.Reached : LevelAnswer.NotReached;
    }

    /// <summary>The level for a look; none where none was published.</summary>
    public static LevelAnswer? Of(PestLooked look, PlantDensity? stand) => look.Pest switch
    {
        Pest.ArmywormLeaf => Armyworm(look.Damaged, look.Seen, ArmywormPlants),
        Pest.ArmywormPanicle => Armyworm(look.Damaged, look.Seen, ArmywormPanicles),
        Pest.Midge => Midge(look.Seen, stand),
        Pest.Weevil => !look.Seen ? LevelAnswer.NotReached : look.Damaged is not { } share ? LevelAnswer.Unknown : share.Share >= WeevilPlants.Share ? LevelAnswer.Reached : LevelAnswer.NotReached,
        _ => null,
    };
}
