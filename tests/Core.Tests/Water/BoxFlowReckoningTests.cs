using Watersown.Reckon;

namespace Watersown.Water;

/// <summary>The formulas themselves are checked in <c>Hydraulics/WeirReference</c>.</summary>
public sealed class BoxFlowReckoningTests
{
    // Water Measurement Manual eqs 7-3, 7-4, 7-7; derived: the printed formulas computed apart.
    [Theory]
    [InlineData("contracted", 4.592)]
    [InlineData("suppressed", 4.709)]
    [InlineData("cipolletti", 4.762)]
    [InlineData("v-notch-90", 0.4435)]
    public void Each_shape_follows_its_own_formula(string kind, double cfs)
    {
        var answer = Box(kind, 4, 0.5);
        Assert.Equal(cfs, answer.Number("cfs"), 0.0006);
        Assert.Equal(answer.Number("cfs") * 448.831, answer.Number("gpm"), 0.01);
    }

    // Villemonte 1947: half of the head below leaves 0.845 of the flow over a straight crest (derived), 0.9278 through a notch.
    [Theory]
    [InlineData("suppressed", 4.7093 * 0.845)]
    [InlineData("v-notch-90", 0.44350 * 0.9278)]
    public void Water_below_drowns_the_box(string kind, double cfs) =>
        Assert.Equal(cfs, Ask.For("box-flow", ("kind", kind), ("width_ft", 4), ("head_ft", 0.5), ("downstream_head_ft", 0.25)).Number("cfs"), 0.003);

    [Fact]
    public void A_notch_needs_no_width_and_says_that_it_did_not_use_one()
    {
        Assert.Equal(Box("v-notch-90", 4, 0.5).Number("cfs"), Ask.For("box-flow", ("kind", "v-notch-90"), ("head_ft", 0.5)).Number("cfs"));
        Assert.Contains("A notch has no width: width_ft was not used.", Box("v-notch-90", 4, 0.5).Value.Cautions, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("contracted", 3, 0.1, "Under 0.2 ft of head")]
    [InlineData("contracted", 1, 0.4, "more than a third of the width")]
    [InlineData("cipolletti", 1, 0.4, "more than a third of the width")]
    [InlineData("v-notch-90", 1, 1.3, "The head is above 1.25 ft")]
    public void Beyond_what_was_measured_it_says_so(string kind, double width, double head, string caution) =>
        Assert.Contains(Box(kind, width, head).Value.Cautions, c => c.Contains(caution, StringComparison.Ordinal));

    [Theory]
    [InlineData("contracted", 3, 0.9)]
    [InlineData("suppressed", 1, 0.9)]
    [InlineData("v-notch-90", 1, 0.3)]
    public void Within_what_was_measured_only_the_reading_is_cautioned(string kind, double width, double head) =>
        Assert.DoesNotContain(Box(kind, width, head).Value.Cautions, c => c.Contains("measured for", StringComparison.Ordinal) || c.Contains("clings", StringComparison.Ordinal));

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.6)]
    public void Water_below_as_high_as_above_is_refused(double below) =>
        Ask.For("box-flow", ("kind", "suppressed"), ("width_ft", 4), ("head_ft", 0.5), ("downstream_head_ft", below))
            .Refuses((WaterProblems.WaterBelowTooHigh, "downstream_head_ft"));

    [Fact]
    public void A_head_that_leaves_a_contracted_box_no_width_is_refused() =>
        Ask.For("box-flow", ("kind", "contracted"), ("width_ft", 0.2), ("head_ft", 1)).Refuses((WaterProblems.HeadTooGreat, "head_ft"));

    [Fact]
    public void A_straight_crest_must_have_a_width_and_that_is_told_with_all_else() =>
        Ask.For("box-flow", ("kind", "contracted"), ("head_ft", -1), ("width_ft", Datum.None)).Refuses(
            (ReckonProblems.TooSmall, "head_ft"),
            (ReckonProblems.MissingKey, "width_ft"));

    [Fact]
    public void An_unknown_shape_is_refused() =>
        Ask.For("box-flow", ("kind", "round"), ("width_ft", 1), ("head_ft", 1)).Refuses((ReckonProblems.NotAChoice, "kind"));

    private static Outcome<Reckoned> Box(string kind, double width, double head) =>
        Ask.For("box-flow", ("kind", kind), ("width_ft", width), ("head_ft", head));
}
