using System.CommandLine;
using System.Globalization;
using Watersown.Land;
using Watersown.Records.Land;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>Makes a farm document of drawn fields.</summary>
internal static class ImportFieldsVerb
{
    public static Command Create(Edge edge)
    {
        var map = new Argument<string>("FILE") { Description = "GeoJSON, zipped or loose shapefile, KML, KMZ or GPX." };
        var to = new Option<string>("--out") { Description = "The farm document to write.", Required = true };
        var replace = new Option<bool>("--replace") { Description = "Replace a farm document that is already there." };
        var rate = new Option<double>("--rate") { Description = "Dry seed in lb an acre.", DefaultValueFactory = _ => 150 };
        rate.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<double>() is not (> 0 and <= 2000)) r.AddError("--rate must lie above 0 and up to 2,000 lb of dry seed an acre. Give a number such as 150.");
        });
        var checks = new Option<int>("--checks") { Description = "Checks of a field where the file has no column checks.", DefaultValueFactory = _ => NetAcres.UsualChecks };
        checks.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<int>() is not (>= 1 and <= LandLimits.MaxBasinsPerField)) r.AddError("--checks must lie between 1 and " + LandLimits.MaxBasinsPerField.ToString(CultureInfo.InvariantCulture) + ". Give a number such as 5.");
        });
        var farm = new Option<string>("--farm") { Description = "The farm's name.", DefaultValueFactory = _ => "My farm" };
        var zone = new Option<string>("--zone") { Description = "The farm's time zone.", DefaultValueFactory = _ => "America/Los_Angeles" };
        var column = new Option<string?>("--column") { Description = "The column of the file that holds the name." };
        var good = new Option<bool>("--take-good") { Description = "Take the good boundaries even if others in the file are broken." };
        var language = LanguageOption.Create();
        var command = new Command("fields", "Make a farm document of drawn fields; net acres by the default rule.") { map, to, replace, rate, checks, farm, zone, column, good, language };
        command.SetAction((parsed, _) => RunAsync(edge, parsed.GetValue(map)!,
            new ImportFieldsOptions(parsed.GetValue(farm)!, parsed.GetValue(zone)!, SeedRate.FromPoundsPerAcre(parsed.GetValue(rate)))
            {
                Checks = parsed.GetValue(checks),
                Column = parsed.GetValue(column),
                Clock = edge.Time.GetUtcNow(),
            },
            new WrittenFarm(parsed.GetValue(to)!, parsed.GetValue(replace), parsed.GetValue(good), LanguageOption.Of(parsed, language))));
        return command;
    }

    private static async Task<int> RunAsync(Edge edge, string map, ImportFieldsOptions options, WrittenFarm to)
    {
        var run = ImportFields.Run(map, options);
        var code = await to.WriteAsync(edge, run.Map(r => r.Document), run.HasValue ? run.Value.State.Farm.Fields.Length : 0);
        if (code == ExitCode.Done) await edge.Out.WriteAsync(Told(run.Value.State, to.Path));
        return code;
    }

    private static string Told(SeasonState state, string path)
    {
        var fields = state.Farm.Fields;
        var table = TextTable.Write(["code", "field", ">gross ac", ">net ac", ">checks"], fields.Select(f =>
            (ImmutableArray<string>)[f.Code, f.Name, Say.Number(f.Gross!.Value.Acres, 2), Say.Number(f.Net.Acres, 2), Say.Number(f.Basins.Length)]));
        var (gross, net) = (fields.Sum(f => f.Gross!.Value.Acres), fields.Sum(f => f.Net.Acres));
        return table
            + $"{Say.Number(fields.Length)} fields, gross {Say.Number(gross, 1)} ac, net {Say.Number(net, 1)} ac.\n"
            + "Net acres are a default: gross less 2.8 %, 0.4 % for each check, 1 % more under 70 ac. Put your own in their place.\n"
            + $"Written to {path}.\n";
    }
}
