using System.CommandLine;
using System.Globalization;
using System.Text;
using Watersown.Records;
using Watersown.Records.Files;
using Watersown.Documents.Farms;
using Watersown.Records.Land;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>Takes in what the farm already has, in whatever form it has it.</summary>
internal static class ImportVerb
{
    public static Command Create(Edge edge) => new("import", "Take in what the farm already has.") { List(edge), ImportBoundariesVerb.Create(edge), ImportObstaclesVerb.Create(edge), ImportFieldsVerb.Create(edge), ImportFarmVerb.Create(edge), ImportWeatherVerb.Create(edge) };

    private static Command List(Edge edge)
    {
        var list = new Argument<string>("LIST") { Description = "A list of fields with name, acres, checks and rate (commas, tabs, semicolons, any order); - reads what is pasted." };
        var to = new Option<string?>("--out") { Description = "The farm document to write; without it the list is only shown as understood." };
        var replace = new Option<bool>("--replace") { Description = "Replace a farm document that is already there." };
        var farm = new Option<string>("--farm") { Description = "The farm's name.", DefaultValueFactory = _ => "My farm" };
        var zone = new Option<string>("--zone") { Description = "The farm's time zone.", DefaultValueFactory = _ => "America/Los_Angeles" };
        var now = new Option<string?>("--now") { Description = "When the list was true, as 2026-05-08T04:50; without it each reading counts from its own moment." };
        var rate = new Option<double?>("--rate") { Description = "Dry seed in lb an acre for fields that give none; 150 where not said." };
        rate.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<double?>() is not (> 0 and <= 2000)) r.AddError("--rate must lie above 0 and up to 2,000 lb of dry seed an acre. Give a number such as 150.");
        });
        var language = LanguageOption.Create();
        var command = new Command("list", "Make a farm document of a list of fields, and show its totals.") { list, to, replace, farm, zone, now, rate, language };
        command.SetAction((parsed, stop) => RunAsync(
            edge,
            new Asked(parsed.GetValue(list)!, parsed.GetValue(to), parsed.GetValue(replace), LanguageOption.Of(parsed, language)),
            new ImportListOptions(parsed.GetValue(farm)!, parsed.GetValue(zone)!)
            {
                Now = parsed.GetValue(now),
                Rate = parsed.GetValue(rate) is { } pounds ? SeedRate.FromPoundsPerAcre(pounds) : null,
                Clock = edge.Time.GetUtcNow(),
            },
            stop));
        return command;
    }

    private static async Task<int> RunAsync(Edge edge, Asked asked, ImportListOptions options, CancellationToken stop)
    {
        var bytes = asked.List == "-" ? await PastedAsync(edge, stop) : FileText.Read(asked.List, ImportList.MaxBytes);
        var read = bytes.Then(b => ImportList.Run(b.Span, options));
        await LanguageOption.TellAsync(edge, read.Problems, asked.Language);
        if (read.IsRefused) return ExitCode.ProblemsInInput;
        if (asked.Out is { } path)
        {
            var written = SafeWriting.Write(path, read.Value.Document.Span, asked.Replace);
            await LanguageOption.TellAsync(edge, written.Problems, asked.Language);
            if (written.IsRefused) return written.Problems.Any(p => p.Kind == FileProblems.NotWritable) ? ExitCode.WorldFailed : ExitCode.ProblemsInInput;
        }

        await edge.Out.WriteAsync(ListText.Understood(read.Value, asked.Out));
        return ExitCode.Done;
    }

    private static async Task<Outcome<ReadOnlyMemory<byte>>> PastedAsync(Edge edge, CancellationToken stop)
    {
        if (edge.InIsTerminal) await edge.Error.WriteLineAsync("Paste the list, then end it with Ctrl+D (Ctrl+Z and Enter on Windows).");
        using var kept = new MemoryStream();
        if (edge.InBytes is { } stream)
        {
            var piece = new byte[16_384];
            while (kept.Length <= ImportList.MaxBytes && await stream.ReadAsync(piece, stop) is var count and > 0) await kept.WriteAsync(piece.AsMemory(0, count), stop);
        }
        else
        {
            await kept.WriteAsync(Encoding.UTF8.GetBytes(await edge.In.ReadToEndAsync(stop)), stop);
        }

        return kept.Length <= ImportList.MaxBytes
            ? Outcome<ReadOnlyMemory<byte>>.Of(kept.ToArray())
            : Outcome<ReadOnlyMemory<byte>>.Refuse(FileProblems.TooLarge.At("-", ("value", "what was pasted"), ("limit", (ImportList.MaxBytes / 1024 / 1024).ToString(CultureInfo.InvariantCulture) + " MB")));
    }

    private sealed record Asked(string List, string? Out, bool Replace, Language Language);
}
