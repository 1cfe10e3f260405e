using Watersown.Flight;
using Watersown.Flight.Patterns;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Puts a pattern test on one page: the swath it bears out in both ways of flying, three drawings, and what stands behind them.</summary>
public static class PatternPage
{
    private const double DrawingLeast = 90;

    private const double DrawingMost = 150;

    public static SheetPage Of(SeasonPlan plan, Aeroplane aeroplane, TrayTest test, Language language) =>
        Of(plan, aeroplane, TrayReading.Of(test, new TrayAsk()), language);

    public static SheetPage Of(SeasonPlan plan, Aeroplane aeroplane, TrayAnswer answer, Language language)
    {
        var tell = new Telling(plan.State, language);
        var words = tell.Words.Pattern;
        return PageParts.Start(plan, tell, "pattern-" + PageParts.Slug(aeroplane.Name), words.Kind, words.Title) with
        {
            Lead = Template.Fill(words.LeadOf, ("aeroplane", aeroplane.Name), ("day", tell.DayAndYear(answer.Test.Day)), ("seed", answer.Test.Seed ?? words.SeedUntold),
                ("passes", Telling.Count(answer.Test.Passes.Length)), ("trays", Telling.Count(answer.Trays.Length))),
            Arrangements = [[.. Head(answer, tell), .. Drawings(answer, aeroplane, tell), Facts(answer, aeroplane, tell)], [.. Head(answer, tell), .. Beside(Drawings(answer, aeroplane, tell)), Facts(answer, aeroplane, tell)]],
        };
    }

    private static IEnumerable<Block> Head(TrayAnswer answer, Telling tell)
    {
        var words = tell.Words.Pattern;
        yield return new Block.Banner([new Run(words.Holds, Bold: true), new Run(" " + words.NoPeople + " " + tell.Words.Flight.PilotDecides)]);
        yield return new Block.Heading(Template.Fill(words.Steady, ("limit", Say.Figure(answer.Ask.Limit.Percent)), ("off", PatternSaid.Off(answer.Ask.Steering, tell))));
        yield return new Block.Figures([Swath(answer.OneWay, FlyingMode.OneWay, tell), Swath(answer.BackAndForth, FlyingMode.BackAndForth, tell)]);
        yield return new Block.Paragraph([new Run(PatternSaid.Move(answer, tell), Bold: answer.Offset is not null)]);
    }

    // Two of the drawings side by side, where three below each other take too much paper.
    private static IEnumerable<Block> Beside(ImmutableArray<Block> drawings) => [new Block.Side([.. drawings.Take(2)], [.. drawings.Skip(4)], Fraction.FromPercent(50)), .. drawings.Skip(2).Take(2)];

    /// <summary>The three drawings of a test.</summary>
    private static ImmutableArray<Block> Drawings(TrayAnswer answer, Aeroplane aeroplane, Telling tell)
    {
        var (swath, mode) = answer.BackAndForth.Steady is { } back ? (back, FlyingMode.BackAndForth) : (answer.OneWay.Steady ?? aeroplane.Swath, FlyingMode.OneWay);
        return
        [
            new Block.Heading(tell.Words.Pattern.TraysTitle),
            new Block.Picture((w, h) => PatternDrawings.Trays(answer, tell, w, h), DrawingLeast, DrawingMost),
            new Block.Heading(Template.Fill(tell.Words.Pattern.LaidTitle, ("swath", PatternSaid.Swath(swath, tell)), ("mode", PatternSaid.Mode(mode, tell.Words.Pattern)))),
            new Block.Picture((w, h) => PatternDrawings.Laid(answer, (swath, mode), tell, w, h), DrawingLeast, DrawingMost),
            new Block.Heading(tell.Words.Pattern.CurveTitle),
            new Block.Picture((w, h) => PatternDrawings.Curve(answer, tell, w, h), DrawingLeast, DrawingMost),
        ];
    }

    /// <summary>What stands behind a test, one line each.</summary>
    private static Block.Facts Facts(TrayAnswer answer, Aeroplane aeroplane, Telling tell)
    {
        var words = tell.Words.Pattern;
        return new Block.Facts(words.Says,
        [
            new Fact(words.OneWay, Widest(answer.OneWay, tell), PatternSaid.Behind(answer.OneWay, tell)),
            new Fact(words.BackForth, Widest(answer.BackAndForth, tell), PatternSaid.Behind(answer.BackAndForth, tell)),
            Flown(answer, aeroplane, tell),
            new Fact(words.Half, answer.HalfMean is { } half ? PatternSaid.Swath(half, tell) : words.None, string.Empty),
            new Fact(words.Middle, PatternSaid.Side(answer.Middle, tell), string.Empty),
            new Fact(words.Laid, Say.Number(answer.Pattern.PerMeter.Kilograms * 1000) + " g/m", answer.Closure is { } closure ? Template.Fill(words.Closure, ("percent", Say.Number(closure.Percent))) : words.NoGate),
            new Fact(words.Chance, answer.Test.ThousandGrains is null ? words.ChanceIn : words.ChanceOut, Template.Fill(words.LimitBasis, ("limit", Say.Figure(answer.Ask.Limit.Percent)))),
            new Fact(words.Check, Template.Fill(words.CheckOff, ("points", Say.Number((Math.Floor(answer.FourierDifference.Percent * 1000) + 1) / 1000, 3))), string.Empty),
        ]);
    }

    private static Fact Flown(TrayAnswer answer, Aeroplane aeroplane, Telling tell)
    {
        var words = tell.Words.Pattern;
        var (way, back) = (answer.Pattern.Joined(aeroplane.Swath, FlyingMode.OneWay).Cv, answer.Pattern.Joined(aeroplane.Swath, FlyingMode.BackAndForth).Cv);
        return new Fact(Template.Fill(words.AtSwath, ("swath", PatternSaid.Swath(aeroplane.Swath, tell))), Template.Fill(words.AtSwathIs, ("oneWay", Say.Number(way.Percent)), ("backForth", Say.Number(back.Percent))), string.Empty);
    }

    private static string Widest(ModeAnswer mode, Telling tell) => mode.Steady is { } steady ? PatternSaid.Swath(steady, tell) : tell.Words.Pattern.None;

    private static Figure Swath(ModeAnswer mode, FlyingMode flown, Telling tell) =>
        new(mode.Steady is { } steady ? PatternSaid.Swath(steady, tell) : "–", [new Run(tell.Words.Pattern.Swath + ", "), new Run(PatternSaid.Mode(flown, tell.Words.Pattern), Bold: true)], Heavy: flown == FlyingMode.BackAndForth);
}
