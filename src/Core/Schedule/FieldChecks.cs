using System.Globalization;

namespace Watersown.Schedule;

/// <summary>Whether the marks of one field's season can be true together.</summary>
internal static class FieldChecks
{
    public static void Check(SeasonState state, int index, ImmutableArray<Problem>.Builder problems)
    {
        var season = state.Fields[index];
        var field = state.Farm.Fields[index];
        string Where(string key) => Place.Of("fields", index, field.Name, key);
        foreach (var (key, at) in new[] { ("first_water", season.FirstWater), ("full_since", season.FullSince), ("sown_at", season.SownAt), ("as_of", season.AsOf) })
        {
            if (at is { } moment) StateChecks.InFuture(moment, state, Where(key), problems);
        }

        if (season.AquaOn is { } aqua && aqua > StateChecks.Today(state))
            problems.Add(StateProblems.InFuture.At(Where("aqua_on"), ("value", StateChecks.Day(aqua)), ("limit", StateChecks.Day(StateChecks.Today(state)))));
        if (season.ChecksWet is { } wet && !field.Basins.IsEmpty && wet > field.Basins.Length)
            problems.Add(StateProblems.TooManyWet.At(Where("checks_wet"), ("value", wet.ToString(CultureInfo.InvariantCulture)), ("limit", field.Basins.Length.ToString(CultureInfo.InvariantCulture))));
        CheckOrder(season, Where, problems);
        CheckStage(season, Where, problems);
    }

    /// <summary>The usual order of marks: aqua, first water, full, sown.</summary>
    private static void CheckOrder(FieldSeason season, Func<string, string> where, ImmutableArray<Problem>.Builder problems)
    {
        var marks = new List<(string Key, DateTimeOffset At)>();
        if (season.FirstWater is { } water) marks.Add(("first_water", water));
        if (season.FullSince is { } full) marks.Add(("full_since", full));
        if (season.SownAt is { } sown) marks.Add(("sown_at", sown));
        for (var i = 1; i < marks.Count; i++)
        {
            if (marks[i].At < marks[i - 1].At)
                problems.Add(StateProblems.OutOfOrder.At(where(marks[i].Key), ("value", StateChecks.Moment(marks[i].At)), ("other", marks[i - 1].Key), ("limit", StateChecks.Moment(marks[i - 1].At))));
        }

        if (marks.Count > 0 && season.AquaOn is { } aqua && new DateOnly(marks[0].At.Year, marks[0].At.Month, marks[0].At.Day) < aqua)
            problems.Add(StateProblems.OutOfOrder.At(where(marks[0].Key), ("value", StateChecks.Moment(marks[0].At)), ("other", "aqua_on"), ("limit", StateChecks.Day(aqua))));
    }

    private static void CheckStage(FieldSeason season, Func<string, string> where, ImmutableArray<Problem>.Builder problems)
    {
        var told = SeasonDefaults.StageFrom(season.SownAt, season.FullSince, season.FirstWater, season.ChecksWet, season.AquaOn);
        if (told < FieldStage.Flooding || season.Stage >= told) return;
        var fact = told switch { FieldStage.Sown => "sown_at", FieldStage.Full => "full_since", _ => season.FirstWater is null ? "checks_wet" : "first_water" };
        problems.Add(StateProblems.StageAgainstFact.At(where("stage"), ("value", StageWords.Of(season.Stage)), ("limit", StageWords.Of(told)), ("fact", fact)));
    }
}
