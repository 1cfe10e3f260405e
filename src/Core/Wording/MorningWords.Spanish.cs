namespace Watersown.Wording;

public sealed partial record MorningWords
{
    public static MorningWords Spanish { get; } = new()
    {
        Title = "Mañana del {day}",
    };
}
