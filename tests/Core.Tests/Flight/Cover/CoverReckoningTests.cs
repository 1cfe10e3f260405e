namespace Watersown.Flight.Cover;

public sealed class CoverReckoningTests
{
    // A rectangle half a mile long; three passes lie 100 ft apart with a swath of 100 ft and one of four is missing.
    private const double Latitude = 39.4;

    private static Datum Places(params IEnumerable<(double East, double North)> places) =>
        Datum.ListOf(places.Select(p => Datum.ListOf([-122 + (p.East / 86_137), Latitude + (p.North / 111_023)])));

    private static Datum.Table Field(double east, double north) => (Datum.Table)Datum.Row(
        ("type", "Polygon"), ("coordinates", Datum.ListOf([Places((0, 0), (east, 0), (east, north), (0, north), (0, 0))])));

    private static Outcome<Reckon.Reckoned> Ask(Datum runs) => FlightReckonings.All.Single(r => r.Name == "coverage")
        .Run((Datum.Table)Datum.Row(("boundary", Field(121.92, 400)), ("runs", runs), ("swath_ft", 100)));

    [Fact]
    public void A_pass_that_was_not_flown_is_a_quarter_of_the_field_and_a_place_to_walk_to()
    {
        var reckoned = Ask(Datum.ListOf([Places((15.24, -20), (15.24, 420)), Places((45.72, 420), (45.72, -20)), Places((106.68, 420), (106.68, -20))])).Value;
        Assert.Equal(25, ((Datum.Number)reckoned["skip_pct"]).Value, 0.5);
        Assert.Equal(75, ((Datum.Number)reckoned["single_pct"]).Value, 0.5);
        Assert.Equal(40.0 / 440 * 100, ((Datum.Number)reckoned["off_field_pct"]).Value, 0.5);
        var place = (Datum.Table)Assert.Single(((Datum.Sequence)reckoned["bare_places"]).Items);
        Assert.Equal(100, ((Datum.Number)place["wide_ft"]!).Value, 3.0);
        Assert.Equal(-122 + (76.2 / 86_137), ((Datum.Number)place["longitude"]!).Value, 1e-5);
        Assert.Equal([2.0, 3.0], ((Datum.Sequence)place["nearest_runs"]!).Items.Select(i => ((Datum.Number)i).Value).Order());
    }

    [Fact]
    public void Runs_of_another_form_or_far_away_are_refused()
    {
        Assert.Equal([Reckon.ReckonProblems.Impossible], Ask(Datum.ListOf([1.0, 2.0])).Problems.Select(p => p.Kind));
        Assert.Equal([Reckon.ReckonProblems.Impossible], Ask(Datum.ListOf([Places((0, 0), (0, 900_000))])).Problems.Select(p => p.Kind));
        Assert.Equal([CoverProblems.NothingFlown], Ask(Datum.ListOf([Places((0, 0))])).Problems.Select(p => p.Kind));
    }
}
