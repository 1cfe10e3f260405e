using System.CommandLine;
using System.Diagnostics.CodeAnalysis;
using Watersown.Cli.Verbs;

namespace Watersown.Cli;

/// <summary>The command: gathers the verbs and turns their outcomes into exit codes.</summary>
public static class Desk
{
    // A word that starts with @ is a word, not the name of a file with more words.
    private static readonly ParserConfiguration Plainly = new() { ResponseFileTokenReplacer = null };

    [SuppressMessage("Design", "CA1031", Justification = "The one place that turns failures into exit codes.")]
    public static async Task<int> RunAsync(string[] args, Edge edge)
    {
        var root = new RootCommand("Watersown: plans the sowing season of a farm that sows rice onto water, and prints each person's sheet.")
        {
            PlanVerb.Create(edge),
            ReckonVerb.Create(edge),
            SheetsVerb.Create(edge),
            HandoutVerb.Create(edge),
            SeasonVerb.Create(edge),
            VerifyVerb.Create(edge),
            FarmVerb.Create(edge),
            ImportVerb.Create(edge),
            ExportVerb.Create(edge),
            BackupVerb.Create(edge),
            RestoreVerb.Create(edge),
            BookVerb.Create(edge),
        };
        var parsed = root.Parse(args, Plainly);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors) await edge.Error.WriteLineAsync(error.Message + " 'watersown --help' shows what can be asked.");
            return ExitCode.ProblemsInInput;
        }

        try
        {
            var code = await parsed.InvokeAsync(new InvocationConfiguration { Output = edge.Out, Error = edge.Error, EnableDefaultExceptionHandler = false });
            await edge.Out.FlushAsync();
            return code;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            await edge.Error.WriteLineAsync("A file, disk or pipe failed: " + failure.Message + " The answer is not complete. Put that right, then ask again.");
            return ExitCode.WorldFailed;
        }
        catch (Exception failure)
        {
            await edge.Error.WriteLineAsync("This is a fault of the program, not of what you gave. Please report it with these lines:");
            await edge.Error.WriteLineAsync(failure.ToString());
            return ExitCode.Bug;
        }
    }
}
