using System.Text;
using Watersown.Cli;

namespace Watersown.Hosts;

/// <summary>Asks the command something in process, and keeps what it said.</summary>
public static class Asking
{
    public static Task<Said> AsksAsync(params string[] words) => AsksAsync(string.Empty, words);

    public static async Task<Said> AsksAsync(string input, string[] words)
    {
        using var reader = new StringReader(input);
        return await AsksAsync(reader, words);
    }

    /// <summary>With the very bytes, read as the command reads its standard input.</summary>
    public static async Task<Said> AsksWithBytesAsync(byte[] input, string[] words)
    {
        using var stream = new MemoryStream(input);
        using var reader = new StreamReader(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true));
        return await AsksAsync(reader, words);
    }

    private static async Task<Said> AsksAsync(TextReader input, string[] words)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var code = await Desk.RunAsync(words, new Edge(output, error, input, TimeProvider.System));
        return new Said(code, output.ToString(), error.ToString());
    }
}

/// <summary>What came back: exit code, standard output, error stream.</summary>
public sealed record Said(int Code, string Out, string Error)
{
    public ImmutableArray<string> Faults => [.. Error.Split('\n', StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>Refused as bad input must be: exit code 2, nothing on the standard output.</summary>
    public Said Refused()
    {
        Assert.Equal((ExitCode.ProblemsInInput, string.Empty), (Code, Out));
        return this;
    }
}
