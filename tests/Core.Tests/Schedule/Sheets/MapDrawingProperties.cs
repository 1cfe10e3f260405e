using CsCheck;
using Watersown.Flight;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

public sealed class MapDrawingProperties
{
    private static readonly SeasonPlan Plan = PlannedMorning.Plan();

    private static readonly ImmutableArray<FlightSheet> Flights = [.. FlightSheets.Of(Plan).Where(f => f.Map is not null)];

    [Fact]
    public void Every_point_and_every_word_of_a_map_lies_inside_its_frame() =>
        Gen.Select(Gen.Int[0, Flights.Length - 1], Gen.Double[150, 300], Gen.Double[150, 420], Gen.Bool).Sample((index, width, height, spanish) =>
        {
            var drawing = Draw(Flights[index], width, height, spanish ? Language.Spanish : Language.English);
            return drawing.Items.All(item => item switch
            {
                DrawingItem.Path path => path.Rings.All(r => r.All(p => Inside(p, drawing))),
                DrawingItem.Label label => Inside(label.At, drawing) && label.At.Y - label.Size >= -3,
                _ => false,
            });
        }, iter: 300);

    [Fact]
    public void A_field_is_drawn_to_one_scale_both_ways_north_up()
    {
        // Crooked Box is 2,640 ft from north to south and 1,439 ft wide (87.2 ac over half a mile, derived).
        var outline = Outline(Draw(Flight("S2"), 240, 300, Language.English));
        double tall = outline.Max(p => p.Y) - outline.Min(p => p.Y), wide = outline.Max(p => p.X) - outline.Min(p => p.X);
        Assert.Equal(2640.0 / 1439, tall / wide, 0.005);
    }

    [Fact]
    public void The_scale_bar_is_as_long_as_it_says()
    {
        var drawing = Draw(Flight("S2"), 240, 300, Language.English);
        var label = drawing.Items.OfType<DrawingItem.Label>().Single(l => l.Text == "1,000 ft");
        var bar = drawing.Items.OfType<DrawingItem.Path>().Select(p => p.Rings).Single(r => r.Length == 3 && r.All(l => l.Length == 2) && Math.Abs(r[1][1].X + 6 - label.At.X) < 0.01)[1];
        var outline = Outline(drawing);
        Assert.Equal((bar[1].X - bar[0].X) / 1000, (outline.Max(p => p.Y) - outline.Min(p => p.Y)) / 2640, 0.0005);
    }

    [Fact]
    public void Checks_boxes_neighbors_strip_and_north_are_named_on_the_map()
    {
        var words = Draw(Flight("S2"), 240, 300, Language.English).Items.OfType<DrawingItem.Label>().Select(l => l.Text).ToList();
        foreach (var expected in new[] { "N", "check 1", "check 5", "box 4 leaks", "S1 sown", "strip 1.9 mi" }) Assert.Contains(expected, words);
    }

    [Fact]
    public void A_map_speaks_its_outline_its_neighbors_and_that_an_empty_map_is_not_a_clear_one()
    {
        Assert.Contains("Drawn from acres, not surveyed", Draw(Flight("H1"), 200, 200, Language.English).Description, StringComparison.Ordinal);
        Assert.Contains("direction not known", Draw(Flight("H5"), 200, 200, Language.English).Description, StringComparison.Ordinal);
        Assert.Contains("Wheelwright (S1): sown", Draw(Flight("S2"), 200, 200, Language.English).Description, StringComparison.Ordinal);
        Assert.Contains("Unknown, not none.", Draw(Flight("S5"), 200, 200, Language.English).Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hole_is_cut_out_of_the_field()
    {
        var map = Flight("S5").Map!;
        Assert.Single(map.Parts.Single().Holes);
        var drawing = Draw(Flight("S5"), 240, 300, Language.English);
        Assert.Contains(drawing.Items.OfType<DrawingItem.Path>(), p => p.Rings.Length == 2 && p.Fill == Ink.White);
        Assert.Contains(drawing.Items.OfType<DrawingItem.Label>(), l => l.Text == "not sown");
    }

    [Fact]
    public void A_field_drawn_from_its_acres_has_them()
    {
        var map = Flight("H1").Map!;
        Assert.Equal(MapOutline.FromAcres, map.Outline);
        Assert.Equal(40.0, (map.Along * map.Across).Acres, 0.01);
        Assert.Equal(20, map.Run!.Value.Degrees, 1e-9);
    }

    private static ImmutableArray<PaperPoint> Outline(Drawing drawing) =>
        drawing.Items.OfType<DrawingItem.Path>().Single(p => p is { Fill: Ink.White, Stroke: 2.5 }).Rings[0];

    private static FlightSheet Flight(string field) => Flights.First(f => f.Field.Code == field);

    private static Drawing Draw(FlightSheet sheet, double width, double height, Language language)
    {
        var side = FlightPage.Of(Plan, sheet, language).Arrangements[0].OfType<Block.Side>().Single();
        return side.Left.OfType<Block.Picture>().Single().Draw(width, height);
    }

    private static bool Inside(PaperPoint p, Drawing drawing) => p.X >= -0.01 && p.Y >= -0.01 && p.X <= drawing.Width + 0.01 && p.Y <= drawing.Height + 0.01;
}
