using Watersown.Records.Files.Sheets;
using Watersown.Schedule;
using Watersown.Schedule.Sheets;

namespace Watersown.Records.Schedule;

/// <summary>What was printed.</summary>
/// <param name="Folder">Where.</param>
/// <param name="Sheets">How many sheets.</param>
/// <param name="Texts">How many text messages.</param>
/// <param name="Files">Names of the files.</param>
public sealed record Printed(string Folder, int Sheets, int Texts, ImmutableArray<string> Files);

/// <summary>Step: print the sheets of a plan into a folder.</summary>
public static class PrintSheets
{
    /// <summary>What is wrong with what is asked, as far as it can be known before a plan is searched for.</summary>
    public static ImmutableArray<Problem> Faults(SeasonState state, string folder, SheetChoice choice) =>
        [.. SheetSet.Faults(state, choice), .. SheetFolder.Fault(folder) is { } fault ? [fault] : ImmutableArray<Problem>.Empty];

    /// <summary>Chooses, draws and writes; the folder holds this printing and nothing else afterwards.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="folder">Empty, new, or printed into before.</param>
    /// <param name="choice">Which sheets.</param>
    /// <param name="forms">In which forms.</param>
    public static Outcome<Printed> Run(SeasonPlan plan, string folder, SheetChoice choice, SheetForms forms = SheetForms.All)
    {
        var set = SheetSet.Of(plan, choice);
        var fault = SheetFolder.Fault(folder);
        if (fault is not null) return Outcome<Printed>.Refuse([.. set.Problems, fault]);
        return set.Map(chosen =>
        {
            var files = SheetFiles.Of(plan, chosen, forms, choice.Language ?? plan.State.Farm.Language);
            SheetFolder.Replace(folder, files);
            return new Printed(folder, chosen.Pages.Length, chosen.Texts.Length, [.. files.Select(f => f.Name)]);
        });
    }
}
