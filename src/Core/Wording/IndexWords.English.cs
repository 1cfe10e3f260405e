namespace Watersown.Wording;

public sealed partial record IndexWords
{
    public static IndexWords English { get; } = new()
    {
        Title = "Sheets",
        ForDay = "Printed for {day}.",
        Sheets = "Everything printed from this plan",
        Sheet = "Sheet",
        What = "For",
        Open = "Open",
        Others = "Texts and calendar",
        Texts = "texts to read or send, one to a line",
        TextsJson = "the same texts for another program",
        Calendar = "the season for any calendar; read in again it moves its entries",
    };
}
