using Watersown.Documents.Json;
using Watersown.Documents.Plan;
using Watersown.Schedule;

namespace Watersown.Records.Schedule;

/// <summary>Step: open a saved plan for the farm as it stands.</summary>
public static class OpenPlan
{
    /// <summary>The plan as it was saved, or everything that is wrong with the file.</summary>
    public static Outcome<SeasonPlan> Run(string path, SeasonState state)
    {
        var file = FileText.Read(path, JsonText.MaxBytes);
        return file.Then(bytes => PlanReading.Read(bytes, state));
    }
}
