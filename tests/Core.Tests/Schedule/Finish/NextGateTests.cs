using Watersown.Water.Filling;

namespace Watersown.Schedule.Finish;

public sealed class NextGateTests
{
    private static readonly SeasonState State = SomeBlock.State();

    [Fact]
    public void What_is_rolled_is_opened_one_after_another_and_what_is_not_waits()
    {
        var choices = NextGate.Of(State, "NT-1", SomeBlock.At(20));
        Assert.Equal(3, choices.Length);
        Assert.All(choices, c => Assert.Equal(["N5", "N6"], c.Fields.Order(StringComparer.Ordinal)));
        Assert.Equal(FillingWay.OneAfterAnother, choices[0].Way);
        Assert.True(choices.Zip(choices.Skip(1)).All(p => p.First.Total <= p.Second.Total));
        var side = choices.Single(c => c.Way == FillingWay.SideBySide);
        Assert.True(side.OldestHead > choices[0].OldestHead);
    }

    // Acres × 3.60 $ a day from the day of planning, and 4 $ × acres × (days over 8)², as a plan is priced.
    [Fact]
    public void The_price_of_a_choice_can_be_followed()
    {
        foreach (var field in NextGate.Of(State, "NT-1", SomeBlock.At(20)).SelectMany(c => c.Opened))
        {
            var (acres, late) = (field.Finish.Field.Net.Acres, FarmTime.Day(State, field.Sow!.Value).DayNumber - new DateOnly(2026, 5, 8).DayNumber);
            Assert.Equal(acres * late * 3.6, (double)field.Delay.Amount, 0.01);
            Assert.Equal(4 * acres * Math.Pow(Math.Max(0, field.HeadAge!.Value.TotalDays - 8), 2), (double)field.HeadCost.Amount, 0.01);
            Assert.True(field.Sow >= field.Finish.Full);
        }
    }

    // Seed in soak for the large field cannot wait until the small one has been filled first.
    [Fact]
    public void Seed_that_waits_for_a_field_moves_it_ahead()
    {
        // Drained by Monday evening it lasts until Wednesday: filled first, the large field is full on Tuesday, else a day later.
        var soaking = State.Batches[0] with { Code = "B-N6", MeantFor = ["N6"], InSoak = PlannedMorning.At(10, 18), Drained = PlannedMorning.At(11, 18), Dry = DrySeed.FromPounds(23400) };
        var calm = State with { Wind = [], Batches = [] };
        var without = NextGate.Of(calm, "NT-1", SomeBlock.At(20))[0];
        var with = NextGate.Of(calm with { Batches = [soaking] }, "NT-1", SomeBlock.At(20))[0];
        Assert.Equal("N5", without.Fields[0]);
        Assert.Equal("N6", with.Fields[0]);
        Assert.Empty(with.Opened.SelectMany(f => f.SeedLost));
    }

    [Fact]
    public void Where_nothing_is_ready_there_is_nothing_to_choose()
    {
        var choice = Assert.Single(NextGate.Of(State.With("N5", f => f with { Stage = FieldStage.AquaOn }).With("N6", f => f with { Stage = FieldStage.Planed }), "NT-1", SomeBlock.At(14)));
        Assert.Empty(choice.Fields);
        Assert.Equal("N4", Assert.Single(choice.Opened).Finish.Field.Code);
    }
}
