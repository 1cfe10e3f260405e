using System.CommandLine;
using Watersown.Records;
using Watersown.Records.Database;
using Watersown.Records.Database.Copies;
using Watersown.Wording;

namespace Watersown.Cli;

/// <summary>The book that a verb works on.</summary>
internal static class BookOption
{
    public static Option<string> Create() => new("--book") { Description = "The book: a file, or a text with Host=… for PostgreSQL.", Required = true };

    /// <summary>A disk that failed is the world's fault, everything else what was given.</summary>
    public static int CodeOf(IEnumerable<Problem> problems) =>
        problems.Any(p => p.Kind == FileProblems.NotWritable || p.Kind == BookProblems.ServerRefuses || p.Kind == CopyProblems.NotMade) ? ExitCode.WorldFailed : ExitCode.ProblemsInInput;
}

/// <summary>A book that somebody asked for, and the language that problems are told in.</summary>
/// <param name="Connection">The file, or the connection text.</param>
/// <param name="Language">Language of problems.</param>
internal sealed record AskedBook(string Connection, Language Language)
{
    /// <summary>Works on the book where there is one; never makes one.</summary>
    public async Task<int> RunAsync(Edge edge, Func<Book, Task<int>> work)
    {
        var opened = await Book.OpenThereAsync(Connection, edge.Time);
        await LanguageOption.TellAsync(edge, opened.Problems, Language);
        if (opened.IsRefused) return BookOption.CodeOf(opened.Problems);
        await using var book = opened.Value;
        return await work(book);
    }
}
