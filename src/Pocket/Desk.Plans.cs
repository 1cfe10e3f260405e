using System.Text;
using Watersown.Documents.Plan;
using Watersown.Schedule;

namespace Watersown.Pocket;

public sealed partial class Desk
{
    /// <summary>Name of the paper with the plan that this device works by.</summary>
    private const string TakenPaper = "plan-taken";

    private string? takenText;
    private SeasonPlan? taken;

    /// <summary>
    /// The plan that this device last worked by, where a newer one has come: what the newer one moves is shown before it is
    /// taken. None where the newest is the one worked by.
    /// </summary>
    public SeasonPlan? PlanBefore => Plan is not null && taken is { } was && was.Number != Plan.Number ? was : null;

    /// <summary>The newest plan is the one worked by from now on, on this device.</summary>
    public async Task TakePlanAsync()
    {
        if (planText is null) return;
        await device.KeepPapersAsync((TakenPaper, planText));
        await device.TellTabsAsync("papers");
        (takenText, taken) = (planText, null);
        Tell();
    }

    // The first plan that a device hears of is the one it works by: there is nothing to compare it with.
    private async Task ReadTakenAsync()
    {
        takenText = await device.PaperAsync(TakenPaper);
        if (takenText is null && planText is not null)
        {
            await device.KeepPapersAsync((TakenPaper, planText));
            takenText = planText;
        }
    }

    private void ReadTaken(SeasonState state)
    {
        if (takenText is null || takenText == planText)
        {
            taken = null;
            return;
        }

        var plan = PlanReading.Read(Encoding.UTF8.GetBytes(takenText), state);
        taken = plan.HasValue ? plan.Value : null;
    }
}
