using System.Buffers.Binary;
using System.Globalization;
using System.Xml;
using Watersown.Flight.Handout;

namespace Watersown.Documents.Handout;

/// <summary>
/// What was flown as time logs of ISO 11783-10: for each field a small XML that tells what a row holds, and the rows in binary.
/// Only stretches whose fixes bear a time can stand in one.
/// </summary>
internal sealed class TaskLogs
{
    /// <summary>Actual work state: 1 with the gate open, 0 with it shut.</summary>
    private const string WorkState = "008D";

    private const string Aeroplane = "DET1";

    private readonly Dictionary<int, (string Name, ImmutableArray<HandoutRun> Runs)> logged = [];

    private TaskLogs()
    {
    }

    public ImmutableArray<(string Name, ReadOnlyMemory<byte> Bytes)> Files { get; private set; } = [];

    public static TaskLogs Of(FarmHandout handout)
    {
        var logs = new TaskLogs();
        var files = ImmutableArray.CreateBuilder<(string Name, ReadOnlyMemory<byte> Bytes)>();
        for (var i = 0; i < handout.Fields.Length; i++)
        {
            ImmutableArray<HandoutRun> timed = [.. handout.Fields[i].Flown.Where(r => r.Fixes.All(f => f.Time is not null)).OrderBy(r => r.Fixes[0].Time)];
            if (timed.IsEmpty) continue;
            var name = "TLG" + (logs.logged.Count + 1).ToString("00000", CultureInfo.InvariantCulture);
            logs.logged.Add(i, (name, timed));
            files.Add((name + ".xml", Header()));
            files.Add((name + ".bin", Rows(timed)));
        }

        logs.Files = files.ToImmutable();
        return logs;
    }

    /// <summary>The aeroplane as the thing that logged; nothing where nothing was.</summary>
    public void Device(XmlWriter xml)
    {
        if (logged.Count == 0) return;
        xml.Element("DVC", [("A", "DVC1"), ("D", "A000000000000000"), ("F", "00000000000000"), ("G", "00000000000000")], () =>
        {
            xml.Element("DET", [("A", Aeroplane), ("B", "1"), ("C", "1"), ("E", "0"), ("F", "0")], () => xml.Element("DOR", [("A", "2")]));
            xml.Element("DPD", [("A", "2"), ("B", WorkState), ("C", "0"), ("D", "8")]);
        });
    }

    /// <summary>From the first to the last of what was flown on a field.</summary>
    public void Times(XmlWriter xml, int field)
    {
        if (!logged.TryGetValue(field, out var log)) return;
        xml.Element("TIM", [("A", HandoutXml.Moment(log.Runs[0].Fixes[0].Time!.Value)), ("B", HandoutXml.Moment(log.Runs[^1].Fixes[^1].Time!.Value)), ("D", "4")]);
    }

    public void Logs(XmlWriter xml, int field)
    {
        if (!logged.TryGetValue(field, out var log)) return;
        xml.Element("TLG", [("A", log.Name), ("C", "1")]);
    }

    // An attribute with no value says that the row holds it.
    private static ReadOnlyMemory<byte> Header() => HandoutXml.Write(xml =>
    {
        xml.WriteStartElement("TIM");
        xml.WriteAttributeString("A", string.Empty);
        xml.WriteAttributeString("D", "4");
        xml.WriteStartElement("PTN");
        foreach (var name in (ReadOnlySpan<string>)["A", "B", "D"]) xml.WriteAttributeString(name, string.Empty);
        xml.WriteEndElement();
        xml.WriteStartElement("DLV");
        xml.WriteAttributeString("A", WorkState);
        xml.WriteAttributeString("B", string.Empty);
        xml.WriteAttributeString("C", Aeroplane);
        xml.WriteEndElement();
        xml.WriteEndElement();
    });

    // Time of day in ms, days since 1980, latitude and longitude in 1e-7 degrees, state of the fix, then the values that changed.
    private static ReadOnlyMemory<byte> Rows(ImmutableArray<HandoutRun> runs)
    {
        using var stream = new MemoryStream();
        Span<byte> row = stackalloc byte[21];
        foreach (var run in runs)
        {
            for (var i = 0; i < run.Fixes.Length; i++)
            {
                var fix = run.Fixes[i];
                var time = fix.Time!.Value;
                var open = i < run.Fixes.Length - 1;
                var changed = i == 0 || !open;
                BinaryPrimitives.WriteUInt32LittleEndian(row, (uint)time.TimeOfDay.TotalMilliseconds);
                BinaryPrimitives.WriteUInt16LittleEndian(row[4..], (ushort)(DateOnly.FromDateTime(time.DateTime).DayNumber - new DateOnly(1980, 1, 1).DayNumber));
                BinaryPrimitives.WriteInt32LittleEndian(row[6..], (int)Math.Round(fix.At.Latitude * 1e7));
                BinaryPrimitives.WriteInt32LittleEndian(row[10..], (int)Math.Round(fix.At.Longitude * 1e7));
                row[14] = 1;
                row[15] = changed ? (byte)1 : (byte)0;
                row[16] = 0;
                BinaryPrimitives.WriteInt32LittleEndian(row[17..], open ? 1 : 0);
                stream.Write(changed ? row : row[..16]);
            }
        }

        return stream.ToArray();
    }
}
