using Watersown.Documents.Json;
using Watersown.Schedule;

namespace Watersown.Documents.Farms;

internal static class WorkWriting
{
    public static void Write(JsonPen pen, FarmClock clock, SeasonState state)
    {
        pen.Things("tractors", state.Tractors, group =>
        {
            pen.Text("name", group.Name);
            pen.List("work", group.Work, w => pen.Bare(Words.Work.Of(w)));
            pen.Number("count", group.Count);
            pen.Number("rate_ac_h", group.Rate.AcresPerHour);
        });
        pen.Thing("crew", () =>
        {
            pen.Number("drivers", state.Crew.Drivers);
            pen.Number("irrigators", state.Crew.Irrigators);
            pen.Number("fields_per_irrigator", state.Crew.FieldsPerIrrigator);
            pen.Hour("work_from", state.Crew.WorkFrom);
            pen.Hour("work_until", state.Crew.WorkUntil);
        });
        pen.Thing("prices", () => WritePrices(pen, state.Prices));
        pen.Things("pins", state.Pins, pin =>
        {
            pen.Text("field", pin.Field);
            pen.Text("task", pin.Task);
            pen.Text("start", clock.Write(pin.Start));
            pen.Text("told", pin.Told);
        });
        pen.Things("people", state.People, person =>
        {
            pen.Text("name", person.Name);
            pen.Text("role", person.Role);
            pen.Text("phone", person.Phone);
            pen.Text("speaks", Words.Languages.Of(person.Speaks));
        });
    }

    private static void WritePrices(JsonPen pen, PlanPrices prices)
    {
        void Money(string key, Quantities.Money amount) => pen.Number(key, (double)amount.Amount);
        pen.Text("delay", Words.Delays.Of(prices.Delay));
        Money("own_delay_usd_ac_day", prices.OwnDelay);
        Money("grain_usd_cwt", prices.Grain);
        Money("head_age_usd_ac_day2", prices.HeadAge);
        pen.Number("head_age_free_days", prices.HeadAgeFree.TotalDays);
        Money("idle_water_usd_ac_ft", prices.IdleWater);
        Money("seed_usd_dry_lb", prices.Seed);
        Money("soak_and_haul_usd_dry_lb", prices.SoakAndHaul);
        Money("flying_usd_h", prices.FlyingHour);
        pen.Number("flying_usd_ac", (double?)prices.FlyingAcre?.Amount);
        pen.Number("flying_usd_wet_lb", (double?)prices.FlyingWetPound?.Amount);
        Money("unsown_usd_ac", prices.Unsown);
    }
}
