namespace Watersown.Schedule;

/// <summary>The hand-laid plan of 8 May as it is read in a minute.</summary>
public sealed class SowingOutlookTests
{
    private static readonly DateOnly Friday = new(2026, 5, 8);

    [Fact]
    public void Every_unsown_field_is_near_or_far_once()
    {
        var outlook = Of();
        var shown = outlook.Near.Concat(outlook.Far.SelectMany(f => f.Lines)).Select(l => l.Field.Code).ToList();
        Assert.Equal(22, shown.Count);
        Assert.Equal(shown.Count, shown.Distinct(StringComparer.Ordinal).Count());
        Assert.All(outlook.Far.SelectMany(f => f.Lines), l => Assert.All(l.Marks, m => Assert.Equal(SowingWord.Blocked, m.Word)));
        Assert.Equal((6, 28), (outlook.Sown.Fields, outlook.Sown.AllFields));
        Assert.Equal(2900, outlook.Sown.AllLand.Acres, 3);
        Assert.Equal(815, outlook.Sown.Land.Acres, 3);
    }

    [Fact]
    public void Friday_is_blown_out_and_says_so()
    {
        var friday = Of().Mornings[0];
        Assert.Empty(friday.Planned);
        Assert.Equal(SowingBlock.Wind, friday.Block);
    }

    [Fact]
    public void The_field_that_goes_first_stands_first_and_is_sown_afterwards()
    {
        var line = Of().Near[0];
        Assert.Equal(("S2", new DateOnly(2026, 5, 9)), (line.Field.Code, line.First!.Value));
        Assert.Equal(SowingWord.Planned, line.Marks[1].Word);
        Assert.All(line.Marks.Skip(2), m => Assert.Equal(SowingWord.Sown, m.Word));
    }

    [Fact]
    public void Ground_or_water_is_told_alone_and_the_rest_together()
    {
        var outlook = Of();
        var all = outlook.Near.Concat(outlook.Far.SelectMany(f => f.Lines)).SelectMany(l => l.Marks).Where(m => m.Word == SowingWord.Blocked).ToList();
        Assert.All(all.Where(m => m.Blocks.Any(b => b <= SowingBlock.Water)), m => Assert.Single(m.Blocks));
        Assert.Equal([SowingBlock.Seed, SowingBlock.Wind], outlook.Near.Single(l => l.Field.Code == "N3").Marks[0].Blocks);
    }

    private static SowingOutlook Of() => SowingOutlook.Of(PlannedMorning.Plan(), Friday, DaySheets.Mornings);
}
