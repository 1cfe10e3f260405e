using Watersown.Schedule.Sheets;
using Watersown.Season;
using Watersown.Wording;

namespace Watersown.Web.Links;

/// <summary>What was told through a link, said back in the words of its buttons.</summary>
internal static class LinkSaid
{
    public static string Of(MarkFact fact, Telling tell)
    {
        var words = tell.Words.Link;
        return fact switch
        {
            LoadGone gone => gone.Field + " · " + Template.Fill(words.LoadGone, ("n", Telling.Count(gone.Number ?? 0))),
            FieldSown sown => Template.Fill(sown.Part is null ? words.Flown : words.PartFlown, ("field", sown.Field)) + (sown.Part is { } part ? " " + part : string.Empty)
                + (sown.Loads is { } loads ? ", " + Telling.Count(loads) + " " + words.Loads : string.Empty),
            StoodDown off => Template.Fill(words.NotFlying, ("field", off.Field ?? tell.ShortDay(off.Day))) + ", " + Reason(off.Why, words),
            Told told => told.State == ToldState.Agreed ? words.Agreed : words.Heard,
            BatchInSoak soak => Template.Fill(words.InSoak, ("batch", soak.Batch)),
            BatchDrained drained => Template.Fill(words.Drained, ("batch", drained.Batch)),
            TrailerSeen seen => Template.Fill(words.TrailerLeft, ("batch", seen.Batch ?? string.Empty)) + ", " + words.TrailerNumber + " " + seen.Number
                + (seen.Weighed is { } wet ? ", " + Telling.Count(tell.Whole(wet)) + " " + Template.Fill(words.ScaleWeight, ("unit", tell.MassUnit)) : string.Empty),
            CheckWater water => water.Field + " " + words.Check + " " + Telling.Count(water.Check) + " " + (water.Water == WaterSeen.Wet ? words.Wet : words.Full),
            DepthRead read => read.Field + (read.Check is { } check ? " " + words.Check + " " + Telling.Count(check) : string.Empty) + " " + Template.Fill(words.Depth, ("depth", tell.Depth(read.Depth))),
            Withdrawn => words.Undone,
            _ => string.Empty,
        };
    }

    private static string Reason(StandDownReason why, LinkWords words) => why switch
    {
        StandDownReason.Wind => words.Wind,
        StandDownReason.Rain => words.Rain,
        StandDownReason.Fog => words.Fog,
        _ => words.OtherReason,
    };
}
