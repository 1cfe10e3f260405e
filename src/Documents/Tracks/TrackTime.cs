using System.Globalization;

namespace Watersown.Documents.Tracks;

/// <summary>Dates and times as logs write them, as seconds since 1970. A leap second counts as the first of the next minute.</summary>
internal static class TrackTime
{
    public const double Day = 86_400;

    private static readonly System.Buffers.SearchValues<char> DateSigns = System.Buffers.SearchValues.Create("0123456789-/.");

    private const int EpochDay = 719_162; // days from 1 January of the year 1 to 1970

    /// <summary>A moment: ISO 8601 with any offset (none is taken as UTC), or seconds or milliseconds since 1970.</summary>
    public static double Moment(ReadOnlySpan<char> text)
    {
        text = text.Trim();
        if (text.IsEmpty) return double.NaN;
        var parting = text.IndexOfAny('T', 't', ' ');
        if (parting > 0 && text[..parting].IndexOfAnyExcept(DateSigns) < 0)
        {
            var date = Date(text[..parting], dayFirst: false);
            return date + Clock(text[(parting + 1)..], zoned: true);
        }

        if (text.Contains(':')) return Clock(text, zoned: true);
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)) return Date(text, dayFirst: false);
        return Math.Abs(number) > 1e11 ? number / 1000 : number;
    }

    /// <summary>A clock alone, as seconds of the day: 11:13:09.5, 111309.50, or 1:02:03 PM; with an offset where it may have one.</summary>
    public static double Clock(ReadOnlySpan<char> text, bool zoned)
    {
        text = text.Trim();
        var half = 0.0;
        if (text.EndsWith("m", StringComparison.OrdinalIgnoreCase) && text.Length > 2)
        {
            var mark = text[^2];
            if (mark is 'p' or 'P') half = Day / 2;
            else if (mark is not ('a' or 'A')) return double.NaN;
            text = text[..^2].TrimEnd();
            if (text.StartsWith("12")) half -= Day / 2;
        }

        var shift = 0.0;
        if (zoned && text.LastIndexOfAny('Z', 'z') is var z && z == text.Length - 1 && z > 0) text = text[..z];
        else if (zoned && text.LastIndexOfAny('+', '-') is > 0 and var sign)
        {
            if (!Offset(text[(sign + 1)..], out shift)) return double.NaN;
            if (text[sign] == '+') shift = -shift;
            text = text[..sign];
        }

        return Hours(text) + half + shift;
    }

    /// <summary>A date: 2026-05-08, 20260508, or with the month first, or the day.</summary>
    public static double Date(ReadOnlySpan<char> text, bool dayFirst)
    {
        text = text.Trim();
        if (text.Length == 8 && text.IndexOfAnyExceptInRange('0', '9') < 0) return Of(Number(text[..4]), Number(text[4..6]), Number(text[6..]));
        Span<Range> parts = stackalloc Range[4];
        if (text.SplitAny(parts, "-/.") != 3) return double.NaN;
        var (a, b, c) = (Number(text[parts[0]]), Number(text[parts[1]]), Number(text[parts[2]]));
        if (parts[0].End.Value - parts[0].Start.Value == 4) return Of(a, b, c);
        var year = c < 100 ? c + (c < 80 ? 2000 : 1900) : c;
        return dayFirst || a > 12 ? Of(year, b, a) : Of(year, a, b);
    }

    /// <summary>Whether a date can be read with the month or the day first and mean another day.</summary>
    public static bool TwoWays(ReadOnlySpan<char> text)
    {
        Span<Range> parts = stackalloc Range[4];
        if (text.Trim().SplitAny(parts, "-/.") != 3 || parts[0].End.Value - parts[0].Start.Value == 4) return false;
        var (a, b) = (Number(text.Trim()[parts[0]]), Number(text.Trim()[parts[1]]));
        return a is >= 1 and <= 12 && b is >= 1 and <= 12 && a != b;
    }

    /// <summary>A date as seconds since 1970; not a number where there is no such day.</summary>
    public static double Of(int year, int month, int day)
    {
        if (year is < 1970 or > 2200 || month is < 1 or > 12 || day < 1 || day > DateOnlyDays(year, month)) return double.NaN;
        return (new DateOnly(year, month, day).DayNumber - EpochDay) * Day;
    }

    private static int DateOnlyDays(int year, int month) => new DateOnly(year, month, 1).AddMonths(1).AddDays(-1).Day;

    private static double Hours(ReadOnlySpan<char> text)
    {
        if (!text.Contains(':'))
        {
            // hhmmss, hhmmss.ss
            if (text.Length < 6 || text[..6].IndexOfAnyExceptInRange('0', '9') >= 0) return double.NaN;
            return Sum(Number(text[..2]), Number(text[2..4]), text[4..]);
        }

        Span<Range> parts = stackalloc Range[4];
        return text.Split(parts, ':') switch
        {
            2 => Sum(Number(text[parts[0]]), Number(text[parts[1]]), "0"),
            3 => Sum(Number(text[parts[0]]), Number(text[parts[1]]), text[parts[2]]),
            _ => double.NaN,
        };
    }

    private static double Sum(int hours, int minutes, ReadOnlySpan<char> seconds)
    {
        if (hours is < 0 or > 24 || minutes is < 0 or > 59) return double.NaN;
        if (seconds.Length > 20) return double.NaN;
        Span<char> pointed = stackalloc char[20];
        seconds.Replace(pointed, ',', '.');
        if (!double.TryParse(pointed[..seconds.Length], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)) return double.NaN;
        return number is >= 0 and < 61 ? (hours * 3600) + (minutes * 60) + number : double.NaN;
    }

    private static bool Offset(ReadOnlySpan<char> text, out double seconds)
    {
        var (hours, minutes) = (-1, 0);
        if (text.Length == 2) hours = Number(text);
        else if (text.Length == 4) (hours, minutes) = (Number(text[..2]), Number(text[2..]));
        else if (text.Length == 5 && text[2] == ':') (hours, minutes) = (Number(text[..2]), Number(text[3..]));
        seconds = (hours * 3600) + (minutes * 60);
        return hours is >= 0 and <= 14 && minutes is >= 0 and <= 59;
    }

    private static int Number(ReadOnlySpan<char> text) =>
        text.Length <= 4 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1;
}
