namespace Watersown.Wording;

public sealed partial record MorningWords
{
    public static MorningWords English { get; } = new()
    {
        Title = "Morning of {day}",
    };
}
