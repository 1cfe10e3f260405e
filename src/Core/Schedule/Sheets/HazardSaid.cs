using Watersown.Land;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Says a hazard: how fresh the look at it is, and what a public file tells of it. Never that nothing else stands there.</summary>
public static class HazardSaid
{
    /// <summary>When somebody looked; an old look and none at all are said in capitals.</summary>
    public static string Seen(Hazard hazard, HazardLook look, Telling tell) => look switch
    {
        HazardLook.Never => tell.Words.Hazard.Never,
        HazardLook.Old => Template.Fill(tell.Words.Hazard.Old, ("day", tell.DayAndYear(hazard.Confirmed!.Value))),
        _ => Template.Fill(tell.Words.Hazard.Fresh, ("day", tell.DayAndYear(hazard.Confirmed!.Value))),
    };

    /// <summary>All that the public file says of it beyond place and height.</summary>
    public static string Listed(HazardListing listing, Telling tell)
    {
        var words = tell.Words.Hazard;
        var said = new List<string> { Template.Fill(words.FromFile, ("day", tell.DayAndYear(listing.FileOf)), ("number", listing.Id)), Around(listing, tell) };
        if (listing.TakenDown) said.Add(words.TakenDown);
        if (listing.Count > 1) said.Add(Template.Fill(words.Several, ("n", Telling.Count(listing.Count))));
        said.Add(listing.Verified ? words.Verified : words.Unverified);
        said.Add(listing.HeightWithin is { } off ? Template.Fill(words.HeightOff, ("distance", tell.Long(off))) : words.HeightOffUnknown);
        said.Add(Light(listing.Light, words));
        said.Add(Marking(listing.Marking, words));
        return string.Join(", ", said);
    }

    /// <summary>The little of it that a sheet of paper has room for.</summary>
    public static string ListedShort(HazardListing listing, Telling tell) =>
        Template.Fill(tell.Words.Hazard.FromFile, ("day", tell.DayAndYear(listing.FileOf)), ("number", listing.Id)) + ", " + Around(listing, tell) + (listing.TakenDown ? ", " + tell.Words.Hazard.TakenDown : string.Empty);

    public static string Light(HazardLight light, HazardWords words) => light switch
    {
        HazardLight.Unknown => words.LightUnknown,
        HazardLight.None => words.LightNone,
        HazardLight.Red => words.LightRed,
        HazardLight.MediumWhiteAndRed => words.LightMediumWhiteAndRed,
        HazardLight.HighWhiteAndRed => words.LightHighWhiteAndRed,
        HazardLight.MediumWhite => words.LightMediumWhite,
        HazardLight.HighWhite => words.LightHighWhite,
        HazardLight.Flood => words.LightFlood,
        HazardLight.Catenary => words.LightCatenary,
        HazardLight.RedTogether => words.LightRedTogether,
        HazardLight.LitSomehow => words.LightLit,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    public static string Marking(HazardMarking marking, HazardWords words) => marking switch
    {
        HazardMarking.Unknown => words.MarkingUnknown,
        HazardMarking.None => words.MarkingNone,
        HazardMarking.OrangeAndWhite => words.MarkingOrangeAndWhite,
        HazardMarking.White => words.MarkingWhite,
        HazardMarking.Marked => words.MarkingMarked,
        HazardMarking.Flag => words.MarkingFlag,
        HazardMarking.Spheres => words.MarkingSpheres,
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static string Around(HazardListing listing, Telling tell) =>
        listing.Within is { } within ? Template.Fill(tell.Words.Hazard.Around, ("distance", tell.Far(within))) : tell.Words.Hazard.AroundUnknown;
}
