using Watersown.Nutrition;
using Watersown.Schedule;
using Watersown.Season.Crop;

namespace Watersown.Season;

public sealed class FieldNutritionTests
{
    private static readonly DateTimeOffset Now = PlannedMorning.At(18, 7, 0);

    private static SeasonBook Book(params (DateTimeOffset At, MarkFact Fact)[] facts) =>
        SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With([.. facts.Select((f, i) => Marks.At(i + 1, f.At, f.Fact))]), Now);

    private static NutrientRate N(double pounds) => NutrientRate.FromPoundsPerAcre(pounds);

    private static FieldNutrition Of(SeasonBook book, string code) => FieldNutritions.Of(book, book.State.Farm.Field(code));

    // 140 lb N at 20 % N and 7.6 lb/gal are 92.1 gal/ac; on 61 ac 5,618 gal.
    [Fact]
    public void Nitrogen_adds_up_and_a_ticket_stands_beside_what_the_rate_takes()
    {
        var book = Book(
            (PlannedMorning.At(9, 9, 0), new NitrogenOn("N7", NitrogenTiming.Aqua, N(140)) { Ticket = Volume.FromGallons(5500) }),
            (PlannedMorning.At(10, 9, 0), new NitrogenOn("N7", NitrogenTiming.Starter, N(30))));
        var nutrition = Of(book, "N7");
        Assert.Equal(170, nutrition.Total.PoundsPerAcre, 1e-9);
        Assert.Equal(5618.4, nutrition.Nitrogen[0].Aqua!.Value.Reckoned.Gallons, 0.1);
    }

    [Fact]
    public void Days_from_injection_run_until_water_comes()
    {
        var waiting = Of(Book((PlannedMorning.At(9, 9, 0), new NitrogenOn("H5", NitrogenTiming.Aqua, N(140)))), "H5");
        Assert.Equal((9, false), (waiting.AquaDays, waiting.Flooded));
        var wet = Of(Book((PlannedMorning.At(9, 9, 0), new NitrogenOn("H5", NitrogenTiming.Aqua, N(140))), (PlannedMorning.At(13, 9, 0), new StageReached("H5", FieldStage.Flooding))), "H5");
        Assert.Equal((4, true), (wet.AquaDays, wet.Flooded));
        Assert.Contains(FieldNutritions.Waiting(Book((PlannedMorning.At(9, 9, 0), new NitrogenOn("H5", NitrogenTiming.Aqua, N(140))))), n => n.Field.Code == "H5");
    }

    [Fact]
    public void The_newest_reading_of_each_kind_and_the_newest_decision_count()
    {
        var nutrition = Of(Book(
            (PlannedMorning.At(9, 9, 0), new NutrientRead("S1", NutrientReading.OlsenPhosphorus, 7)),
            (PlannedMorning.At(10, 9, 0), new NutrientRead("S1", NutrientReading.OlsenPhosphorus, 5)),
            (PlannedMorning.At(11, 9, 0), new TopdressDecided("S1", N(30))),
            (PlannedMorning.At(12, 9, 0), new TopdressDecided("S1", null))), "S1");
        Assert.True(Assert.Single(nutrition.Readings).Said.Short);
        Assert.Null(nutrition.Topdress!.Value.Decision.Rate);
    }
}
