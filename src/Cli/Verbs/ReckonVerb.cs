using System.CommandLine;

namespace Watersown.Cli.Verbs;

/// <summary>Any calculation of the desk, by hand.</summary>
internal static class ReckonVerb
{
    public static Command Create(Edge edge)
    {
        var command = new Command("reckon", "Work out one calculation alone, and show its working.");
        command.SetAction(async (_, _) =>
        {
            await edge.Out.WriteLineAsync("reckon");
            return ExitCode.Done;
        });
        return command;
    }
}
