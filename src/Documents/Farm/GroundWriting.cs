using Watersown.Documents.Json;
using Watersown.Land;

namespace Watersown.Documents.Farms;

internal static class GroundWriting
{
    public static void Write(JsonPen pen, Farm farm)
    {
        pen.Things("soils", farm.Soils, soil =>
        {
            pen.Text("code", soil.Code);
            pen.Text("name", soil.Name);
            pen.Number("fill_ft", soil.Fill.Feet);
            pen.Number("seep_in_day", soil.Seepage.InchesPerDay);
            if (soil.LearnedFrom > 0) pen.Number("learned_from", soil.LearnedFrom);
        });
        pen.Things("sources", farm.Sources, source => WriteSource(pen, source));
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
        pen.Things("hazards", farm.Hazards, hazard =>
        {
            pen.Text("kind", Words.Hazards.Of(hazard.Kind));
            pen.Text("name", hazard.Name);
            if (!hazard.Points.IsEmpty) pen.List("points", hazard.Points, point => FarmWriting.Point(pen, null, point));
            pen.Number("height_ft", hazard.Height?.Feet);
            pen.Day("confirmed", hazard.Confirmed);
            pen.Texts("near", hazard.Near);
            pen.Text("note", hazard.Note);
        });
    }

    private static void WriteSource(JsonPen pen, WaterSource source)
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
        if (source.Needs is not { } needs) return;
        pen.Thing("needs_full", () =>
        {
            pen.List("fields", needs.Fields, pen.Bare);
            pen.Number("full_ac", needs.Full.Acres);
        });
    }
}
