using Watersown.Land;

namespace Watersown.Season;

public sealed class GroundMarksTests
{
    private static readonly Boundary Square = new([new BoundaryPart([new(39, -122), new(39, -121.99), new(39.01, -121.99), new(39.01, -122)], [])]);

    [Fact]
    public void An_acre_figure_put_right_changes_neither_of_the_other_two()
    {
        var before = PlannedMorning.Farm().Field("N4");
        var after = Laid(new FieldCorrected("N4") { Net = Area.FromAcres(116) });
        Assert.Equal(116, after.Net.Acres, 9);
        Assert.Equal(before.Gross, after.Gross);
        Assert.Equal(before.Certified, after.Certified);
        Assert.Equal(130, Laid(new FieldCorrected("N4") { Gross = Area.FromAcres(130) }).Gross!.Value.Acres, 9);
        Assert.Equal(before.Net, Laid(new FieldCorrected("N4") { Certified = Area.FromAcres(117) }).Net);
    }

    [Fact]
    public void Checks_that_are_equal_parts_follow_the_net_acres_and_others_keep_their_own()
    {
        var equal = PlannedMorning.Farm().Field("N4") with { Basins = [.. Enumerable.Range(1, 4).Select(n => new Basin(n, PlannedMorning.Farm().Field("N4").Net / 4))] };
        Assert.All(Laid(new FieldCorrected("N4") { Net = Area.FromAcres(100) }, equal).Basins, b => Assert.Equal(25, b.Area.Acres, 9));
        var own = equal with { Basins = [new(1, Area.FromAcres(10)), new(2, Area.FromAcres(100))] };
        Assert.Equal(own.Basins, Laid(new FieldCorrected("N4") { Net = Area.FromAcres(100) }, own).Basins);
    }

    [Fact]
    public void The_last_edge_drawn_is_the_edge()
    {
        var moved = new Boundary([Square.Parts[0] with { Outer = Square.Parts[0].Outer.SetItem(0, new GeoPoint(39.001, -122)) }]);
        Assert.Equal(moved.Parts[0].Outer, Laid([BoundaryDrawn.Of("N4", Square), BoundaryDrawn.Of("n4", moved)]).Boundary!.Parts[0].Outer);
    }

    [Fact]
    public void A_field_that_the_farm_does_not_have_is_not_made_by_an_edge() =>
        Assert.Equal(PlannedMorning.Farm().Fields.Length, Farm([BoundaryDrawn.Of("Z9", Square)]).Fields.Length);

    private static Field Laid(MarkFact fact, Field? field = null) => Laid([fact], field);

    private static Field Laid(MarkFact[] facts, Field? field = null) => Farm(facts, field).Field("N4");

    private static Farm Farm(MarkFact[] facts, Field? field = null)
    {
        var ground = PlannedMorning.State();
        if (field is not null) ground = ground with { Farm = ground.Farm with { Fields = [.. ground.Farm.Fields.Select(f => f.Code == field.Code ? field : f)] } };
        return SeasonFold.Fold(ground, Logbook.Empty.With(facts.Select(Mark)), PlannedMorning.At(8, 6)).State.Farm;
    }

    private static Mark Mark(MarkFact fact, int number) => new()
    {
        Id = AnyMark.Id(number),
        Happened = PlannedMorning.At(8, 5).AddMinutes(number),
        Entered = PlannedMorning.At(8, 5).AddMinutes(number),
        By = "Tamsin Wexcombe",
        Device = "phone-a",
        Fact = fact,
    };
}
