using CsCheck;

namespace Watersown.Water;

public sealed class FillReckoningProperties
{
    private static readonly Gen<(double Net, double Depth, double Loss, double Wet, double Supply)> Jobs =
        Gen.Select(Gen.Double[1, 500], Gen.Double[0.2, 1], Gen.Double[0, 0.6], Gen.Double[0, 500], Gen.Double[0.1, 40]);

    [Fact]
    public void It_never_finishes_before_the_plain_sum() =>
        Jobs.Sample(j =>
        {
            var answer = Of(j.Net, j.Depth, j.Loss, j.Wet, j.Supply);
            return answer.Answer("days") is not Datum.Number { Value: var days } || days >= answer.Number("naive_days") * (1 - 1e-9);
        });

    [Fact]
    public void It_finishes_just_where_the_supply_is_above_what_holding_takes() =>
        Jobs.Sample(j =>
        {
            var answer = Of(j.Net, j.Depth, j.Loss, j.Wet, j.Supply);
            var margin = j.Supply - answer.Number("hold_cfs_when_full");
            return Math.Abs(margin) < 1e-9 || answer.Answer("never") == (Datum)(margin < 0);
        });

    [Fact]
    public void Filling_in_two_pieces_takes_as_long_as_in_one() =>
        Jobs.Sample(j =>
        {
            if (Of(j.Net, j.Depth, j.Loss, j.Wet, j.Supply).Answer("days") is not Datum.Number { Value: var whole }) return true;
            var first = Of(j.Net / 3, j.Depth, j.Loss, j.Wet, j.Supply).Number("days");
            var rest = Of(j.Net * 2 / 3, j.Depth, j.Loss, j.Wet + (j.Net / 3), j.Supply).Number("days");
            return Math.Abs(whole - first - rest) < 1e-6 * Math.Max(1, whole);
        });

    private static Outcome<Reckon.Reckoned> Of(double net, double depth, double loss, double wet, double supply) =>
        Ask.For("fill", ("net_ac", net), ("fill_depth_ft", depth), ("hold_loss_in_day", loss), ("wet_ac", wet), ("supply_cfs", supply));
}
