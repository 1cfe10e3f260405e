using System.Net;
using System.Text;

namespace Watersown.Web;

/// <summary>What is on its way while the desk is closed.</summary>
public sealed class ClosingTests
{
    [Fact]
    public async Task A_send_that_comes_while_the_desk_is_closed_is_told_to_come_again_and_is_no_failure()
    {
        await using var desk = await RunningDesk.HereAsync();
        using var page = desk.Page();
        using var held = new HeldContent("{\"device\":\"a phone\",\"marks\":[" + RunningDesk.Mark(RunningDesk.NewId()) + "]}");
#pragma warning disable CA2025 // awaited before the end of the test
        var sending = page.PostAsync("/api/marks", held);
#pragma warning restore CA2025
        await held.Begun;
        desk.App.Lifetime.StopApplication();
        await desk.Book.DisposeAsync();
        held.GoOn();
        Assert.Equal("HOST-015", await RunningDesk.ProblemsAsync(await sending, HttpStatusCode.ServiceUnavailable));
    }

    /// <summary>A body of which the second half is held back.</summary>
    private sealed class HeldContent : HttpContent
    {
        private readonly byte[] bytes;
        private readonly TaskCompletionSource begun = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly TaskCompletionSource rest = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public HeldContent(string text)
        {
            bytes = Encoding.UTF8.GetBytes(text);
            Headers.ContentType = new("application/json");
        }

        public Task Begun => begun.Task;

        public void GoOn() => rest.SetResult();

        protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context)
        {
            await stream.WriteAsync(bytes.AsMemory(0, 20));
            await stream.FlushAsync();
            begun.SetResult();
            await rest.Task;
            await stream.WriteAsync(bytes.AsMemory(20));
        }

        protected override bool TryComputeLength(out long length)
        {
            length = bytes.Length;
            return true;
        }
    }
}
