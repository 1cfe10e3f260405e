using Watersown.Flight;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Texts about flights: to the dispatcher and the pilot, and to landlords once the seed is in.</summary>
internal static class FlightTexts
{
    public static IEnumerable<string> ToDispatcher(SeasonPlan plan, DateOnly day, Telling tell)
    {
        var words = tell.Words.Text;
        foreach (var group in Flights(plan, day, 3, tell).GroupBy(f => tell.Day(f.From)))
        {
            var first = group.Min(f => f.From);
            var hours = tell.Hours(TimeSpan.FromTicks(group.Sum(f => f.FlyingTime.Ticks)));
            var head = Template.Fill(words.ReadyHead, ("day", tell.TextDay(group.Key)));
            var tail = Template.Fill(words.ReadyTail, ("unit", tell.RateUnit), ("time", tell.Clock(first)), ("hours", hours));
            var items = group.Select(f => Template.Fill(words.ReadyItem, ("field", f.Field.Code), ("acres", tell.Land(f.Land)), ("rate", tell.Rate(f.DryRate))));
            foreach (var text in ShortText.Spread(head, items, ", ", tail)) yield return text;
        }
    }

    public static IEnumerable<string> ToPilot(SeasonPlan plan, DateOnly day, Telling tell)
    {
        var words = tell.Words.Text;
        var flights = Flights(plan, day, 2, tell);
        foreach (var stop in Stops(plan, day, tell)) yield return stop;
        foreach (var flight in flights)
        {
            yield return ShortText.One(Template.Fill(words.Flight,
                ("day", tell.TextDay(tell.Day(flight.From))), ("time", tell.Clock(flight.From)), ("field", flight.Field.Code), ("acres", tell.Land(flight.Land)),
                ("dry", tell.Rate(flight.DryRate)), ("wet", tell.Rate(flight.WetRate)), ("unit", tell.RateUnit),
                ("loads", Telling.Count(flight.Loads.Count)), ("weight", Telling.Count(tell.Whole(flight.Soaked)) + " " + tell.MassUnit)));
        }
    }

    public static IEnumerable<string> ToLandlord(SeasonPlan plan, Telling tell)
    {
        var words = tell.Words.Text;
        var sown = plan.State.Farm.Fields.Select(f => (Field: f, At: plan.State.Season(f.Code).SownAt)).Where(f => f.At is not null).OrderBy(f => f.At);
        return ShortText.Spread(words.PlantedHead,
            sown.Select(f => Template.Fill(words.PlantedItem, ("field", f.Field.Code), ("acres", tell.Land(f.Field.Net)), ("day", tell.TextDay(tell.Day(f.At!.Value))))), ", ", ".");
    }

    // Somebody was told of a flight that this plan no longer has on its day.
    private static IEnumerable<string> Stops(SeasonPlan plan, DateOnly day, Telling tell)
    {
        var words = tell.Words.Text;
        foreach (var pin in plan.State.Pins.Where(p => p.Told is not null && string.Equals(p.Task, "sow", StringComparison.OrdinalIgnoreCase)))
        {
            var told = tell.Day(pin.Start);
            if (told < day || told > day.AddDays(1)) continue;
            var listed = plan.Tasks.Where(t => t.Kind == PlanTaskKind.Sow && tell.Day(t.Start) == told).Select(t => t.Field).Distinct(StringComparer.Ordinal).ToList();
            if (listed.Contains(pin.Field, StringComparer.Ordinal)) continue;
            var head = Template.Fill(words.Stop, ("field", pin.Field), ("day", tell.TextDay(told)), ("plan", Telling.Count(plan.Number)));
            yield return ShortText.One(head + (listed.Count == 0 ? words.FlyNone : Template.Fill(words.FlyOnly, ("fields", string.Join(", ", listed)))));
        }
    }

    private static ImmutableArray<FlightSheet> Flights(SeasonPlan plan, DateOnly day, int days, Telling tell) =>
        FlightSheets.Of(plan, f => tell.Day(f.Start) is var sow && sow >= day && sow < day.AddDays(days));
}
