namespace Watersown.Wording;

public sealed partial record CalendarWords
{
    public static CalendarWords English { get; } = new()
    {
        Name = "{farm}, sowing {year}",
        Fill = "Fill {field}",
        Soak = "Seed under water for {field}",
        Drain = "Seed draining for {field}, only on our call",
        Haul = "Haul seed for {field}",
        Sow = "Sow {field}: the pilot decides",
        LastMoment = "Last moment: {what}",
        Weight = "{dry} {unit} dry, {wet} {unit} wet.",
        Flow = "{flow}, all sources together.",
        Tell = "Tell: {who}.",
        Plan = "Plan no. {plan}, made {when}.",
    };
}
