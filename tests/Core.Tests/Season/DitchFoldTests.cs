using Watersown.Land;
using Watersown.Schedule;
using Watersown.Schedule.Finish;
using static Watersown.PlannedMorning;

namespace Watersown.Season;

/// <summary>Ditches joined and parted, caps and tailwater, told by marks.</summary>
public sealed class DitchFoldTests
{
    private static readonly DateTimeOffset Six = At(8, 6);

    [Fact]
    public void Joined_ditches_reach_the_fields_of_both_and_parted_ones_their_own()
    {
        var joined = Farm(Marks.At(1, Six, new DitchesJoined("w-2", "W-1", Joined: true)));
        Assert.Equal(["W-1", "W-2"], joined.Field("H1").Sources);
        Assert.Equal(["W-2", "W-1"], joined.Field("H5").Sources);
        Assert.Equal(State().Farm.Field("N4").Sources, joined.Field("N4").Sources);
        Assert.Equal([DitchJoint.Of("W-1", "W-2")], Ditches.Joints(joined));

        var parted = Farm(Marks.At(1, Six, new DitchesJoined("W-2", "W-1", Joined: true)), Marks.At(2, Six.AddHours(1), new DitchesJoined("W-1", "W-2", Joined: false)));
        Assert.Equal(State().Farm.Fields.Select(f => f.Sources.ToArray()), parted.Fields.Select(f => f.Sources.ToArray()));
    }

    [Fact]
    public void What_the_farm_document_says_is_parted_by_a_later_mark_only_and_a_field_keeps_its_own_ditch()
    {
        var ground = State();
        ground = ground with { Farm = ground.Farm with { Fields = [.. ground.Farm.Fields.Select(f => f.Code == "H1" ? f with { Sources = ["W-1", "W-2"] } : f)] } };
        ImmutableArray<string> After(DateTimeOffset at) => SeasonFold.Fold(ground, Logbook.Empty.With([Marks.At(1, at, new DitchesJoined("W-2", "W-1", Joined: false))]), At(9, 6)).State.Farm.Field("H1").Sources;
        Assert.Equal(["W-1"], After(Six));
        Assert.Equal(["W-1", "W-2"], After(ground.Now.AddDays(-1)));
    }

    [Fact]
    public void Three_ditches_joined_pair_by_pair_are_the_same_in_any_order()
    {
        Mark[] marks = [Marks.At(1, Six, new DitchesJoined("W-1", "W-2", Joined: true)), Marks.At(2, Six.AddHours(1), new DitchesJoined("W-2", "SP-1", Joined: true)), Marks.At(3, Six.AddHours(2), new DitchesJoined("W-1", "XX-9", Joined: true))];
        var first = Farm(marks).Fields.Select(f => f.Code + ": " + string.Join(' ', f.Sources)).ToArray();
        Assert.Contains("H5: W-2 SP-1 W-1", first);
        foreach (var order in new[] { new[] { 2, 0, 1 }, [1, 2, 0], [2, 1, 0] }) Assert.Equal(first, Farm([.. order.Select(i => marks[i])]).Fields.Select(f => f.Code + ": " + string.Join(' ', f.Sources)));
    }

    [Fact]
    public void A_cap_takes_the_place_of_one_of_its_name_and_ends_when_none_is_told()
    {
        var told = Marks.At(1, Six, new CapShared("both turnouts", ["nt-1", "ST-2", "none"]) { Cap = Cfs(24) });
        var cap = Assert.Single(Farm(told).SharedCaps, c => c.Name == "both turnouts");
        Assert.Equal(["NT-1", "ST-2"], cap.Sources);
        Assert.Equal(24, cap.Cap.CubicFeetPerSecond, 9);
        Assert.DoesNotContain(Farm(told, Marks.At(2, Six.AddHours(1), new CapShared("Both turnouts", []))).SharedCaps, c => c.Name == "both turnouts");
    }

    [Fact]
    public void Tailwater_waits_for_the_land_that_was_told_and_comes_when_a_plan_has_filled_it()
    {
        var ground = State();
        ground = ground with { Farm = ground.Farm with { Sources = [.. ground.Farm.Sources, new WaterSource("TR-1", WaterSourceKind.Tailwater, Cfs(4))] } };
        SeasonState With(double acres) => SeasonFold.Fold(ground, Logbook.Empty.With([Marks.At(1, Six, new TailwaterWaits("tr-1", ["N1", "N2", "N3", "n4", "Q1"]) { Full = Area.FromAcres(acres) })]), At(9, 6)).State;
        Assert.Equal(["N1", "N2", "N3", "N4"], With(400).Farm.Source("TR-1")!.Needs!.Fields);
        // 142 + 128 + 96 acres are full; Two Gates with its 118 is not.
        Assert.Equal(At(9, 6), TailwaterMoment.Of(With(366), null, With(366).Farm.Source("TR-1")!));
        Assert.Null(TailwaterMoment.Of(With(400), null, With(400).Farm.Source("TR-1")!));
    }

    private static Farm Farm(params Mark[] marks) => SeasonFold.Fold(State(), Logbook.Empty.With(marks), At(9, 6)).State.Farm;
}
