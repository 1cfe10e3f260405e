using System.Globalization;

namespace Watersown.Season;

public sealed partial class MarkTelling
{
    /// <summary>What made a plan necessary: the desk's own reasons in the reader's words, a person's as they were said.</summary>
    public string? Reason(string? why) => why switch
    {
        "marks" => Words.PlanForMarks,
        "farm" => Words.PlanForFarm,
        "asked" => Words.PlanAsked,
        _ => why,
    };

    private string? Air(MarkFact fact) => fact switch
    {
        FieldSown f => Joined(
            f.Resow ? Words.SownAgain : f.Land is { } land ? Fill(Words.SownPart, ("land", tell.Land(land))) : Words.SownAll,
            f.Part, f.Batch is { } batch ? Fill(Words.OfBatch, ("batch", batch)) : null, Dry(f.Dry), f.Loads is { } loads ? Fill(Words.Loads, ("n", Count(loads))) : null),
        LoadGone f => Joined(
            f.Number is { } number ? Fill(Words.LoadGone, ("n", Count(number))) : Words.LoadGoneBare,
            f.Trailer is { } trailer ? Fill(Words.OfTrailer, ("n", trailer)) : null, Wet(f.Soaked)),
        SlotGiven f => Joined(Fill(Words.Slot, ("day", tell.ShortDay(f.Day)), ("from", Hour(f.From)), ("until", Hour(f.Until))), f.Aeroplane),
        StoodDown f => Joined(Fill(Words.StoodDown, ("day", tell.ShortDay(f.Day)), ("why", StageNames.Of(f.Why, Words)), ("who", f.Who)), f.Field),
        PatternTested f => Joined(Fill(tell.Words.Pattern.Mark, ("passes", Count(f.Passes.Count)), ("trays", Count(f.Passes.Count == 0 ? 0 : f.Passes[0].Count))), f.Aeroplane, f.Seed),
        FlightBilled f => Joined(Words.Billed, f.Land is { } billed ? tell.Land(billed) : null, Wet(f.Soaked), f.Invoice),
        TrackLooked f => Fill(Words.TrackLooked, ("skip", Wording.Say.Number(f.Skip.Percent, 1)), ("overlap", Wording.Say.Number(f.Overlap.Percent, 1)), ("n", Count(f.Passes))),
        WindSeen f => Joined(
            f.Gust > f.Sustained ? Fill(Words.Wind, ("steady", tell.Quick(f.Sustained)), ("gust", tell.Quick(f.Gust))) : Fill(Words.WindSteady, ("steady", tell.Quick(f.Sustained))),
            f.Place is { } place ? Fill(Words.At, ("place", place)) : null),
        NitrogenOn f => Fill(tell.Words.Feed.MarkNitrogen, ("n", Wording.Say.Number(f.Rate.PoundsPerAcre)), ("timing", Season.Crop.FeedSpeech.Name(f.Timing, tell.Words.Feed))),
        NutrientRead f => Fill(tell.Words.Feed.MarkRead, ("what", Season.Crop.FeedSpeech.Name(f.Reading, tell.Words.Feed)), ("value", Wording.Say.Figure(f.Value))),
        TopdressDecided f => f.Rate is { } rate ? Fill(tell.Words.Feed.TopdressYes, ("n", Wording.Say.Number(rate.PoundsPerAcre))) : tell.Words.Feed.TopdressNo,
        PestLooked { Seen: true, Damaged: { } share } f => Fill(tell.Words.Scout.MarkSeenShare, ("pest", Season.Crop.PestSpeech.Name(f.Pest, tell.Words.Scout)), ("n", Wording.Say.Number(share.Percent))),
        PestLooked f => Fill(f.Seen ? tell.Words.Scout.MarkSeen : tell.Words.Scout.MarkNot, ("pest", Season.Crop.PestSpeech.Name(f.Pest, tell.Words.Scout))),
        StandResponseSet f => Fill(tell.Words.Scout.MarkResponse, ("n", Count(f.Points.Count))),
        StageSeen f => Fill(tell.Words.Crop.MarkStage, ("stage", Season.Crop.StageSpeech.Name(f.Point, tell.Words.Crop))),
        StageTargetsSet f => Fill(tell.Words.Crop.MarkTargets, ("class", Season.Crop.StageSpeech.Class(f.Class, tell.Words.Crop)), ("pi", Wording.Say.Number(f.Targets.Initiation.Fahrenheit)), ("heading", Wording.Say.Number(f.Targets.Heading.Fahrenheit)), ("mature", Wording.Say.Number(f.Targets.Mature.Fahrenheit))),
        FloodWarmth f => Fill(tell.Words.Crop.MarkFlood, ("high", tell.Warm(f.High)), ("low", tell.Warm(f.Low)), ("day", tell.ShortDay(f.Day))),
        WeatherTaken f => Fill(tell.Words.Crop.MarkDays, ("n", Count(f.Days.Count)), ("source", f.Source)),
        NormalsTaken f => Fill(tell.Words.Crop.MarkNormals, ("n", Count(f.Months.Count)), ("source", f.Source)),
        ForecastHeard f => f.Source is { } source ? Fill(Words.Forecast, ("when", tell.NearMoment(f.Issued)), ("source", source)) : Fill(Words.ForecastBare, ("when", tell.NearMoment(f.Issued))),
        _ => null,
    };

    private string People(MarkFact fact) => fact switch
    {
        Told f => Joined(Fill(State(f.State), ("person", f.Person)), f.ByVoice ? Words.ByVoice : null),
        StepPinned f => Fill(Words.Pinned, ("task", StageNames.Of(f.Task, Words)), ("when", tell.NearMoment(f.Start))),
        StepUnpinned f => Fill(Words.Unpinned, ("task", StageNames.Of(f.Task, Words))),
        Overridden f => Joined(Fill(Words.Overrode, ("who", f.Who), ("reason", f.Reason)), f.Stop),
        PersonNamed f => Fill(Words.PersonNamed, ("name", f.Name), ("role", f.Role)),
        PlanIssued f => Joined(Fill(Words.PlanIssued, ("n", Count(f.Number))), Reason(f.Why)),
        Withdrawn => Words.TakenBack,
        UnknownFact f => Fill(Words.NewerSort, ("kind", f.Kind)),
        _ => throw new System.Diagnostics.UnreachableException("No words for " + fact.GetType().Name),
    };

    private string State(ToldState state) => state switch
    {
        ToldState.Told => Words.Told,
        ToldState.Heard => Words.Heard,
        ToldState.Agreed => Words.Agreed,
        _ => Words.NotReached,
    };

    private static string Hour(TimeOnly hour) => hour.ToString("HH:mm", CultureInfo.InvariantCulture);
}
