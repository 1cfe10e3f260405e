using System.Globalization;
using Watersown.Weather;

namespace Watersown.Documents.Daily;

/// <summary>What of a day a figure is.</summary>
internal enum DayPart
{
    High,
    Low,
    Rain,
}

/// <summary>Gathers figures to days, looks at each, and says what is wrong a few times, not a thousand.</summary>
internal sealed class DayGathering(string file)
{
    /// <summary>So many lines of one sort are shown; the rest is a number.</summary>
    private const int ShownMost = 5;

    /// <summary>The coldest and warmest air ever measured lie within; common practice.</summary>
    private const double LeastCelsius = -90, MostCelsius = 60;

    private readonly SortedDictionary<DateOnly, WeatherDay> days = [];
    private readonly List<Problem> problems = [];
    private readonly Dictionary<string, int> more = new(StringComparer.Ordinal);

    public int Failed { get; private set; }

    /// <summary>A value that the source itself marked as bad.</summary>
    public void Fail() => Failed++;

    public void Add(DateOnly day, DayPart part, double value, int line)
    {
        if (part == DayPart.Rain ? value is < 0 or > 2000 : value is < LeastCelsius or > MostCelsius)
        {
            Say(WeatherFileProblems.Beyond, line, ("value", Number(value) + (part == DayPart.Rain ? " mm" : " °C")), ("limit", part == DayPart.Rain ? "0–2000 mm" : "−90–60 °C"));
            return;
        }

        var before = days.GetValueOrDefault(day) ?? new WeatherDay(day);
        var after = part switch
        {
            DayPart.High => before with { High = Temperature.FromCelsius(value) },
            DayPart.Low => before with { Low = Temperature.FromCelsius(value) },
            _ => before with { Rain = WaterDepth.FromMillimeters(value) },
        };
        if (Differs(before, after, part)) Say(WeatherFileProblems.Twice, line, ("value", Iso(day)));
        days[day] = after;
    }

    public void Say(ProblemKind kind, int line, params (string, string)[] facts)
    {
        var said = more[kind.Code] = more.GetValueOrDefault(kind.Code) + 1;
        if (said <= ShownMost) problems.Add(kind.At(Where(line), facts));
        else if (said == ShownMost + 1) problems.Add(WeatherFileProblems.MoreLike.At(file + " (" + kind.Code + ")", ("value", string.Empty)));
    }

    /// <summary>The days, with what was wrong; refused where there is none.</summary>
    public Outcome<ImmutableArray<WeatherDay>> Close()
    {
        foreach (var day in days.Values.Where(d => d is { High: { } high, Low: { } low } && low > high).ToList())
        {
            Say(WeatherFileProblems.LowAboveHigh, 0, ("value", Number(day.Low!.Value.Celsius) + " °C"), ("limit", Number(day.High!.Value.Celsius) + " °C, " + Iso(day.Day)));
            days[day.Day] = day with { High = null, Low = null };
        }

        ImmutableArray<Problem> all = [.. problems.Select(Counted)];
        return days.Values.Any(d => d.High is not null || d.Low is not null)
            ? Outcome<ImmutableArray<WeatherDay>>.Of([.. days.Values], all)
            : Outcome<ImmutableArray<WeatherDay>>.Refuse([.. all, WeatherFileProblems.NoDays.At(file)]);
    }

    private Problem Counted(Problem problem) => problem.Kind != WeatherFileProblems.MoreLike
        ? problem
        : problem.Kind.At(problem.Where, ("value", Wording.Say.Number(more[problem.Where[(file.Length + 2)..^1]] - ShownMost)));

    private static bool Differs(WeatherDay before, WeatherDay after, DayPart part) => part switch
    {
        DayPart.High => before.High is { } high && high != after.High,
        DayPart.Low => before.Low is { } low && low != after.Low,
        _ => before.Rain is { } rain && rain != after.Rain,
    };

    private string Where(int line) => line > 0 ? file + ", line " + line.ToString(CultureInfo.InvariantCulture) : file;

    private static string Number(double value) => Wording.Say.Number(value, 1);

    private static string Iso(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
