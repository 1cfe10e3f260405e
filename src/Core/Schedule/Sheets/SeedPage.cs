using Watersown.Seed;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>Puts a seed sheet on paper: what goes under water, what waits for the farm's call, what is hauled.</summary>
public static class SeedPage
{
    public static SheetPage Of(SeasonPlan plan, SeedSheet sheet, Language language)
    {
        var tell = new Telling(plan.State, language);
        var words = tell.Words.Seed;
        ImmutableArray<Block> blocks =
        [
            new Block.Banner([new Run(words.HoldDrain, Bold: true), new Run(" " + words.CallRule)]),
            .. Soak(sheet, tell),
            .. Drain(sheet, tell),
            .. Haul(sheet, tell),
            .. Lost(sheet, tell),
            new Block.Paragraph([new Run(Template.Fill(words.Factor, ("factor", Telling.Factor(sheet.WetFactor)))), new Run(" " + words.OneLot + " " + words.Bin, Bold: true), new Run(" " + words.Disinfect)]),
            new Block.Ticks([new Tick(words.Reading) { HasBox = false, Line = 90 }, new Tick(words.ReadingHours) { HasBox = false, Line = 60 }, new Tick(words.ReadBy) { HasBox = false, Line = 110 }]),
        ];
        return PageParts.Start(plan, tell, "seed-" + PageParts.DaySlug(sheet.Day), words.Kind, sheet.Place.Length > 0 ? sheet.Place : words.Warehouse) with
        {
            Lead = Template.Fill(words.Lead, ("day", tell.LongDay(sheet.Day))),
            Arrangements = [blocks],
        };
    }

    private static IEnumerable<Block> Soak(SeedSheet sheet, Telling tell)
    {
        var words = tell.Words.Seed;
        yield return new Block.Heading(words.Soak);
        var jobs = sheet.Jobs.Where(j => !j.Soaking).ToList();
        if (jobs.Count == 0)
        {
            yield return new Block.Paragraph([new Run(words.NoSoak)]);
            yield break;
        }

        yield return new Block.Grid(words.Soak,
            [
                new Column(words.CallBy), new Column(words.When), new Column(words.Batch), new Column(words.Lot), new Column(Template.Fill(words.DryWeight, ("unit", tell.MassUnit)), Setting.Right),
                new Column(words.For), new Column(words.Trailers), new Column(words.InSoakTick) { Room = 40 }, new Column(words.Done, Setting.Center),
            ],
            [.. jobs.Select(j => (ImmutableArray<Cell>)
            [
                Cell.Of(j.CallBy is { } by ? tell.NearMoment(by) : words.Called), Cell.Strong(tell.NearMoment(j.InSoak)), Cell.Of(j.Batch ?? words.BatchOpen), Cell.Of(LotOf(j, words)),
                Cell.Strong(Telling.Count(tell.Whole(j.Dry))), Cell.Of(string.Join(", ", j.Fields)), Cell.Of(Trailers(j, words)), Cell.Blank, Cell.Box,
            ])]);
    }

    private static IEnumerable<Block> Drain(SeedSheet sheet, Telling tell)
    {
        var words = tell.Words.Seed;
        yield return new Block.Heading(words.Drain);
        if (sheet.Jobs.All(j => j.Drained))
        {
            yield return new Block.Paragraph([new Run(words.NoDrain)]);
            yield break;
        }

        yield return new Block.Grid(words.Drain,
            [
                new Column(words.Batch), new Column(words.For), new Column(words.Planned), new Column(words.UnderWater, Setting.Right) { Most = 84 },
                new Column(words.State), new Column(words.DrainTick) { Room = 50 }, new Column(words.Done, Setting.Center),
            ],
            [.. sheet.Jobs.Where(j => !j.Drained).Select(j => (ImmutableArray<Cell>)
            [
                Cell.Strong(j.Batch ?? words.BatchOpen), Cell.Of(string.Join(", ", j.Fields)), Cell.Of(tell.NearMoment(j.Drain)),
                Cell.Of(Say.Number((j.Drain - j.InSoak).TotalHours, 1)), Cell.Strong(words.Hold), Cell.Blank, Cell.Box,
            ])]);
    }

    private static IEnumerable<Block> Haul(SeedSheet sheet, Telling tell)
    {
        var words = tell.Words.Seed;
        yield return new Block.Heading(Template.Fill(words.Haul, ("strip", sheet.Strip ?? words.TheStrip)));
        if (sheet.Jobs.IsEmpty)
        {
            yield return new Block.Paragraph([new Run(words.NoHaul)]);
            yield break;
        }

        (string, string) unit = ("unit", tell.MassUnit);
        yield return new Block.Grid(Template.Fill(words.Haul, ("strip", sheet.Strip ?? words.TheStrip)),
            [
                new Column(words.Leaves), new Column(words.AtStrip), new Column(words.Batch), new Column(words.For), new Column(words.Trailers), new Column(Template.Fill(words.WetWeight, unit), Setting.Right) { Most = 60 },
                new Column(words.UseBy), new Column(Template.Fill(words.ScaleSays, unit)) { Room = 46 }, new Column(words.GoneTick, Setting.Center),
            ],
            [.. sheet.Jobs.OrderBy(j => j.AtStrip).Select(j => (ImmutableArray<Cell>)
            [
                Cell.Of(j.Leaves is { } leaves ? tell.NearMoment(leaves) : tell.Words.Common.NotTold), Cell.Strong(j.AtStrip is { } at ? tell.NearMoment(at) : tell.Words.Common.NotTold),
                Cell.Of(j.Batch ?? words.BatchOpen), Cell.Of(string.Join(", ", j.Fields)), Cell.Of(Trailers(j, words)),
                Cell.Of(new Run(Telling.Count(tell.Whole(j.Soaked)), Bold: true), new Run(j.Weighed ? " " + words.Weighed : string.Empty)),
                Cell.Of(j.UseBy is { } use ? tell.NearMoment(use) : tell.Words.Common.NotTold), Cell.Blank, Cell.Box,
            ])]);
    }

    private static IEnumerable<Block> Lost(SeedSheet sheet, Telling tell)
    {
        if (sheet.Lost.IsEmpty) yield break;
        var words = tell.Words.Seed;
        yield return new Block.Heading(words.Lost);
        yield return new Block.Paragraph([new Run(string.Join("; ", sheet.Lost.Select(b => Template.Fill(words.LostLine,
            ("batch", b.Code), ("lot", b.Lot), ("weight", Telling.Count(tell.Whole(b.Dry))), ("unit", tell.MassUnit)))) + ".")]);
    }

    private static string LotOf(SeedJob job, SeedWords words) =>
        job.Lot ?? (job.Variety is { } variety ? Template.Fill(words.LotOpen, ("variety", variety)) : words.SeedUnknown);

    private static string Trailers(SeedJob job, SeedWords words) => !job.Trailers.IsEmpty
        ? string.Join(", ", job.Trailers)
        : Template.Fill(words.TrailersNeeded, ("n", job.TrailerCount is { } n ? Telling.Count(n) : "?"));
}
