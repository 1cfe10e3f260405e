using Watersown.Records;
using Watersown.Records.Files;
using Watersown.Wording;

namespace Watersown.Cli;

/// <summary>Where a farm document made of a boundary file goes, and what must be right before it is written.</summary>
/// <param name="Path">The file.</param>
/// <param name="Replace">Whether a file that is there may be replaced.</param>
/// <param name="TakeGood">Whether it is written although part of the file was broken.</param>
/// <param name="Language">Language of problems.</param>
internal sealed record WrittenFarm(string Path, bool Replace, bool TakeGood, Language Language)
{
    /// <summary>Tells every problem, and writes the document where it may; the exit code.</summary>
    /// <param name="edge">The outside.</param>
    /// <param name="made">The document, with everything that was wrong on the way.</param>
    /// <param name="good">How many boundaries could be used.</param>
    public async Task<int> WriteAsync(Edge edge, Outcome<ReadOnlyMemory<byte>> made, int good)
    {
        await LanguageOption.TellAsync(edge, made.Problems, Language);
        if (made.IsRefused) return ExitCode.ProblemsInInput;
        if (made.Refusals.Any() && !TakeGood)
        {
            await edge.Error.WriteLineAsync(Language == Language.Spanish
                ? $"No se escribió nada. {Say.Number(good)} linderos están bien: --take-good toma esos."
                : $"Nothing was written. {Say.Number(good)} boundaries are good: --take-good takes those.");
            return ExitCode.ProblemsInInput;
        }

        var written = SafeWriting.Write(Path, made.Value.Span, Replace);
        await LanguageOption.TellAsync(edge, written.Problems, Language);
        if (written.HasValue) return ExitCode.Done;
        return written.Problems.Any(p => p.Kind == FileProblems.NotWritable) ? ExitCode.WorldFailed : ExitCode.ProblemsInInput;
    }
}
