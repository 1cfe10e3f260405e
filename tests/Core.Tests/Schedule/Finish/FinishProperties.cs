using CsCheck;
using Watersown.Land;
using Watersown.Water.Filling;

namespace Watersown.Schedule.Finish;

public sealed class FinishProperties
{
    private static readonly DateTimeOffset Now = new(2026, 5, 8, 4, 50, 0, TimeSpan.FromHours(-7));

    private sealed record Ground(double Acres, int Checks, int Stage, int Wet, double Fill, double Seep, double? Gate);

    private static readonly Gen<Ground> Grounds = Gen.Select(Gen.Double[20, 200], Gen.Int[1, 9], Gen.Int[0, 3], Gen.Int[0, 9], Gen.Double[0.4, 0.8], Gen.Double[0, 0.25], Gen.Double[0.5, 12].Nullable(),
        (acres, checks, stage, wet, fill, seep, gate) => new Ground(acres, checks, stage, Math.Min(wet, checks - 1), fill, seep, gate));

    private static readonly Gen<(SeasonState State, double Cfs, FillingWay Way)> Sources =
        Gen.Select(Grounds.Array[1, 6], Gen.Double[0.5, 30], Gen.Bool).Select((g, cfs, turn) => (Farm(g), cfs, turn ? FillingWay.OneAfterAnother : FillingWay.SideBySide));

    [Fact]
    public void Nothing_is_full_before_its_water_has_come() => Sources.Sample(s =>
    {
        var finish = Of(s.State, s.Cfs, s.Way);
        if (finish.Full is not { } full) return;
        var needed = finish.Fields.Aggregate(Volume.Zero, (sum, f) => sum + f.ToCome);
        Assert.True((PlannedMorning.Cfs(s.Cfs) * (full - Now)) >= needed * (1 - 1e-6));
    });

    // What a source gives is held, stored or over: added up over the stretches against what the ground takes.
    [Fact]
    public void What_is_given_is_taken_up_or_over_and_never_more_than_comes() => Sources.Sample(s =>
    {
        var finish = Of(s.State, s.Cfs, s.Way);
        Assert.All(finish.Spans, span => Assert.Equal(s.Cfs, (span.Takes + span.Over).CubicFeetPerSecond, 1e-6));
        if (PlannedMorning.Cfs(s.Cfs) > finish.HoldsFull) Assert.All(finish.Spans, span => Assert.True(span.Over.CubicFeetPerSecond >= -1e-6));
    });

    [Fact]
    public void A_date_stands_just_where_more_comes_than_holding_takes() => Sources.Sample(s =>
    {
        var state = WithoutGates(s.State);
        var finish = Of(state, s.Cfs, s.Way);
        if (finish.Fields.IsEmpty || Math.Abs(s.Cfs - finish.HoldsFull.CubicFeetPerSecond) < 1e-6) return;
        Assert.Equal(s.Cfs < finish.HoldsFull.CubicFeetPerSecond, finish.Never);
        Assert.Equal(finish.Never, finish.Full is null);
        Assert.Equal(finish.Never, finish.Short is not null);
    });

    [Fact]
    public void Checks_follow_one_another_and_the_field_is_full_with_its_last() => Sources.Sample(s =>
    {
        foreach (var field in Of(s.State, s.Cfs, s.Way).Fields)
        {
            var told = field.Checks.Where(c => !c.FullNow).ToList();
            for (var i = 1; i < told.Count; i++)
            {
                Assert.True(told[i].Full is null || told[i].Full > told[i - 1].Full);
                Assert.True(told[i].FirstWet is null || told[i].FirstWet >= told[i - 1].Full);
            }

            Assert.Equal(field.Full, told[^1].Full);
        }
    });

    [Fact]
    public void More_water_never_ends_it_later() => Sources.Sample(s =>
    {
        var (less, more) = (Of(s.State, s.Cfs, s.Way), Of(s.State, s.Cfs * 1.2, s.Way));
        if (less.Full is { } full) Assert.True(more.Full <= full + TimeSpan.FromSeconds(1));
    });

    // A field cut into one check or nine is the same land.
    [Fact]
    public void How_many_checks_a_field_has_changes_nothing_of_its_end() => Sources.Sample(s =>
    {
        var state = WithoutGates(s.State);
        var dry = state with { Fields = [.. state.Fields.Select(f => f with { Stage = f.Stage == FieldStage.Flooding ? FieldStage.Rolled : f.Stage, ChecksWet = null })] };
        var whole = dry with { Farm = dry.Farm with { Fields = [.. dry.Farm.Fields.Select(f => f with { Basins = [] })] } };
        var (a, b) = (Of(dry, s.Cfs, FillingWay.OneAfterAnother), Of(whole, s.Cfs, FillingWay.OneAfterAnother));
        Assert.Equal(a.Never, b.Never);
        if (a.Full is { } full) Assert.Equal(0, (full - b.Full!.Value).TotalMinutes, 1.0);
    });

    // The order gives at every hour what is taken up, but where it cannot be changed yet or the source has no more.
    [Fact]
    public void Orders_are_never_below_what_holding_and_filling_take() => Sources.Sample(s =>
    {
        var finish = Of(s.State, s.Cfs, s.Way);
        var advice = OrderAdvice.Of(s.State, "A", finish);
        var source = advice.Source;
        foreach (var order in advice.Orders.Where(o => o.From > Now))
        {
            Assert.True(order.Flow <= source.Cap);
            Assert.Contains(source.ChangeHours, h => h == TimeOnly.FromTimeSpan(order.From.TimeOfDay));
            foreach (var (span, i) in finish.Spans.Select((x, i) => (x, i)))
            {
                var (from, until) = (Now + span.From, i + 1 < finish.Spans.Length ? Now + finish.Spans[i + 1].From : DateTimeOffset.MaxValue);
                if (from < order.Until && until > order.From) Assert.True(order.Flow.CubicFeetPerSecond >= Math.Min(span.Takes.CubicFeetPerSecond, source.Cap.CubicFeetPerSecond) - 1e-6);
            }
        }

        Assert.All(advice.Changes, c => Assert.True(c.SendBy >= Now && c.At - c.SendBy == source.Notice && c.Before != c.After));
    });

    private static SourceFinish Of(SeasonState state, double cfs, FillingWay way) =>
        SourceFinish.Of(state, "A", SomeBlock.At(cfs) with { Open = [.. state.Fields.Where(f => f.Stage == FieldStage.Rolled).Select(f => new FieldStart(f.Code))], Way = way });

    private static SeasonState WithoutGates(SeasonState state) => state with { Farm = state.Farm with { Fields = [.. state.Farm.Fields.Select(f => f with { InletLimit = null })] } };

    private static SeasonState Farm(Ground[] grounds) => new()
    {
        Farm = new Farm
        {
            Name = "Any",
            TimeZone = "America/Los_Angeles",
            SeasonYear = 2026,
            Soils = [.. grounds.Select((g, i) => new Soil("s" + i, "clay", WaterDepth.FromFeet(g.Fill), DepthRate.FromInchesPerDay(g.Seep)))],
            Sources = [new WaterSource("A", WaterSourceKind.DistrictTurnout, PlannedMorning.Cfs(25)) { Notice = TimeSpan.FromHours(48), ChangeHours = [new(7, 0)], Running = PlannedMorning.Cfs(10) }],
            Fields =
            [
                .. grounds.Select((g, i) => new Field
                {
                    Code = "F" + i,
                    Name = "Field " + i,
                    Net = Area.FromAcres(g.Acres),
                    Soil = "s" + i,
                    Sources = ["A"],
                    InletLimit = g.Gate is { } gate ? PlannedMorning.Cfs(gate) : null,
                    Basins = [.. Enumerable.Range(1, g.Checks).Select(n => new Basin(n, Area.FromAcres(g.Acres / g.Checks * (1 + (0.1 * (n % 3))))))],
                }),
            ],
        },
        Now = Now,
        Offset = Now.Offset,
        Fields = [.. grounds.Select((g, i) => new FieldSeason("F" + i, SeedRate.FromPoundsPerAcre(150), g.Stage switch { 0 => FieldStage.Rolled, 1 => FieldStage.Flooding, 2 => FieldStage.Full, _ => FieldStage.Sown }) { ChecksWet = g.Stage == 1 ? g.Wet : null })],
        Horizon = new DateOnly(2026, 7, 8),
    };
}
