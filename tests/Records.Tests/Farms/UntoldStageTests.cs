using System.Text;
using Watersown.Documents.Farms;

namespace Watersown.Farms;

public sealed class UntoldStageTests
{
    private const string List = """{"watersown_farm":1,"name":"A","time_zone":"America/Los_Angeles","now":"2026-05-08T04:50","fields":[{"name":"Tin Barn","net_ac":96,"rate_dry_lb_ac":155},{"name":"Two Gates","net_ac":118,"rate_dry_lb_ac":150,"stage":"unworked"},{"name":"Sill","net_ac":108,"rate_dry_lb_ac":150,"checks_wet":1}]}""";

    [Fact]
    public void How_far_a_field_has_come_stays_untold_until_somebody_says_it()
    {
        var state = FarmReading.Read(Encoding.UTF8.GetBytes(List), new FarmContext(DateTimeOffset.UnixEpoch)).Value;
        Assert.Equal([true, false, false], state.Fields.Select(f => f.StageUntold));
        var again = FarmReading.Read(FarmWriting.Write(state), new FarmContext(DateTimeOffset.UnixEpoch)).Value;
        Assert.Equal(state.Fields, again.Fields);
    }
}
