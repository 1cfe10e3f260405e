using Watersown.Schedule;
using Watersown.Season.Harvests;
using Watersown.Season.Learning;
using Watersown.Season.Spending;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>
/// Lays the marks of a logbook on the farm as it was told: the same ground, the same marks and the same moment give the same
/// season, in whatever order the marks came in.
/// </summary>
public static class SeasonFold
{
    /// <summary>The season at a moment.</summary>
    /// <param name="ground">The farm document; true at its own moment.</param>
    /// <param name="book">The marks.</param>
    /// <param name="now">The moment it is told for; marks that happened later are not laid on.</param>
    public static SeasonBook Fold(SeasonState ground, Logbook book, DateTimeOffset now)
    {
        var resolution = Resolution.Of(book);
        var folding = new Folding(ground, resolution);
        ImmutableArray<StoryLine> story = [.. resolution.Lines.Where(l => l.Mark.Happened <= now)];
        foreach (var line in story) folding.Take(line);
        return folding.Close(book, now, story);
    }

    /// <summary>A fold under way.</summary>
    private sealed class Folding
    {
        private readonly SeasonState ground;
        private readonly Resolution resolution;
        private readonly ImmutableArray<Doubt>.Builder doubts = ImmutableArray.CreateBuilder<Doubt>();
        private readonly Dictionary<string, FieldFold> fields = new(StringComparer.OrdinalIgnoreCase);
        private readonly List<string> strange = [];
        private readonly SeedFold seed;
        private readonly WaterFold water;
        private readonly AirFold air;
        private readonly TalkFold talk;
        private readonly FaultFold faults = new();
        private readonly HazardFold hazards;
        private readonly HarvestFold harvest;
        private readonly CostFold costs;
        private readonly DitchFold ditches;
        private readonly DayFold days;
        private readonly CropFold crop = new();
        private readonly HoldFold holds;

        public Folding(SeasonState ground, Resolution resolution)
        {
            (this.ground, this.resolution) = (ground, resolution);
            doubts.AddRange(resolution.Doubts);
            foreach (var field in ground.Farm.Fields)
                fields.TryAdd(field.Code, new FieldFold(field.Code, ground, field, ground.Fields.FirstOrDefault(f => f.Code == field.Code), doubts));
            (ditches, holds) = (new DitchFold(ground), new HoldFold(ground));
            (seed, water, air, talk, hazards) = (new SeedFold(ground, doubts), new WaterFold(ground, doubts), new AirFold(ground), new TalkFold(ground), new HazardFold(ground));
            (harvest, costs) = (new HarvestFold(ground, doubts), new CostFold(doubts));
            days = new DayFold(ground);
        }

        public void Take(StoryLine line)
        {
            var mark = line.Mark;
            var field = mark.Fact.AboutField is { } code ? Field(code, line) : null;
            if (line.Standing != Standing.Stands)
            {
                field?.Tell(line);
                return;
            }

            field?.Apply(line);
            seed.Apply(line, field);
            water.Apply(line);
            air.Apply(mark);
            talk.Apply(mark);
            hazards.Apply(mark);
            harvest.Apply(mark);
            costs.Apply(mark);
            ditches.Apply(mark);
            days.Apply(mark);
            crop.Apply(mark);
            holds.Apply(mark);
            if (mark.Fact is SeedLeft left && (field ?? LastOf(left.Trailer)) is { } sown) sown.LeftOver(left.Left);
            if (mark.Fact is FaultFound fault) Find(mark, fault, field);
            if (mark.Fact is FaultMended mended && faults.Mend(resolution.SpeaksFor(mended.Fault)) is { } gone) Mend(gone, line);
        }

        public SeasonBook Close(Logbook book, DateTimeOffset now, ImmutableArray<StoryLine> story)
        {
            foreach (var field in ground.Farm.Fields) fields[field.Code].Close();
            var (batchBooks, batches, lots) = seed.Close(now);
            var (sourceBooks, sources) = water.Close(now);
            var held = holds.Close();
            var (ledger, today) = (held.Ledger, FarmTime.Day(ground, now));
            ImmutableArray<FieldFold> known = [.. ground.Farm.Fields.Select(f => fields[f.Code])];
            var state = ground with
            {
                Now = now.ToOffset(ground.Offset),
                // Past the last day of its plan a season goes on: there are still fields to drain and to cut.
                Horizon = today > ground.Horizon ? today : ground.Horizon,
                Farm = ditches.Close(ground.Farm with { Fields = [.. known.Select(f => f.Land!)], Sources = sources, Hazards = hazards.Close() }),
                Fields = [.. ground.Fields.Select(f => HoldFold.Held(fields.TryGetValue(f.Code, out var fold) ? fold.Season ?? f : f, ledger, today))],
                Batches = batches,
                Lots = lots,
            };
            ImmutableArray<FieldBook> books = [.. Learned(state, story, [.. known.Select(f => f.Book(f.Land!.Net))])];
            state = state with { Fields = [.. state.Fields.Select(f => f with { Learned = books.FirstOrDefault(b => b.Code == f.Code)?.Learning?.Learned })] };
            var harvested = harvest.Close(state);
            return new SeasonBook
            {
                State = talk.Close(air.Close(state)),
                Ground = ground,
                Log = book,
                Now = now,
                Story = story,
                Fields = [.. books, .. strange.Select(c => fields[c].Book(Area.Zero))],
                Sources = sourceBooks,
                Batches = batchBooks,
                Trailers = seed.Trailers,
                Faults = faults.Open,
                Holds = held,
                Messages = talk.Messages,
                CalledOff = air.CalledOff,
                Weather = days.Close(),
                Targets = crop.Close(),
                Response = crop.Response,
                Plans = talk.Plans,
                Harvest = harvested,
                Costs = costs.Close(state, harvested),
                Doubts = doubts.ToImmutable(),
                Undoable = Undoable(story, now),
            };
        }

        private IEnumerable<FieldBook> Learned(SeasonState state, ImmutableArray<StoryLine> story, ImmutableArray<FieldBook> books)
        {
            var learner = new FieldLearner(ground, state, story);
            return books.Select(b => b with { Learning = learner.Of(state.Farm.Field(b.Code), [.. b.Story.Where(l => l.Standing == Standing.Stands).Select(l => l.Mark)]) });
        }

        private static ImmutableArray<Mark> Undoable(ImmutableArray<StoryLine> story, DateTimeOffset now) =>
        [
            .. story.Where(l => l.Standing == Standing.Stands && l.Mark.Fact is not PlanIssued && now - l.Mark.Entered <= SeasonLimits.UndoFor)
                .Select(l => l.Mark).OrderDescending(MarkOrder.Entered),
        ];

        private void Find(Mark mark, FaultFound fault, FieldFold? field)
        {
            faults.Find(mark, fault);
            if (fault is { Kind: FaultKind.Box, Box: { } box }) field?.Leak(box, leaks: true);
        }

        private void Mend(FaultFound fault, StoryLine line)
        {
            var field = fault.Field is { } code ? fields.GetValueOrDefault(code) : null;
            field?.Tell(line);
            if (fault is { Kind: FaultKind.Box, Box: { } box }) field?.Leak(box, leaks: false);
            water.Mend(fault, line.Mark);
        }

        /// <summary>The field that a trailer was last for.</summary>
        private FieldFold? LastOf(string trailer) =>
            seed.Trailers.FirstOrDefault(t => string.Equals(t.Number, trailer, StringComparison.OrdinalIgnoreCase))?.Field is { } code ? fields.GetValueOrDefault(code) : null;

        private FieldFold Field(string code, StoryLine line)
        {
            if (!fields.TryGetValue(code, out var field))
            {
                strange.Add(code);
                fields[code] = field = new FieldFold(code, ground, null, null, doubts);
            }

            if (field.Land is null && line.Standing == Standing.Stands) AskWho(code, line.Mark);
            return field;
        }

        private void AskWho(string code, Mark mark)
        {
            var nearest = Nearest.Of(code, ground.Farm.Fields.SelectMany(f => new[] { f.Code, f.Name }));
            doubts.Add(new Doubt(SeasonProblems.UnknownField.At(code, ("value", code), ("nearest", nearest is null ? string.Empty : " " + nearest + "?")), [mark.Id]) { Field = code });
        }
    }
}
