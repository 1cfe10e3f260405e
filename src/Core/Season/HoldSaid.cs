using Watersown.Holds;
using Watersown.Schedule.Sheets;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>Treatments, holds and wishes in the reader's words.</summary>
public static class HoldSaid
{
    /// <summary>A product as the user wrote it, with which time it is where it comes again.</summary>
    public static string Name(Treatment treatment) => treatment.Round == 1 ? treatment.Product : treatment.Product + " (" + Wording.Say.Number(treatment.Round) + ")";

    /// <summary>A day, or from which to which.</summary>
    public static string Days(DaySpan days, Telling tell) => days.From == days.Until
        ? tell.ShortDay(days.From)
        : Template.Fill(tell.Words.Hold.To, ("from", tell.ShortDay(days.From)), ("until", tell.ShortDay(days.Until)));

    public static string Days(IEnumerable<DaySpan> days, Telling tell) => string.Join(", ", days.Select(d => Days(d, tell)));

    /// <summary>What is wanted.</summary>
    public static string Wish(WaterWish wish, Treatment? treatment, HoldWords words) => wish switch
    {
        WaterWish.LowerFor when treatment is not null => Template.Fill(words.WantLowerFor, ("product", Name(treatment))),
        WaterWish.DrainFor when treatment is not null => Template.Fill(words.WantDrainFor, ("product", Name(treatment))),
        WaterWish.Lower or WaterWish.LowerFor => words.WantLower,
        WaterWish.Peg => words.WantPeg,
        _ => words.WantDrain,
    };

    /// <summary>A treatment with its hold.</summary>
    public static string Treatment(TreatmentTold told, FieldHold? hold, Telling tell)
    {
        var (words, what) = (tell.Words.Hold, told.What);
        var window = Days(new DaySpan(what.From, what.Until), tell);
        if (hold is null) return Template.Fill(what.Rule.Days is null ? words.NoHoldTold : words.HoldsNothing, ("product", Name(what)), ("window", window));
        var (last, release) = (tell.ShortDay(hold.Held.Until), tell.ShortDay(hold.Release));
        return told.State == TreatmentState.Applied
            ? Template.Fill(words.HeldThrough, ("product", Name(what)), ("from", window), ("last", last), ("release", release))
            : Template.Fill(words.WouldHold, ("product", Name(what)), ("window", window), ("last", last), ("release", release));
    }

    /// <summary>Where a wish meets holds: what is wanted, what holds, and the days left.</summary>
    public static string Collision(HoldCollision collision, Telling tell)
    {
        var words = tell.Words.Hold;
        var holds = string.Join(' ', collision.Holds.Select(h => Template.Fill(words.HoldsOver, ("product", Name(h.Treatment)), ("last", tell.ShortDay(h.Held.Until)))));
        return Template.Fill(words.Meets, ("field", collision.Want.Field), ("want", Wish(collision.Want.Wish, collision.Want.For, words)), ("window", Days(collision.Want.Window, tell)), ("holds", holds));
    }

    /// <summary>The days that are left of what is wanted.</summary>
    public static string Left(HoldCollision collision, Telling tell) =>
        collision.Free.IsEmpty ? tell.Words.Hold.NoDayLeft : Template.Fill(tell.Words.Hold.DaysLeft, ("days", Days(collision.Free, tell)));

    /// <summary>The days left where water is moved within the field; none where no rule lets that.</summary>
    public static string? Within(HoldCollision collision, Telling tell) => collision.Within is { } days
        ? Template.Fill(tell.Words.Hold.Within,
            ("product", string.Join(", ", collision.Holds.Where(h => h.Treatment.Rule.MovesWithin).Select(h => Name(h.Treatment)))),
            ("days", days.IsEmpty ? tell.Words.Hold.NoDayLeft : Days(days, tell)))
        : null;

    /// <summary>What is missing or odd about a treatment, each in a few words.</summary>
    public static IEnumerable<string> Warnings(TreatmentTold told, HoldNotice? notice, HoldWords words)
    {
        if (told.What.Paper.LabelPhoto is null) yield return words.NoPhoto;
        if (told.What.Paper.EnteredBy is null) yield return words.NoReader;
        if (told.What.Rule.Days is > 45) yield return words.LongHold;
        if (notice?.FileBy is not { } by) yield break;
        if (told.What.Paper.NoticeFiled is not { } filed) yield return words.NoticeOpen;
        else if (filed > by) yield return words.NoticeLate;
    }
}
