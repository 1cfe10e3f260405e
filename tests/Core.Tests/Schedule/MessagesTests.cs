using CsCheck;
using Watersown.Land;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Schedule;

public sealed class MessagesTests
{
    private static readonly DateOnly Friday = new(2026, 5, 8);

    [Theory]
    [InlineData(CrewRole.Warehouse, "Soak Fri 5/8 06:30 for Sun 5/10: N3 14,880 lb dry E-1 lot 2 + R4 15,450 lb dry E-1 lot 2. OK?")]
    [InlineData(CrewRole.Warehouse, "HOLD drain on B-08, B-09, N3, R4, S3 until I call.")]
    [InlineData(CrewRole.Warehouse, "Do not haul, past its time: B-07a, B-07b. Wait for me.")]
    [InlineData(CrewRole.Dispatcher, "Ready Sat 5/9: S2 83 ac at 155 lb/ac dry. Seed at strip 06:30. About 0.89 h in all. OK?")]
    [InlineData(CrewRole.Pilot, "Sat 5/9 06:30 S2 only: 83 ac, 155 dry / 194 WET lb/ac, 6 loads, 16,081 lb wet. You decide.")]
    [InlineData(CrewRole.District, "NT-1: please change 14 cfs to 5.8 cfs Sun 5/10 07:00. Order no. ___.")]
    [InlineData(CrewRole.Irrigator, "NO SPILL: N1, N2.")]
    [InlineData(CrewRole.Irrigator, "NO tirar agua en N1, N2.")]
    [InlineData(CrewRole.Irrigator, "Abrir: H1 vie 08:00, H4 vie 09:00. Meta 2 pulg.")]
    [InlineData(CrewRole.Landlord, "Planted R1 134 ac Thu 4/30, R2 178 ac Fri 5/1, N1 142 ac Sat 5/2, N2 128 ac Mon 5/4, R3 121 ac Tue 5/5, S1 112 ac Wed 5/6.")]
    public void Each_person_gets_the_sentence_of_the_trade(CrewRole role, string text) =>
        Assert.Contains(Messages.Of(PlannedMorning.Plan(), Friday), m => m.Role == role && m.Text == text);

    [Fact]
    public void An_irrigator_is_told_in_the_language_he_speaks() =>
        Assert.All(Messages.Of(PlannedMorning.Plan(), Friday).Where(m => m.Role == CrewRole.Irrigator), m =>
            Assert.Equal(m.Name == "Lucero Quintabar" ? Language.Spanish : Language.English, m.Language));

    [Fact]
    public void Without_people_the_roles_are_told_in_the_language_of_the_farm_and_no_landlord_is_guessed()
    {
        var plan = PlannedMorning.Plan();
        var texts = Messages.Of(plan with { State = plan.State with { People = [], Farm = plan.State.Farm with { Language = Language.Spanish } } }, Friday);
        Assert.Contains(texts, m => m is { Role: CrewRole.Pilot, Name: "piloto" });
        Assert.DoesNotContain(texts, m => m.Role == CrewRole.Landlord);
        Assert.All(texts, m => Assert.Equal(Language.Spanish, m.Language));
    }

    [Fact]
    public void A_pilot_who_was_told_of_a_flight_that_is_off_is_told_to_stop()
    {
        var plan = PlannedMorning.Plan();
        var off = plan with { State = plan.State with { Pins = [new Pin("R5", "sow", PlannedMorning.At(9, 7)) { Told = "Joss Tarrowby" }] } };
        Assert.Contains(Messages.Of(off, Friday), m => m.Role == CrewRole.Pilot && m.Text == "STOP R5: not Sat 5/9, plan 14. Listed that day: S2.");
    }

    [Fact]
    public void No_text_of_any_plan_is_longer_than_one_message()
    {
        var gen = Gen.Select(Gen.String[1, 60], Gen.String[1, 30], Gen.Double[1, 90000], Gen.Int[1, 60], Gen.Bool);
        gen.Sample((word, code, pounds, fields, metric) =>
        {
            var texts = Messages.Of(Odd(word, code, pounds, fields, metric), Friday);
            return !texts.IsEmpty && texts.All(m => m.Septets <= ShortText.Most && ShortText.IsPlain(m.Text) && m.Text.Length > 0);
        }, iter: 60);
    }

    // Names of any letters and length, weights of any size, many fields, everybody both languages.
    private static SeasonPlan Odd(string word, string code, double pounds, int fields, bool metric)
    {
        var plan = PlannedMorning.Plan();
        ImmutableArray<Field> land = [.. plan.State.Farm.Fields.Select((f, i) => f with { Code = i < fields ? code + i : f.Code, Name = word })];
        string Code(string old) => land[plan.State.Farm.Fields.IndexOf(plan.State.Farm.Field(old))].Code;
        return plan with
        {
            Tasks = [.. plan.Tasks.Select(t => t with { Field = Code(t.Field), Dry = t.Dry is null ? null : DrySeed.FromPounds(pounds), Batch = t.Batch is null ? null : t.Batch + code })],
            LostBatches = [.. Enumerable.Range(0, fields).Select(i => code + i)],
            Decisions = [],
            State = plan.State with
            {
                Farm = plan.State.Farm with { Name = word, Fields = land, Units = metric ? UnitSystem.Metric : UnitSystem.UsCustomary, Strips = [new Strip(word + word, 2)] },
                Fields = [.. plan.State.Fields.Select((f, i) => f with { Code = land[i].Code, NoSpill = true, Variety = word })],
                Batches = [],
                Lots = [],
                Pins = [new Pin(land[0].Code, "sow", PlannedMorning.At(9, 7)) { Told = word }],
                People = [.. plan.State.People.SelectMany(p => new[] { p, p with { Speaks = Language.Spanish, Name = word } })],
            },
        };
    }
}
