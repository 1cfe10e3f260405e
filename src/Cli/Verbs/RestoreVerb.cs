using System.CommandLine;
using Watersown.Records.Database.Copies;

namespace Watersown.Cli.Verbs;

/// <summary>Puts a copy in the place of a book.</summary>
internal static class RestoreVerb
{
    public static Command Create(Edge edge)
    {
        var copy = new Argument<string>("COPY") { Description = "A copy that backup or the desk made, or a whole-farm file." };
        var replace = new Option<bool>("--replace") { Description = "Put the copy in the place of a book that is there; that one is kept beside it." };
        var (book, language) = (BookOption.Create(), LanguageOption.Create());
        var command = new Command("restore", "Bring a copy of a book back; refused while a desk has the book open.") { copy, book, replace, language };
        command.SetAction((parsed, stop) => RunAsync(edge, parsed.GetValue(copy)!, parsed.GetValue(replace), new AskedBook(parsed.GetValue(book)!, LanguageOption.Of(parsed, language)), stop));
        return command;
    }

    private static async Task<int> RunAsync(Edge edge, string copy, bool replace, AskedBook asked, CancellationToken stop)
    {
        var restored = await RestoreBook.RunAsync(copy, asked.Connection, replace, edge.Time, stop);
        await LanguageOption.TellAsync(edge, restored.Problems, asked.Language);
        if (restored.IsRefused) return BookOption.CodeOf(restored.Problems);
        await edge.Out.WriteLineAsync("The book holds " + BookText.Holds(restored.Value.Counts));
        if (restored.Value.Kept is { } kept) await edge.Out.WriteLineAsync("The book before is kept as " + kept + ".");
        await edge.Out.WriteLineAsync("Phones send again what they have and the copy has not.");
        return ExitCode.Done;
    }
}
