using System.CommandLine;
using System.Globalization;
using Watersown.Records.Database;
using Watersown.Records.Season;
using Watersown.Wording;

namespace Watersown.Cli.Verbs;

/// <summary>Takes a whole-farm file into a book.</summary>
internal static class ImportFarmVerb
{
    public static Command Create(Edge edge)
    {
        var file = new Argument<string>("FILE") { Description = "A whole-farm file, as export writes it." };
        var (book, language) = (BookOption.Create(), LanguageOption.Create());
        var command = new Command("farm", "Take a whole-farm file into a book, new or not: all that it does not have, or nothing.") { file, book, language };
        command.SetAction((parsed, stop) => RunAsync(edge, parsed.GetValue(file)!, parsed.GetValue(book)!, LanguageOption.Of(parsed, language), stop));
        return command;
    }

    private static async Task<int> RunAsync(Edge edge, string file, string book, Language language, CancellationToken stop)
    {
        var joined = await ImportFarm.RunAsync(file, () => Book.OpenAsync(book, edge.Time, stop), stop);
        await LanguageOption.TellAsync(edge, joined.Problems, language);
        if (joined.IsRefused) return BookOption.CodeOf(joined.Problems);
        var taken = joined.Value;
        await edge.Out.WriteAsync(TextTable.Write(["taken", ">count"],
            [.. new (string Part, int Count)[] { ("versions of the farm", taken.Farms), ("marks", taken.Marks), ("plans", taken.Plans), ("photos", taken.Photos), ("people", taken.Accounts) }
                .Select(p => (ImmutableArray<string>)[p.Part, p.Count.ToString("#,0", CultureInfo.InvariantCulture)])]));
        await edge.Out.WriteLineAsync("What the book had already was left as it is.");
        if (taken.Accounts > 0) await edge.Out.WriteLineAsync("People come without their passwords: start the desk with --owner NAME for the first code.");
        return ExitCode.Done;
    }
}
