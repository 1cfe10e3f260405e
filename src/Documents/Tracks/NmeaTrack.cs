using System.Globalization;
using Watersown.Flight.Flown;

namespace Watersown.Documents.Tracks;

/// <summary>
/// NMEA 0183: sentences RMC and GGA of any receiver, those of one time put together to one place. Dates come from RMC; where
/// there is none, or it lags, a clock that falls back by half a day began a new one.
/// </summary>
internal sealed class NmeaTrack : LineTrack
{
    private readonly (string Sentence, int Field)? gate;
    private Fix held;
    private bool holding;
    private double heldClock;
    private double date = double.NaN;
    private double clock = double.NaN;
    private GateSign sign;

    /// <summary>Reads sentences line by line.</summary>
    /// <param name="take">Gets each place.</param>
    /// <param name="gate">Sentence and field that tell the gate, as <c>PGATE.1</c>.</param>
    public NmeaTrack(Action<Fix> take, string? gate)
        : base(take)
    {
        if (gate?.Split('.') is [var sentence, var field] && int.TryParse(field, NumberStyles.None, CultureInfo.InvariantCulture, out var number)) this.gate = (sentence, number);
    }

    /// <summary>A line that looks like a sentence.</summary>
    public static bool Looks(ReadOnlySpan<byte> line) => line is [(byte)'$', _, _, ..] && (line[3..].StartsWith("RMC,"u8) || line[3..].StartsWith("GGA,"u8) || line[3..].StartsWith("GSV,"u8) || line[3..].StartsWith("GSA,"u8) || line[3..].StartsWith("VTG,"u8) || line[3..].StartsWith("GLL,"u8));

    protected override void Line(ReadOnlySpan<char> line)
    {
        // A logger may write its own clock before the sentence.
        var start = line.IndexOf('$');
        if (start < 0) return;
        line = line[(start + 1)..];
        var star = line.LastIndexOf('*');
        if (star >= 0)
        {
            if (!Agrees(line[..star], line[(star + 1)..]))
            {
                Drops.Add(DropReason.BadChecksum, Number);
                return;
            }

            line = line[..star];
        }

        Span<Range> fields = stackalloc Range[24];
        var sentence = new Fields(line, fields[..line.Split(fields, ',')]);
        if (gate is { } told && sentence[0].SequenceEqual(told.Sentence)) sign = TrackWords.Gate(sentence[told.Field]);
        else if (sentence[0].Length == 5 && sentence[0][2..].SequenceEqual("RMC")) Minimum(sentence);
        else if (sentence[0].Length == 5 && sentence[0][2..].SequenceEqual("GGA")) Position(sentence);
    }

    protected override void End() => Let();

    private void Minimum(Fields said)
    {
        if (!said[2].SequenceEqual("A") || said[12].SequenceEqual("N"))
        {
            Drops.Add(DropReason.NoPosition, Number);
            return;
        }

        if (!Place(said, 3, out var fix)) return;
        if (said[9].Length == 6 && Day(said[9]) is var day && double.IsFinite(day) && !(day < date)) (date, clock) = (day, double.NaN);

        var speed = Figure(said[7]) * 1852 / 3600;
        Merge(said[1], fix with { Speed = speed, Course = Figure(said[8]) });
    }

    private void Position(Fields said)
    {
        if (said[6].IsEmpty || said[6].SequenceEqual("0"))
        {
            Drops.Add(DropReason.NoPosition, Number);
            return;
        }

        if (Place(said, 2, out var fix)) Merge(said[1], fix with { Height = Figure(said[9]) });
    }

    // Years of two digits: satellites for this have flown since 1980.
    private static double Day(ReadOnlySpan<char> ddmmyy)
    {
        var year = Whole(ddmmyy[4..]);
        return TrackTime.Of(year + (year < 80 ? 2000 : 1900), Whole(ddmmyy[2..4]), Whole(ddmmyy[..2]));
    }

    private void Merge(ReadOnlySpan<char> time, Fix fix)
    {
        var now = TrackTime.Clock(time, zoned: false);
        if (holding && now == heldClock)
        {
            held = held with
            {
                Height = double.IsNaN(held.Height) ? fix.Height : held.Height,
                Speed = double.IsNaN(held.Speed) ? fix.Speed : held.Speed,
                Course = double.IsNaN(held.Course) ? fix.Course : held.Course,
                Gate = sign,
                Seconds = When(now),
            };
            return;
        }

        Let();
        (held, heldClock, holding) = (fix with { Seconds = When(now), Gate = sign }, now, true);
    }

    // A clock that falls back by more than half a day with no new date has passed midnight.
    private double When(double now)
    {
        if (double.IsNaN(now)) return double.NaN;
        if (now - clock < -TrackTime.Day / 2) date = (double.IsNaN(date) ? 0 : date) + TrackTime.Day;
        clock = now;
        return (double.IsNaN(date) ? 0 : date) + now;
    }

    private void Let()
    {
        if (holding) Give(held);
        holding = false;
    }

    private bool Place(Fields said, int first, out Fix fix)
    {
        var (latitude, longitude) = (Degrees(said[first], said[first + 1], 'N', 'S'), Degrees(said[first + 2], said[first + 3], 'E', 'W'));
        fix = new Fix(latitude, longitude);
        if (double.IsFinite(latitude) && double.IsFinite(longitude)) return true;
        Drops.Add(DropReason.Unreadable, Number);
        return false;
    }

    private static double Degrees(ReadOnlySpan<char> text, ReadOnlySpan<char> side, char plus, char minus)
    {
        if (side.Length != 1 || (side[0] != plus && side[0] != minus)) return double.NaN;
        var number = Figure(text);
        if (!(number >= 0 && number < 18_100)) return double.NaN;
        var degrees = Math.Floor(number / 100);

        // The minutes as they stand: taken off the whole number they would lose their last digits.
        var point = text.IndexOf('.') is >= 0 and var p ? p : text.Length;
        if (point < 3) return double.NaN;
        var minutes = Figure(text[(point - 2)..]);
        return minutes is >= 0 and < 60 ? (degrees + (minutes / 60)) * (side[0] == plus ? 1 : -1) : double.NaN;
    }

    private static bool Agrees(ReadOnlySpan<char> said, ReadOnlySpan<char> sum)
    {
        if (sum.Length < 2 || !int.TryParse(sum[..2], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var wanted)) return false;
        var found = 0;
        foreach (var letter in said) found ^= letter & 0xFF;
        return found == wanted;
    }

    private static int Whole(ReadOnlySpan<char> text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1;

    private static double Figure(ReadOnlySpan<char> text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) ? number : double.NaN;

    private readonly ref struct Fields(ReadOnlySpan<char> line, ReadOnlySpan<Range> parts)
    {
        private readonly ReadOnlySpan<char> line = line;
        private readonly ReadOnlySpan<Range> parts = parts;

        public ReadOnlySpan<char> this[int index] => index < parts.Length ? line[parts[index]] : [];
    }
}
