using System.CommandLine;
using System.Text;
using Watersown.Flight.Hazards;
using Watersown.Records.Land;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>Puts what a public obstacle file lists near the fields into a farm document.</summary>
internal static class ImportObstaclesVerb
{
    public static Command Create(Edge edge)
    {
        var farm = new Argument<string>("FARM") { Description = "The farm document (JSON)." };
        var file = new Argument<string>("FILE") { Description = "The public obstacle file in its fixed form of 128 columns (.DAT)." };
        var to = new Option<string?>("--out") { Description = "The farm document to write; without it FARM itself is replaced." };
        var replace = new Option<bool>("--replace") { Description = "Replace the document of --out if it is already there." };
        var within = new Option<double>("--within-mi") { Description = "How far from a field obstacles are kept, in miles.", DefaultValueFactory = _ => FieldsReach.Usual.Miles };
        within.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<double>() is not (> 0 and <= 50)) r.AddError("--within-mi must lie above 0 and up to 50 miles. Give a number such as 5.");
        });
        var language = LanguageOption.Create();
        var command = new Command("obstacles", "Put what a public obstacle file lists near the fields on the farm's maps. It does not list everything.") { farm, file, to, replace, within, language };
        command.SetAction((parsed, _) => RunAsync(edge,
            ImportObstacles.Run(parsed.GetValue(farm)!, parsed.GetValue(file)!, Length.FromMiles(parsed.GetValue(within)), edge.Time),
            new WrittenFarm(parsed.GetValue(to) ?? parsed.GetValue(farm)!, parsed.GetValue(replace) || parsed.GetValue(to) is null, false, LanguageOption.Of(parsed, language))));
        return command;
    }

    private static async Task<int> RunAsync(Edge edge, Outcome<ImportedObstacles> run, WrittenFarm to)
    {
        var code = await to.WriteAsync(edge, run.Map(r => r.Document), 0);
        if (code == ExitCode.Done) await edge.Out.WriteAsync(Told(run.Value, to));
        return code;
    }

    private static string Told(ImportedObstacles imported, WrittenFarm to)
    {
        var found = imported.Found;
        var words = Words.In(to.Language).Hazard;
        var text = new StringBuilder(found.Near.IsEmpty ? string.Empty : TextTable.Write(["number", "what", "near", ">ft above ground", ">ft above sea", ">± ft", "light", "looked at"], found.Near.Select(o => Row(o, words))));
        text.Append(Template.Fill(words.FileRead, ("read", Say.Number(found.Read)), ("near", Say.Number(found.Near.Length)), ("before", Say.Number(imported.Before)), ("out", Say.Number(found.LeftOut)))).Append('\n');
        text.Append(Template.Fill(words.FileCaution, ("day", Day(found.FileOf)))).Append('\n');
        return text.Append(Template.Fill(words.WrittenTo, ("path", to.Path))).Append('\n').ToString();
    }

    private static ImmutableArray<string> Row(Obstacle o, HazardWords words) =>
    [
        o.Id, o.Type.ToLowerInvariant() + (o.Action == ObstacleAction.TakenDown ? ", " + words.TakenDown : string.Empty), o.City, Say.Number(o.Height.Feet), o.Top is { } top ? Say.Number(top.Feet) : "-",
        o.Within is { } within ? Say.Number(within.Feet) : "?", Watersown.Schedule.Sheets.HazardSaid.Light(o.Light, words), o.Verified ? words.Verified : words.Unverified,
    ];

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
