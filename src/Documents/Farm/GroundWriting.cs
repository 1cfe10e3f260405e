using Watersown.Documents.Json;
using Watersown.Land;

namespace Watersown.Documents.Farms;

internal static class GroundWriting
{
    public static void Write(JsonPen pen, FarmClock clock, Farm farm)
    {
        pen.Things("soils", farm.Soils, soil =>
        {
            pen.Text("code", soil.Code);
            pen.Text("name", soil.Name);
            pen.Number("fill_ft", soil.Fill.Feet);
            pen.Number("seep_in_day", soil.Seepage.InchesPerDay);
            if (soil.LearnedFrom > 0) pen.Number("learned_from", soil.LearnedFrom);
        });
        pen.Things("sources", farm.Sources, source => WriteSource(pen, clock, source));
        pen.Things("shared_caps", farm.SharedCaps, shared =>
        {
            pen.Text("name", shared.Name);
            pen.List("sources", shared.Sources, pen.Bare);
            pen.Number("cap_cfs", shared.Cap.CubicFeetPerSecond);
        });
        pen.Things("strips", farm.Strips, strip =>
        {
            pen.Text("name", strip.Name);
            pen.Number("pad_trailers", strip.PadTrailers);
            FarmWriting.Point(pen, "at", strip.At);
            pen.Number("runway_ft", strip.RunwayLength?.Feet);
        });
        pen.Things("hazards", farm.Hazards, hazard => WriteHazard(pen, hazard));
        if (farm.HazardsKeep != HazardKeep.TwelveMonths) pen.Text("hazards_keep", Words.HazardKeeps.Of(farm.HazardsKeep));
    }

    private static void WriteHazard(JsonPen pen, Hazard hazard)
    {
        pen.Text("kind", Words.Hazards.Of(hazard.Kind));
        pen.Text("name", hazard.Name);
        if (!hazard.Points.IsEmpty) pen.List("points", hazard.Points, point => FarmWriting.Point(pen, null, point));
        pen.Number("height_ft", hazard.Height?.Feet);
        pen.Day("confirmed", hazard.Confirmed);
        pen.Texts("near", hazard.Near);
        pen.Text("note", hazard.Note);
        if (hazard.Listing is { } listing) pen.Thing("listed", () => WriteListing(pen, listing));
    }

    private static void WriteListing(JsonPen pen, HazardListing listing)
    {
        pen.Text("id", listing.Id);
        pen.Day("file_of", listing.FileOf);
        pen.Flag("verified", listing.Verified);
        pen.Number(LandLimits.HazardWithin.Key, listing.Within?.Feet);
        pen.Number(LandLimits.HazardHeightWithin.Key, listing.HeightWithin?.Feet);
        pen.Number(LandLimits.HazardTop.Key, listing.Top?.Feet);
        if (listing.Light != HazardLight.Unknown) pen.Text("light", Words.Lights.Of(listing.Light));
        if (listing.Marking != HazardMarking.Unknown) pen.Text("marking", Words.Markings.Of(listing.Marking));
        if (listing.Count > 1) pen.Number(LandLimits.HazardCount.Key, listing.Count);
        pen.Flag("taken_down", listing.TakenDown);
        pen.Day("changed", listing.Changed);
    }

    private static void WriteSource(JsonPen pen, FarmClock clock, WaterSource source)
    {
        pen.Text("code", source.Code);
        pen.Text("kind", Words.Sources.Of(source.Kind));
        pen.Text("name", source.Name);
        pen.Number("cap_cfs", source.Cap.CubicFeetPerSecond);
        pen.Number("notice_h", source.Notice.TotalHours);
        pen.Hours("change_hours", source.ChangeHours);
        pen.Number("min_step_cfs", source.MinStep?.CubicFeetPerSecond);
        pen.Number("running_cfs", source.Running?.CubicFeetPerSecond);
        pen.Flag("down", source.Down);
        if (source.Turns is { } turns)
        {
            pen.Thing("turns", () =>
            {
                pen.Text("from", clock.Write(turns.From));
                pen.Number(LandLimits.TurnOn.Key, turns.On.TotalHours);
                pen.Number(LandLimits.TurnEvery.Key, turns.Every.TotalHours);
                pen.Number(LandLimits.TurnFlow.Key, turns.Flow?.CubicFeetPerSecond);
            });
        }

        pen.Things("curtailed", source.Curtailments, curtailment =>
        {
            pen.Text("from", clock.Write(curtailment.From));
            pen.Text("until", curtailment.Until is { } until ? clock.Write(until) : null);
            pen.Number(LandLimits.Left.Key, curtailment.Flow?.CubicFeetPerSecond);
            pen.Number(LandLimits.LeftShare.Key, curtailment.Share?.Percent);
        });
        if (source.Needs is not { } needs) return;
        pen.Thing("needs_full", () =>
        {
            pen.List("fields", needs.Fields, pen.Bare);
            pen.Number("full_ac", needs.Full.Acres);
        });
    }
}
