using Watersown.Documents.Json;
using Watersown.Schedule;
using Watersown.Seed;

namespace Watersown.Documents.Farms;

internal static class SeedWriting
{
    public static void Write(JsonPen pen, FarmClock clock, SeasonState state)
    {
        pen.Things("lots", state.Lots, lot =>
        {
            pen.Text("code", lot.Code);
            pen.Text("variety", lot.Variety);
            pen.Text("maturity", Words.Maturities.Of(lot.Maturity));
            pen.Number("in_hand_dry_lb", lot.InHand?.Pounds);
            pen.Number("germination_pct", lot.Germination?.Percent);
            pen.Number("seeds_per_lb", lot.SeedsPerPound);
            pen.Number("wet_factor", lot.WetFactor);
        });
        pen.Things("batches", state.Batches, batch =>
        {
            pen.Text("code", batch.Code);
            pen.Text("lot", batch.Lot);
            pen.Text("variety", batch.Variety);
            pen.Number("dry_lb", batch.Dry.Pounds);
            pen.Text("in_soak", clock.Write(batch.InSoak));
            pen.Text("drained", batch.Drained is { } drained ? clock.Write(drained) : null);
            pen.Texts("meant_for", batch.MeantFor);
            pen.Number("weighed_wet_lb", batch.Weighed?.Pounds);
            pen.Texts("trailers", batch.Trailers);
        });
        if (state.SoakPlace is { } place) pen.Thing("soak_place", () => WritePlace(pen, place));
    }

    private static void WritePlace(JsonPen pen, SoakPlace place)
    {
        pen.Text("name", place.Name);
        pen.Text("phone", place.Phone);
        pen.Number("road_mi", place.Road?.Miles);
        pen.Number("trailers", place.Trailers);
        pen.Number("haul_limit_wet_lb", place.HaulLimit?.Pounds);
        pen.Hour("calls_until", place.CallsUntil);
        pen.Hour("soak_hour", place.SoakHour);
        pen.Number("soak_least_h", place.SoakLeast.TotalHours);
        pen.Number("soak_most_h", place.SoakMost.TotalHours);
        pen.Number("soak_lost_h", place.SoakLost.TotalHours);
        pen.Number("drain_h", place.Drain.TotalHours);
        pen.Number("trailer_return_h", place.TrailerReturn.TotalHours);
        pen.Number("haul_h", place.Haul.TotalHours);
    }
}
