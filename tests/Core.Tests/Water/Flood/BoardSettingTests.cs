using Watersown.Hydraulics;

namespace Watersown.Water.Flood;

public sealed class BoardSettingTests
{
    private static readonly Length Box = Length.FromFeet(4);
    private static readonly WaterDepth Low = WaterDepth.FromInches(-12);

    // Francis 1883 turned around, 4-ft contracted box: 2.15, 3.42, 4.50, 6.36, 8.76 in for 1, 2, 3, 5, 8 cfs.
    [Theory]
    [InlineData(1, 2.15)]
    [InlineData(2, 3.42)]
    [InlineData(3, 4.50)]
    [InlineData(5, 6.36)]
    [InlineData(8, 8.76)]
    public void Water_over_the_boards_goes_with_the_flow(double cfs, double inches) =>
        Assert.Equal(inches, BoardSetting.Head(FlowRate.FromCubicFeetPerSecond(cfs), Box, WeirKind.Contracted, Low)!.Value.Inches, 0.005);

    // USBR Water Measurement Manual, ch. 7, eq. 7-4, as a rating: contracted L = 4 ft at 0.50 ft passes 4.592 cfs.
    [Fact]
    public void It_agrees_with_the_rating() =>
        Assert.Equal(0.50, BoardSetting.Head(FlowRate.FromCubicFeetPerSecond(4.592), Box, WeirKind.Contracted, Low)!.Value.Feet, 0.0005);

    [Fact]
    public void Boards_for_a_depth_leave_the_head_above_them()
    {
        var boards = BoardSetting.Boards(WaterDepth.FromInches(5), FlowRate.FromCubicFeetPerSecond(2), Box, WeirKind.Contracted, WaterDepth.FromInches(2), WaterDepth.FromFeet(1));
        Assert.Equal(5 - 3.42, boards!.Value.Inches, 0.01);
    }

    [Fact]
    public void A_box_too_small_for_a_shallow_flood_says_so() =>
        Assert.Null(BoardSetting.Boards(WaterDepth.FromInches(2), FlowRate.FromCubicFeetPerSecond(5), Box, WeirKind.Contracted, WaterDepth.FromInches(2), WaterDepth.FromFeet(1)));

    [Fact]
    public void Water_below_over_the_boards_asks_for_lower_ones()
    {
        WaterDepth Boards(double drop) => BoardSetting.Boards(WaterDepth.FromInches(6), FlowRate.FromCubicFeetPerSecond(2), Box, WeirKind.Contracted, WaterDepth.FromInches(6), WaterDepth.FromFeet(drop))!.Value;
        Assert.True(Boards(0.1) < Boards(1.0));
    }
}
