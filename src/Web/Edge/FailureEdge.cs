using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;
using Watersown.Records.Database;

namespace Watersown.Web.Edge;

/// <summary>
/// The one place that catches what nobody foresaw: the log gets all of it under a number, the asker gets the number and what
/// was not kept.
/// </summary>
internal static partial class FailureEdge
{
    [SuppressMessage("Design", "CA1031", Justification = "The one edge that turns failures into an answer.")]
    public static async Task RunAsync(HttpContext context, RequestDelegate next, ILogger log, CancellationToken closing)
    {
        try
        {
            await next(context);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // The asker has gone: nobody is left to answer.
        }
        catch (Exception late) when (closing.IsCancellationRequested && late is ObjectDisposedException or OperationCanceledException)
        {
            // It came while the desk was closed: no failure, and nothing of it was kept. The asker sends it again.
            if (context.Response.HasStarted || context.RequestAborted.IsCancellationRequested) return;
            context.Response.Clear();
            SecurityHeaders.Put(context, SecurityHeaders.ForData);
            await Reply.ProblemsAsync(context, StatusCodes.Status503ServiceUnavailable, HostProblems.Closing.At(string.Empty));
        }
        catch (BadHttpRequestException wrong)
        {
            if (context.Response.HasStarted) throw;
            context.Response.Headers.Connection = "close";
            var problem = wrong.StatusCode == StatusCodes.Status413PayloadTooLarge
                ? HostProblems.TooLarge.At(string.Empty, ("limit", BodySize.Said(context)))
                : HostProblems.NotThisBody.At(string.Empty, ("limit", "a whole request"));
            await Reply.ProblemsAsync(context, wrong.StatusCode, problem);
        }
        catch (BookFailedException failure) when (!context.Response.HasStarted)
        {
            // Nothing of it was kept, and the asker may try again: a full disk is made room on, a server comes back.
            Failed(log, "book", context.Request.Method, Shown(context), failure);
            context.Response.Clear();
            SecurityHeaders.Put(context, SecurityHeaders.ForData);
            context.Response.Headers.RetryAfter = "30";
            await Reply.ProblemsAsync(context, StatusCodes.Status503ServiceUnavailable, HostProblems.BookFails.At(string.Empty, ("value", BookFailedException.Cause(failure))));
        }
        catch (Exception failure)
        {
            var number = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(4));
            Failed(log, number, context.Request.Method, Shown(context), failure);
            if (context.Response.HasStarted) throw;
            context.Response.Clear();
            SecurityHeaders.Put(context, SecurityHeaders.ForData);
            await Reply.ProblemsAsync(context, StatusCodes.Status500InternalServerError, HostProblems.Failed.At(string.Empty, ("value", number)));
        }
    }

    // The address of a link is its key: it never stands in a log.
    private static string Shown(HttpContext context) =>
        context.Request.Path.StartsWithSegments("/l", StringComparison.Ordinal) ? "/l/…" : context.Request.Path.Value ?? string.Empty;

    [LoggerMessage(Level = LogLevel.Error, Message = "{Number}: {Method} {Path} failed")]
    private static partial void Failed(ILogger log, string number, string method, string path, Exception failure);
}
