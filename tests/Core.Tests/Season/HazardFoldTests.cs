using Watersown.Land;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season;

public sealed class HazardFoldTests
{
    private const string Pond = "hatchery pond";

    [Fact]
    public void A_look_today_makes_a_hazard_fresh_that_nobody_had_looked_at()
    {
        Assert.Equal(HazardLook.Never, Look(Fold(), Pond));
        Assert.Equal(HazardLook.Fresh, Look(Fold(Seen(1, Pond, HazardSighting.StillThere)), Pond));
    }

    [Fact]
    public void Gone_takes_it_off_the_list_and_taking_that_back_puts_it_on_again()
    {
        var gone = Seen(1, Pond, HazardSighting.Gone);
        Assert.DoesNotContain(Fold(gone).State.Farm.Hazards, h => h.Name == Pond);
        Assert.Contains(Fold(gone, Marks.At(2, PlannedMorning.At(8, 7), new Withdrawn()).Replacing(1)).State.Farm.Hazards, h => h.Name == Pond);
    }

    [Fact]
    public void What_the_farm_document_says_later_is_not_turned_back_by_an_older_mark() =>
        Assert.Contains(Fold(Marks.At(1, PlannedMorning.At(1, 6), new HazardSeen(Pond, HazardSighting.Gone))).State.Farm.Hazards, h => h.Name == Pond);

    [Fact]
    public void A_new_one_is_drawn_where_it_was_seen_and_told_with_its_height()
    {
        var seen = new HazardSeen("met tower by the weir", HazardSighting.New) { Kind = HazardKind.Tower, Field = "N6", Height = Length.FromFeet(190), At = new GeoPoint(39.02, -122.02) };
        var hazard = Assert.Single(Fold(Marks.At(1, PlannedMorning.At(8, 6), seen)).State.Farm.Hazards, h => h.Name == seen.Name);
        Assert.Equal((HazardKind.Tower, new DateOnly(2026, 5, 8)), (hazard.Kind, hazard.Confirmed!.Value));
        Assert.Equal(["N6"], hazard.Near);
        Assert.Equal("Hazard seen: met tower by the weir, tower, 190 ft", new MarkTelling(new Telling(PlannedMorning.State(), Language.English)).Say(seen));
    }

    [Fact]
    public void A_look_at_what_nobody_knew_of_is_its_first_word() =>
        Assert.Contains(Fold(Seen(1, "pole at the bend", HazardSighting.StillThere)).State.Farm.Hazards, h => h.Name == "pole at the bend");

    // 366 days from 7 May 2025 is 8 May 2026; a season's rule wants a look in the year of the season.
    [Theory]
    [InlineData(2025, 5, 8, HazardKeep.TwelveMonths, HazardLook.Fresh)]
    [InlineData(2025, 5, 7, HazardKeep.TwelveMonths, HazardLook.Old)]
    [InlineData(2025, 12, 31, HazardKeep.TwelveMonths, HazardLook.Fresh)]
    [InlineData(2025, 12, 31, HazardKeep.Season, HazardLook.Old)]
    [InlineData(2026, 1, 1, HazardKeep.Season, HazardLook.Fresh)]
    public void A_look_grows_old(int year, int month, int day, HazardKeep keep, HazardLook look)
    {
        var farm = PlannedMorning.State().Farm with { HazardsKeep = keep, SeasonYear = 2026 };
        Assert.Equal(look, HazardLooks.Of(farm, new Hazard(HazardKind.Wire, "line") { Confirmed = new DateOnly(year, month, day) }, new DateOnly(2026, 5, 8)));
    }

    private static Mark Seen(int id, string name, HazardSighting what) => Marks.At(id, PlannedMorning.At(8, 6), new HazardSeen(name, what));

    private static SeasonBook Fold(params ReadOnlySpan<Mark> marks) => SeasonFold.Fold(PlannedMorning.State(), Logbook.Empty.With([.. marks]), PlannedMorning.At(9, 4));

    private static HazardLook Look(SeasonBook book, string name) => HazardLooks.Of(book.State.Farm, book.State.Farm.Hazards.Single(h => h.Name == name), new DateOnly(2026, 5, 9));
}
