using System.CommandLine;
using System.Globalization;
using Watersown.Flight;
using Watersown.Flight.Deposit;
using Watersown.Flight.Flown;

namespace Watersown.Cli;

/// <summary>What is known of how seed left an aeroplane: a test of its pattern, and what the scale says.</summary>
internal sealed class SeedOptions
{
    private readonly Option<string?> trays = new("--trays") { Description = "Weights of a row of trays flown over, left to right, with commas between: how a pass lays. Without it a trapezoid is supposed." };
    private readonly Option<double> spacing = new("--tray-spacing-ft") { Description = "From tray to tray, feet.", DefaultValueFactory = _ => 3 };
    private readonly Option<double> offset = new("--tray-offset-ft") { Description = "How far the middle of the row lay to the right of the flight line, feet; below 0 to the left." };
    private readonly Option<double?> soaked = new("--soaked-out-lb") { Description = "Soaked seed that went out by the scale, pounds; with --rate-lb-ac." };
    private readonly Option<double> factor = new("--wet-factor") { Description = "Soaked weight over dry weight.", DefaultValueFactory = _ => 1.25 };

    public SeedOptions()
    {
        trays.Validators.Add(r =>
        {
            if (r.GetValueOrDefault<string?>() is { } given && Weights(given) is null) r.AddError($"--trays '{given}' is not a row of trays. Give 3 to 200 weights, none below 0 and not all 0, such as 0,1.2,3,1.4,0.");
        });
        Bounded(spacing, 0.1, 100);
        Bounded(offset, -300, 300);
        Bounded(soaked, 1, 1e7);
        Bounded(factor, 1, 2);
    }

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { trays, spacing, offset, soaked, factor }) command.Options.Add(option);
    }

    /// <summary>How a pass lays; none where no trays are told.</summary>
    public LateralShape? Shape(ParseResult parsed) => parsed.GetValue(trays) is { } told && Weights(told) is { } row
        ? LateralShape.Of([.. row.Select(w => SoakedSeed.FromKilograms(w / 1000))], Length.FromFeet(parsed.GetValue(spacing)), Length.FromFeet(parsed.GetValue(offset)))
        : null;

    public SeedOut? Out(ParseResult parsed) => parsed.GetValue(soaked) is { } pounds ? new SeedOut(SoakedSeed.FromPounds(pounds), parsed.GetValue(factor)) : null;

    private static double[]? Weights(string told)
    {
        var words = told.Split(',', StringSplitOptions.TrimEntries);
        var row = new double[words.Length];
        for (var i = 0; i < words.Length; i++)
        {
            if (!double.TryParse(words[i], NumberStyles.Float, CultureInfo.InvariantCulture, out row[i]) || !(row[i] is >= 0 and < 1e6)) return null;
        }

        return row.Length is >= SpreadPattern.FewestTrays and <= Flight.Patterns.TrayTest.MostTrays && row.Any(w => w > 0) ? row : null;
    }

    private static void Bounded<T>(Option<T> option, double least, double most) => option.Validators.Add(r =>
    {
        if (r.Tokens.Count > 0 && r.GetValueOrDefault<T>() is double given && !(given >= least && given <= most))
            r.AddError(FormattableString.Invariant($"{option.Name} must lie between {least} and {most}. Give a number in that range."));
    });
}
