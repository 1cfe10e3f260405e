namespace Watersown.Season.Ground;

/// <summary>What is put down for a field on the evening on which a desk begins, when little more than names is known.</summary>
public static class FirstEvening
{
    /// <summary>
    /// That the seed of a field is in soak: all of it, of the variety meant for it, in a batch named after the field. Its lot and
    /// weights can be put right when the warehouse says them.
    /// </summary>
    /// <param name="book">The season as it stands.</param>
    /// <param name="code">Field code.</param>
    public static BatchInSoak InSoak(SeasonBook book, string code)
    {
        var season = book.State.Season(code);
        return new BatchInSoak(Free(book, "B-" + code)) { Variety = season.Variety, Dry = season.Rate * book.State.Farm.Field(code).Net, MeantFor = [code] };
    }

    /// <summary>Seed meant for a field is in soak or drained, as far as anybody has said; variety and weight need not be known.</summary>
    /// <param name="book">The season as it stands.</param>
    /// <param name="code">Field code.</param>
    public static bool IsSoaking(SeasonBook book, string code) => book.Story.Any(l => l.Standing == Standing.Stands
        && l.Mark.Fact is BatchInSoak soak && soak.MeantFor.Any(f => string.Equals(f, code, StringComparison.OrdinalIgnoreCase))
        && book.Batch(soak.Batch) is { Place: BatchPlace.InSoak or BatchPlace.Drained });

    private static string Free(SeasonBook book, string wanted)
    {
        var name = wanted;
        for (var i = 2; book.Batch(name) is { Place: not BatchPlace.Called }; i++) name = wanted + "-" + Wording.Say.Number(i);
        return name;
    }
}
