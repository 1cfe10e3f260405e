using System.CommandLine;
using System.Globalization;
using Watersown.Records.Season;

namespace Watersown.Cli.Verbs;

/// <summary>Writes all of a book as one open file.</summary>
internal static class ExportVerb
{
    public static Command Create(Edge edge)
    {
        var file = new Argument<string>("FILE") { Description = "The whole-farm file to write (zip; docs/schema/whole-farm.md)." };
        var replace = new Option<bool>("--replace") { Description = "Replace a file that is already there." };
        var (book, language) = (BookOption.Create(), LanguageOption.Create());
        var command = new Command("export", "Write a book's whole farm as one open file: farm, marks, plans, photos, people.") { file, book, replace, language };
        command.SetAction((parsed, stop) => RunAsync(edge, parsed.GetValue(file)!, parsed.GetValue(replace), new AskedBook(parsed.GetValue(book)!, LanguageOption.Of(parsed, language)), stop));
        return command;
    }

    private static Task<int> RunAsync(Edge edge, string file, bool replace, AskedBook asked, CancellationToken stop) => asked.RunAsync(edge, async book =>
    {
        var written = await ExportFarm.RunAsync(book, file, edge.Time, replace, stop);
        await LanguageOption.TellAsync(edge, written.Problems, asked.Language);
        if (written.IsRefused) return BookOption.CodeOf(written.Problems);
        var parts = written.Value;
        await edge.Out.WriteAsync(TextTable.Write(["part", ">count"],
            [.. new (string Part, long Count)[] { ("versions of the farm", parts.Farms), ("marks", parts.Marks), ("plans", parts.Plans), ("photos", parts.Photos), ("people", parts.Accounts) }
                .Select(p => (ImmutableArray<string>)[p.Part, p.Count.ToString("#,0", CultureInfo.InvariantCulture)])]));
        await edge.Out.WriteLineAsync("Written to " + file + " and read again.");
        return ExitCode.Done;
    });
}
