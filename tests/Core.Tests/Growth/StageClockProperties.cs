using CsCheck;
using Watersown.Weather;

namespace Watersown.Growth;

public sealed class StageClockProperties
{
    private static readonly DateOnly Sown = new(2026, 5, 10);

    private static readonly Gen<ImmutableArray<SeriesDay>> SomeDays = Gen.Select(Gen.Double[0, 40], Gen.Double[0, 20], Gen.Enum<DayBasis>()).Array[150, 220].Select(rows =>
        rows.Select((r, i) => new SeriesDay(new DayWarmth(Sown.AddDays(i), Temperature.FromCelsius(r.Item1 + r.Item2), Temperature.FromCelsius(r.Item1)), r.Item3)).ToImmutableArray());

    [Fact]
    public void Stages_come_in_their_order_whatever_the_weather() => SomeDays.Sample(days =>
    {
        var stages = StageClock.Of(new StageQuestion(Sown, days, StageTargets.Early)).Stages;
        foreach (var kind in stages.GroupBy(s => s.Point.ByLeaf)) Assert.Equal(kind.OrderBy(s => s.Day).Select(s => s.Day), kind.Select(s => s.Day));
    });

    [Fact]
    public void A_warmer_day_never_makes_a_stage_later() => Gen.Select(SomeDays, Gen.Int[0, 149], Gen.Double[0, 10]).Sample((days, at, more) =>
    {
        var day = days[at];
        var warmer = days.SetItem(at, day with { Warmth = new DayWarmth(day.Day, Temperature.FromCelsius(day.Warmth.High.Celsius + more), Temperature.FromCelsius(day.Warmth.Low.Celsius + more)) });
        var (before, after) = (Heading(days), Heading(warmer));
        Assert.True(after <= before, $"{after} after {before}");
    });

    [Fact]
    public void What_was_reckoned_and_then_seen_on_that_day_changes_nothing_after_it() => SomeDays.Sample(days =>
    {
        var free = StageClock.Of(new StageQuestion(Sown, days, StageTargets.Early));
        if (free.Of(CropStage.PanicleInitiation) is not { } initiation) return;
        var seen = StageClock.Of(new StageQuestion(Sown, days, StageTargets.Early) { Seen = [new StageSighting(initiation.Point, initiation.Day)] });
        // The warmth above the target on its last day is let go: at most one day of it, so at most a few cold days.
        if (free.Of(CropStage.Heading) is { } heading && seen.Of(CropStage.Heading) is { } after) Assert.True(after.Day >= heading.Day);
    });

    private static DateOnly Heading(ImmutableArray<SeriesDay> days) => StageClock.Of(new StageQuestion(Sown, days, StageTargets.Early)).Of(CropStage.Heading)?.Day ?? DateOnly.MaxValue;
}
