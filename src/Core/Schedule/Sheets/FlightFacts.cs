using Watersown.Flight;
using Watersown.Wording;

namespace Watersown.Schedule.Sheets;

/// <summary>The figures of a flight, each with its sum, source or age beside it.</summary>
internal static class FlightFacts
{
    /// <summary>Dry and wet rate side by side, the wet one framed heavily: it is what the gate is set to.</summary>
    public static Block.Figures Rates(FlightSheet sheet, Telling tell) => new(
    [
        new Figure(tell.Rate(sheet.DryRate), [new Run(tell.RateUnit + " "), new Run(tell.Words.Flight.DryRate, Bold: true)], Heavy: false),
        new Figure(tell.Rate(sheet.WetRate), [new Run(tell.RateUnit + " "), new Run(tell.Words.Flight.WetRate, Bold: true)], Heavy: true),
    ]);

    public static Block.Facts All(FlightSheet sheet, Telling tell)
    {
        var words = tell.Words.Flight;
        return new Block.Facts(words.Caption,
        [
            Acres(sheet, tell),
            new Fact(words.Seed, Seed(sheet, tell), Identity(sheet.Seed, words)),
            new Fact(words.DrySeed, Telling.Count(tell.Whole(sheet.Dry)) + " " + tell.MassUnit + " " + tell.Words.Common.Dry, DrySum(sheet, tell)),
            new Fact(words.WetSeed, Telling.Count(tell.Whole(sheet.Soaked)) + " " + tell.MassUnit + " " + tell.Words.Common.Wet, FactorNote(sheet, words)),
            .. UseBy(sheet, tell),
            FromStrip(sheet, tell),
            Water(sheet, tell),
            new Fact(words.Time, tell.Hours(sheet.FlyingTime), Template.Fill(words.TimeNote,
                ("loads", Telling.Count(sheet.Loads.Count)), ("speed", tell.Quick(sheet.Aeroplane.Working)))),
            new Fact(words.Limits, Template.Fill(words.LimitsValue, ("wind", tell.SpeedNumber(sheet.Aeroplane.WindLimit)), ("gust", tell.Quick(sheet.Aeroplane.GustLimit))),
                sheet.AeroplaneKnown ? words.LimitsNote : words.AeroplaneGuess),
        ]);
    }

    private static Fact Acres(FlightSheet sheet, Telling tell)
    {
        var words = tell.Words.Flight;
        var gross = sheet.Field.Gross is { } g ? Template.Fill(words.Gross, ("gross", tell.Land(g))) : words.GrossUnknown;
        return sheet.Part.Of == 1
            ? new Fact(words.Acres, tell.Land(sheet.Land), words.Net + ", " + gross)
            : new Fact(words.Acres, tell.Land(sheet.Land), Template.Fill(words.Share, ("part", tell.Land(sheet.Land)), ("all", tell.Land(sheet.Field.Net))) + "; " + gross);
    }

    private static string Seed(FlightSheet sheet, Telling tell) => sheet.Seed.Lot ?? sheet.Seed.Variety ?? tell.Words.Common.NotTold;

    private static string Identity(FlightSeed seed, FlightWords words)
    {
        var parts = new List<string>();
        if (seed is { Lot: { } lot, Variety: { } variety } && !lot.StartsWith(variety, StringComparison.Ordinal)) parts.Add(Template.Fill(words.Variety, ("variety", variety)));
        parts.Add(seed.Batch is { } batch ? Template.Fill(words.Batch, ("batch", batch)) : words.BatchNotCalled);
        if (!seed.Trailers.IsEmpty) parts.Add(Template.Fill(words.Trailer, ("trailers", string.Join(", ", seed.Trailers))));
        else if (seed.TrailerCount == 1) parts.Add(words.OneTrailer);
        else if (seed.TrailerCount is { } count) parts.Add(Template.Fill(words.TrailerCount, ("n", Telling.Count(count))));
        return string.Join(", ", parts);
    }

    private static string DrySum(FlightSheet sheet, Telling tell)
    {
        var words = tell.Words.Flight;
        var laid = sheet.Dry.Kilograms / sheet.Land.SquareMeters;
        var off = Math.Abs((laid / sheet.DryRate.KilogramsPerSquareMeter) - 1);
        return off <= 0.005
            ? Template.Fill(words.DrySum, ("acres", tell.Land(sheet.Land)), ("rate", tell.Rate(sheet.DryRate)))
            : Template.Fill(words.DryOff, ("rate", tell.FineRate(SeedRate.FromKilogramsPerSquareMeter(laid))), ("unit", tell.RateUnit), ("asked", tell.Rate(sheet.DryRate)));
    }

    private static string FactorNote(FlightSheet sheet, FlightWords words) => Template.Fill(
        sheet.FactorBasis switch
        {
            WetFactorBasis.ScaleTicket => words.FactorTicket,
            WetFactorBasis.Lot => words.FactorLot,
            WetFactorBasis.Farm => words.FactorFarm,
            _ => throw new System.Diagnostics.UnreachableException(),
        },
        ("factor", Telling.Factor(sheet.WetFactor)));

    private static IEnumerable<Fact> UseBy(FlightSheet sheet, Telling tell)
    {
        if (sheet.Seed.UseBy is { } by) yield return new Fact(tell.Words.Flight.UseBy, tell.Moment(by), tell.Words.Flight.UseByNote);
    }

    private static Fact FromStrip(FlightSheet sheet, Telling tell)
    {
        var words = tell.Words.Flight;
        var note = Template.Fill(words.FromStripNote, ("strip", sheet.Strip ?? words.TheStrip));
        return (sheet.Distance, sheet.Direction) switch
        {
            ({ } far, { } toward) => new Fact(words.FromStrip, tell.Far(far) + ", " + Telling.Toward(toward), note),
            ({ } far, null) => new Fact(words.FromStrip, tell.Far(far), sheet.Strip ?? words.TheStrip),
            _ => new Fact(words.FromStrip, tell.Words.Common.NotTold, sheet.Strip ?? string.Empty),
        };
    }

    private static Fact Water(FlightSheet sheet, Telling tell)
    {
        var words = tell.Words.Flight;
        var notes = new List<string>();
        if (sheet.FullSince is { } since) notes.Add(Template.Fill(words.FullSince, ("day", tell.ShortDay(since))));
        else if (sheet.FullBy is { } by) notes.Add(Template.Fill(words.FullBy, ("when", tell.NearMoment(by))));
        if (sheet is { Depth: not null, WaterAsOf: { } told }) notes.Add(Template.Fill(words.Told, ("when", tell.NearMoment(told))));
        return new Fact(words.Water, sheet.Depth is { } depth ? tell.Depth(depth) : tell.Words.Common.NotTold, string.Join(", ", notes));
    }
}
