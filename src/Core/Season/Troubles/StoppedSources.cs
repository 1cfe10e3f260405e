using Watersown.Land;
using Watersown.Schedule;
using Watersown.Water;

namespace Watersown.Season.Troubles;

/// <summary>Works out what a stopped source does to the fields that hang on it.</summary>
public static class StoppedSources
{
    /// <summary>How far the highest ground of a laser-levelled check stands above its mean, where the farm has not said.</summary>
    [Source(nameof(Sources.FarmDefault), "0.1 ft")]
    public static WaterDepth HighSpotAllowance { get; } = WaterDepth.FromInches(1.2);

    /// <summary>Fills that were to begin within so long count as lost with it.</summary>
    [Source(nameof(Sources.FarmDefault), "five days")]
    public static TimeSpan FillsAhead { get; } = TimeSpan.FromDays(5);

    /// <summary>The source as it stands; if it still runs, as it would be had it stopped this moment. None where the farm has no such source.</summary>
    /// <param name="book">The season as it stands.</param>
    /// <param name="plan">The plan, if there is one.</param>
    /// <param name="code">Source code.</param>
    /// <param name="loss">Another loss to reckon with; each field's own where not given.</param>
    [Source(nameof(Sources.WaterBalance), "(depth − high spot) / loss, from when the water stopped or the depth was read, the later")]
    public static StoppedSource? Of(SeasonBook book, SeasonPlan? plan, string code, DepthRate? loss = null)
    {
        var state = book.State;
        if (state.Farm.Sources.FirstOrDefault(s => string.Equals(s.Code, code, StringComparison.OrdinalIgnoreCase)) is not { } source) return null;
        var since = source.Down && book.Sources.FirstOrDefault(s => s.Code == source.Code)?.SwitchedAt is { } at ? at.ToOffset(state.Offset) : state.Now;
        var hanging = state.Farm.Fields.Where(f => FieldSource.First(plan, f) == source.Code).ToImmutableArray();
        var lasting = hanging.Where(f => state.Season(f.Code).Stage is FieldStage.Full or FieldStage.Sown).Select(f => Last(book, plan, f, source, since, loss));
        var stopped = new StoppedSource(source, since)
        {
            Fields = [.. lasting.OrderBy(f => f.BareAt ?? DateTimeOffset.MaxValue).ThenBy(f => f.Depth is null).ThenBy(f => f.Field.Code, StringComparer.Ordinal)],
            Fills = [.. hanging.Where(f => IsFilling(state, plan, f)).Select(f => LostFills.Of(book, plan, f, source)).OrderBy(f => f.Season.Stage != FieldStage.Flooding).ThenBy(f => f.Sow ?? DateTimeOffset.MaxValue)],
            Calls = [],
        };
        return stopped with { Calls = StoppedCalls.Of(book, stopped) };
    }

    /// <summary>Other running sources that reach a field.</summary>
    internal static ImmutableArray<string> Others(SeasonState state, Field field, WaterSource source) =>
        [.. field.Sources.Where(s => s != source.Code && state.Farm.Source(s) is { Down: false })];

    private static bool IsFilling(SeasonState state, SeasonPlan? plan, Field field) => state.Season(field.Code).Stage switch
    {
        FieldStage.Flooding => true,
        FieldStage.Full or FieldStage.Sown => false,
        _ => plan?.Task(field.Code, PlanTaskKind.Fill) is { } fill && fill.Start < state.Now + FillsAhead,
    };

    private static FieldLasting Last(SeasonBook book, SeasonPlan? plan, Field field, WaterSource source, DateTimeOffset since, DepthRate? loss)
    {
        var state = book.State;
        var season = state.Season(field.Code);
        var loses = loss ?? FieldWater.Of(state, field.Code).Job.Loss;
        var driest = Readings(book, field, season).Select(r => (r.Depth, r.At, r.Check, r.High, Time: DryOut.TimeToBare(r.Depth, r.High, loses)))
            .OrderBy(r => r.Time ?? TimeSpan.MaxValue).Take(1).ToImmutableArray();
        var high = driest.IsEmpty ? HighestOf(field) : driest[0].High;
        var lasting = new FieldLasting(field, season)
        {
            HighSpot = high,
            Loss = loses,
            Sow = season.SownAt is null && season.Stage != FieldStage.Sown ? plan?.Task(field.Code, PlanTaskKind.Sow)?.Start : null,
            OtherSources = Others(state, field, source),
            Working = Working.Empty,
        };
        if (driest.IsEmpty) return lasting;
        var first = driest[0];
        var from = first.At is { } read && read > since ? read : since;
        return lasting with
        {
            Depth = first.Depth,
            DepthAt = first.At,
            Check = first.Check,
            Lasts = first.Time,
            BareAt = first.Time is { } time ? from + time : null,
            Working = Show(lasting, first.Depth, first.At, first.Time, from, loss is not null),
        };
    }

    /// <summary>The newest reading of each check, and of the whole field for the checks that nobody read since.</summary>
    private static IEnumerable<(WaterDepth Depth, DateTimeOffset? At, int? Check, WaterDepth High)> Readings(SeasonBook book, Field field, FieldSeason season)
    {
        var told = book.Field(field.Code);
        var whole = told.Depth?.At;
        var own = told.Checks.Where(c => c.Depth is { } depth && (whole is not { } at || depth.At > at)).ToImmutableArray();
        foreach (var check in own)
        {
            var high = field.Basins.FirstOrDefault(b => b.Number == check.Number)?.HighSpot ?? HighSpotAllowance;
            yield return (check.Depth!.Depth, check.Depth.At, check.Number, high);
        }

        if (told.Depth is { } read) yield return (read.Depth, read.At, null, HighestOf(field));
        else if (own.IsEmpty && season.Depth is { } known) yield return (known, season.AsOf, null, HighestOf(field));
    }

    private static WaterDepth HighestOf(Field field) => field.Basins.Select(b => b.HighSpot).Max() ?? HighSpotAllowance;

    private static Working Show(FieldLasting field, WaterDepth depth, DateTimeOffset? read, TimeSpan? time, DateTimeOffset from, bool tried) => Working.Empty
        .Given("d", "depth", depth.Inches, "in", "stick, field " + field.Field.Code, read)
        .Given("s", "highest ground above the mean", field.HighSpot.Inches, "in", "farm, else 0.1 ft")
        .Given("e", "loss", field.Loss.InchesPerDay, "in/day", tried ? "typed" : "evaporation + seepage of its soil")
        .Given("z", "no water since", Datum.Moment(from), string.Empty, "when it stopped, or the depth was read, the later")
        .Step("t", "until the first bare soil", Datum.Of(time?.TotalDays), "days", time is null ? "never: nothing is lost" : "(d − s) / e", Sources.WaterBalance)
        .Step("b", "first bare soil", time is { } span ? Datum.Moment(from + span) : Datum.None, string.Empty, "z + t, no rain", Sources.Arithmetic);
}
