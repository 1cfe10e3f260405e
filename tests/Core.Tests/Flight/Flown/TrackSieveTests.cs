using Watersown.Land;

namespace Watersown.Flight.Flown;

public sealed class TrackSieveTests
{
    private static readonly SomeTrack track = new() { Lines = [10, 30, 50] };

    private static readonly ImmutableArray<Fix> good = [.. track.Fixes()];

    private static Dropped Only(FlownTrack clean, DropReason reason)
    {
        var dropped = Assert.Single(clean.Dropped);
        Assert.Equal(reason, dropped.Reason);
        return dropped;
    }

    [Fact]
    public void A_sound_track_is_kept_whole()
    {
        var clean = track.Clean(good);
        Assert.Empty(clean.Dropped);
        Assert.Empty(clean.Gaps);
        Assert.Equal(good.Length, clean.Fixes.Length);
        Assert.Equal(0.2, clean.Every!.Value.TotalSeconds, 6);
        Assert.Equal(TrackBreak.Piece, clean.Fixes[0].Break);
        Assert.All(clean.Fixes.Skip(1), f => Assert.Equal(TrackBreak.None, f.Break));
    }

    [Theory]
    [InlineData(double.NaN, -121.9)]
    [InlineData(39.2, double.PositiveInfinity)]
    [InlineData(91, -121.9)]
    [InlineData(39.2, 181)]
    [InlineData(0, 0)]
    public void No_place_on_earth_is_dropped(double latitude, double longitude) =>
        Assert.Equal(11, Only(track.Clean(good.Insert(10, new Fix(latitude, longitude) { Seconds = good[10].Seconds })), DropReason.OffTheEarth).First);

    [Fact]
    public void A_place_told_twice_is_kept_once() => Assert.Equal(1, Only(track.Clean(good.Insert(20, good[19])), DropReason.SameTime).Count);

    [Fact]
    public void A_stretch_told_again_is_dropped_until_time_goes_on()
    {
        var clean = track.Clean(good.InsertRange(60, good[40..60]));
        Assert.Equal(19, clean.Dropped.Single(d => d.Reason == DropReason.TimeBack).Count);
        Assert.Equal(1, clean.Dropped.Single(d => d.Reason == DropReason.SameTime).Count);
        Assert.Equal(good.Length, clean.Fixes.Length);
    }

    [Fact]
    public void A_place_out_of_reach_is_dropped_and_the_line_goes_on()
    {
        var clean = track.Clean(good.SetItem(30, good[30] with { Latitude = good[30].Latitude + 0.01 }));
        Assert.Equal(31, Only(clean, DropReason.Jump).First);
        Assert.All(clean.Fixes.Skip(1), f => Assert.Equal(TrackBreak.None, f.Break));
    }

    [Fact]
    public void A_place_aside_faster_than_anything_turns_is_dropped() =>
        Assert.Equal(31, Only(track.Clean(good.SetItem(30, good[30] with { Longitude = good[30].Longitude + (40 / 86_000.0) })), DropReason.Jump).First);

    [Fact]
    public void A_track_that_goes_on_elsewhere_is_believed_after_three_places_and_not_joined()
    {
        var moved = good.Select((f, i) => i < 50 ? f : f with { Latitude = f.Latitude + 0.01 });
        var clean = track.Clean(moved);
        Assert.Empty(clean.Dropped);
        Assert.Equal(good.Length, clean.Fixes.Length);
        Assert.Equal(TrackBreak.Lost, clean.Fixes[50].Break);
    }

    [Fact]
    public void A_clock_set_back_is_believed_and_not_joined()
    {
        var clean = track.Clean(good.Select((f, i) => i < 50 ? f : f with { Seconds = f.Seconds - 7200 }));
        Assert.Empty(clean.Dropped);
        Assert.Equal(TrackBreak.Lost, clean.Fixes[50].Break);
    }

    [Fact]
    public void Missing_time_breaks_the_line_and_is_named()
    {
        var clean = track.Clean(good.RemoveRange(30, 20));
        var gap = Assert.Single(clean.Gaps);
        Assert.Equal(4.2, gap.Lasted.TotalSeconds, 3);
        Assert.Equal(TrackBreak.Lost, clean.Fixes[30].Break);
    }

    [Fact]
    public void A_place_without_time_among_others_is_dropped() => Only(track.Clean(good.SetItem(5, good[5] with { Seconds = double.NaN })), DropReason.NoTime);

    [Fact]
    public void A_track_without_any_time_is_kept()
    {
        var clean = track.Clean(good.Select(f => f with { Seconds = double.NaN }));
        Assert.Equal(good.Length, clean.Fixes.Length);
        Assert.False(clean.TimeTold);
    }

    [Fact]
    public void What_lies_far_away_is_counted_by_place_and_not_kept()
    {
        var other = good.Select(f => f with { Latitude = f.Latitude + 0.2, Seconds = f.Seconds + 5000 }).ToList();
        var clean = track.Clean(good.AddRange(other));
        Assert.Equal(good.Length, clean.Fixes.Length);
        Assert.Equal(other.Count, clean.Far.Sum(f => f.Count));
        Assert.InRange(clean.Far[0].Around.Latitude, 39.38, 39.44);
        Assert.Equal(2 * good.Length, clean.Given);
    }

    [Fact]
    public void A_field_across_the_antimeridian_loses_nothing()
    {
        var shift = 180 - SomeTrack.Place(50, 0).Longitude;
        double Wrap(double longitude) => longitude > 180 ? longitude - 360 : longitude;
        var field = new Boundary([new BoundaryPart([.. track.Field.Parts[0].Outer.Select(c => new GeoPoint(c.Latitude, Wrap(c.Longitude + shift)))], [])]);
        var there = track with { Field = field };
        var runs = there.Runs(good.Select(f => f with { Longitude = Wrap(f.Longitude + shift) }), Length.FromMeters(20));
        Assert.Empty(there.Clean(good.Select(f => f with { Longitude = Wrap(f.Longitude + shift) })).Dropped);
        Assert.Equal(3, runs.Runs.Length);
        Assert.All(runs.Runs, r => Assert.Equal(800, r.Length.Meters, 0.1));
    }

    [Fact]
    public void Very_many_places_are_thinned_and_the_line_stays()
    {
        var long_ = new SomeTrack { Lines = [.. Enumerable.Range(0, 60).Select(i => 10.0 + i)], Every = 0.002 };
        var given = long_.Fixes(gate: false).Take(1_300_000).ToList();
        var clean = long_.Clean(given);
        Assert.InRange(clean.Fixes.Length, 100_000, TrackLimits.ThinFrom);
        Assert.Empty(clean.Gaps);
        Assert.Equal(given.Count, clean.Given);
        Assert.Equal(0.002, clean.Every!.Value.TotalSeconds, 5);
        static double Way(IEnumerable<FlownFix> fixes) => fixes.Zip(fixes.Skip(1), (a, b) => Math.Sqrt(Math.Pow(a.At.East - b.At.East, 2) + Math.Pow(a.At.North - b.At.North, 2))).Sum();
        var last = given[^1];
        Assert.Equal(clean.Plane.ToPlane(last.Latitude, last.Longitude), clean.Fixes[^1].At);
        Assert.Equal(Way(given.Select(f => new FlownFix(clean.Plane.ToPlane(f.Latitude, f.Longitude), 0))), Way(clean.Fixes), 10.0);
    }

    [Fact]
    public void More_places_than_can_be_kept_are_refused()
    {
        var full = track.Clean(good) with { Fixes = [.. new FlownFix[TrackLimits.Most]] };
        var refused = Verification.Of(full, new FlownQuestion(track.Field, Length.FromMeters(20)), "track");
        Assert.Equal(FlownProblems.TooMany, Assert.Single(refused.Problems).Kind);
    }
}
