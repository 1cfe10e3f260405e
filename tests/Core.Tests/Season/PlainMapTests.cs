using Watersown.Land;
using Watersown.Season.Ground;

namespace Watersown.Season;

public sealed class PlainMapTests
{
    private static readonly SeasonBook Book = SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty, PlannedMorning.Now);

    [Fact]
    public void Every_field_is_drawn_to_one_scale_with_north_up_and_inside_the_paper()
    {
        var map = PlainMap.Of(Book.State.Farm, LandBoard.Of(Book))!;
        Assert.Equal(28, map.Fields.Length + map.Without.Length);
        Assert.All(map.Without, r => Assert.True(r.Field is { Boundary: null, Center: null }));
        Assert.All(map.Fields.SelectMany(f => f.Rings).SelectMany(r => r), p => Assert.True(p.X is >= 0 and <= PlainMap.Width && p.Y >= 0 && p.Y <= map.Height));

        // By the farm's own table N5 lies half a mile north of N1, R4 far east of H1.
        Assert.True(Field(map, "N5").Middle.Y < Field(map, "N1").Middle.Y);
        Assert.True(Field(map, "H1").Middle.X < Field(map, "R4").Middle.X);

        // Land on the paper is as large as on the earth, field for field: the bar says how long a mile is.
        var feet = map.Bar.Ground.Feet / map.Bar.Paper;
        foreach (var field in map.Fields.Where(f => f.Land.All(p => p.Holes.IsEmpty)))
            Assert.Equal(GeodesicArea.Of(GroundOutline.Of(field.Row.Field)!.Edge).Acres, Inside(field) * feet * feet / 43_560, 0.002 * field.Row.Field.Net.Acres);
    }

    [Fact]
    public void A_field_without_a_place_is_named_and_a_farm_without_any_has_no_map()
    {
        var farm = Book.State.Farm;
        var lost = LandBoard.Of(Book).Select(r => r.Field.Code == "N4" ? r with { Field = Nowhere(r.Field) } : r).ToImmutableArray();
        Assert.Equal(PlainMap.Of(farm, LandBoard.Of(Book))!.Without.Length + 1, PlainMap.Of(farm, lost)!.Without.Length);
        Assert.Contains(PlainMap.Of(farm, lost)!.Without, r => r.Field.Code == "N4");
        Assert.Null(PlainMap.Of(farm, [.. lost.Select(r => r with { Field = Nowhere(r.Field) })]));
    }

    [Fact]
    public void A_strip_far_away_does_not_shrink_the_fields()
    {
        var farm = Book.State.Farm;
        var far = farm with { Strips = [farm.Strips[0] with { At = new GeoPoint(36.5, -119.2) }] };
        var map = PlainMap.Of(far, LandBoard.Of(Book))!;
        Assert.Empty(map.Strips);
        Assert.True(map.Fields.Max(f => f.Middle.X) - map.Fields.Min(f => f.Middle.X) > PlainMap.Width / 2);
    }

    [Fact]
    public void The_figures_of_a_field_are_those_of_the_farms_own_table_and_each_shows_its_sum()
    {
        // Growers' table for Two Gates: 17,700 lb dry, 7.90 loads of 2,800 lb wet and so 8, wet factor 1.25; hours to fly 1.08.
        var figures = FieldFigures.Of(Book.State, "N4");
        Assert.Equal(17_700, figures.Dry.Value.Pounds, 6);
        Assert.Equal(22_125, figures.Soaked.Value.Pounds, 6);
        Assert.Equal(8, figures.Loads!.Value.Count);
        Assert.Equal(1.08, figures.Flying!.Value.TotalHours, 0.01);
        Assert.Equal(118 * (0.22 + 0.10) / 12 / 1.983471, figures.Holding.Value.CubicFeetPerSecond, 4);
        Assert.Equal(118 * (2.0 / 6) * 0.60, figures.ToFill!.Value.AcreFeet, 0.5);
        Assert.All([figures.Dry.Working, figures.Soaked.Working, figures.Loads.Working, figures.Flying.Working, figures.Holding.Working, figures.ToFill.Working], w => Assert.Contains(w.Lines, l => l.Formula is not null));
        Assert.Null(FieldFigures.Of(Book.State, "N1").ToFill);
        Assert.Null(FieldFigures.Of(Book.State, "N1").HeadAge);
    }

    private static Field Nowhere(Field field) => field with { Boundary = null, Center = null };

    private static PlainField Field(PlainMap map, string code) => map.Fields.Single(f => f.Row.Field.Code == code);

    // The shoelace sum over the rings, in square paper points.
    private static double Inside(PlainField field) => field.Rings.Sum(r => Math.Abs(r.Zip(r.Skip(1).Append(r[0]), (a, b) => (a.X * b.Y) - (b.X * a.Y)).Sum() / 2));
}
