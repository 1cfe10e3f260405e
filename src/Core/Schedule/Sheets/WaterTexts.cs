using Watersown.Land;
using Watersown.Water;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Texts about water: requests to a district, and the route for irrigators.</summary>
internal static class WaterTexts
{
    public static IEnumerable<string> ToDistrict(SeasonPlan plan, DateOnly day, Telling tell)
    {
        var (from, until) = TextTimes.OfDay(plan, day);
        return WaterSheets.Changes(plan)
            .Where(c => c.Source.Kind == WaterSourceKind.DistrictTurnout && c.SendBy >= from && c.SendBy < until)
            .Select(c => ShortText.One(Template.Fill(tell.Words.Text.District,
                ("source", c.Source.Code), ("before", tell.Flow(c.Before)), ("after", tell.Flow(c.After)), ("when", tell.TextMoment(c.At)))));
    }

    public static IEnumerable<string> ToIrrigator(SeasonPlan plan, DateOnly day, Telling tell)
    {
        var words = tell.Words.Text;
        var sheet = WaterSheets.Of(plan, day, null);
        var stops = sheet.Routes.SelectMany(r => r.Stops).Concat(sheet.Loose).ToList();
        (string, string) depth = ("depth", tell.Depth(WaterTargets.Sowing));
        return
        [
            .. ShortText.Spread(words.NoSpillHead, sheet.NoSpill.Select(f => f.Code), ", ", "."),
            .. ShortText.Spread(words.OpenHead,
                stops.Where(s => s.Task == WaterTask.Open).Select(s => Template.Fill(words.OpenItem, ("field", s.Field.Code), ("when", tell.NearMoment(s.At!.Value)))), ", ", Template.Fill(words.OpenTail, depth)),
            .. ShortText.Spread(words.FillHead,
                stops.Where(s => s is { Task: WaterTask.Fill, FullBy: not null }).Select(s => Template.Fill(words.FillItem, ("field", s.Field.Code), ("when", tell.NearMoment(s.FullBy!.Value)))), ", ", "."),
            .. ShortText.Spread(Template.Fill(words.HoldAtHead, depth), stops.Where(s => s.Task == WaterTask.HoldForSeed).Select(s => s.Field.Code), ", ", "."),
        ];
    }
}
