namespace Watersown.Holds;

/// <summary>
/// Three rules, one box: product P holds 30 days from 20 May, product Q needs the water lowered between 10 and 20 June, and a drain is wanted. By the
/// calendar, with the day of application as day 1: held through 18 June, not before 19 June, so of Q's days 19 and 20 June are left.
/// </summary>
public sealed class HoldStoryTests
{
    private static readonly Treatment P = new("N4", "P", Day(5, 20), Day(5, 20)) { Rule = new HoldRule { Days = 30 } };

    private static readonly Treatment Q = new("N4", "Q", Day(6, 10), Day(6, 20)) { Rule = new HoldRule { Needs = WaterNeeded.Lowered } };

    [Fact]
    public void Water_is_held_through_the_eighteenth_and_the_nineteenth_is_the_first_day_after()
    {
        var hold = Assert.Single(Assert.Single(Ledger((P, TreatmentState.Applied), (Q, TreatmentState.Booked))).Holds);
        Assert.Equal((Day(5, 20), Day(6, 18), Day(6, 19)), (hold.Held.From, hold.Held.Until, hold.Release));
        Assert.Equal(Day(6, 20), HoldLedger.Hold(P, TreatmentState.Applied, ApplicationDay.CountsAsZero)!.Release);
        Assert.Equal(Day(6, 20), HoldLedger.Hold(P with { Rule = P.Rule with { Counting = ApplicationDay.CountsAsZero } }, TreatmentState.Applied, ApplicationDay.CountsAsOne)!.Release);
    }

    [Fact]
    public void Of_the_other_product_s_days_two_are_left()
    {
        var collision = Assert.Single(Collisions(P, Q));
        Assert.Equal([new DaySpan(Day(6, 19), Day(6, 20))], collision.Free);
        Assert.Null(collision.Within);
        Assert.Equal("P", Assert.Single(collision.Holds).Treatment.Product);
    }

    [Fact]
    public void Where_its_rule_lets_water_be_moved_within_the_field_all_days_are_left_for_lowering_and_none_more_for_a_drain()
    {
        var moving = P with { Rule = P.Rule with { MovesWithin = true } };
        Assert.Equal([new DaySpan(Day(6, 10), Day(6, 20))], Assert.Single(Collisions(moving, Q)).Within!.Value);
        var drained = Q with { Rule = Q.Rule with { Needs = WaterNeeded.Drained } };
        Assert.Null(Assert.Single(Collisions(moving, drained)).Within);
    }

    [Fact]
    public void A_drain_that_is_wanted_meets_the_hold_and_one_on_another_field_or_after_it_does_not()
    {
        WantedWater Drain(string field, DateOnly from, DateOnly until) => new(field, WaterWish.Peg, new DaySpan(from, until));
        var holds = Ledger((P, TreatmentState.Applied));
        Assert.Empty(Assert.Single(HoldCollisions.Of(holds, [Drain("n4", Day(5, 25), Day(5, 28))])).Free);
        Assert.Empty(HoldCollisions.Of(holds, [Drain("N4", Day(6, 19), Day(6, 25)), Drain("N5", Day(5, 25), Day(5, 28)), Drain("N4", Day(5, 15), Day(5, 19))]));
    }

    [Fact]
    public void Of_several_holds_the_latest_end_stands_and_both_are_shown()
    {
        var longer = new Treatment("N4", "R", Day(6, 1), Day(6, 1)) { Rule = new HoldRule { Days = 28 } };
        var holds = Assert.Single(Ledger((P, TreatmentState.Applied), (longer, TreatmentState.Applied)));
        Assert.Equal(["R", "P"], holds.Holds.Select(h => h.Treatment.Product));
        Assert.Equal(Day(6, 29), holds.Standing(Day(6, 5))!.Release);
        Assert.Equal([new DaySpan(Day(5, 20), Day(6, 28))], holds.Spans);
        Assert.True(holds.Runs(Day(6, 28)));
        Assert.False(holds.Runs(Day(6, 29)));
        Assert.Null(holds.Standing(Day(6, 29)));
    }

    [Fact]
    public void What_is_only_booked_holds_nothing_yet_and_reaches_to_the_end_of_its_last_day_s_hold()
    {
        var holds = Assert.Single(Ledger((P with { Until = Day(5, 25) }, TreatmentState.Booked)));
        Assert.False(holds.Runs(Day(5, 22)));
        Assert.Equal(new DaySpan(Day(5, 20), Day(6, 23)), holds.Holds[0].Held);
        Assert.Empty(Ledger((P, TreatmentState.CalledOff), (Q, TreatmentState.Booked), (P with { Rule = new HoldRule { Days = 0 } }, TreatmentState.Applied)));
    }

    [Fact]
    public void A_treatment_s_own_need_is_not_held_against_its_own_hold()
    {
        var both = Q with { Rule = new HoldRule { Days = 7, Needs = WaterNeeded.Lowered } };
        Assert.Empty(HoldCollisions.Of(Ledger((both, TreatmentState.Booked)), HoldCollisions.Needs([(both, TreatmentState.Booked)])));
        var again = both with { Round = 2, From = Day(6, 22), Until = Day(6, 24) };
        // Booked for 10 to 20 June with 7 days, day 1 the day itself: through 26 June, over the second time.
        Assert.Equal(2, Assert.Single(HoldCollisions.Of(Ledger((both, TreatmentState.Booked), (again, TreatmentState.Booked)), HoldCollisions.Needs([(both, TreatmentState.Booked), (again, TreatmentState.Booked)])), c => c.Free.IsEmpty).Want.For!.Round);
    }

    private static ImmutableArray<FieldHolds> Ledger(params (Treatment, TreatmentState)[] treatments) => HoldLedger.Of(treatments, ApplicationDay.CountsAsOne);

    private static ImmutableArray<HoldCollision> Collisions(Treatment held, Treatment wanting) =>
        HoldCollisions.Of(Ledger((held, TreatmentState.Applied), (wanting, TreatmentState.Booked)), HoldCollisions.Needs([(held, TreatmentState.Applied), (wanting, TreatmentState.Booked)]));

    private static DateOnly Day(int month, int day) => new(2026, month, day);
}
