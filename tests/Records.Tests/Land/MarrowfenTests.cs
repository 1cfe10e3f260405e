using Watersown.Land;
using Watersown.Records.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Water;

namespace Watersown.Records;

/// <summary>The invented farm's numbers, worked by hand from its table of fields.</summary>
public sealed class MarrowfenTests
{
    private static readonly Outcome<SeasonState> opened = OpenFarm.Run(Path.Combine(ReferenceFile.RepositoryRoot, "examples", "marrowfen", "farm.json"));

    private static SeasonState State => opened.Value;

    [Fact]
    public void Marrowfen_opens_with_nothing_wrong()
    {
        Assert.Empty(opened.Problems.Select(p => Wording.Say.Problem(p, Wording.Language.English)));
        Assert.Equal(new DateTimeOffset(2026, 5, 8, 4, 50, 0, TimeSpan.FromHours(-7)), State.Now);
        Assert.Equal(TimeSpan.FromHours(-7), State.Offset);
        Assert.Equal(new DateOnly(2026, 7, 7), State.Horizon);
    }

    [Fact]
    public void Marrowfen_golden_numbers_of_land()
    {
        Assert.Equal(28, State.Farm.Fields.Length);
        Assert.Equal(2900, Acres(f => f.Net), 1e-6);
        Assert.Equal(3053.1, Acres(f => f.Gross!.Value), 0.05);
        foreach (var (block, acres) in new[] { ("N", 863.0), ("R", 831), ("S", 658), ("H", 548) })
            Assert.Equal(acres, State.Farm.Fields.Where(f => f.Code[..1] == block).Sum(f => f.Net.Acres), 1e-6);
        Assert.Equal(239, State.Farm.Fields.Where(f => f.Sources[0] == "W-1").Sum(f => f.Net.Acres), 1e-6);
        Assert.Equal(309, State.Farm.Fields.Where(f => f.Sources[0] == "W-2").Sum(f => f.Net.Acres), 1e-6);
        Assert.All(State.Farm.Fields, f => Assert.Equal(f.Net.Acres, f.Basins.Sum(b => b.Area.Acres), 1e-6));
        Assert.Equal(9, State.Farm.Field("H5").Basins.Length);
        Assert.Equal(3, State.Farm.Field("R6").Basins.Length);
        Assert.Equal(2, State.Farm.Field("N4").Boxes.Count(b => b.Kind == BoxKind.Inlet));
        Assert.True(State.Farm.Field("S2").Boxes.Single(b => b.Number == 4) is { Leaks: true, DrainsTo: "public drain" });
    }

    [Fact]
    public void Marrowfen_golden_numbers_of_seed()
    {
        var byVariety = State.Farm.Fields.GroupBy(f => State.Season(f.Code).Variety!, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Sum(f => (State.Season(f.Code).Rate * f.Net).Pounds), StringComparer.Ordinal);
        foreach (var (variety, pounds) in new[] { ("E-1", 136_945.0), ("E-2", 134_705), ("VE-1", 101_655), ("I-1", 62_785), ("S-1", 6840) })
            Assert.Equal(pounds, byVariety[variety], 1e-4);
        var dry = DrySeed.FromPounds(byVariety.Values.Sum());
        Assert.Equal(442_930, dry.Pounds, 1e-4);
        Assert.Equal(553_662.5, Soaking.Weigh(dry, State.WetFactor).Pounds, 1e-3);
        // 140 lb N an acre of 20 % aqua at 7.6 lb a gallon: 92.105 gal an acre.
        Assert.Equal(267_105, Acres(f => f.Net) * 140 / (0.20 * 7.6), 1.0);
        Assert.Equal("B-07a B-07b B-08 B-09", string.Join(' ', State.Batches.Select(b => b.Code)));
    }

    [Theory]
    [InlineData(FieldStage.Sown, 6, 815)]
    [InlineData(FieldStage.Full, 3, 282)]
    [InlineData(FieldStage.Flooding, 3, 352)]
    [InlineData(FieldStage.Rolled, 5, 531)]
    [InlineData(FieldStage.AquaOn, 3, 215)]
    [InlineData(FieldStage.Planed, 3, 250)]
    [InlineData(FieldStage.Disced, 2, 173)]
    [InlineData(FieldStage.Chiselled, 2, 218)]
    [InlineData(FieldStage.TooWet, 1, 64)]
    public void Marrowfen_golden_numbers_of_stages(FieldStage stage, int fields, double acres)
    {
        var there = State.Farm.Fields.Where(f => State.Season(f.Code).Stage == stage).ToList();
        Assert.Equal(fields, there.Count);
        Assert.Equal(acres, there.Sum(f => f.Net.Acres), 1e-6);
    }

    [Fact]
    public void Marrowfen_golden_numbers_of_water()
    {
        Assert.Equal(1692.4, State.Farm.Fields.Sum(f => (f.Net * State.Farm.SoilOf(f)!.Fill).AcreFeet), 0.05);
        foreach (var (source, cfs, tolerance) in new[] { ("NT-1", 11.2, 0.05), ("ST-2", 9.2, 0.05), ("SP-1", 9.9, 0.05), ("W-1", 3.7, 0.05), ("W-2", 3.75, 0.01) })
            Assert.Equal(cfs, State.Farm.Fields.Where(f => f.Sources[0] == source).Sum(f => Holding(f, f.Net).CubicFeetPerSecond), tolerance);
        Assert.Equal(37.7, State.Farm.Fields.Sum(f => Holding(f, f.Net).CubicFeetPerSecond), 0.05);
    }

    [Theory]
    [InlineData("NT-1", 5.30)]
    [InlineData("ST-2", 3.43)]
    [InlineData("SP-1", 6.88)]
    public void Marrowfen_golden_numbers_of_holding_now(string source, double cfs)
    {
        var now = State.Farm.Fields.Where(f => f.Sources[0] == source).Sum(f => Holding(f, Wet(f)).CubicFeetPerSecond);
        Assert.Equal(cfs, now, 0.005);
    }

    private static double Acres(Func<Field, Area> of) => State.Farm.Fields.Sum(f => of(f).Acres);

    private static FlowRate Holding(Field field, Area covered) =>
        Ponding.HoldingFlow(covered, State.Evaporation + State.Farm.SoilOf(field)!.Seepage);

    private static Area Wet(Field field)
    {
        var season = State.Season(field.Code);
        return season.Stage switch
        {
            FieldStage.Full or FieldStage.Sown => field.Net,
            FieldStage.Flooding => field.Basins.Take(season.ChecksWet!.Value).Aggregate(Area.Zero, (sum, b) => sum + b.Area),
            _ => Area.Zero,
        };
    }
}
