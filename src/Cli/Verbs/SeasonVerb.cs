using System.CommandLine;
using Watersown.Records.Season;

namespace Watersown.Cli.Verbs;

/// <summary>A season's records: a page a field, and tables for other programs.</summary>
internal static class SeasonVerb
{
    public static Command Create(Edge edge)
    {
        var folder = new Option<string>("--out") { Description = "Folder to write into: new, empty, or written into before. It is replaced as a whole.", Required = true };
        var (book, language) = (BookOption.Create(), LanguageOption.Create());
        var command = new Command("season", "Write a book's season: a page a field (PDF), fields, sowings, tickets, bills and logbook as CSV, and all of it as one XLSX.") { folder, book, language };
        command.SetAction((parsed, stop) => RunAsync(edge, parsed.GetValue(folder)!, new AskedBook(parsed.GetValue(book)!, LanguageOption.Of(parsed, language)), stop));
        return command;
    }

    private static Task<int> RunAsync(Edge edge, string folder, AskedBook asked, CancellationToken stop) => asked.RunAsync(edge, async book =>
    {
        var season = await OpenSeason.RunAsync(book, edge.Time.GetUtcNow(), stop);
        var written = season.Then(s => WriteSeason.Run(s, folder, asked.Language));
        await LanguageOption.TellAsync(edge, written.Problems, asked.Language);
        if (written.IsRefused) return ExitCode.ProblemsInInput;
        foreach (var name in written.Value) await edge.Out.WriteLineAsync(Path.Combine(folder, name));
        return ExitCode.Done;
    });
}
