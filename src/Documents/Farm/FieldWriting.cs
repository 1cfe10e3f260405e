using Watersown.Documents.Json;
using Watersown.Land;
using Watersown.Schedule;

namespace Watersown.Documents.Farms;

internal static class FieldWriting
{
    public static void Write(JsonPen pen, FarmClock clock, SeasonState state) =>
        pen.List("fields", state.Farm.Fields.Zip(state.Fields), pair => pen.Thing(null, () =>
        {
            WriteGround(pen, pair.First, pair.Second);
            WriteSeason(pen, clock, pair.Second);
        }));

    private static void WriteGround(JsonPen pen, Field field, FieldSeason season)
    {
        pen.Text("code", field.Code);
        pen.Text("name", field.Name);
        pen.Number("net_ac", field.Net.Acres);
        pen.Number("gross_ac", field.Gross?.Acres);
        pen.Number("certified_ac", field.Certified?.Acres);
        pen.Number("rate_dry_lb_ac", season.Rate.PoundsPerAcre);
        pen.Text("variety", season.Variety);
        GeometryWriting.Write(pen, "boundary", field.Boundary);
        FarmWriting.Point(pen, "center", field.Center);
        pen.Number("ferry_mi", field.Ferry?.Miles);
        pen.Number("long_axis_deg", field.LongAxis?.Degrees);
        pen.Number("pass_length_ft", field.PassLength?.Feet);
        pen.Text("soil", field.Soil);
        pen.Texts("sources", field.Sources);
        WriteBasins(pen, field);
        pen.Things("boxes", field.Boxes, box => WriteBox(pen, box));
        pen.Number("inlet_limit_cfs", field.InletLimit?.CubicFeetPerSecond);
        pen.Text("box_notes", field.BoxNotes);
        pen.Text("note", field.Note);
    }

    /// <summary>Checks that are all alike are written as their number.</summary>
    private static void WriteBasins(JsonPen pen, Field field)
    {
        if (field.Basins.IsEmpty) return;
        var equal = field.Net / field.Basins.Length;
        var alike = field.Basins.Select((b, i) => b == new Basin(i + 1, equal)).All(same => same);
        if (alike) pen.Number("checks", field.Basins.Length);
        else pen.Things("checks", field.Basins, basin =>
        {
            pen.Number("number", basin.Number);
            pen.Number("ac", basin.Area.Acres);
            pen.Number("drop_ft", basin.Drop?.Feet);
            pen.Number("high_spot_in", basin.HighSpot?.Inches);
            GeometryWriting.Write(pen, "boundary", basin.Boundary);
        });
    }

    private static void WriteBox(JsonPen pen, Box box)
    {
        pen.Number("number", box.Number);
        pen.Text("kind", Words.Boxes.Of(box.Kind));
        pen.Number("from_check", box.FromCheck);
        pen.Number("to_check", box.ToCheck);
        pen.Number("width_ft", box.Width?.Feet);
        pen.Number("boards_in", box.Boards?.Inches);
        pen.Flag("leaks", box.Leaks);
        pen.Text("drains_to", box.DrainsTo);
        FarmWriting.Point(pen, "at", box.At);
    }

    private static void WriteSeason(JsonPen pen, FarmClock clock, FieldSeason season)
    {
        void Moment(string key, DateTimeOffset? at) => pen.Text(key, at is { } moment ? clock.Write(moment) : null);
        pen.Text("stage", season.StageUntold ? null : Words.Stages.Of(season.Stage));
        if (season.WorkLeft is { } work) pen.List("work_left", work, w => pen.Bare(Words.Work.Of(w)));
        Moment("fit_from", season.FitFrom);
        pen.Day("aqua_on", season.AquaOn);
        Moment("first_water", season.FirstWater);
        Moment("full_since", season.FullSince);
        pen.Number("checks_wet", season.ChecksWet);
        Moment("sown_at", season.SownAt);
        pen.Number("depth_in", season.Depth?.Inches);
        pen.Flag("no_spill", season.NoSpill);
        Moment("as_of", season.AsOf);
    }
}
