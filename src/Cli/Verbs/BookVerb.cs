using System.CommandLine;
using Watersown.Records.Database;
using Watersown.Records.Database.Copies;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>Looks at a book as a whole.</summary>
internal static class BookVerb
{
    public static Command Create(Edge edge) => new("book", "Look at a book.") { Info(edge) };

    private static Command Info(Edge edge)
    {
        var copies = new Option<string?>("--copies") { Description = "Where its copies stand; without it the folder backups beside the book." };
        var (book, language) = (BookOption.Create(), LanguageOption.Create());
        var command = new Command("info", "Say what is in it and of when its copies are, and hold all of it against its digests.") { book, copies, language };
        command.SetAction((parsed, stop) => InfoAsync(edge, parsed.GetValue(copies), new AskedBook(parsed.GetValue(book)!, LanguageOption.Of(parsed, language)), stop));
        return command;
    }

    private static async Task<int> InfoAsync(Edge edge, string? folder, AskedBook asked, CancellationToken stop)
    {
        var opened = await Book.OpenThereAsync(asked.Connection, edge.Time, stop);
        if (opened.IsRefused) return await DamagedAsync(edge, opened.Problems, folder, asked, stop);
        await using var book = opened.Value;
        var counts = await book.CountsAsync(stop);
        var copies = CopyFolder.Of(asked.Connection, folder);
        var made = copies.List();
        ImmutableArray<(string, string)> lines =
        [
            ("engine", book.Engine + (book.File is { } file ? ", " + file + ", " + Say.Number(new FileInfo(file).Length / 1024.0 / 1024.0, 1) + " MB" : string.Empty)),
            ("form", Say.Number(Book.Form)),
            ("name", await book.IdentityAsync(stop)),
            ("holds", BookText.Holds(counts)),
            ("last mark came in", counts.LastMark is { } last ? OfferCopy.Moment(last) : "-"),
            ("copies", made.IsEmpty ? "none in " + copies.Path : Say.Number(made.Length) + " in " + copies.Path + ", the last of " + OfferCopy.Moment(made[0].Made)),
        ];
        await edge.Out.WriteAsync(TextTable.Write(["book", ""], lines.Select(l => (ImmutableArray<string>)[l.Item1, l.Item2])));
        if (await book.CheckAsync(stop) is { } fault) return await DamagedAsync(edge, [fault], folder, asked, stop);
        await edge.Out.WriteLineAsync("All of it is as it was kept.");
        return ExitCode.Done;
    }

    private static async Task<int> DamagedAsync(Edge edge, ImmutableArray<Problem> problems, string? folder, AskedBook asked, CancellationToken stop)
    {
        if (problems.Any(p => p.Kind == BookProblems.Damaged)) problems = problems.Add(await OfferCopy.OfAsync(asked.Connection, folder, stop));
        await LanguageOption.TellAsync(edge, problems, asked.Language);
        return BookOption.CodeOf(problems);
    }
}
