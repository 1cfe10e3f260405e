using System.CommandLine;
using Watersown.Land;
using Watersown.Records.Files.Boundaries;
using Watersown.Records.Land;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>Gives the fields of a farm document the edges of a boundary file.</summary>
internal static class ImportBoundariesVerb
{
    public static Command Create(Edge edge)
    {
        var farm = new Argument<string>("FARM") { Description = "The farm document (JSON)." };
        var map = new Argument<string>("FILE") { Description = "GeoJSON, zipped or loose shapefile, KML, KMZ or GPX." };
        var to = new Option<string?>("--out") { Description = "The farm document to write; without it FARM itself is replaced." };
        var replace = new Option<bool>("--replace") { Description = "Replace the document of --out if it is already there." };
        var by = new Option<string?>("--by") { Description = "Look for the field's code or name alone; without it for the code, then the name." };
        by.AcceptOnlyFromAmong("code", "name");
        var column = new Option<string?>("--column") { Description = "The column of the file that holds the code or name." };
        var good = new Option<bool>("--take-good") { Description = "Take the good boundaries even if others in the file are broken." };
        var language = LanguageOption.Create();
        var command = new Command("boundaries", "Give the fields of a farm their edges, matched by code or name.") { farm, map, to, replace, by, column, good, language };
        command.SetAction((parsed, _) => RunAsync(edge, parsed.GetValue(farm)!, parsed.GetValue(map)!,
            new MatchOptions { By = By(parsed.GetValue(by)), Column = parsed.GetValue(column) },
            new WrittenFarm(parsed.GetValue(to) ?? parsed.GetValue(farm)!, parsed.GetValue(replace) || parsed.GetValue(to) is null, parsed.GetValue(good), LanguageOption.Of(parsed, language))));
        return command;
    }

    private static MatchBy By(string? word) => word switch { "code" => MatchBy.Code, "name" => MatchBy.Name, _ => MatchBy.CodeThenName };

    private static async Task<int> RunAsync(Edge edge, string farm, string map, MatchOptions options, WrittenFarm to)
    {
        var run = ImportBoundaries.Run(farm, map, options, edge.Time);
        var code = await to.WriteAsync(edge, run.Map(r => r.Document), run.HasValue ? run.Value.Matched.Pairs.Length : 0);
        if (code == ExitCode.Done) await edge.Out.WriteAsync(Told(run.Value.Matched, to.Path));
        return code;
    }

    private static string Told(MatchedBoundaries matched, string path)
    {
        var text = new System.Text.StringBuilder(TextTable.Write(["code", "field", ">drawn ac", ">gross ac", "from"], matched.Pairs.Select(p =>
            (ImmutableArray<string>)[p.Field.Code, p.Field.Name, Say.Number(GeodesicArea.Of(p.Boundary.Edge).Acres, 2), p.Field.Gross is { } gross ? Say.Number(gross.Acres, 2) : "-", p.Boundary.Where])));
        foreach (var boundary in matched.Unmatched) text.Append("no field: ").Append(boundary.Where).Append('\n');
        foreach (var field in matched.Without) text.Append("no boundary: ").Append(field.Code).Append(' ').Append(field.Name).Append('\n');
        return text.Append("Written to ").Append(path).Append(".\n").ToString();
    }
}
