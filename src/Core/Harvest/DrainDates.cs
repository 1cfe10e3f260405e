namespace Watersown.Harvest;

/// <summary>What is known of a field when its drain is planned.</summary>
/// <param name="Heading">Half of the panicles out: the day, and how far it may be off.</param>
/// <param name="HeadingError">Days either way; none where it was seen.</param>
/// <param name="Light">The soil lets water go fast.</param>
public sealed record DrainAsk(DateOnly Heading, [property: PlainNumber("days")] int HeadingError, bool Light)
{
    /// <summary>The last day on which a rule that somebody typed holds the water.</summary>
    public DateOnly? HeldThrough { get; init; }

    /// <summary>How long before the source wants to hear of less water.</summary>
    public TimeSpan Notice { get; init; }

    /// <summary>When it should carry the combines; none where nobody planned it.</summary>
    public DateOnly? CutOn { get; init; }
}

/// <summary>When the boards may come out by what the crop needs and what was typed, and when the ground then carries a combine.</summary>
/// <param name="ByStage">First and last day by stage.</param>
/// <param name="Earliest">First day by everything that is known.</param>
/// <param name="Carries">First and last day on which the ground may carry, drained on <paramref name="Earliest"/>.</param>
/// <param name="TellSource">By when the source should hear of less water.</param>
public sealed record DrainDates((DateOnly From, DateOnly Until) ByStage, DateOnly Earliest, (DateOnly From, DateOnly Until) Carries, DateOnly TellSource)
{
    /// <summary>A hold puts it off.</summary>
    public bool HoldDelays { get; init; }

    /// <summary>The last day on which the boards should be out for the combines; none where nobody planned them, or not after <see cref="Earliest"/>.</summary>
    public DateOnly? WantedBy { get; init; }

    /// <summary>Days after half heading, soil by soil. Common practice, no source; an Arkansas page says 25 to 28.</summary>
    public static (int From, int Until) AfterHeading(bool light) => light ? (28, 35) : (21, 28);

    /// <summary>Days from boards out until a combine is carried, by soil. Common practice, no source.</summary>
    public static (int From, int Until) Drying(bool light) => light ? (10, 14) : (14, 20);

    /// <summary>Works it out with its working.</summary>
    [Source(nameof(Sources.DrainPractice))]
    [Source(nameof(Sources.ArkansasDrain2010), "25 to 28 days after half heading; too early has cost up to 10 %")]
    public static Worked<DrainDates> Of(DrainAsk ask)
    {
        var (from, until) = AfterHeading(ask.Light);
        var (dry, driest) = Drying(ask.Light);
        var stage = (From: ask.Heading.AddDays(from), Until: ask.Heading.AddDays(until));
        var held = ask.HeldThrough is { } last ? last.AddDays(1) : DateOnly.MinValue;
        var earliest = held > stage.From ? held : stage.From;
        var wanted = ask.CutOn?.AddDays(-driest);
        var working = Working.Empty
            .Given("H", "half of the panicles out", Day(ask.Heading), string.Empty, ask.HeadingError == 0 ? "seen" : "reckoned, " + Wording.Say.Number(ask.HeadingError) + " days either way")
            .Constant("a", "days after it, first and last", Span(from, until), "days", Sources.DrainPractice)
            .Constant("d", "days until the ground carries", Span(dry, driest), "days", Sources.DrainPractice)
            .Step("S", "by stage", Day(stage.From) + " - " + Day(stage.Until), string.Empty, "H + a", Sources.DrainPractice);
        if (ask.HeldThrough is { } hold) working = working.Given("h", "held through, by the rules typed", Day(hold), string.Empty, "typed");
        working = working
            .Step("E", "earliest", Day(earliest), string.Empty, ask.HeldThrough is null ? "S" : "max(S, h + 1)", Sources.CalendarCount)
            .Step("C", "carries a combine", Day(earliest.AddDays(dry)) + " - " + Day(earliest.AddDays(driest)), string.Empty, "E + d", Sources.DrainPractice);
        var answer = new DrainDates(stage, earliest, (earliest.AddDays(dry), earliest.AddDays(driest)), earliest.AddDays(-(int)Math.Ceiling(ask.Notice.TotalDays)))
        {
            HoldDelays = held > stage.From,
            WantedBy = wanted > earliest ? wanted : null,
        };
        return new(answer, working);
    }

    private static string Span(int from, int until) => Wording.Say.Number(from) + " - " + Wording.Say.Number(until);

    private static string Day(DateOnly day) => Wording.When.Day(day);
}
