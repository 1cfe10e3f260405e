using Watersown.Weather;

namespace Watersown.Season;

public sealed class DayFoldTests
{
    private static readonly DateOnly Third = new(2026, 5, 3);

    private static Temperature F(double degrees) => Temperature.FromFahrenheit(degrees);

    private static SeasonBook Book(params MarkFact[] facts) => SeasonFold.Fold(PlannedMorning.State(),
        Logbook.Empty.With([.. facts.Select((f, i) => Marks.At(i + 1, PlannedMorning.At(11, 5, i), f))]), PlannedMorning.At(12, 9, 0));

    private static WeatherTaken File(string source, double high) => new(source, [new WeatherDay(Third) { High = F(high), Low = F(50) }, new WeatherDay(Third.AddDays(1)) { High = F(high) }]);

    [Fact]
    public void What_a_person_typed_stands_before_any_file_and_the_later_file_before_the_earlier()
    {
        Assert.Equal(82, Known(Book(File("a", 80), File("b", 82))).Warmth.High.Fahrenheit, 1e-9);
        var typed = Known(Book(new WarmthRead(Third, F(77), F(49)), File("b", 82)));
        Assert.Equal((DayBasis.Typed, "Tamsin Wexcombe"), (typed.Basis, typed.Source));
        Assert.Equal(77, typed.Warmth.High.Fahrenheit, 1e-9);
    }

    [Fact]
    public void A_day_told_in_half_is_not_known_and_imports_say_how_many_are()
    {
        var book = Book(File("a", 80), File("b", 82));
        Assert.DoesNotContain(book.Weather.Known, k => k.Day == Third.AddDays(1));
        Assert.Equal([("b", 1), ("a", 1)], book.Weather.Imports.Select(i => (i.Source, i.Days)));
    }

    [Fact]
    public void Gaps_say_what_fills_them()
    {
        var normals = new NormalsTaken("typed", [new MonthNormal(5, F(80), F(52))]);
        var days = new WeatherTaken("a", [new WeatherDay(Third) { High = F(80), Low = F(50) }, new WeatherDay(Third.AddDays(2)) { High = F(80), Low = F(50) }]);
        var weather = Book(days).Weather with { Normals = FarmNormals.None };
        Assert.Equal([(DayBasis?)DayBasis.Neighbors], SeasonDays.Gaps(weather, Third, Third.AddDays(2)).Select(g => g.Fill));
        Assert.Equal([(DayBasis?)null], SeasonDays.Gaps(weather, Third.AddDays(-30), Third.AddDays(-1)).Select(g => g.Fill));
        var filled = Assert.Single(SeasonDays.Gaps(Book(days, normals).Weather, new DateOnly(2026, 5, 1), new DateOnly(2026, 5, 2)));
        Assert.Equal((DayBasis.Normal, 2), (filled.Fill, filled.Run.Days));
    }

    [Fact]
    public void Normals_told_later_stand_in_for_those_of_the_farm_month_by_month()
    {
        var weather = Book(new NormalsTaken("station, 4 years", [new MonthNormal(5, F(82), F(54))])).Weather;
        Assert.Equal(68, weather.Normals.On(Third)!.Mean.Fahrenheit, 1e-9);
        Assert.StartsWith("station, 4 years", weather.Normals.Source, StringComparison.Ordinal);
        Assert.Equal(PlannedMorning.At(11, 5, 0), weather.NormalsAt);
    }

    private static KnownDay Known(SeasonBook book) => Assert.Single(book.Weather.Known, k => k.Day == Third);
}
