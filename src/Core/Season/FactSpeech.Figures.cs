using System.Diagnostics;
using System.Globalization;
using Watersown.Schedule;
using Watersown.Wording;

namespace Watersown.Season;

public sealed partial class FactSpeech
{
    private string Seed(MarkFact fact) => fact switch
    {
        BatchInSoak f => Dry(Fill(words.InSoak, ("batch", f.Batch)), f.Dry),
        BatchDrained f => Fill(words.Drained, ("batch", f.Batch)),
        BatchDumped f => Dry(Fill(words.Dumped, ("batch", f.Batch)), f.Dry),
        TrailerSeen f => Trailer(f),
        SeedLeft f => Fill(words.Left, ("n", f.Trailer), ("weight", Pounds(f.Left.Kilograms, f.Left.Pounds))),
        _ => throw new UnreachableException(),
    };

    private string Trailer(TrailerSeen f)
    {
        var said = Fill(words.Trailer, ("n", f.Number));
        if (f.Batch is { } batch) said = Fill(words.WithBatch, ("what", said), ("batch", batch));
        if (f.Field is { } field) said = Fill(words.WithField, ("what", said), ("field", field));
        said = Wet(said, f.Weighed);
        return f.Place switch { null => said, Texts.TextMarks.Loaded => Fill(words.Loaded, ("what", said)), { } place => Fill(words.WithPlace, ("what", said), ("place", place)) };
    }

    private string Flight(MarkFact fact) => fact switch
    {
        FieldSown f => Sown(f),
        LoadGone f => Load(f),
        SlotGiven f => Fill(words.Slot, ("day", When.Day(f.Day, language)), ("from", Hour(f.From)), ("until", Hour(f.Until))),
        StoodDown { Field: { } field } f => Fill(words.StoodDownField, ("field", field), ("day", When.Day(f.Day, language)), ("why", Why(f.Why))),
        StoodDown f => Fill(words.StoodDown, ("day", When.Day(f.Day, language)), ("why", Why(f.Why))),
        _ => throw new UnreachableException(),
    };

    private string Sown(FieldSown f)
    {
        var said = Fill(f.Resow ? words.Resown : words.Sown, ("field", f.Field));
        if (f.Land is { } land) said += " " + Land(land);
        if (f.Batch is { } batch) said = Fill(words.WithBatch, ("what", said), ("batch", batch));
        said = Dry(said, f.Dry);
        return f.Loads is { } loads ? Fill(words.WithLoads, ("what", said), ("n", Count(loads))) : said;
    }

    private string Load(LoadGone f)
    {
        var said = f.Number is { } number ? Fill(words.LoadGone, ("field", f.Field), ("n", Count(number))) : Fill(words.LoadGoneSome, ("field", f.Field));
        if (f.Trailer is { } trailer) said = Fill(words.WithTrailer, ("what", said), ("n", trailer));
        return Wet(said, f.Soaked);
    }

    private string Weather(MarkFact fact) => fact switch
    {
        WindSeen { From: { } from } f => Fill(words.WindFrom, ("speed", Speed(f.Sustained)), ("gust", Speed(f.Gust)), ("from", Compass(from))),
        WindSeen f => Fill(words.Wind, ("speed", Speed(f.Sustained)), ("gust", Speed(f.Gust))),
        ForecastHeard f => Fill(words.Forecast, ("n", Count(f.Hours.Count)), ("when", Moment(f.Issued))),
        WarmthRead f => Fill(words.Warmth, ("day", When.Day(f.Day, language)), ("high", Warmth(f.High)), ("low", Warmth(f.Low))),
        _ => throw new UnreachableException(),
    };

    private string Talk(MarkFact fact) => fact switch
    {
        Told f => f.Person + ": " + Told(f.State),
        StepPinned f => Fill(words.Pinned, ("field", f.Field), ("task", Task(f.Task)), ("when", Moment(f.Start))),
        StepUnpinned f => Fill(words.Unpinned, ("field", f.Field), ("task", Task(f.Task))),
        Overridden f => Fill(words.Overridden, ("who", f.Who), ("stop", f.Stop), ("reason", f.Reason)),
        PersonNamed f => f.Name + ", " + f.Role,
        PlanIssued f => Fill(words.PlanIssued, ("n", Count(f.Number))),
        Withdrawn => words.Withdrawn,
        _ => throw new UnreachableException(),
    };

    private string Told(ToldState state) => state switch
    {
        ToldState.Told => words.ToldWord,
        ToldState.Heard => words.HeardWord,
        ToldState.Agreed => words.AgreedWord,
        ToldState.NotReached => words.NotReachedWord,
        _ => throw new UnreachableException(),
    };

    private string Task(PlanTaskKind task) => task switch
    {
        PlanTaskKind.Ground => words.TaskGround,
        PlanTaskKind.OrderWater => words.TaskOrder,
        PlanTaskKind.Fill => words.TaskFill,
        PlanTaskKind.CallSeed => words.TaskCall,
        PlanTaskKind.Soak => words.TaskSoak,
        PlanTaskKind.Drain => words.TaskDrain,
        PlanTaskKind.Haul => words.TaskHaul,
        PlanTaskKind.Sow => words.TaskSow,
        _ => throw new UnreachableException(),
    };

    private string Why(StandDownReason why) => why switch
    {
        StandDownReason.Wind => words.WhyWind,
        StandDownReason.Rain => words.WhyRain,
        StandDownReason.Fog => words.WhyFog,
        StandDownReason.Aeroplane => words.WhyAeroplane,
        StandDownReason.Seed => words.WhySeed,
        StandDownReason.Field => words.WhyField,
        StandDownReason.Other => words.WhyOther,
        _ => throw new UnreachableException(),
    };

    private string Dry(string said, DrySeed? dry) => dry is { } seed ? Fill(words.WithDry, ("what", said), ("weight", Pounds(seed.Kilograms, seed.Pounds))) : said;

    private string Wet(string said, SoakedSeed? wet) => wet is { } seed ? Fill(words.WithWet, ("what", said), ("weight", Pounds(seed.Kilograms, seed.Pounds))) : said;

    private string Pounds(double kilograms, double pounds) => metric ? Wording.Say.Number(kilograms) + " kg" : Wording.Say.Number(pounds) + " lb";

    private string Depth(WaterDepth depth) => metric ? Plain(depth.Meters * 100, 0) + " cm" : Plain(depth.Inches, 2) + " " + words.InchWord;

    private string Land(Area land) => metric ? Plain(land.Hectares, 2) + " " + common.Hectares : Plain(land.Acres, 2) + " " + common.Acres;

    private string Flow(FlowRate flow) => metric ? Plain(flow.CubicMetersPerSecond * 1000, 0) + " " + common.LitersPerSecond : Plain(flow.CubicFeetPerSecond, 2) + " " + common.CubicFeetPerSecond;

    private string Speed(Speed speed) => metric ? Plain(speed.MetersPerSecond, 1) + " m/s" : Plain(speed.MilesPerHour, 1) + " " + common.MilesPerHour;

    private string Warmth(Temperature warmth) => metric ? Plain(warmth.Celsius, 0) + " °C" : Plain(warmth.Fahrenheit, 0) + " °F";

    private static string Compass(Bearing from) => Plain(from.Degrees, 0) + "°";

    private static string Hour(TimeOnly hour) => hour.ToString("HH:mm", CultureInfo.InvariantCulture);

    private string Moment(DateTimeOffset moment) => When.Moment(moment.ToOffset(offset), language);
}
