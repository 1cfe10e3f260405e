using System.CommandLine;
using Watersown.Records.Database.Copies;

namespace Watersown.Cli.Verbs;

/// <summary>Makes a copy of a book beside it, and checks it.</summary>
internal static class BackupVerb
{
    public static Command Create(Edge edge)
    {
        var to = new Option<string?>("--to") { Description = "The folder; without it the folder backups beside the book." };
        var (book, language) = (BookOption.Create(), LanguageOption.Create());
        var command = new Command("backup", "Make a copy of a book, also while a desk has it open, and check it.") { book, to, language };
        command.SetAction((parsed, stop) => RunAsync(edge, parsed.GetValue(to), new AskedBook(parsed.GetValue(book)!, LanguageOption.Of(parsed, language)), stop));
        return command;
    }

    private static Task<int> RunAsync(Edge edge, string? folder, AskedBook asked, CancellationToken stop) => asked.RunAsync(edge, async book =>
    {
        var made = await CopyFolder.Of(asked.Connection, folder).MakeAsync(book, edge.Time, stop);
        await LanguageOption.TellAsync(edge, made.Problems, asked.Language);
        if (made.IsRefused) return BookOption.CodeOf(made.Problems);
        await edge.Out.WriteLineAsync(made.Value.Copy.Path);
        await edge.Out.WriteLineAsync(BookText.Holds(made.Value.Counts) + " Checked.");
        return ExitCode.Done;
    });
}
