namespace Watersown.Wording;

public sealed partial record CalendarWords
{
    public static CalendarWords English { get; } = new()
    {
        Name = "{farm} sowing {year}",
        Fill = "Fill {field}",
        Soak = "In soak: {batch} for {field}",
        Drain = "Drain {batch} for {field}, on our call",
        Haul = "Haul {batch} for {field}",
        Sow = "Sow {field}",
        Call = "Call the soak for {field}",
        Order = "Order water for {field}",
        LastMoment = "Last safe moment: {what}",
        Weight = "{dry} {unit} dry, {wet} {unit} wet",
        Flow = "{flow}, all sources together",
        Plan = "Plan no. {plan}, made {when}.",
        PilotDecides = "The pilot decides.",
        NewBatch = "new batch",
    };
}
