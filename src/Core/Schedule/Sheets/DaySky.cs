using Watersown.Weather;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Wind with its age, and seed with its age.</summary>
internal static class DaySky
{
    public static IEnumerable<Block> Wind(SeasonPlan plan, DaySheet sheet, Telling tell)
    {
        var words = tell.Words.Day;
        var plane = plan.State.Aeroplanes.FirstOrDefault();
        yield return new Block.Heading(words.Wind);
        if (sheet.Wind.IsEmpty) yield return new Block.Paragraph([new Run(words.WindNone)]);
        else
        {
            yield return new Block.Grid(words.Wind,
                [
                    new Column(words.WindWhen), new Column(words.WindSteady, Setting.Right), new Column(words.WindGust, Setting.Right), new Column(words.WindFrom), new Column(words.WindAgainst), new Column(words.WindBasis),
                ],
                [.. sheet.Wind.Select(w => (ImmutableArray<Cell>)
                [
                    Cell.Of(tell.NearMoment(w.At)), Cell.Strong(tell.Quick(w.Sustained)), Cell.Of(tell.Quick(w.Gust)), Cell.Of(w.From is { } from ? Telling.Toward(from) : tell.Words.Common.NotTold),
                    plane is null ? Cell.Of("–") : FlyingWindows.TooWindy(w, plane) ? Cell.Strong(words.WindOver) : Cell.Of(words.WindWithin), Cell.Of(Basis(w, plan.State.Now, tell)),
                ])]);
        }

        var limits = plane is null ? string.Empty : Template.Fill(words.WindLimits, ("wind", tell.Quick(plane.WindLimit)), ("gust", tell.Quick(plane.GustLimit))) + ". ";
        yield return new Block.Paragraph([new Run(limits + words.WindCaution)]);
    }

    public static IEnumerable<Block> Seed(SeasonPlan plan, DaySheet sheet, Telling tell)
    {
        var words = tell.Words.Day;
        yield return new Block.Heading(words.Seed);
        if (sheet.Seed.IsEmpty)
        {
            yield return new Block.Paragraph([new Run(words.SeedNone)]);
            yield break;
        }

        yield return new Block.Grid(words.Seed,
            [
                new Column(words.Batch), new Column(tell.Words.Seed.Lot), new Column(Template.Fill(words.DryWeight, ("unit", tell.MassUnit)), Setting.Right), new Column(words.Age), new Column(words.UseBy), new Column(words.For),
            ],
            [.. sheet.Seed.Select(s => (ImmutableArray<Cell>)
            [
                Cell.Strong(s.Batch.Code), Cell.Of(s.Batch.Lot), Cell.Of(Telling.Count(tell.Whole(s.Batch.Dry))), Cell.Of(Age(s, plan.State.Now, tell)),
                Cell.Of(s.UseBy is { } by ? tell.NearMoment(by) : "–"), s.Fields.IsEmpty ? Cell.Strong(words.LostSeed) : Cell.Of(string.Join(", ", s.Fields)),
            ])]);
    }

    private static string Basis(Wind wind, DateTimeOffset now, Telling tell) => wind.Issued is { } issued
        ? Template.Fill(tell.Words.Day.WindForecast, ("when", tell.NearMoment(issued)), ("age", tell.Age(issued, now)))
        : Template.Fill(tell.Words.Day.WindSeen, ("age", tell.Age(wind.At, now)));

    private static string Age(SeedAge seed, DateTimeOffset now, Telling tell)
    {
        var words = tell.Words.Day;
        if (seed.Batch.Drained is { } off && off <= now) return Template.Fill(words.AgeDrained, ("hours", Say.Number((now - off).TotalHours, 1)));
        return seed.Batch.InSoak <= now
            ? Template.Fill(words.AgeSoaking, ("hours", Say.Number((now - seed.Batch.InSoak).TotalHours, 1)))
            : Template.Fill(words.AgeDue, ("when", tell.NearMoment(seed.Batch.InSoak)));
    }
}
