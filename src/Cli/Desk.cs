using System.CommandLine;
using Watersown.Cli.Verbs;

namespace Watersown.Cli;

/// <summary>The command: gathers the verbs and turns their outcomes into exit codes.</summary>
public static class Desk
{
    public static async Task<int> RunAsync(string[] args, Edge edge)
    {
        var root = new RootCommand("Watersown: plans the sowing season of a farm that sows rice onto water, and prints each person's sheet.")
        {
            ReckonVerb.Create(edge),
        };
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors) await edge.Error.WriteLineAsync(error.Message + " 'watersown --help' shows what can be asked.");
            return ExitCode.ProblemsInInput;
        }

        return await parsed.InvokeAsync(new InvocationConfiguration { Output = edge.Out, Error = edge.Error });
    }
}
