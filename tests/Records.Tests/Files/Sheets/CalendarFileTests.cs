using System.Globalization;
using System.Text;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Records.Files.Sheets;

/// <summary>The calendar read back by a reader of its own, written from RFC 5545 (from memory): unfold, part name, value.</summary>
public sealed class CalendarFileTests
{
    private static readonly byte[] Bytes = CalendarFile.Write(PlannedMorning.Plan(), Language.English);

    private static readonly ImmutableArray<ImmutableArray<(string Name, string Value)>> Events = Read(Bytes);

    [Fact]
    public void Every_entry_of_the_season_is_there_with_its_moments_in_universal_time()
    {
        var entries = SeasonCalendar.Of(PlannedMorning.Plan(), Language.English);
        Assert.Equal(entries.Length, Events.Length);
        foreach (var entry in entries)
        {
            var read = Events.Single(e => Value(e, "UID") == entry.Uid);
            Assert.Equal(entry.Start, Moment(Value(read, "DTSTART")));
            Assert.Equal(entry.End, Moment(Value(read, "DTEND")));
            Assert.Equal(entry.Title, Unescape(Value(read, "SUMMARY")));
            Assert.Equal(entry.Text, Unescape(Value(read, "DESCRIPTION")));
        }
    }

    [Fact]
    public void Saturdays_flight_stands_at_half_past_one_universal_time()
    {
        // 06:30 at seven hours behind universal time (definition).
        var flight = Events.Single(e => Value(e, "UID").StartsWith("sow-s2-1@", StringComparison.Ordinal));
        Assert.Equal("20260509T133000Z", Value(flight, "DTSTART"));
        Assert.Equal("Sow Crooked Box (S2): the pilot decides", Value(flight, "SUMMARY"));
    }

    [Fact]
    public void A_later_plan_has_a_higher_sequence_and_the_same_names()
    {
        var next = Read(CalendarFile.Write(PlannedMorning.Plan() with { Number = 15 }, Language.English));
        Assert.All(Events, e => Assert.Equal("14", Value(e, "SEQUENCE")));
        Assert.All(next, e => Assert.Equal("15", Value(e, "SEQUENCE")));
        Assert.Equal(Events.Select(e => Value(e, "UID")), next.Select(e => Value(e, "UID")));
    }

    [Fact]
    public void Decisions_ring_an_hour_before_their_last_moment_and_nothing_else_rings()
    {
        foreach (var item in Events)
        {
            var decision = Value(item, "CATEGORIES") == "decision";
            var rings = item.Where(l => l.Name == "TRIGGER").ToList();
            if (!decision || Value(item, "UID").StartsWith("decide-dump-seed", StringComparison.Ordinal)) Assert.Empty(rings);
            else Assert.Equal("-PT45M", Assert.Single(rings).Value); // a quarter of an hour before the start is an hour before the end, less 15 min
        }
    }

    [Fact]
    public void Lines_are_folded_at_75_octets_and_end_as_the_standard_asks()
    {
        var text = Encoding.UTF8.GetString(Bytes);
        Assert.Equal(text.Count(c => c == '\n'), text.Split("\r\n").Length - 1);
        Assert.All(text.Split("\r\n"), l => Assert.True(Encoding.UTF8.GetByteCount(l) <= 75, l));
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.Contains("VERSION:2.0\r\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Spanish_letters_and_commas_survive()
    {
        var spanish = Read(CalendarFile.Write(PlannedMorning.Plan(), Language.Spanish));
        Assert.Contains(spanish, e => Unescape(Value(e, "SUMMARY")).StartsWith("Último momento: ", StringComparison.Ordinal));
        Assert.Contains(spanish, e => Unescape(Value(e, "DESCRIPTION")).Contains("12,865 lb en seco, 16,081 lb en mojado.", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_plan_makes_the_same_bytes() => Assert.Equal(Bytes, CalendarFile.Write(PlannedMorning.Plan(), Language.English));

    private static ImmutableArray<ImmutableArray<(string Name, string Value)>> Read(byte[] bytes)
    {
        var lines = Encoding.UTF8.GetString(bytes).Replace("\r\n ", string.Empty, StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        var events = ImmutableArray.CreateBuilder<ImmutableArray<(string, string)>>();
        ImmutableArray<(string, string)>.Builder? open = null;
        foreach (var line in lines)
        {
            if (line == "BEGIN:VEVENT") open = ImmutableArray.CreateBuilder<(string, string)>();
            else if (line == "END:VEVENT") events.Add(open!.ToImmutable());
            else open?.Add((line[..line.IndexOfAny([':', ';'])], line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..]));
        }

        return events.ToImmutable();
    }

    private static string Value(ImmutableArray<(string Name, string Value)> item, string name) => item.First(l => l.Name == name).Value;

    private static string Unescape(string value) => value
        .Replace("\\n", "\n", StringComparison.Ordinal).Replace("\\,", ",", StringComparison.Ordinal).Replace("\\;", ";", StringComparison.Ordinal).Replace("\\\\", "\\", StringComparison.Ordinal);

    private static DateTimeOffset Moment(string value) => DateTimeOffset.ParseExact(value, "yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);
}
