using CsCheck;
using Watersown.Land;

namespace Watersown.Flight;

public sealed class LoadSheetTests
{
    private static readonly DateTimeOffset Early = new(2026, 5, 9, 6, 40, 0, TimeSpan.FromHours(-7));

    [Fact]
    public void Equal_loads_and_one_ferry_fewer_are_both_on_the_sheet()
    {
        // Willow Run: 20,550 lb dry, 9.17 full loads.
        var sheet = Sheet(20550 * 1.25, 2800, 3000);
        Assert.Equal(10, sheet.Lines.Length);
        Assert.All(sheet.Lines, l => Assert.Equal(2569, l.Soaked.Pounds, 1.0));
        Assert.Equal((9, true), (sheet.OneFewer!.Loads, sheet.OneFewer.WithinTop));
        Assert.Equal(2854, sheet.OneFewer.Each.Pounds, 0.5);
        Assert.True(sheet.FullAndRest!.SmallLast);
        Assert.Equal(488, sheet.FullAndRest.Last.Pounds, 0.01); // 25,688 whole pounds less 9 × 2,800
    }

    [Fact]
    public void A_top_below_the_weight_is_said()
    {
        Assert.False(Sheet(20550 * 1.25, 2800, 2850).OneFewer!.WithinTop);
        Assert.Null(Sheet(20550 * 1.25, 2800, null).OneFewer!.WithinTop);
    }

    [Fact]
    public void A_lighter_morning_spreads_only_what_is_left()
    {
        var sheet = LoadSheets.Of(SoakedSeed.FromPounds(16081), 1.25, SoakedSeed.FromPounds(2400), null, [new(Early, SoakedSeed.FromPounds(2680)), new(Early.AddMinutes(9), SoakedSeed.FromPounds(2680))], UnitSystem.UsCustomary);
        Assert.Equal([2680, 2680], sheet.Lines.Take(2).Select(l => Math.Round(l.Soaked.Pounds)));
        Assert.Equal(10721, sheet.Left.Pounds, 0.5);
        Assert.Equal(5, sheet.Lines.Count(l => l.Gone is null));
        Assert.All(sheet.Lines.Skip(2), l => Assert.InRange(l.Soaked.Pounds, 2144 - 0.1, 2145.1));
        Assert.Equal(3, sheet.Next!.Number);
        Assert.Equal(5360 / 1.25, sheet.GoneDry.Pounds, 1e-6);
    }

    [Fact]
    public void A_load_nobody_weighed_counts_as_it_stood_on_the_sheet()
    {
        var sheet = LoadSheets.Of(SoakedSeed.FromPounds(13875), 1.25, SoakedSeed.FromPounds(2800), null, [new(Early, null)], UnitSystem.UsCustomary);
        Assert.Equal(2775, sheet.Gone.Pounds, 1e-6);
        Assert.Equal(5, sheet.Lines.Length);
    }

    [Fact]
    public void When_more_went_out_than_there_was_nothing_is_left()
    {
        var sheet = LoadSheets.Of(SoakedSeed.FromPounds(2500), 1.25, SoakedSeed.FromPounds(2800), null, [new(Early, SoakedSeed.FromPounds(2700))], UnitSystem.UsCustomary);
        Assert.Equal(SoakedSeed.Zero, sheet.Left);
        Assert.Null(sheet.Next);
    }

    [Fact]
    public void Whatever_was_flown_the_sheet_adds_up_to_the_fields_seed() =>
        Gen.Select(Gen.Double[500, 60000], Gen.Double[1500, 4500], Gen.Int[0, 6], Gen.Bool).Sample((all, limit, flown, metric) =>
        {
            var each = Math.Min(limit, all / 8);
            ImmutableArray<FlownLoad> loads = [.. Enumerable.Range(0, flown).Select(i => new FlownLoad(Early.AddMinutes(i * 9), i % 2 == 0 ? SoakedSeed.FromPounds(each) : null))];
            var sheet = LoadSheets.Of(SoakedSeed.FromPounds(all), 1.25, SoakedSeed.FromPounds(limit), null, loads, metric ? UnitSystem.Metric : UnitSystem.UsCustomary);
            var sum = sheet.Lines.Sum(l => l.Soaked.Kilograms);
            var unit = metric ? 1 : 0.45359237;
            Assert.True(Math.Abs(sum - SoakedSeed.FromPounds(all).Kilograms) <= unit * 0.5001 || sheet.Left == SoakedSeed.Zero);
            Assert.All(sheet.Lines.Skip(flown), l => Assert.True(l.Soaked.Pounds <= limit + (unit / 0.45359237)));
        });

    private static LoadSheet Sheet(double wet, double limit, double? top) => LoadSheets.Of(
        SoakedSeed.FromPounds(wet), 1.25, SoakedSeed.FromPounds(limit), top is { } t ? SoakedSeed.FromPounds(t) : null, [], UnitSystem.UsCustomary);
}
