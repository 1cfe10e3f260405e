using System.Globalization;
using System.Text;
using Watersown.Flight.Flown;

namespace Watersown.Documents.Tracks;

/// <summary>A heading read for what it means.</summary>
/// <param name="Column">What it tells.</param>
/// <param name="PerUnit">What one of its unit is in meters, or meters per second; not a number where the heading names no unit.</param>
/// <param name="DayFirst">A date whose heading is Spanish has its day first.</param>
internal readonly record struct Meant(TrackColumn Column, double PerUnit, bool DayFirst);

/// <summary>Words that programs and people put over columns, in English and Spanish.</summary>
internal static class TrackWords
{
    private static readonly (TrackColumn Column, string[] Words)[] words =
    [
        (TrackColumn.Gate, ["gate", "gates", "boom", "booms", "spray", "spraying", "valve", "applying", "sowing", "seeding", "compuerta", "puerta", "valvula", "aplicando", "sembrando", "siembra", "on", "open", "abierta", "abierto"]),
        (TrackColumn.Latitude, ["lat", "latitude", "latitud"]),
        (TrackColumn.Longitude, ["lon", "long", "lng", "longitude", "longitud"]),
        (TrackColumn.Time, ["time", "times", "timestamp", "datetime", "coordtimes", "utc", "clock", "when", "hora", "tiempo", "fechahora"]),
        (TrackColumn.Date, ["date", "fecha", "dia"]),
        (TrackColumn.Speed, ["speed", "velocity", "groundspeed", "sog", "spd", "gs", "velocidad", "vel", "rapidez"]),
        (TrackColumn.Height, ["alt", "altitude", "height", "ele", "elev", "elevation", "agl", "msl", "altitud", "altura", "elevacion"]),
        (TrackColumn.Course, ["course", "heading", "track", "cog", "bearing", "hdg", "rumbo", "curso", "direccion"]),
    ];

    private static readonly (string[] Words, double Speed, double Length)[] units =
    [
        (["mph"], 0.44704, double.NaN),
        (["mi", "h"], 0.44704, double.NaN),
        (["kt"], 1852.0 / 3600, double.NaN),
        (["kts"], 1852.0 / 3600, double.NaN),
        (["knots"], 1852.0 / 3600, double.NaN),
        (["nudos"], 1852.0 / 3600, double.NaN),
        (["kmh"], 1 / 3.6, double.NaN),
        (["kph"], 1 / 3.6, double.NaN),
        (["km", "h"], 1 / 3.6, double.NaN),
        (["ft"], double.NaN, 0.3048),
        (["feet"], double.NaN, 0.3048),
        (["pies"], double.NaN, 0.3048),
        (["m", "s"], 1, double.NaN),
        (["mps"], 1, double.NaN),
        (["m"], double.NaN, 1),
        (["meters"], double.NaN, 1),
        (["metros"], double.NaN, 1),
    ];

    private static readonly string[] openWords = ["1", "on", "open", "opened", "true", "yes", "y", "abierta", "abierto", "si", "s", "sowing", "spraying", "activa"];

    private static readonly string[] shutWords = ["0", "off", "shut", "closed", "close", "false", "no", "n", "cerrada", "cerrado", "idle", "inactiva"];

    /// <summary>What a heading means; none where it means nothing here.</summary>
    public static Meant? Of(string heading)
    {
        var said = Split(heading);
        foreach (var (column, known) in words)
        {
            if (!said.Exists(w => known.Contains(w, StringComparer.Ordinal))) continue;

            // "gate open time" is a time: the gate's own words count only where no other is said.
            if (column == TrackColumn.Gate && said.Exists(w => words.Skip(1).Any(k => k.Column != TrackColumn.Speed && k.Words.Contains(w, StringComparer.Ordinal)))) continue;
            return new Meant(column, UnitOf(column, said), said.Exists(w => w is "fecha" or "dia"));
        }

        return null;
    }

    /// <summary>What a value says of the gate: a word, or a number that is above zero where seed flows.</summary>
    public static GateSign Gate(ReadOnlySpan<char> value)
    {
        var text = value.Trim();
        if (text.IsEmpty || text.Length > 12) return GateSign.NotTold;
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
            return double.IsNaN(number) ? GateSign.NotTold : number > 0 ? GateSign.Open : GateSign.Shut;
        Span<char> plain = stackalloc char[12];
        var length = 0;
        foreach (var letter in text) plain[length++] = Plain(char.ToLowerInvariant(letter));
        foreach (var word in openWords)
        {
            if (plain[..length].SequenceEqual(word)) return GateSign.Open;
        }

        foreach (var word in shutWords)
        {
            if (plain[..length].SequenceEqual(word)) return GateSign.Shut;
        }

        return GateSign.NotTold;
    }

    /// <summary>Words of a heading, small, without accents; signs, blanks, digits and a capital after a small letter part them.</summary>
    private static List<string> Split(string heading)
    {
        var said = new List<string>();
        var word = new StringBuilder();
        for (var i = 0; i < heading.Length && i < 80; i++)
        {
            var letter = heading[i];
            if (word.Length > 0 && (!char.IsLetter(letter) || (char.IsUpper(letter) && char.IsLower(heading[i - 1]))))
            {
                said.Add(word.ToString());
                word.Clear();
            }

            if (char.IsLetter(letter)) word.Append(Plain(char.ToLowerInvariant(letter)));
        }

        if (word.Length > 0) said.Add(word.ToString());
        return said;
    }

    private static char Plain(char letter) => letter switch
    {
        'á' => 'a',
        'é' => 'e',
        'í' => 'i',
        'ó' => 'o',
        'ú' or 'ü' => 'u',
        'ñ' => 'n',
        _ => letter,
    };

    private static double UnitOf(TrackColumn column, List<string> said)
    {
        if (column is not (TrackColumn.Speed or TrackColumn.Height)) return double.NaN;
        foreach (var (unit, speed, length) in units)
        {
            var per = column == TrackColumn.Speed ? speed : length;
            if (!double.IsNaN(per) && unit.All(u => said.Contains(u, StringComparer.Ordinal))) return per;
        }

        return double.NaN;
    }
}
