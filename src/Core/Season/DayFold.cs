using Watersown.Schedule;
using Watersown.Weather;

namespace Watersown.Season;

/// <summary>One import of days.</summary>
/// <param name="Source">The file or station.</param>
/// <param name="At">When it came in.</param>
/// <param name="By">Who brought it.</param>
/// <param name="Days">How many days of the season it told whole.</param>
public sealed record WeatherImport(string Source, DateTimeOffset At, string By, int Days);

/// <summary>What is known of the season's days, from which and by what normals they are filled.</summary>
public sealed record WeatherBook
{
    public static WeatherBook Empty { get; } = new();

    /// <summary>Days told whole, one each, in order. What a person typed stands before any file; of two files the later one.</summary>
    public ImmutableArray<KnownDay> Known { get; init; } = [];

    /// <summary>Imports, the newest first.</summary>
    public ImmutableArray<WeatherImport> Imports { get; init; } = [];

    public FarmNormals Normals { get; init; } = FarmNormals.None;

    /// <summary>When the normals were last told; none where the farm document holds them.</summary>
    public DateTimeOffset? NormalsAt { get; init; }
}

/// <summary>Days of weather as the marks go by.</summary>
internal sealed class DayFold(SeasonState ground)
{
    private readonly GroundTime time = new(ground.Now);
    private readonly Dictionary<DateOnly, KnownDay> typed = ground.Warmth.GroupBy(w => w.Day).ToDictionary(g => g.Key, g => new KnownDay(g.Last(), DayBasis.Typed, ground.Farm.Name, At: null));
    private readonly Dictionary<DateOnly, KnownDay> filed = [];
    private readonly List<WeatherImport> imports = [];
    private FarmNormals normals = ground.Normals;
    private DateTimeOffset? normalsAt;

    public void Apply(Mark mark)
    {
        switch (mark.Fact)
        {
            case WarmthRead read when read.Low <= read.High && (time.IsOlderThan(mark) || !typed.ContainsKey(read.Day)):
                typed[read.Day] = new KnownDay(new DayWarmth(read.Day, read.High, read.Low), DayBasis.Typed, mark.By, mark.Happened);
                break;
            case WeatherTaken taken:
                Take(taken, mark);
                break;
            case NormalsTaken told:
                var given = new FarmNormals([.. told.Months.Where(m => m.Low <= m.High).DistinctBy(m => m.Month)], told.Source);
                normals = time.IsOlderThan(mark) ? normals.With(given) : given.With(normals);
                normalsAt = mark.Happened;
                break;
            default:
                break;
        }
    }

    public WeatherBook Close() => new()
    {
        Known = [.. filed.Where(f => !typed.ContainsKey(f.Key)).Select(f => f.Value).Concat(typed.Values).OrderBy(k => k.Day)],
        Imports = [.. imports.AsEnumerable().Reverse()],
        Normals = normals,
        NormalsAt = normalsAt,
    };

    private void Take(WeatherTaken taken, Mark mark)
    {
        var whole = taken.Days.Where(d => d.IsWhole && d.Low!.Value <= d.High!.Value).ToList();
        foreach (var day in whole) filed[day.Day] = new KnownDay(new DayWarmth(day.Day, day.High!.Value, day.Low!.Value), DayBasis.File, taken.Source, mark.Happened);
        imports.Add(new WeatherImport(taken.Source, mark.Happened, mark.By, whole.Count));
    }
}
