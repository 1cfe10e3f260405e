using System.Text;
using CsCheck;
using Watersown.Documents.Tracks;
using Watersown.Flight.Flown;

namespace Watersown.Tracks;

public sealed class TrackProperties
{
    private static readonly ImmutableArray<Fix> Fixes = [.. new SomeTrack { Lines = [10, 30], Every = 2 }.Fixes().Take(30)];

    private static readonly byte[][] Good = [.. new[] { TrackTexts.Gpx(Fixes), TrackTexts.Kml(Fixes), TrackTexts.GeoJson(Fixes), TrackTexts.Points(Fixes), TrackTexts.Csv(Fixes), TrackTexts.Nmea(Fixes) }.Select(Encoding.UTF8.GetBytes)];

    private static Gen<string> Choice(params string[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    // Bytes in memory are read without waiting for anything, so the samples can stay plain.
    private static Outcome<TrackTold> Waited(byte[] bytes, string name, Action<Fix> take)
    {
        async Task<Outcome<TrackTold>> ReadAsync()
        {
            using var stream = new MemoryStream(bytes);
            return await TrackReading.ReadAsync(stream, name, take, new TrackOptions(), CancellationToken.None);
        }

        var reading = ReadAsync();
        Assert.True(reading.IsCompletedSuccessfully);
        return reading.Result;
    }

    // Whatever came out goes all the way to passes.
    private static void Read(byte[] bytes)
    {
        var sieve = new TrackSieve(new SomeTrack { Lines = [] }.Field);
        var told = Waited(bytes, "noise", sieve.Add);
        Assert.True(told.HasValue || told.Refusals.Any());
        var track = sieve.Finish();
        var swath = Length.FromMeters(20);
        Assert.NotNull(PassFinding.Of(RunFinding.Of(track, Land.FarmPlane.ToPlane(track.Plane, new SomeTrack { Lines = [] }.Field), swath).Runs, swath));
    }

    [Fact]
    public void Noise_never_throws() =>
        Gen.Select(Choice("", "$GPRMC,", "{", "<kml>", "<gpx>", "lat,lon\n", "\uFEFF<gpx", "[[[["), Gen.Byte.Array[0, 800]).Sample((start, noise) => Read([.. Encoding.UTF8.GetBytes(start), .. noise]), seed: "0000KX5ioZe3");

    [Fact]
    public void A_good_file_with_noise_in_it_never_throws() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Select(Gen.Double[0, 1], Gen.Byte).Array[1, 12]).Sample((which, noise) =>
        {
            var bytes = (byte[])Good[which].Clone();
            foreach (var (share, value) in noise) bytes[(int)(share * (bytes.Length - 1))] = value;
            Read(bytes);
        }, seed: "0000KX5ioZe3", iter: 1500);

    [Fact]
    public void A_good_file_cut_short_never_throws() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Double[0, 1]).Sample((which, share) => Read(Good[which][..(int)(share * Good[which].Length)]), seed: "0000KX5ioZe3", iter: 500);

    [Fact]
    public void A_good_file_with_hostile_words_in_it_never_throws() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Double[0, 1], Choice("NaN", "Infinity", "-1e999", "1e308", "\0", ",,,,", "\"", "<a>", "]]]]", "{{{{", "&lol;", "2026-13-45T99:99:99Z", "$GPGGA,", "\uD83D\uDE00", "999999999999999999999")).Sample((which, share, put) =>
        {
            var at = (int)(share * Good[which].Length);
            Read([.. Good[which][..at], .. Encoding.UTF8.GetBytes(put), .. Good[which][Math.Min(Good[which].Length, at + put.Length)..]]);
        }, seed: "0000KX5ioZe3", iter: 1500);

    [Fact]
    public async Task A_line_without_end_is_dropped_and_the_next_is_read()
    {
        var fixes = new List<Fix>();
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes("lat,lon\n" + new string('9', 300_000) + "\n39.2,-121.9\n"));
        var told = await TrackReading.ReadAsync(stream, "track", fixes.Add, new TrackOptions(), TestContext.Current.CancellationToken);
        Assert.Equal(1, told.Value.Dropped.Single(d => d.Reason == DropReason.Unreadable).Count);
        Assert.Equal(39.2, Assert.Single(fixes).Latitude);
    }
}
