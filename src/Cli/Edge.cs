namespace Watersown.Cli;

/// <summary>All that a verb may touch of the outside, so that tests can hand in their own.</summary>
public sealed record Edge(TextWriter Out, TextWriter Error, TextReader In, TimeProvider Time)
{
    /// <summary>A person sits at the input, so waiting for it to end would look like a hang.</summary>
    public bool InIsTerminal { get; init; }

    /// <summary>A person sees the error stream, so that progress may be shown there.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>The same input as bytes, for a text that may be in any encoding; where there is none the reader is used.</summary>
    public Stream? InBytes { get; init; }
}

/// <summary>What the command gives back to the shell.</summary>
public static class ExitCode
{
    public const int Done = 0;

    /// <summary>Something is wrong with what was given; every fault stands on the error stream, nothing was written.</summary>
    public const int ProblemsInInput = 2;

    /// <summary>A file, disk or pipe failed.</summary>
    public const int WorldFailed = 3;

    /// <summary>A fault of the program itself.</summary>
    public const int Bug = 4;
}
