using Watersown.Flight;
using Watersown.Holds;
using Watersown.Land;
using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Weather;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>
/// Whether a mark can be true, looked at when it is put down. Only what cannot be is refused; what is unlikely is said once
/// and kept; nothing is refused because something is unknown.
/// </summary>
public static class MarkChecks
{
    // Net acres are as good as this; what is billed beyond is asked about.
    private const double BilledSlack = 1.02;

    /// <summary>Everything found, places named as in a mark's document.</summary>
    /// <param name="mark">The mark.</param>
    /// <param name="ground">The farm, where there is one.</param>
    /// <param name="now">The moment of putting it down.</param>
    public static ImmutableArray<Problem> Check(Mark mark, SeasonState? ground, DateTimeOffset now)
    {
        var problems = ImmutableArray.CreateBuilder<Problem>();
        // A plan's number is put down by the desk that made it; everything else tells of what has been.
        if (mark.Happened > now + SeasonLimits.ClockSlack) problems.Add(SeasonProblems.InFuture.At("happened", ("value", Moment(mark.Happened)), ("limit", Moment(now.ToOffset(mark.Happened.Offset)))));
        foreach (var (limit, key, value) in Figures(mark.Fact))
        {
            if (value is { } figure && limit.Judge(Math.Round(figure, 9), "fact." + key) is { } problem) problems.Add(problem);
        }

        CheckTogether(mark, now, problems);
        if (ground is not null) CheckAgainst(mark.Fact, ground, problems);
        return problems.ToImmutable();
    }

    private static IEnumerable<(Limit Limit, string Key, double? Value)> Figures(MarkFact fact) => fact switch
    {
        CheckWater f => [Of(SeasonLimits.Check, f.Check)],
        DepthRead f => [Of(SeasonLimits.Check, f.Check), Of(ScheduleLimits.Depth, f.Depth.Inches)],
        BoardsSet f => [Of(SeasonLimits.Box, f.Box), Of(SeasonLimits.Boards, f.Height.Inches)],
        FlowSeen f => [Of(SeasonLimits.Flow, f.Flow.CubicFeetPerSecond)],
        WaterOrdered f => [Of(SeasonLimits.Flow, f.Flow.CubicFeetPerSecond)],
        FaultFound f => [Of(SeasonLimits.Check, f.Check), Of(SeasonLimits.ToCheck, f.ToCheck), Of(SeasonLimits.Box, f.Box), Of(SeasonLimits.Gap, f.Width?.Feet)],
        FieldCorrected f => [Of(LandLimits.Net, f.Net?.Acres), Of(LandLimits.Gross, f.Gross?.Acres), Of(LandLimits.Certified, f.Certified?.Acres), Of(SeedLimits.Rate, f.Rate?.PoundsPerAcre)],
        HazardSeen f => [Of(LandLimits.HazardHeight, f.Height?.Feet)],
        PatternTested f => [Of(FlightLimits.TraySpacing, f.Spacing.Meters), Of(FlightLimits.TrayArea, f.Tray.SquareMeters), Of(FlightLimits.TestSpeed, f.Speed?.MilesPerHour), Of(FlightLimits.Gate, f.Gate?.PoundsPerMinute), Of(FlightLimits.ThousandGrains, f.ThousandGrains?.Kilograms * 1000)],
        RingsCounted f => [Of(SeasonLimits.Zone, f.ZoneLand?.Acres), Of(SeasonLimits.Ring, f.Ring?.SquareFeet), .. f.Rings.Select((r, i) => (SeasonLimits.Rings, "rings[" + Say.Number(i) + "]", (double?)r))],
        BatchInSoak f => [Of(SeedLimits.BatchDry, f.Dry?.Pounds)],
        BatchDumped f => [Of(SeedLimits.BatchDry, f.Dry?.Pounds)],
        TrailerSeen f => [Of(SeasonLimits.Soaked, f.Weighed?.Pounds)],
        WaterCurtailed f => [Of(LandLimits.Left, f.Left?.CubicFeetPerSecond)],
        CapShared f => [Of(LandLimits.Cap, f.Cap?.CubicFeetPerSecond)],
        TailwaterWaits f => [Of(LandLimits.NeedsFull, f.Full?.Acres)],
        TreatmentTold { What: var f } => [Of(HoldLimits.Days, f.Rule.Days), Of(HoldLimits.Round, f.Round), Of(HoldLimits.LeastDepth, f.Rule.LeastDepth?.Inches), Of(HoldLimits.WindLeast, f.Rule.WindLeast?.MilesPerHour), Of(HoldLimits.WindMost, f.Rule.WindMost?.MilesPerHour), Of(HoldLimits.NoticeHours, f.Rule.NoticeHours),
            Of(HoldLimits.Reentry, f.Paper.ReentryHours), Of(HoldLimits.PreHarvest, f.Paper.PreHarvestDays), Of(HoldLimits.Land, f.Work.Land?.Acres), Of(HoldLimits.Wind, f.Work.Wind?.MilesPerHour)],
        HoldSettingsTold { Settings: var f } => [Of(HoldLimits.OwnReportDay, f.OwnReportDay), Of(HoldLimits.HiredReportDays, f.HiredReportDays)],
        SeedLeft f => [Of(SeasonLimits.Left, f.Left.Pounds)],
        FieldSown f => [Of(SeasonLimits.Part, f.Land?.Acres), Of(SeedLimits.BatchDry, f.Dry?.Pounds), Of(SeasonLimits.Loads, f.Loads)],
        FlightBilled f => [Of(FlownLimits.Billed, f.Land?.Acres), Of(SeasonLimits.Soaked, f.Soaked?.Pounds)],
        TrackLooked f => [
            Of(FlownLimits.Swath, f.Swath.Feet), Of(FlownLimits.Net, f.Net.Acres), Of(FlownLimits.Skip, f.Skip.Percent), Of(FlownLimits.SkipError, f.SkipError.Percent), Of(FlownLimits.Overlap, f.Overlap.Percent),
            Of(FlownLimits.OffField, f.OffField.Percent), Of(FlownLimits.Passes, f.Passes), Of(FlownLimits.Heading, f.Heading?.Degrees), Of(FlownLimits.Spacing, f.Spacing?.Feet)],
        LoadGone f => [Of(SeasonLimits.LoadNumber, f.Number), Of(SeasonLimits.Load, f.Soaked?.Pounds)],
        WindSeen f => [Of(WeatherLimits.Sustained, f.Sustained.MilesPerHour), Of(WeatherLimits.Gust, f.Gust.MilesPerHour)],
        WarmthRead f => [Of(WeatherLimits.High, f.High.Fahrenheit), Of(WeatherLimits.Low, f.Low.Fahrenheit)],
        NitrogenOn f => [Of(CropLimits.Nitrogen, f.Rate.PoundsPerAcre), Of(CropLimits.Ticket, f.Ticket?.Gallons)],
        TopdressDecided f => [Of(CropLimits.Nitrogen, f.Rate?.PoundsPerAcre)],
        NutrientRead f => [Of(CropLimits.Reading, f.Value)],
        PestLooked f => [Of(CropLimits.Damaged, f.Damaged?.Percent)],
        StandResponseSet f => f.Points.SelectMany((p, i) => new[] { (CropLimits.Stand, "points[" + Say.Number(i) + "].stand_ft2", (double?)p.Stand.PerSquareFoot), (CropLimits.Share, "points[" + Say.Number(i) + "].share_pct", p.Share.Percent) }),
        StageSeen f => [Of(CropLimits.Leaf, f.Point.Stage == Growth.CropStage.Leaf ? f.Point.Leaf : null)],
        StageTargetsSet f => [Of(CropLimits.Initiation, f.Targets.Initiation.Fahrenheit), Of(CropLimits.Heading, f.Targets.Heading.Fahrenheit), Of(CropLimits.Mature, f.Targets.Mature.Fahrenheit)],
        FloodWarmth f => [Of(WeatherLimits.High, f.High.Fahrenheit), Of(WeatherLimits.Low, f.Low.Fahrenheit)],
        WeatherTaken f => f.Days.SelectMany((d, i) => new[] { (WeatherLimits.High, "days[" + Say.Number(i) + "].high_f", d.High?.Fahrenheit), (WeatherLimits.Low, "days[" + Say.Number(i) + "].low_f", d.Low?.Fahrenheit), (WeatherLimits.Rain, "days[" + Say.Number(i) + "].rain_in", d.Rain?.Inches) }),
        NormalsTaken f => f.Months.SelectMany((m, i) => new[] { (WeatherLimits.High, "months[" + Say.Number(i) + "].high_f", (double?)m.High.Fahrenheit), (WeatherLimits.Low, "months[" + Say.Number(i) + "].low_f", m.Low.Fahrenheit) }),
        PlanIssued f => [Of(SeasonLimits.PlanNumber, f.Number)],
        HarvestMeansTold f =>
        [
            Of(HarvestLimits.Combines, f.Combines), Of(HarvestLimits.EachDay, f.EachDay?.Acres), Of(HarvestLimits.Sets, f.Sets), Of(HarvestLimits.SetWeight, f.SetWeight?.Pounds),
            Of(HarvestLimits.Expected, f.Expected?.HundredweightsPerAcre), Of(HarvestLimits.CutFrom, f.CutFrom?.Percent), Of(HarvestLimits.CutTo, f.CutTo?.Percent),
        ],
        DryerRoomGiven f => [Of(HarvestLimits.Sets, f.Sets)],
        MoistureSampled f => [Of(HarvestLimits.Moisture, f.Moisture.Percent)],
        FieldCut f => [Of(HarvestLimits.Land, f.Land?.Acres)],
        GrainTicketed f =>
        [
            Of(HarvestLimits.Gross, f.Gross.Pounds), Of(HarvestLimits.Tare, f.Tare.Pounds), Of(HarvestLimits.Moisture, f.Moisture.Percent), Of(HarvestLimits.Foreign, f.Foreign.Percent),
            Of(HarvestLimits.Head, f.Head?.Percent), Of(HarvestLimits.Total, f.Total?.Percent), .. f.Parts.Select((p, i) => (HarvestLimits.Share, "parts[" + Say.Number(i) + "].share_pct", (double?)p.Share.Percent)),
        ],
        CostPlanned f => [Of(CostLimits.PerAcre, (double?)f.PerAcre?.Amount), Of(CostLimits.PerHundredweight, (double?)f.PerHundredweight?.Amount)],
        CostPaid f => [Of(CostLimits.Amount, (double)f.Amount.Amount)],
        CropShareTold f => [Of(HarvestLimits.Share, f.Share.Percent)],
        _ => [],
    };

    private static (Limit Limit, string Key, double? Value) Of(Limit limit, double? value) => (limit, limit.Key, value);

    private static void CheckTogether(Mark mark, DateTimeOffset now, ImmutableArray<Problem>.Builder problems)
    {
        switch (mark.Fact)
        {
            case WaterOrdered order when order.From < now - SeasonLimits.OrderBack:
                problems.Add(SeasonProblems.OrderOld.At("fact.from", ("value", Moment(order.From)), ("limit", Moment(now.ToOffset(order.From.Offset)))));
                break;
            case TreatmentTold { What: var what } when what.Until < what.From:
                problems.Add(HoldProblems.WindowBackward.At("fact.until", ("value", Day(what.Until)), ("limit", Day(what.From))));
                break;
            case WaterWished { Days: { } days } when days.Until < days.From:
                problems.Add(HoldProblems.WindowBackward.At("fact.until", ("value", Day(days.Until)), ("limit", Day(days.From))));
                break;
            case WindSeen wind when wind.Gust < wind.Sustained:
                problems.Add(StateProblems.GustBelowWind.At("fact.gust_mph", ("value", Mph(wind.Gust)), ("limit", Mph(wind.Sustained))));
                break;
            case WarmthRead warmth when warmth.Low > warmth.High:
                problems.Add(StateProblems.LowAboveHigh.At("fact.low_f", ("value", Fahrenheit(warmth.Low)), ("limit", Fahrenheit(warmth.High))));
                break;
            case FloodWarmth flood when flood.Low > flood.High:
                problems.Add(StateProblems.LowAboveHigh.At("fact.low_f", ("value", Fahrenheit(flood.Low)), ("limit", Fahrenheit(flood.High))));
                break;
            case StageTargetsSet { Targets.Rising: false } set:
                problems.Add(CropProblems.TargetsNotRising.At("fact.heading_dd_f", ("value", Say.Number(set.Targets.Initiation.Fahrenheit) + ", " + Say.Number(set.Targets.Heading.Fahrenheit) + ", " + Say.Number(set.Targets.Mature.Fahrenheit))));
                break;
            case SlotGiven slot when slot.Until < slot.From:
                problems.Add(StateProblems.HoursReversed.At("fact.until", ("value", Hour(slot.Until)), ("limit", Hour(slot.From))));
                break;
            case HarvestMeansTold { CutFrom: { } from, CutTo: { } to } when from <= to:
                problems.Add(HarvestProblems.RangeReversed.At("fact.cut_from_pct", ("value", Percent(from)), ("limit", Percent(to))));
                break;
            case DryerRoomGiven room when room.Until < room.From:
                problems.Add(HarvestProblems.DaysReversed.At("fact.until", ("value", When.Day(room.Until)), ("limit", When.Day(room.From))));
                break;
            case GrainTicketed ticket:
                CheckTicket(ticket, problems);
                break;
            default:
                break;
        }
    }

    private static void CheckTicket(GrainTicketed ticket, ImmutableArray<Problem>.Builder problems)
    {
        if (ticket.Net <= Mass.Zero) problems.Add(HarvestProblems.TruckHeavier.At("fact.tare_lb", ("value", Pounds(ticket.Tare)), ("limit", Pounds(ticket.Gross))));
        else if (HarvestLimits.Net.Judge(Math.Round(ticket.Net.Pounds, 9), "fact.gross_lb") is { } heavy) problems.Add(heavy);
        var whole = ticket.Parts.Sum(p => p.Share.Percent);
        if (!ticket.Parts.IsEmpty && Math.Abs(whole - 100) > 0.05) problems.Add(HarvestProblems.PartsNotWhole.At("fact.parts", ("value", Say.Figure(whole) + " %"), ("limit", "100 %")));
    }

    private static void CheckAgainst(MarkFact fact, SeasonState ground, ImmutableArray<Problem>.Builder problems)
    {
        if (fact is WaterCurtailed { Left: { } left } told)
        {
            var held = ground.Farm.Sources.FirstOrDefault(s => string.Equals(s.Code, told.Source, StringComparison.OrdinalIgnoreCase));
            problems.AddRange(LandChecks.Check(new Curtailment(told.From) { Until = told.Until, Flow = left }, held, key => "fact." + key));
        }

        var field = fact.AboutField is { } code ? ground.Farm.Fields.FirstOrDefault(f => string.Equals(f.Code, code, StringComparison.OrdinalIgnoreCase)) : null;
        if (field is null && fact.AboutField is { } strange)
            problems.Add(SeasonProblems.UnknownField.At("fact.field", ("value", strange), ("nearest", Meant(strange, ground.Farm.Fields.SelectMany(f => new[] { f.Code, f.Name })))));
        if (fact.AboutSource is { } source && !ground.Farm.Sources.Any(s => string.Equals(s.Code, source, StringComparison.OrdinalIgnoreCase)))
            problems.Add(SeasonProblems.UnknownSource.At("fact.source", ("value", source), ("nearest", Meant(source, ground.Farm.Sources.Select(s => s.Code)))));
        if (fact is CheckWater { Check: var check } && field is { Basins.Length: > 0 } && check > field.Basins.Length)
            problems.Add(SeasonProblems.UnknownCheck.At("fact.check", ("value", Say.Number(check)), ("limit", Say.Number(field.Basins.Length))));
        if (fact is FieldCorrected said && field is not null && (said.Net ?? field.Net) is var net && (said.Gross ?? field.Gross) is { } gross && net > gross && (said.Net ?? said.Gross) is not null)
            problems.Add(LandProblems.NetAboveGross.At("fact.net_ac", ("value", Acres(net)), ("limit", Acres(gross))));
        // A tenth of an acre is what invoices round to.
        if (fact is FlightBilled { Land: { } billed } && field is not null && billed > (field.Net * BilledSlack) + Area.FromAcres(0.1))
            problems.Add(SeasonProblems.BilledAboveField.At("fact.billed_ac", ("value", Acres(billed)), ("limit", Acres(field.Net))));
        if (fact is WaterOrdered order && ground.Farm.Sources.FirstOrDefault(s => string.Equals(s.Code, order.Source, StringComparison.OrdinalIgnoreCase)) is { } asked && order.Flow > asked.Cap)
            problems.Add(LandProblems.RunningAboveCap.At("fact.flow_cfs", ("value", Cfs(order.Flow)), ("limit", Cfs(asked.Cap))));
    }

    private static string Meant(string word, IEnumerable<string> known) => Nearest.Of(word, known) is { } near ? " " + near + "?" : string.Empty;

    private static string Moment(DateTimeOffset moment) => When.Moment(moment);

    private static string Hour(TimeOnly hour) => hour.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static string Mph(Speed speed) => Say.Number(speed.MilesPerHour, 1) + " mph";

    private static string Fahrenheit(Temperature warmth) => Say.Number(warmth.Fahrenheit, 1) + " °F";

    private static string Acres(Area land) => Say.Number(land.Acres, 1) + " ac";

    private static string Percent(Fraction share) => Say.Figure(share.Percent) + " %";

    private static string Pounds(Mass weight) => Say.Number(weight.Pounds) + " lb";

    private static string Cfs(FlowRate flow) => Say.Number(flow.CubicFeetPerSecond, 1) + " cfs";
}
