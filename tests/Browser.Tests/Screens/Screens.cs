namespace Watersown.Journeys;

/// <summary>All there is to look at.</summary>
internal static class Screens
{
    /// <summary>The desk's own pages, by their addresses on the example farm.</summary>
    public static ImmutableArray<string> OfTheDesk { get; } =
    [
        "", "land", "field/N4", "field/N4/edge", "land/edges", "land/first", "water", "water/route", "water/fill/N4", "water/source/NT-1", "water/ditches", "crop/holds", "seed", "seed/sheet", "flight", "flight/S2", "flight/hazards", "flight/passes/N4", "flight/pattern", "flight/strip", "flight/flown/S2", "water/stopped/SP-1", "water/levee/N2", "seed/trailer", "seed/load/1", "schedule", "crop", "crop/weather", "crop/targets", "crop/S1", "crop/S1/stand", "crop/S1/nutrition", "crop/blend", "crop/S7", "season", "season/plans", "harvest", "harvest/tickets", "harvest/drain", "season/costs", "season/records", "season/records/N3", "settings", "no-such-page",
        "morning/replan",
    ];

    /// <summary>Sheets for people outside: kind, person, and a day on which there is one.</summary>
    public static ImmutableArray<(string Sheet, string Person, string Day)> Outside { get; } =
    [
        ("water", "Lucero Quintabar", "2026-05-08"), ("water", "Tamsin Wexcombe", "2026-05-08"), ("seed", "Perrin Aldegate", "2026-05-08"),
        ("flight", "Joss Tarrowby", "2026-05-09"), ("day", "Odalie Marrowfen", "2026-05-08"),
    ];
}
