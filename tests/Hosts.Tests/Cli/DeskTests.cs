using Watersown.Cli;
using static Watersown.Hosts.Asking;

namespace Watersown.Hosts;

public sealed class DeskTests
{
    [Fact]
    public async Task An_unknown_verb_is_refused_with_the_way_to_help()
    {
        var said = (await AsksAsync("frobnicate")).Refused();
        Assert.Contains("'watersown --help' shows what can be asked.", said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pipe_that_closes_is_told_as_a_failure_of_the_world()
    {
        using var output = new ClosedPipe();
        using var error = new StringWriter();
        using var input = new StringReader(string.Empty);
        Assert.Equal(ExitCode.WorldFailed, await Desk.RunAsync(["reckon", "--list"], new Edge(output, error, input, TimeProvider.System)));
        Assert.StartsWith("A file, disk or pipe failed: the pipe is closed", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_fault_of_the_program_is_told_as_one()
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        Assert.Equal(ExitCode.Bug, await Desk.RunAsync(["reckon", "wet-weight"], new Edge(output, error, new Broken(), TimeProvider.System)));
        Assert.StartsWith("This is a fault of the program, not of what you gave.", error.ToString(), StringComparison.Ordinal);
        Assert.Empty(output.ToString());
    }

    private sealed class ClosedPipe : StringWriter
    {
        public override Task WriteLineAsync(string? value) => Task.FromException(new IOException("the pipe is closed."));
    }

    private sealed class Broken : TextReader
    {
        public override ValueTask<int> ReadAsync(Memory<char> buffer, CancellationToken cancellationToken = default) =>
            throw new InvalidOperationException("cannot be");
    }
}
