using System.Text;
using Watersown.Records.Database;
using Watersown.Season.Plans;
using Watersown.Web;

namespace Watersown.Phones;

/// <summary>Plans that were heard once are on the phone, and compared there with no signal.</summary>
public sealed class PlansOnThePhoneTests
{
    [Fact]
    public async Task Plans_once_heard_are_compared_with_no_signal()
    {
        await using var host = await RunningDesk.HereAsync();
        await NextPlanAsync(host, 15);
        await using var phone = await SomePhone.AsNewAsync(host, "Odalie Marrowfen");
        phone.Wire.Cut = false;
        var plans = phone.Plans();
        await plans.OpenAsync();
        Assert.Equal([15], plans.List.Select(p => p.Number)); // the newest came with the desk
        Assert.True(await plans.AskAsync());
        Assert.Equal([(15, true), (14, false)], plans.List.Select(p => (p.Number, p.Here)));
        Assert.NotNull(await plans.PlanAsync(plans.List[1]));

        phone.Wire.Cut = true;
        await phone.OpenAgainAsync();
        var later = phone.Plans();
        await later.OpenAsync();
        Assert.False(await later.AskAsync());
        Assert.NotNull(later.Heard);
        Assert.Equal([(15, true), (14, true)], later.List.Select(p => (p.Number, p.Here)));
        var both = PlanComparison.Of((await later.PlanAsync(later.List[0]))!, (await later.PlanAsync(later.List[1]))!);
        Assert.Equal((14, 15), (both.Older.Number, both.Newer.Number));
        Assert.Empty(both.Steps);
    }

    [Fact]
    public async Task A_plan_that_is_not_here_is_not_made_up()
    {
        await using var host = await RunningDesk.HereAsync();
        await NextPlanAsync(host, 15);
        await using var phone = await SomePhone.AsNewAsync(host, "Odalie Marrowfen");
        phone.Wire.Cut = false;
        var plans = phone.Plans();
        Assert.True(await plans.AskAsync());
        phone.Wire.Cut = true;
        Assert.Null(await plans.PlanAsync(plans.List[1]));
        Assert.NotNull(await plans.PlanAsync(plans.List[0]));
    }

    // The same plan again under the next number, an hour later.
    private static async Task NextPlanAsync(RunningDesk host, int number)
    {
        var first = (await host.Book.PlanAsync(14))!;
        var text = Encoding.UTF8.GetString(first.Document.Span).Replace("\"number\": 14", "\"number\": " + number, StringComparison.Ordinal).Replace("\"number\":14", "\"number\":" + number, StringComparison.Ordinal);
        var kept = await host.Book.SavePlanAsync(new IssuedPlan(number, first.Made.AddHours(1), "test", "marks", 1, 0, Encoding.UTF8.GetBytes(text)));
        Assert.True(kept.HasValue);
    }
}
