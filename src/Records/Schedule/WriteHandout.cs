using Watersown.Flight.Handout;
using Watersown.Records.Files.Handout;
using Watersown.Records.Files.Sheets;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Records.Schedule;

/// <summary>Step: write a farm's fields, passes and hazards into a folder in every open format.</summary>
public static class WriteHandout
{
    /// <summary>Puts together and writes; the folder holds this handout and nothing else afterwards.</summary>
    /// <param name="state">The farm as it stands.</param>
    /// <param name="codes">Field codes; none for every field.</param>
    /// <param name="folder">Empty, new, or written into before.</param>
    /// <param name="language">Of names and cautions.</param>
    /// <returns>The files by their names.</returns>
    public static Outcome<ImmutableArray<string>> Run(SeasonState state, ImmutableArray<string> codes, string folder, Language language) =>
        Handouts.Of(state, codes).Then(whole => Run(whole, folder, language));

    /// <summary>Writes one that is put together already.</summary>
    public static Outcome<ImmutableArray<string>> Run(FarmHandout handout, string folder, Language language)
    {
        if (SheetFolder.Fault(folder) is { } fault) return Outcome<ImmutableArray<string>>.Refuse(fault);
        var files = HandoutFiles.Of(handout, language);
        SheetFolder.Replace(folder, files);
        return Outcome<ImmutableArray<string>>.Of([.. files.Select(f => f.Name)]);
    }
}
