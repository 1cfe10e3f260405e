using System.Globalization;
using System.Text.Json;
using Watersown.Flight.Flown;

namespace Watersown.Documents.Tracks;

/// <summary>
/// GeoJSON as it streams by: lines with times, gate and speeds in lists among their properties, or one place for each feature. Areas
/// are passed over. Several values one after the other, and a file cut short, give what stands before.
/// </summary>
internal sealed class GeoJsonTrack(Action<Fix> take, string file)
{
    private const int LongestToken = 1 << 20;
    private const int MostDepth = 64;

    private readonly LineParts line = new();
    private readonly List<(string Key, bool IsArray)> open = [];
    private readonly double[] position = new double[3];
    private string key = string.Empty;
    private int numbers;
    private int within = -1; // depth at which coordinates began
    private int properties = -1;
    private bool fresh;
    private bool area;
    private bool points;

    public DropTally Drops { get; } = new();

    public long Given { get; private set; }

    public Problem? Broke { get; private set; }

    public bool TooLong { get; private set; }

    public async Task ReadAsync(Stream stream, CancellationToken stop)
    {
        var state = new JsonReaderState(new JsonReaderOptions { MaxDepth = MostDepth, AllowMultipleValues = true, AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
        var buffer = new byte[1 << 16];
        var (held, last) = (0, false);
        try
        {
            while (!last)
            {
                if (held == buffer.Length)
                {
                    if (buffer.Length >= LongestToken) throw new JsonException("a value is too long");
                    Array.Resize(ref buffer, buffer.Length * 2);
                }

                var count = await stream.ReadAsync(buffer.AsMemory(held), stop);
                last = count == 0;
                held += count;
                var used = Read(buffer.AsSpan(0, held), last, ref state);
                buffer.AsSpan(used, held - used).CopyTo(buffer);
                held -= used;
            }
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException)
        {
            var at = fault is JsonException { LineNumber: { } number } ? string.Create(CultureInfo.InvariantCulture, $"line {number + 1}") : "a text that is no UTF-8";
            Flush();
            Broke = TrackProblems.Broken.At(file, ("value", at), ("count", Wording.Say.Number(Given)));
        }
    }

    private int Read(ReadOnlySpan<byte> bytes, bool last, ref JsonReaderState state)
    {
        if (last && bytes.IsEmpty && open.Count == 0) return 0;
        var reader = new Utf8JsonReader(bytes, last, state);
        while (reader.Read()) Token(ref reader);
        state = reader.CurrentState;
        return (int)reader.BytesConsumed;
    }

    private void Token(ref Utf8JsonReader reader)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.PropertyName:
                key = reader.GetString()!;
                break;
            case JsonTokenType.StartObject or JsonTokenType.StartArray:
                Opens(reader.TokenType == JsonTokenType.StartArray);
                break;
            case JsonTokenType.EndArray or JsonTokenType.EndObject:
                Shuts();
                break;
            case JsonTokenType.Number or JsonTokenType.String or JsonTokenType.True or JsonTokenType.False or JsonTokenType.Null:
                Value(ref reader);
                break;
            default:
                break;
        }
    }

    private void Opens(bool array)
    {
        // The values of an array stand under the array's own name.
        var name = open.Count > 0 && open[^1].IsArray ? open[^1].Key : key;
        open.Add((name, array));
        if (within >= 0)
        {
            numbers = 0;
            return;
        }

        if (properties < 0 && array && name == "coordinates") (within, numbers, fresh) = (open.Count, 0, true);
        else if (properties < 0 && !array && name == "properties") properties = open.Count;
        key = string.Empty;
    }

    private void Shuts()
    {
        var depth = open.Count;
        var (name, _) = open[^1];
        open.RemoveAt(depth - 1);
        if (within >= 0)
        {
            if (numbers >= 2) Place();
            else if (numbers == 0) fresh = true; // a line of several ends
            numbers = 0;
            if (depth == within) within = -1;
            return;
        }

        if (properties >= 0)
        {
            if (depth == properties) properties = -1;
            return;
        }

        // A geometry inside a feature or a collection waits for the feature's properties.
        if (name is "geometry" or "geometries" || (open.Count > 0 && open.Exists(o => o.Key == "geometries"))) return;
        if (depth == 1 || name == "features") Flush();
    }

    private void Place()
    {
        if (fresh)
        {
            line.Begin();
            points = open.Count + 1 == within;
        }

        fresh = false;
        if (!area && (double.IsNaN(position[0]) || double.IsNaN(position[1]))) Drops.Add(DropReason.Unreadable, Given + 1);
        line.Place(position[1], position[0], numbers > 2 ? position[2] : double.NaN);
    }

    private void Value(ref Utf8JsonReader reader)
    {
        if (within >= 0)
        {
            var number = reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out var found) ? found : double.NaN;
            if (numbers < 3) position[numbers] = number;
            numbers++;
            return;
        }

        var name = open.Count > 0 && open[^1].IsArray ? open[^1].Key : key;
        if (properties < 0)
        {
            if (name == "type" && reader.TokenType == JsonTokenType.String) area |= reader.ValueTextEquals("Polygon"u8) || reader.ValueTextEquals("MultiPolygon"u8);
            return;
        }

        if (reader.TokenType == JsonTokenType.Null || TrackWords.Of(name) is not { } meant) return;
        Tell(meant, ref reader, inList: open[^1].IsArray);
    }

    private void Tell(Meant meant, ref Utf8JsonReader reader, bool inList)
    {
        Span<char> letters = stackalloc char[64];
        var length = 0;
        if (reader.TokenType is JsonTokenType.True or JsonTokenType.False) (reader.TokenType == JsonTokenType.True ? "1" : "0").CopyTo(letters[..(length = 1)]);
        else if (reader.TokenType == JsonTokenType.String)
        {
            if (reader.ValueSpan.Length > letters.Length) return;
            length = reader.CopyString(letters);
        }
        else
        {
            if (reader.ValueSpan.Length > letters.Length) return;
            length = System.Text.Encoding.ASCII.GetChars(reader.ValueSpan, letters);
        }

        var said = letters[..length];
        var number = double.TryParse(said, NumberStyles.Float, CultureInfo.InvariantCulture, out var found) ? found : double.NaN;
        if (inList) line.Tell(meant.Column, said, number * meant.PerUnit);
        else if (meant.Column == TrackColumn.Time) line.Time = TrackTime.Moment(said);
        else if (meant.Column == TrackColumn.Gate) line.Gate = TrackWords.Gate(said);
        else if (meant.Column == TrackColumn.Speed) line.Speed = number * meant.PerUnit;
        else if (meant.Column == TrackColumn.Course) line.Course = number;
        else if (meant.Column == TrackColumn.Height) line.Height = number * (double.IsNaN(meant.PerUnit) ? 1 : meant.PerUnit);
    }

    private void Flush()
    {
        TooLong |= line.TooLong;
        if (area) line.Clear();
        else line.Give(Hand, apart: !points);
        line.Clear();
        (area, points) = (false, false);
    }

    private void Hand(Fix fix)
    {
        Given++;
        take(fix);
    }
}
