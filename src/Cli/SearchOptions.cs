using System.CommandLine;
using Watersown.Schedule;

namespace Watersown.Cli;

/// <summary>How long and how to search, asked the same way by every verb that plans.</summary>
internal sealed class SearchOptions
{
    private readonly Option<double> seconds;
    private readonly Option<int> seed = new("--seed") { Description = "Seed of the random choices.", DefaultValueFactory = _ => 1 };
    private readonly Option<bool> repeatable = new("--repeatable") { Description = "Count work instead of time, so that the same farm and seed give the same plan on every run." };

    public SearchOptions(string what, int usualSeconds)
    {
        seconds = new Option<double>("--seconds") { Description = what, DefaultValueFactory = _ => usualSeconds };
        seconds.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<double>() is not (>= 0.1 and <= 3600)) r.AddError(FormattableString.Invariant($"--seconds must lie between 0.1 and 3600. Give a number such as {usualSeconds}."));
        });
    }

    public void AddTo(Command command)
    {
        command.Options.Add(seconds);
        command.Options.Add(seed);
        command.Options.Add(repeatable);
    }

    public PlanOptions Of(ParseResult parsed) =>
        new() { Budget = TimeSpan.FromSeconds(parsed.GetValue(seconds)), Seed = parsed.GetValue(seed), Repeatable = parsed.GetValue(repeatable) };
}
