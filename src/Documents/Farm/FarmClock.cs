using System.Globalization;
using Watersown.Documents.Json;

namespace Watersown.Documents.Farms;

/// <summary>The farm's own clock: turns what stands on its wall into moments and back. The only user of time zones.</summary>
public sealed class FarmClock
{
    private readonly TimeZoneInfo zone;

    private FarmClock(TimeZoneInfo zone) => this.zone = zone;

    /// <summary>The clock of an IANA zone; none where there is no such zone.</summary>
    public static FarmClock? Find(string name)
    {
        // A Windows name would work on one machine and fail on the next.
        if (!TimeZoneInfo.TryFindSystemTimeZoneById(name, out var zone) || TimeZoneInfo.TryConvertWindowsIdToIanaId(name, out _)) return null;
        return new FarmClock(zone);
    }

    /// <summary>UTC, where a farm's own zone could not be read and the rest is still to be checked.</summary>
    public static FarmClock Utc { get; } = new(TimeZoneInfo.Utc);

    /// <summary>A moment with the farm's offset at that moment.</summary>
    public DateTimeOffset Local(DateTimeOffset moment) => TimeZoneInfo.ConvertTime(moment, zone);

    /// <summary>A moment as written; without an offset it is the farm's local time.</summary>
    /// <param name="written">Day, hour, and an offset if one was given.</param>
    /// <param name="where">Its place, for a problem.</param>
    /// <param name="problems">Takes a warning where the clocks change over it.</param>
    public DateTimeOffset Read(WrittenMoment written, string where, ImmutableArray<Problem>.Builder problems)
    {
        var wall = written.Day.ToDateTime(written.Hour);
        if (written.Offset is { } offset) return Local(new DateTimeOffset(wall, offset));
        if (zone.IsInvalidTime(wall))
        {
            // The offset before the change carries the moment over the gap.
            var moved = Local(new DateTimeOffset(wall, zone.GetUtcOffset(written.Day.AddDays(-1).ToDateTime(written.Hour))));
            problems.Add(FarmProblems.SkippedHour.At(where, ("value", Text(written)), ("limit", Text(moved))));
            return moved;
        }

        if (!zone.IsAmbiguousTime(wall)) return new DateTimeOffset(wall, zone.GetUtcOffset(wall));
        var first = new DateTimeOffset(wall, zone.GetAmbiguousTimeOffsets(wall).Max());
        problems.Add(FarmProblems.DoubledHour.At(where, ("value", Text(written)), ("limit", Text(first))));
        return first;
    }

    /// <summary>How a moment is written: as on the farm's wall where that says it all, with its offset where it does not.</summary>
    public string Write(DateTimeOffset moment)
    {
        var local = Local(moment);
        var form = local.Second == 0 ? "yyyy-MM-dd'T'HH:mm" : "yyyy-MM-dd'T'HH:mm:ss";
        return local.ToString(zone.IsAmbiguousTime(local) ? form + "zzz" : form, CultureInfo.InvariantCulture);
    }

    private static string Text(WrittenMoment written) =>
        string.Create(CultureInfo.InvariantCulture, $"{written.Day:yyyy-MM-dd} {written.Hour:HH:mm}");

    private static string Text(DateTimeOffset moment) => moment.ToString("yyyy-MM-dd HH:mm zzz", CultureInfo.InvariantCulture);
}
