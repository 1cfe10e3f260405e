namespace Watersown.Hydraulics;

/// <summary>Flow over weirs against printed tables and against the published formulas worked apart from the product.</summary>
public sealed class WeirReference
{
    // US Bureau of Reclamation, Water Measurement Manual, 3rd ed. 1997 rev. 2001, eq. 7-4 (Francis 1883); derived: the printed
    // formula computed apart, and rounded.
    [Theory]
    [InlineData(1, 0.1, 0.103)]
    [InlineData(1, 0.2, 0.286)]
    [InlineData(1, 0.3, 0.514)]
    [InlineData(2, 0.3, 1.062)]
    [InlineData(2, 0.5, 2.237)]
    [InlineData(3, 0.4, 2.460)]
    [InlineData(3, 0.8, 6.767)]
    [InlineData(4, 0.25, 1.644)]
    [InlineData(4, 0.5, 4.592)]
    [InlineData(4, 1.0, 12.654)]
    public void A_contracted_weir_follows_francis(double width, double head, double cfs) =>
        Assert.Equal(cfs, Flow(WeirKind.Contracted, width, head), 0.0006);

    // The same formula turned around by bisection; derived.
    [Theory]
    [InlineData(0.17903336, 1)]
    [InlineData(0.28521729, 2)]
    [InlineData(0.52976474, 5)]
    [InlineData(0.72971237, 8)]
    public void A_four_foot_box_passes_the_flow_whose_head_was_found(double head, double cfs) =>
        Assert.Equal(cfs, Flow(WeirKind.Contracted, 4, head), 1e-6);

    // Water Measurement Manual ch. 7, suppressed (Francis); derived as above.
    [Theory]
    [InlineData(2, 0.1, 0.211)]
    [InlineData(2, 0.3, 1.094)]
    [InlineData(3, 0.5, 3.532)]
    [InlineData(4, 0.5, 4.709)]
    [InlineData(4, 0.8, 9.531)]
    public void A_suppressed_weir_follows_francis(double width, double head, double cfs) =>
        Assert.Equal(cfs, Flow(WeirKind.Suppressed, width, head), 0.0006);

    // Common practice, no source: what growers say of a four-foot box, two, four and six inches over the boards.
    [Theory]
    [InlineData(2, 0.9)]
    [InlineData(4, 2.6)]
    [InlineData(6, 4.7)]
    public void A_four_foot_box_passes_what_growers_say(double inches, double cfs) =>
        Assert.Equal(cfs, Flow(WeirKind.Suppressed, 4, inches / 12), 0.05);

    // Water Measurement Manual eq. 7-7; derived as above.
    [Theory]
    [InlineData(1, 0.2, 0.301)]
    [InlineData(2, 0.5, 2.381)]
    [InlineData(3, 0.5, 3.571)]
    [InlineData(4, 0.8, 9.637)]
    [InlineData(4, 1.0, 13.468)]
    public void A_cipolletti_weir_follows_the_manual(double width, double head, double cfs) =>
        Assert.Equal(cfs, Flow(WeirKind.Cipolletti, width, head), 0.0006);

    // Water Measurement Manual eq. 7-3, Kindsvater and Shen, Ce 0.578, k 0.0029 ft; derived as above.
    [Theory]
    [InlineData(0.2, 0.0459)]
    [InlineData(0.3, 0.1249)]
    [InlineData(0.5, 0.4435)]
    [InlineData(1.0, 2.4908)]
    public void A_right_angled_notch_follows_kindsvater_and_shen(double head, double cfs) =>
        Assert.Equal(cfs, Flow(WeirKind.VNotch90, 0, head), 0.0002);

    // Water Measurement Manual eq. 7-6 (Cone), Q = 2.49 H^2.48, from memory: another published formula of the same notch.
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.5)]
    [InlineData(0.8)]
    [InlineData(1.25)]
    public void The_notch_agrees_with_the_formula_of_cone_within_seven_parts_in_a_thousand(double head)
    {
        var cone = 2.49 * Math.Pow(head, 2.48);
        Assert.Equal(cone, Flow(WeirKind.VNotch90, 0, head), cone * 0.007);
    }

    // Oregon State College Extension Circular 550, August 1952, Table 1, read: gallons a minute over a 90-degree notch.
    [Theory]
    [InlineData(0.10, 3.6)]
    [InlineData(0.17, 13.1)]
    [InlineData(0.20, 19.9)]
    [InlineData(0.25, 35.1)]
    [InlineData(0.34, 76.7)]
    [InlineData(0.42, 130)]
    public void A_notch_agrees_with_the_printed_table_within_a_gallon_a_minute(double head, double gallonsPerMinute) =>
        Assert.Equal(gallonsPerMinute, Gallons(WeirKind.VNotch90, 0, head), 1.0);

    // The same table, read: gallons a minute over a straight crest of one and of two feet. Francis runs 1 % under it on the
    // wide crest and up to 4 % under it on the narrow one, whose head passes a third of the width.
    [Theory]
    [InlineData(1, 0.10, 46)]
    [InlineData(1, 0.17, 103)]
    [InlineData(1, 0.20, 131)]
    [InlineData(1, 0.25, 182)]
    [InlineData(1, 0.34, 285)]
    [InlineData(1, 0.42, 388)]
    [InlineData(2, 0.10, 95)]
    [InlineData(2, 0.17, 208)]
    [InlineData(2, 0.25, 368)]
    [InlineData(2, 0.34, 576)]
    [InlineData(2, 0.42, 788)]
    public void A_straight_crest_agrees_with_the_printed_table_within_five_percent(double width, double head, double gallonsPerMinute) =>
        Assert.Equal(gallonsPerMinute, Gallons(WeirKind.Contracted, width, head), gallonsPerMinute * 0.05);

    // Villemonte, Engineering News-Record, 25 December 1947, n = 1.5; derived: the printed formula computed apart.
    [Theory]
    [InlineData(0.1, 0.988)]
    [InlineData(0.2, 0.9646)]
    [InlineData(0.4, 0.8938)]
    [InlineData(0.6, 0.7861)]
    [InlineData(0.8, 0.6163)]
    [InlineData(0.9, 0.4770)]
    [InlineData(0.95, 0.367)]
    public void A_drowned_crest_passes_what_villemonte_left_of_it(double ratio, double share) =>
        Assert.Equal(share, Weir.Drowning(WeirKind.Contracted, WaterDepth.FromFeet(0.5), WaterDepth.FromFeet(0.5 * ratio)), 0.0005);

    // The same with n = 2.5, worked by hand: 0.5^2.5 = 0.176777; (1 − 0.176777)^0.385 = 0.927843.
    [Fact]
    public void A_drowned_notch_keeps_more_than_a_drowned_crest() =>
        Assert.Equal(0.927843, Weir.Drowning(WeirKind.VNotch90, WaterDepth.FromFeet(1), WaterDepth.FromFeet(0.5)), 1e-5);

    private static double Flow(WeirKind kind, double width, double head) =>
        Weir.FreeFlow(kind, WaterDepth.FromFeet(head), Length.FromFeet(width)).CubicFeetPerSecond;

    private static double Gallons(WeirKind kind, double width, double head) =>
        Weir.FreeFlow(kind, WaterDepth.FromFeet(head), Length.FromFeet(width)).GallonsPerMinute;
}
