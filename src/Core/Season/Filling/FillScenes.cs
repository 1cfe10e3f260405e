using Watersown.Land;
using Watersown.Schedule;
using Watersown.Season.Boards;
using Watersown.Water;
using Watersown.Water.Flood;

namespace Watersown.Season.Filling;

/// <summary>Works out how a field goes on filling, and lays beside it what people have seen.</summary>
public static class FillScenes
{
    /// <summary>How far ahead a flood is followed at most: a field that takes longer is no plan.</summary>
    private static readonly TimeSpan furthest = TimeSpan.FromDays(60);

    /// <summary>Shown of a flood that never covers the field.</summary>
    private static readonly TimeSpan never = TimeSpan.FromDays(5);

    private static readonly TimeSpan hour = TimeSpan.FromHours(1);

    /// <summary>The scene of one field at the flow that its source can spare for it.</summary>
    /// <param name="book">The season as it stands.</param>
    /// <param name="plan">The plan in force, which says where the water comes from.</param>
    /// <param name="field">The field.</param>
    /// <param name="tried">Another flow into the field, tried out; the source's where not told.</param>
    [Source(nameof(Sources.WaterBalance), "the flood of the field's checks from the moment of the book on")]
    public static FillScene Of(SeasonBook book, SeasonPlan? plan, Field field, FlowRate? tried = null)
    {
        var state = book.State;
        var supply = FillSupply.Of(state, plan, field);
        ImmutableArray<FlowStep> steps = tried is { } own ? [new FlowStep(TimeSpan.Zero, own)] : supply.Flow;
        var flow = steps.IsEmpty ? FlowRate.Zero : steps[0].Flow;
        var network = FieldFlood.Network(state, field.Code, supply.Source ?? field.Code, steps);
        // Followed past the hour that the balance of the whole field tells: through its checks it is a little later, never sooner.
        var whole = Ponding.FillTime(FieldWater.Of(state, field.Code).Job, steps.Select(s => s.Flow).Append(FlowRate.Zero).Max());
        // Where fields share a source the last of them gets the most, and late: what comes before that change is not counted on.
        var change = steps.IsEmpty ? TimeSpan.Zero : steps[^1].From;
        var span = whole is { } time ? Least((time * 1.3) + change + (12 * hour), furthest) : never;
        var run = Flooding.Run(network, span, new FloodOptions { Telling = hour });
        var from = First(book, field) is { } first && first < state.Now ? first.AddHours(-6) : state.Now.AddHours(-6);
        var reach = run.AllFull is { } done ? Least((done * 1.15) + (6 * hour), span) : span;
        var scale = new TimeScale(from.ToOffset(state.Offset), state.Now + reach);
        return new FillScene(field, scale)
        {
            Now = state.Now,
            Source = supply.Source,
            Flow = flow,
            FullAt = state.Now + run.AllFull,
            Checks = Checks(book, field, network, run, reach),
            Dark = FlyingWindows.Nights(state, scale.From, scale.Until),
            Residual = run.Balance.Residual,
            Working = tried is null ? supply.Working : Working.Empty.Given("S", "into the field, tried out", flow.CubicFeetPerSecond, "cfs", "typed"),
        };
    }

    private static TimeSpan Least(TimeSpan a, TimeSpan b) => a < b ? a : b;

    private static DateTimeOffset? First(SeasonBook book, Field field) =>
        book.Field(field.Code).Checks.Select(c => c.FirstWet).Append(book.State.Season(field.Code).FirstWater).Where(t => t is not null).Min();

    private static ImmutableArray<CheckScene> Checks(SeasonBook book, Field field, FloodNetwork network, FloodRun run, TimeSpan reach)
    {
        var told = book.Field(field.Code);
        var readings = Readings(book, field).ToLookup(r => r.Check);
        var lowest = network.Checks[^1].Ground;
        return
        [
            .. run.Checks.Select((story, place) =>
            {
                var number = NumberOf(field, place);
                var (check, note) = (network.Checks[place], told.Check(number));
                var boards = network.Boxes.Where(b => b.From == place).Select(b => (WaterDepth?)b.Boards).FirstOrDefault() ?? check.Front;
                return new CheckScene(number, check.Area)
                {
                    SeenWet = note?.FirstWet,
                    Readings = [.. readings[number].Select(r => r.Note)],
                    WetAt = story.FirstWet > TimeSpan.Zero ? book.State.Now + story.FirstWet : null,
                    FullAt = story.Full > TimeSpan.Zero ? book.State.Now + story.Full : null,
                    IsFull = story.Full == TimeSpan.Zero,
                    Boards = boards,
                    Ground = check.Ground - lowest,
                    Ahead = [.. story.Depths.Where(d => d.At <= reach + hour)],
                };
            }),
        ];
    }

    [PlainNumber("number of a check")]
    private static int NumberOf(Field field, int place) => field.Basins.IsEmpty ? 1 : field.Basins.OrderBy(b => b.Number).ElementAt(place).Number;

    private static IEnumerable<(int Check, DepthNote Note)> Readings(SeasonBook book, Field field) => book.Story
        .Where(l => l.Standing == Standing.Stands && l.Mark.Fact is DepthRead { Check: not null } read && string.Equals(read.Field, field.Code, StringComparison.OrdinalIgnoreCase))
        .Select(l => (((DepthRead)l.Mark.Fact).Check!.Value, new DepthNote(((DepthRead)l.Mark.Fact).Depth, l.Mark.Happened, l.Mark.By, l.Mark.Sure)));
}
