using System.Globalization;

namespace Watersown.Documents.Tracks;

/// <summary>What the columns of a table are, by their headings or as told.</summary>
internal sealed class CsvColumns
{
    private static readonly (TrackColumn Column, string Name)[] names =
    [
        (TrackColumn.Latitude, "lat"), (TrackColumn.Longitude, "lon"), (TrackColumn.Time, "time"), (TrackColumn.Date, "date"),
        (TrackColumn.Height, "height"), (TrackColumn.Speed, "speed"), (TrackColumn.Course, "course"), (TrackColumn.Gate, "gate"),
    ];

    private readonly int[] places = Enumerable.Repeat(-1, Enum.GetValues<TrackColumn>().Length).ToArray();
    private readonly ImmutableArray<string> headings;

    private CsvColumns(char delimiter, ImmutableArray<string> headings) => (Delimiter, this.headings) = (delimiter, headings);

    public char Delimiter { get; }

    public double PerHeight { get; private set; } = 1;

    public double PerSpeed { get; private set; } = double.NaN;

    public bool DayFirst { get; private set; }

    public ImmutableArray<(TrackColumn Column, string Heading)> Taken =>
        [.. Enum.GetValues<TrackColumn>().Where(c => At(c) >= 0).Select(c => (c, headings[At(c)]))];

    public int At(TrackColumn column) => places[(int)column];

    /// <summary>A word of an option, such as <c>lat=3</c>, <c>gate=Boom state</c>.</summary>
    public static Outcome<ImmutableDictionary<TrackColumn, string>> Told(IEnumerable<string> given)
    {
        var told = ImmutableDictionary.CreateBuilder<TrackColumn, string>();
        foreach (var word in given.SelectMany(g => g.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)))
        {
            var sign = word.IndexOf('=', StringComparison.Ordinal);
            var name = sign < 0 ? word : word[..sign].Trim();
            if (sign < 0 || !names.Any(n => n.Name == name))
                return Outcome<ImmutableDictionary<TrackColumn, string>>.Refuse(TrackProblems.UnknownMeaning.At("--columns", ("value", word), ("known", string.Join(", ", names.Select(n => n.Name)))));
            told[names.First(n => n.Name == name).Column] = word[(sign + 1)..].Trim();
        }

        return Outcome<ImmutableDictionary<TrackColumn, string>>.Of(told.ToImmutable());
    }

    /// <summary>The columns of a line of headings; refused where no place can be read from them.</summary>
    public static Outcome<CsvColumns> Of(string line, ImmutableDictionary<TrackColumn, string> told, string file)
    {
        var delimiter = new[] { '\t', ';', ',' }.MaxBy(d => line.Count(c => c == d));
        var columns = new CsvColumns(delimiter, [.. line.Split(delimiter).Select(h => h.Trim().Trim('"', '\'').Trim())]);
        var problems = ImmutableArray.CreateBuilder<Problem>();
        columns.Guess(file, problems);
        foreach (var (column, name) in told)
        {
            if (columns.Find(name) is not { } place)
                return Outcome<CsvColumns>.Refuse(TrackProblems.NoSuchColumn.At(file, ("value", name), ("known", columns.Known)));
            columns.Take(column, place, TrackWords.Of(columns.headings[place]));
        }

        ImmutableArray<string> missing = [.. names.Take(2).Where(n => columns.At(n.Column) < 0).Select(n => n.Name)];
        if (!missing.IsEmpty) return Outcome<CsvColumns>.Refuse(TrackProblems.NoPlaceColumns.At(file, ("value", string.Join(", ", missing)), ("known", columns.Known)));
        if (columns.At(TrackColumn.Speed) is >= 0 and var speed && double.IsNaN(columns.PerSpeed))
            problems.Add(TrackProblems.NoUnit.At(file, ("value", columns.headings[speed])));
        return Outcome<CsvColumns>.Of(columns, problems.Where(p => p.Kind != TrackProblems.SeveralGates || !told.ContainsKey(TrackColumn.Gate)));
    }

    private string Known => Wording.Say.Short(string.Join(", ", headings), 200);

    private void Guess(string file, ImmutableArray<Problem>.Builder problems)
    {
        var meant = headings.Select((h, i) => (Place: i, Meaning: TrackWords.Of(h))).Where(m => m.Meaning is not null).ToLookup(m => m.Meaning!.Value.Column);
        foreach (var group in meant)
        {
            // The plainest heading of several is the likeliest: "time" before "time since start".
            var best = group.OrderBy(m => headings[m.Place].Length).ThenBy(m => m.Place).First();
            Take(group.Key, best.Place, best.Meaning);
            if (group.Key == TrackColumn.Gate && group.Count() > 1)
                problems.Add(TrackProblems.SeveralGates.At(file, ("value", headings[best.Place]), ("known", string.Join(", ", group.Select(m => headings[m.Place])))));
        }
    }

    private void Take(TrackColumn column, int place, Meant? meaning)
    {
        places[(int)column] = place;
        var unit = meaning is { } m && m.Column == column ? m.PerUnit : double.NaN;
        if (column == TrackColumn.Speed) PerSpeed = unit;

        // Heights are only held against each other, so meters will do where nothing is said.
        if (column == TrackColumn.Height) PerHeight = double.IsNaN(unit) ? 1 : unit;
        if (column is TrackColumn.Date or TrackColumn.Time) DayFirst |= meaning?.DayFirst == true;
    }

    private int? Find(string name)
    {
        var place = headings.IndexOf(name, 0, headings.Length, StringComparer.OrdinalIgnoreCase);
        if (place >= 0) return place;
        return int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= headings.Length ? number - 1 : null;
    }
}
