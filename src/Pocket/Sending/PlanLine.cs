using System.Text.Json;

namespace Watersown.Pocket.Sending;

/// <summary>How far the host has come with a plan.</summary>
/// <param name="Running">It works one out now.</param>
/// <param name="Budget">Time that it takes at most.</param>
public sealed record PlanningSaid(bool Running, TimeSpan Budget)
{
    public TimeSpan? Elapsed { get; init; }

    /// <summary>Cost of the best plan so far.</summary>
    public Money? Cost { get; init; }

    /// <summary>No plan can cost less.</summary>
    public Money? Bound { get; init; }

    /// <summary>How far that may be from the best.</summary>
    public Fraction? Gap { get; init; }

    /// <summary>Number under which the host's log tells why the last one failed.</summary>
    public string? Failed { get; init; }
}

/// <summary>Asks the host for plans. Only the host works out a season; what was marked meanwhile is on the device all the same.</summary>
/// <param name="host">The line to the host.</param>
public sealed class PlanLine(HostLine host)
{
    /// <summary>Asks for a new plan now.</summary>
    public async Task<LineState> AskAsync() => (await host.SendAsync("api/plan", "{}"u8.ToArray())).State;

    /// <summary>Ends the search; the best plan so far is kept.</summary>
    public async Task<LineState> StopAsync() => (await host.TakeBackAsync("api/plan/progress")).State;

    /// <summary>How far it has come; nothing where the host was not heard.</summary>
    public async Task<PlanningSaid?> ProgressAsync()
    {
        var answer = await host.AskAsync("api/plan/progress");
        return answer.State == LineState.Reached ? Read(answer.Body) : null;
    }

    private static PlanningSaid? Read(ReadOnlyMemory<byte> body)
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            var root = document.RootElement;
            return new PlanningSaid(root.GetProperty("running").GetBoolean(), TimeSpan.FromSeconds(root.GetProperty("budget_s").GetDouble()))
            {
                Elapsed = root.TryGetProperty("elapsed_s", out var elapsed) ? TimeSpan.FromSeconds(elapsed.GetDouble()) : null,
                Cost = root.TryGetProperty("cost", out var cost) ? Money.FromDollars(cost.GetDecimal()) : null,
                Bound = root.TryGetProperty("bound", out var bound) ? Money.FromDollars(bound.GetDecimal()) : null,
                Gap = root.TryGetProperty("gap_pct", out var gap) ? Fraction.FromPercent(gap.GetDouble()) : null,
                Failed = root.TryGetProperty("failed", out var failed) ? failed.GetString() : null,
            };
        }
        catch (Exception strange) when (strange is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }
}
