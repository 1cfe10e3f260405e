using System.Text;
using Watersown.Flight.Flown;

namespace Watersown.Documents.Tracks;

/// <summary>
/// Reads a track of any kind known here from a stream, on a machine or in a browser, and hands on each place as it comes. The kind
/// is told from the bytes, not the name. Only a piece of the file is held at a time; of GeoJSON and KML one drawn line.
/// </summary>
public static class TrackReading
{
    private const int Look = 4096;

    private static readonly System.Buffers.SearchValues<byte> NameEnds = System.Buffers.SearchValues.Create(" >\t\r\n/"u8);

    /// <summary>Reads all of a track.</summary>
    /// <param name="stream">The file.</param>
    /// <param name="file">Its name, for problems.</param>
    /// <param name="take">Gets each place.</param>
    /// <param name="options">What was told about it.</param>
    /// <param name="stop">Ends the reading.</param>
    public static async Task<Outcome<TrackTold>> ReadAsync(Stream stream, string file, Action<Fix> take, TrackOptions options, CancellationToken stop)
    {
        var seen = new byte[Look];
        var length = 0;
        for (int count; length < Look && (count = await stream.ReadAsync(seen.AsMemory(length), stop)) > 0;) length += count;
        var start = seen.AsMemory(0, length);
        await using var whole = new TrackStream(start, stream, options.Progress);

        // Two bytes a letter, as some spreadsheets save; XML says its encoding itself.
        var wide = start.Span.StartsWith(new byte[] { 0xFF, 0xFE }) ? Encoding.Unicode : start.Span.StartsWith(new byte[] { 0xFE, 0xFF }) ? Encoding.BigEndianUnicode : null;
        var text = wide is null ? start.Span : Encoding.UTF8.GetBytes(wide.GetString(start.Span[2..(length / 2 * 2)]));
        if (KindOf(text) is not { } kind) return Outcome<TrackTold>.Refuse(TrackProblems.UnknownKind.At(file));
        if (wide is null || kind is TrackKind.Gpx or TrackKind.Kml) return await ReadAsync(new Asked(whole, file, take, options), kind, stop);
        await using var narrow = Encoding.CreateTranscodingStream(whole, wide, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true);
        return await ReadAsync(new Asked(narrow, file, take, options), kind, stop);
    }

    /// <summary>What columns were told to be, as words such as <c>lat=3</c> or <c>gate=Boom state</c>.</summary>
    public static Outcome<ImmutableDictionary<TrackColumn, string>> Columns(IEnumerable<string> given) => CsvColumns.Told(given);

    private sealed record Asked(Stream Stream, string File, Action<Fix> Take, TrackOptions Options);

    private static async Task<Outcome<TrackTold>> ReadAsync(Asked asked, TrackKind kind, CancellationToken stop)
    {
        switch (kind)
        {
            case TrackKind.Gpx or TrackKind.Kml:
                XmlTrack xml = kind == TrackKind.Gpx ? new GpxTrack(asked.Take, asked.File) : new KmlTrack(asked.Take, asked.File);
                await xml.ReadAsync(asked.Stream, stop);
                return Told(asked.File, new TrackTold(kind, xml.Drops.All, []), xml.Given, [xml.Broke, TooLong(asked.File, xml.TooLong)]);
            case TrackKind.GeoJson:
                var json = new GeoJsonTrack(asked.Take, asked.File);
                await json.ReadAsync(asked.Stream, stop);
                return Told(asked.File, new TrackTold(kind, json.Drops.All, []), json.Given, [json.Broke, TooLong(asked.File, json.TooLong)]);
            case TrackKind.Nmea:
                var nmea = new NmeaTrack(asked.Take, asked.Options.Columns.GetValueOrDefault(TrackColumn.Gate));
                await nmea.ReadAsync(asked.Stream, stop);
                return Told(asked.File, new TrackTold(kind, nmea.Drops.All, []), nmea.Given, []);
            default:
                var table = new CsvTrack(asked.Take, asked.File, asked.Options);
                await table.ReadAsync(asked.Stream, stop);
                if (table.Fault is { } fault) return Outcome<TrackTold>.Refuse(fault);
                return Told(asked.File, new TrackTold(kind, table.Drops.All, table.Columns), table.Given, [.. table.Warnings]);
        }
    }

    private static Outcome<TrackTold> Told(string file, TrackTold told, long given, IEnumerable<Problem?> problems)
    {
        ImmutableArray<Problem> all = [.. problems.OfType<Problem>()];
        return given > 0
            ? Outcome<TrackTold>.Of(told, all)
            : Outcome<TrackTold>.Refuse(all.Add(TrackProblems.NoFixes.At(file, ("value", Wording.Say.Number(told.Dropped.Sum(d => d.Count))))));
    }

    private static Problem? TooLong(string file, bool tooLong) => tooLong ? TrackProblems.LongLine.At(file, ("limit", Wording.Say.Number(LineParts.Most))) : null;

    private static TrackKind? KindOf(ReadOnlySpan<byte> start)
    {
        if (start.StartsWith("\uFEFF"u8)) start = start[3..];
        start = start.TrimStart(" \t\r\n\0"u8);
        if (start.StartsWith("<"u8)) return Root(start);
        if (start.StartsWith("{"u8) || start.StartsWith("["u8)) return TrackKind.GeoJson;
        var rest = start;
        while (rest.IndexOf((byte)'$') is >= 0 and var at)
        {
            if (NmeaTrack.Looks(rest[at..])) return TrackKind.Nmea;
            rest = rest[(at + 1)..];
        }

        // A table is text: no byte below a blank but tabs and line ends.
        return start.IndexOfAny(",;\t"u8) >= 0 && start.IndexOfAnyInRange((byte)0, (byte)8) < 0 ? TrackKind.Csv : null;
    }

    // The first element, whatever stands before it and whatever its prefix.
    private static TrackKind? Root(ReadOnlySpan<byte> start)
    {
        while (start.IndexOf((byte)'<') is >= 0 and var at)
        {
            start = start[(at + 1)..];
            if (start.IsEmpty || start[0] is (byte)'?' or (byte)'!') continue;
            var name = start[..(start.IndexOfAny(NameEnds) is >= 0 and var end ? end : start.Length)];
            if (name.IndexOf((byte)':') is >= 0 and var prefix) name = name[(prefix + 1)..];
            return name.SequenceEqual("gpx"u8) ? TrackKind.Gpx : name.SequenceEqual("kml"u8) ? TrackKind.Kml : null;
        }

        return null;
    }
}
