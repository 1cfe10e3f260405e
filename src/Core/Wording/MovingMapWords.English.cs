namespace Watersown.Wording;

public sealed partial record MovingMapWords
{
    public static MovingMapWords English { get; } = new()
    {
        Title = "Map of the fields that moves and zooms",
        TwoFingers = "Two fingers move the map",
        Moves = "Move the map",
        In = "Nearer",
        Out = "Farther",
        West = "West",
        NorthWay = "North",
        South = "South",
        East = "East",
        Whole = "Whole farm",
    };
}
