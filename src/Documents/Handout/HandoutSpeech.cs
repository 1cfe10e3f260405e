using System.Globalization;
using Watersown.Flight.Handout;
using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Documents.Handout;

/// <summary>Names and remarks in handed-out files, in one language; the same in every format.</summary>
internal sealed class HandoutSpeech(FarmHandout handout, HandoutWords words)
{
    public HandoutWords Words => words;

    public string Title => Template.Fill(words.Title, ("farm", handout.Farm));

    public string Cautions => string.Join(" ", words.Cautions);

    public static string Name(FieldHandout field) => field.Field.Code + " " + field.Field.Name;

    public string About(FieldHandout field)
    {
        var (net, swath) = (Say.Number(field.Field.Net.Acres, 1), Say.Number(field.Swath.Feet, 0));
        return field is { Dry: { } dry, Soaked: { } soaked }
            ? Template.Fill(words.FieldAbout, ("net", net), ("dry", Say.Number(dry.PoundsPerAcre, 0)), ("soaked", Say.Number(soaked.PoundsPerAcre, 0)), ("swath", swath))
            : Template.Fill(words.FieldAboutNoRate, ("net", net), ("swath", swath));
    }

    public string Name(FieldHandout field, HandoutPass pass) => Template.Fill(words.PassName, ("code", field.Field.Code), ("n", Number(pass.Number)));

    public string Name(FieldHandout field, HandoutRun run) => Template.Fill(words.RunName, ("code", field.Field.Code), ("n", Number(run.Pass)));

    public string About(HandoutRun run) => run.GateInferred ? words.GateInferred : string.Empty;

    /// <summary>How high it stands, when it was last looked at, and the farm's own note.</summary>
    public string About(Hazard hazard) => string.Join("; ", new[]
    {
        hazard.Height is { } height ? Template.Fill(words.HazardHeight, ("height", Say.Number(height.Feet, 0))) : string.Empty,
        hazard.Confirmed is { } day ? Template.Fill(words.HazardSeen, ("day", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))) : words.HazardUnseen,
        hazard.Note ?? string.Empty,
    }.Where(t => t.Length > 0));

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
