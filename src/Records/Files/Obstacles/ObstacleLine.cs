using System.Globalization;
using Watersown.Flight.Hazards;
using Watersown.Land;

namespace Watersown.Records.Files.Obstacles;

/// <summary>Why a line was left out, in both languages.</summary>
internal sealed record LineFault(string English, string Spanish);

/// <summary>
/// One line of the public obstacle file: 128 columns, each with its place. A line with a digit or a blank out of place is left out
/// rather than guessed at.
/// </summary>
internal static class ObstacleLine
{
    public const int Length = 128;

    private static readonly int[] blanks = [10, 12, 15, 18, 35, 38, 41, 48, 52, 55, 62, 81, 83, 89, 95, 97, 99, 101, 103, 118, 120, 128];

    public static (Obstacle? Obstacle, LineFault? Fault) Read(string line)
    {
        // Programs that trim the ends of lines take the last blank.
        if (line.Length == Length - 1) line += " ";
        if (line.Length != Length) return Fault(Say(line.Length) + " columns, not " + Say(Length), Say(line.Length) + " columnas, no " + Say(Length));
        foreach (var column in blanks)
        {
            if (line[column - 1] != ' ') return Fault("column " + Say(column) + " should be blank", "la columna " + Say(column) + " debe estar en blanco");
        }

        if (!Digits(line, 1, 2) || line[2] != '-' || !Digits(line, 4, 9)) return Fault("bad number in columns 1 to 9", "número malo en las columnas 1 a 9");
        if (Degrees(line, (36, 37), (39, 40), (42, 46), 47, "NS", 90) is not { } latitude) return Fault("bad latitude", "latitud mala");
        if (Degrees(line, (49, 51), (53, 54), (56, 60), 61, "EW", 180) is not { } longitude) return Fault("bad longitude", "longitud mala");
        if (Whole(line, 84, 88) is not { } height) return Fault("bad height above the ground", "altura sobre el suelo mala");
        var top = Cut(line, 90, 94);
        if (top.Length > 0 && Signed(line, 90, 94) is null) return Fault("bad height above the sea", "altura sobre el mar mala");
        var day = Cut(line, 121, 127);
        if (day.Length > 0 && DayOfYear(day) is null) return Fault("bad date of action", "fecha de acción mala");
        return (new Obstacle(line[..9], new GeoPoint(latitude, longitude), Cut(line, 63, 80), Quantities.Length.FromFeet(height))
        {
            Verified = line[10] == 'O',
            Country = Cut(line, 13, 14),
            State = Cut(line, 16, 17),
            City = Cut(line, 19, 34),
            Count = line[81] is >= '1' and <= '9' ? line[81] - '0' : 1,
            Top = Signed(line, 90, 94) is { } feet ? Quantities.Length.FromFeet(feet) : null,
            Light = LightOf(line[95]),
            Within = AcrossOf(line[97]),
            HeightWithin = UpOf(line[99]),
            Marking = MarkingOf(line[101]),
            Study = Cut(line, 104, 117),
            Action = line[118] switch { 'A' => ObstacleAction.Added, 'C' => ObstacleAction.Changed, 'D' => ObstacleAction.TakenDown, _ => ObstacleAction.Unknown },
            ActionDay = DayOfYear(day),
        }, null);
    }

    private static HazardLight LightOf(char code) => code switch
    {
        'R' => HazardLight.Red,
        'D' => HazardLight.MediumWhiteAndRed,
        'H' => HazardLight.HighWhiteAndRed,
        'M' => HazardLight.MediumWhite,
        'S' => HazardLight.HighWhite,
        'F' => HazardLight.Flood,
        'C' => HazardLight.Catenary,
        'W' => HazardLight.RedTogether,
        'L' => HazardLight.LitSomehow,
        'N' => HazardLight.None,
        _ => HazardLight.Unknown,
    };

    private static HazardMarking MarkingOf(char code) => code switch
    {
        'P' => HazardMarking.OrangeAndWhite,
        'W' => HazardMarking.White,
        'M' => HazardMarking.Marked,
        'F' => HazardMarking.Flag,
        'S' => HazardMarking.Spheres,
        'N' => HazardMarking.None,
        _ => HazardMarking.Unknown,
    };

    private static Length? AcrossOf(char code) => code switch
    {
        '1' => Quantities.Length.FromFeet(20),
        '2' => Quantities.Length.FromFeet(50),
        '3' => Quantities.Length.FromFeet(100),
        '4' => Quantities.Length.FromFeet(250),
        '5' => Quantities.Length.FromFeet(500),
        '6' => Quantities.Length.FromFeet(1000),
        '7' => Quantities.Length.FromMeters(926), // half a nautical mile
        '8' => Quantities.Length.FromMeters(1852), // a nautical mile
        _ => null,
    };

    private static Length? UpOf(char code) => code switch
    {
        'A' => Quantities.Length.FromFeet(3),
        'B' => Quantities.Length.FromFeet(10),
        'C' => Quantities.Length.FromFeet(20),
        'D' => Quantities.Length.FromFeet(50),
        'E' => Quantities.Length.FromFeet(125),
        'F' => Quantities.Length.FromFeet(250),
        'G' => Quantities.Length.FromFeet(500),
        'H' => Quantities.Length.FromFeet(1000),
        _ => null,
    };

    private static double? Degrees(string line, (int From, int To) degrees, (int From, int To) minutes, (int From, int To) seconds, int sign, string signs, int most)
    {
        if (Whole(line, degrees.From, degrees.To) is not { } whole || Whole(line, minutes.From, minutes.To) is not ({ } minute and < 60)) return null;
        var text = line[(seconds.From - 1)..seconds.To];
        if (text[2] != '.' || !text.Remove(2, 1).All(char.IsAsciiDigit)) return null;
        var second = double.Parse(text, CultureInfo.InvariantCulture);
        var angle = whole + (minute / 60.0) + (second / 3600);
        if (second >= 60 || angle > most) return null;
        return line[sign - 1] == signs[0] ? angle : line[sign - 1] == signs[1] ? -angle : null;
    }

    private static DateOnly? DayOfYear(string text)
    {
        if (text.Length != 7 || !text.All(char.IsAsciiDigit)) return null;
        int year = int.Parse(text[..4], CultureInfo.InvariantCulture), day = int.Parse(text[4..], CultureInfo.InvariantCulture);
        if (year is < 1900 or > 2200 || day < 1) return null;
        var date = new DateOnly(year, 1, 1).AddDays(day - 1);
        return date.Year == year ? date : null;
    }

    private static bool Digits(string line, int from, int to) => line.AsSpan(from - 1, to - from + 1).IndexOfAnyExceptInRange('0', '9') < 0;

    private static int? Whole(string line, int from, int to) => Digits(line, from, to) ? int.Parse(line.AsSpan(from - 1, to - from + 1), CultureInfo.InvariantCulture) : null;

    private static int? Signed(string line, int from, int to) => line[from - 1] == '-' ? -Whole(line, from + 1, to) : Whole(line, from, to);

    private static string Say(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Cut(string line, int from, int to) => line[(from - 1)..to].Trim();

    private static (Obstacle?, LineFault?) Fault(string english, string spanish) => (null, new LineFault(english, spanish));
}
