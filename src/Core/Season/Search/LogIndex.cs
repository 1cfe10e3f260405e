using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season.Search;

/// <summary>The entries of one farm day, the newest first.</summary>
public sealed record LogDay(DateOnly Day, ImmutableArray<LogEntry> Entries);

/// <summary>What was found.</summary>
/// <param name="Days">The newest day first; only as many entries as were wanted.</param>
/// <param name="Found">How many there are in all.</param>
/// <param name="Shown">How many of them are in the days.</param>
public sealed record LogPage(ImmutableArray<LogDay> Days, int Found, int Shown);

/// <summary>The logbook told in one reader's words, ready to be read and searched.</summary>
public sealed class LogIndex
{
    private readonly Dictionary<MarkId, LogEntry> byId;
    private readonly TimeSpan offset;
    private readonly Language language;
    private readonly bool metric;
    private readonly DateOnly today;

    private LogIndex(SeasonBook book, Telling tell, Dictionary<MarkId, LogEntry> entries)
    {
        (byId, offset, metric, language, today) = (entries, tell.Offset, tell.Metric, LanguageOf(tell), tell.Day(book.Now));
        ByHappened = [.. book.Story.Reverse().Select(l => byId[l.Mark.Id])];
        ByEntered = [.. ByHappened.OrderByDescending(e => e.Mark, MarkOrder.Entered)];
        People = [.. ByHappened.Select(e => e.Mark.By).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        Devices = [.. ByHappened.Select(e => e.Mark.Device).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    /// <summary>Every mark that happened by now, the newest first.</summary>
    public ImmutableArray<LogEntry> ByHappened { get; }

    /// <summary>The same by when they were put down.</summary>
    public ImmutableArray<LogEntry> ByEntered { get; }

    /// <summary>Everybody who said something.</summary>
    public ImmutableArray<string> People { get; }

    /// <summary>Every device that something was put down on.</summary>
    public ImmutableArray<string> Devices { get; }

    public LogEntry? Find(MarkId id) => byId.GetValueOrDefault(id);

    /// <summary>Tells a book. What was told before in the same words is taken over.</summary>
    /// <param name="book">The season.</param>
    /// <param name="tell">The reader's language and units.</param>
    /// <param name="before">The index of an older state of the same book.</param>
    public static LogIndex Of(SeasonBook book, Telling tell, LogIndex? before = null)
    {
        if (before is not null && (before.language != LanguageOf(tell) || before.metric != tell.Metric || before.today != tell.Day(book.Now))) before = null;
        var names = book.State.Farm.Fields.ToDictionary(f => f.Code, f => f.Name, StringComparer.OrdinalIgnoreCase);
        var doubts = book.Doubts.SelectMany(d => d.Marks.Select(m => (Mark: m, d.Problem))).ToLookup(d => d.Mark, d => d.Problem);
        var (own, other) = (new MarkTelling(tell), new MarkTelling(new Telling(book.State, LanguageOf(tell) == Language.Spanish ? Language.English : Language.Spanish)));
        var entries = new Dictionary<MarkId, LogEntry>(book.Story.Length);
        foreach (var line in book.Story)
        {
            var old = before?.Find(line.Mark.Id);
            if (old is null || !ReferenceEquals(old.Mark, line.Mark)) old = Told(line, own, other, names);
            entries[line.Mark.Id] = old with { Line = line, Replaces = null, Doubts = [.. doubts[line.Mark.Id]] };
        }

        foreach (var line in book.Story.Where(l => l.Mark.Replaces is not null))
            entries[line.Mark.Id] = entries[line.Mark.Id] with { Replaces = entries.GetValueOrDefault(line.Mark.Replaces!.Value) };
        return new LogIndex(book, tell, entries);
    }

    /// <summary>The newest entries that are wanted.</summary>
    /// <param name="filter">Which.</param>
    /// <param name="most">Most that are shown.</param>
    /// <param name="unsent">Marks that the host does not have yet.</param>
    public LogPage Find(LogFilter filter, int most, IReadOnlySet<MarkId> unsent)
    {
        var words = LogEntry.Words(filter.Words);
        var found = (filter.ByEntered ? ByEntered : ByHappened)
            .Where(e => filter.Holds(e) && (!filter.UnsentOnly || unsent.Contains(e.Mark.Id)) && e.HasAll(words)).ToList();
        var shown = found.Take(most).ToList();
        return new LogPage([.. shown.GroupBy(e => Day(filter.ByEntered ? e.Mark.Entered : e.Mark.Happened)).Select(d => new LogDay(d.Key, [.. d]))], found.Count, shown.Count);
    }

    private DateOnly Day(DateTimeOffset moment) => DateOnly.FromDayNumber((int)(moment.ToOffset(offset).Ticks / TimeSpan.TicksPerDay));

    private static Language LanguageOf(Telling tell) => tell.Words == Words.Spanish ? Language.Spanish : Language.English;

    // Told in both languages for the search: who reads in one remembers what crew wrote in the other.
    private static LogEntry Told(StoryLine line, MarkTelling own, MarkTelling other, Dictionary<string, string> names)
    {
        var fact = line.Mark.Fact;
        var said = own.Say(fact);
        var about = fact.AboutField is { } field ? names.TryGetValue(field, out var name) ? field + " " + name : field : fact.AboutSource ?? fact.AboutBatch ?? fact.AboutTrailer;
        return new LogEntry(line)
        {
            Said = said,
            About = about,
            Found = PlainLetters.Fold(string.Join(' ', said, other.Say(fact), about, fact.AboutSource, fact.AboutBatch, line.Mark.By, line.Mark.Note, line.Mark.Device)),
        };
    }
}
