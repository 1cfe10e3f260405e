using Watersown.Flight.Flown;

namespace Watersown.Tracks;

/// <summary>
/// Sentences as printed in public protocol notes, their sums worked out again byte by byte. Checked figures: degrees + minutes / 60.
/// </summary>
public sealed class NmeaTests
{
    private static async Task<(List<Fix> Fixes, ImmutableArray<Dropped> Dropped)> ReadAsync(params string[] lines)
    {
        var fixes = new List<Fix>();
        var told = await TrackTexts.ReadAsync(string.Join("\r\n", lines), fixes);
        return (fixes, told.HasValue ? told.Value.Dropped : []);
    }

    [Theory]
    [InlineData("$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A", 48.117300, 11.516667)]
    [InlineData("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47", 48.117300, 11.516667)]
    [InlineData("$GPGGA,111309.00,5400.6000,N,00247.1000,W,1,16,00.7,042.2,M,49.1,M,,*4A", 54.0100, -2.7850)]
    [InlineData("$GPRMC,111309.00,A,5400.6000,N,00247.1000,W,00.00,302.5,140915,,,A*4C", 54.0100, -2.7850)]
    [InlineData("$GPRMC,030000,A,4740.36415,N,12225.35953,W,000.02,059.5,160612,016.6,E*52", 47.672736, -122.422659)]
    [InlineData("$GPGGA,092204.999,4250.5589,S,14718.5084,E,1,04,24.4,19.7,M,,,,0000*1F", -42.842648, 147.308473)]
    public async Task Printed_sentences_are_read(string line, double latitude, double longitude)
    {
        var (fixes, dropped) = await ReadAsync(line);
        Assert.Empty(dropped);
        var fix = Assert.Single(fixes);
        Assert.Equal(latitude, fix.Latitude, 5e-7);
        Assert.Equal(longitude, fix.Longitude, 5e-7);
    }

    [Fact]
    public async Task Speed_height_date_and_clock_of_one_time_come_together()
    {
        var (fixes, _) = await ReadAsync(
            "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47",
            "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A");
        var fix = Assert.Single(fixes);

        // 22.4 kt × 1852 m / 3600 s
        Assert.Equal(11.5236, fix.Speed, 1e-4);
        Assert.Equal(545.4, fix.Height);
        Assert.Equal(84.4, fix.Course);
        Assert.Equal(new DateTimeOffset(1994, 3, 23, 12, 35, 19, TimeSpan.Zero).ToUnixTimeSeconds(), fix.Seconds);
    }

    [Fact]
    public async Task No_fix_and_wrong_sums_are_dropped_and_counted()
    {
        var (fixes, dropped) = await ReadAsync(
            "$GPRMC,194812.00,V,,,,,,,290317,,,N*74",
            "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6B",
            "$GPGGA,123520,4807.038,N,01131.000,E,0,08,0.9,545.4,M,46.9,M,,*4C",
            "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47");
        Assert.Single(fixes);
        Assert.Equal([new Dropped(DropReason.BadChecksum, 1, 2), new Dropped(DropReason.NoPosition, 2, 1)], dropped);
    }

    [Fact]
    public async Task Nothing_but_no_fix_is_refused_and_never_read_as_nought_nought()
    {
        var fixes = new List<Fix>();
        var told = await TrackTexts.ReadAsync("$GPRMC,194812.00,V,,,,,,,290317,,,N*74\n", fixes);
        Assert.Equal(Documents.Tracks.TrackProblems.NoFixes, Assert.Single(told.Problems).Kind);
        Assert.Empty(fixes);
    }

    [Fact]
    public async Task Midnight_goes_by_with_and_without_a_date()
    {
        static string Gga(string clock) => TrackTexts.Sentence($"GPGGA,{clock},3912.0000,N,12154.0000,W,1,10,0.8,30,M,0,M,,").TrimEnd();
        static string Rmc(string clock, string date) => TrackTexts.Sentence($"GNRMC,{clock},A,3912.0000,N,12154.0000,W,90,0,{date},,,A").TrimEnd();
        var alone = (await ReadAsync(Gga("235959.0"), Gga("000000.0"), Gga("000001.0"))).Fixes;
        Assert.Equal([1.0, 1.0], alone.Zip(alone.Skip(1), (a, b) => b.Seconds - a.Seconds));
        var dated = (await ReadAsync(Gga("235959.0"), Rmc("235959.0", "080526"), Gga("000000.0"), Rmc("000000.0", "090526"), Gga("000001.0"), Rmc("000001.0", "090526"))).Fixes;
        Assert.Equal([1.0, 1.0], dated.Zip(dated.Skip(1), (a, b) => b.Seconds - a.Seconds));
        Assert.Equal(new DateTimeOffset(2026, 5, 9, 0, 0, 1, TimeSpan.Zero).ToUnixTimeSeconds(), dated[^1].Seconds);
    }

    [Fact]
    public async Task A_leap_second_is_taken()
    {
        var (fixes, dropped) = await ReadAsync(TrackTexts.Sentence("GPGGA,235960.00,3912.0000,N,12154.0000,W,1,10,0.8,30,M,0,M,,").TrimEnd());
        Assert.Empty(dropped);
        Assert.Equal(86_400, Assert.Single(fixes).Seconds);
    }

    [Fact]
    public async Task A_clock_before_the_sentence_and_other_sentences_do_no_harm()
    {
        var (fixes, dropped) = await ReadAsync("12:35:19 $GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47", TrackTexts.Sentence("GPGSV,3,1,11").TrimEnd(), "noise");
        Assert.Empty(dropped);
        Assert.Single(fixes);
    }

    [Fact]
    public async Task Minutes_of_sixty_and_sides_that_are_none_are_unreadable()
    {
        var (_, dropped) = await ReadAsync(
            TrackTexts.Sentence("GPGGA,120000,3960.0000,N,12154.0000,W,1,10,0.8,30,M,0,M,,").TrimEnd(),
            TrackTexts.Sentence("GPGGA,120001,3912.0000,Q,12154.0000,W,1,10,0.8,30,M,0,M,,").TrimEnd(),
            TrackTexts.Sentence("GPGGA,120002,3912.0000,N,12154.0000,W,1,10,0.8,30,M,0,M,,").TrimEnd());
        Assert.Equal([new Dropped(DropReason.Unreadable, 2, 1)], dropped);
    }
}
