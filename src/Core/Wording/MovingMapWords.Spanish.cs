namespace Watersown.Wording;

public sealed partial record MovingMapWords
{
    public static MovingMapWords Spanish { get; } = new()
    {
        Title = "Mapa de los campos que se mueve y acerca",
        TwoFingers = "Con dos dedos se mueve el mapa",
        Moves = "Mover el mapa",
        In = "Más cerca",
        Out = "Más lejos",
        West = "Oeste",
        NorthWay = "Norte",
        South = "Sur",
        East = "Este",
        Whole = "Todo el rancho",
    };
}
