using Watersown.Schedule;
using Watersown.Seed;
using Watersown.Wording;

namespace Watersown.Season;

/// <summary>Batches and trailers as the marks go by.</summary>
internal sealed class SeedFold
{
    private readonly SeasonState ground;
    private readonly GroundTime time;
    private readonly ImmutableArray<Doubt>.Builder doubts;
    private readonly Dictionary<string, BatchFold> batches = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<BatchFold> order = [];
    private readonly SortedDictionary<string, TrailerBook> trailers = new(StringComparer.OrdinalIgnoreCase);

    public SeedFold(SeasonState ground, ImmutableArray<Doubt>.Builder doubts)
    {
        (this.ground, time, this.doubts) = (ground, new GroundTime(ground.Now), doubts);
        foreach (var batch in ground.Batches)
        {
            Open(batch.Code, batch);
            foreach (var number in batch.Trailers) trailers[number] = new TrailerBook(number) { Batch = batch.Code };
        }
    }

    public ImmutableArray<TrailerBook> Trailers => [.. trailers.Values];

    public void Apply(StoryLine line, FieldFold? field)
    {
        var mark = line.Mark;
        switch (mark.Fact)
        {
            case BatchInSoak soak: Find(soak.Batch, line).TakeSoak(ground, time, mark, soak); break;
            case BatchDrained drained: TakeDrained(Known(drained.Batch, line), mark); break;
            case BatchDumped dumped: TakeDumped(Known(dumped.Batch, line), dumped); break;
            case TrailerSeen seen: TakeTrailer(line, seen); break;
            case SeedLeft leftover: TakeLeft(mark, leftover); break;
            case LoadGone load: TakeLoad(mark, load, field); break;
            case FieldSown sown: TakeSown(line, sown, field); break;
            case StageReached { Stage: FieldStage.Sown } reached: TakeSown(line, new FieldSown(reached.Field), field); break;
            default: break;
        }
    }

    /// <summary>What is left of every batch, and of every lot.</summary>
    public (ImmutableArray<BatchBook> Books, ImmutableArray<SoakBatch> Batches, ImmutableArray<SeedLot> Lots) Close(DateTimeOffset now)
    {
        foreach (var batch in order) Weigh(batch);
        ImmutableArray<BatchBook> books = [.. order.Select(b => b.Book(now))];
        return (books, [.. books.Select(b => b.Batch).OfType<SoakBatch>()], [.. ground.Lots.Select(InHand)]);
    }

    private void Weigh(BatchFold batch)
    {
        if (batch.Dry is not { } dry || string.IsNullOrEmpty(batch.Variety))
            Ask(SeasonProblems.BatchUnclear, batch, null, ("value", batch.Code));
        else if (batch.Sown + batch.Dumped > dry * 1.02)
            Ask(SeasonProblems.SeedOverdrawn, batch, null, ("value", Pounds(batch.Sown + batch.Dumped)), ("batch", batch.Code), ("limit", Pounds(dry)));
    }

    /// <summary>Batches that went into soak after the farm's own word came out of the lot's store.</summary>
    private SeedLot InHand(SeedLot lot)
    {
        if (lot.InHand is not { } hand) return lot;
        var soaked = order.Where(b => b is { Ground: null, SoakTold: true, Dry: not null } && Same(b.Lot, lot.Code)).ToList();
        var taken = soaked.Aggregate(DrySeed.Zero, (sum, b) => sum + b.Dry!.Value);
        if (taken <= hand) return lot with { InHand = hand - taken };
        Ask(SeasonProblems.SeedShort, soaked[0], null, ("value", Pounds(taken)), ("lot", lot.Code), ("limit", Pounds(hand)));
        return lot with { InHand = DrySeed.Zero };
    }

    private void TakeDrained(BatchFold batch, Mark mark)
    {
        if (batch.Drained is not null && !time.IsOlderThan(mark)) return;
        if (batch.InSoak is { } inSoak && mark.Happened < inSoak)
            Ask(SeasonProblems.DrainedBeforeSoak, batch, mark, ("value", batch.Code), ("limit", When.Moment(mark.Happened.ToOffset(ground.Offset))));
        else
            batch.Drained = mark.Happened.ToOffset(ground.Offset);
    }

    private static void TakeDumped(BatchFold batch, BatchDumped dumped)
    {
        if (dumped.Dry is { } dry) batch.Dumped += dry;
        else batch.AllDumped = true;
    }

    private void TakeTrailer(StoryLine line, TrailerSeen seen)
    {
        var mark = line.Mark;
        var before = trailers.GetValueOrDefault(seen.Number);
        var batch = seen.Batch is { } code ? Known(code, line) : before?.Batch is { } there ? Known(there, line) : null;
        // The farm's own word on what a trailer holds is newer.
        if (batch is not null && before is { At: null, Batch: not null } && !Same(before.Batch, batch.Code) && !time.IsOlderThan(mark)) return;
        if (batch is not null) Move(seen.Number, batch, before, mark);
        if (batch is not null && seen.Weighed is { } weight) batch.Weights[seen.Number] = weight;
        var same = batch is null || Same(before?.Batch, batch.Code);
        trailers[seen.Number] = new TrailerBook(seen.Number)
        {
            Batch = batch?.Code ?? before?.Batch,
            Field = seen.Field ?? (same ? before?.Field : null),
            Soaked = seen.Weighed ?? (same ? before?.Soaked : null),
            Place = seen.Place ?? before?.Place,
            At = mark.Happened.ToOffset(ground.Offset),
        };
    }

    private void Move(string number, BatchFold batch, TrailerBook? before, Mark mark)
    {
        if (before?.Batch is { } was && !Same(was, batch.Code) && batches.TryGetValue(was, out var other))
        {
            if (!other.Spent) Ask(SeasonProblems.TrailerHolds, batch, mark, ("value", number), ("limit", batch.Code), ("other", was));
            other.Trailers.RemoveAll(t => Same(t, number));
            other.Weights.Remove(number);
        }

        if (!batch.Trailers.Exists(t => Same(t, number))) batch.Trailers.Add(number);
    }

    private void TakeLeft(Mark mark, SeedLeft leftover)
    {
        var before = trailers.GetValueOrDefault(leftover.Trailer) ?? new TrailerBook(leftover.Trailer);
        trailers[leftover.Trailer] = before with { Soaked = leftover.Left, At = mark.Happened.ToOffset(ground.Offset) };
        if (before.Batch is { } code && batches.TryGetValue(code, out var batch)) batch.Left[leftover.Trailer] = leftover.Left;
    }

    private void TakeLoad(Mark mark, LoadGone load, FieldFold? field)
    {
        if (load.Trailer is not { } number || !trailers.TryGetValue(number, out var trailer) || trailer.Batch is not { } code || !batches.TryGetValue(code, out var batch)) return;
        trailers[number] = trailer with { Field = load.Field, Soaked = trailer.Soaked is { } there && load.Soaked is { } gone ? there > gone ? there - gone : SoakedSeed.Zero : trailer.Soaked };
        if (field?.KnewOf(mark) == true) return;
        batch.Use(load.Field).Loads += load.Soaked is { } wet ? Soaking.DryOf(wet, batch.WetFactor) : DrySeed.Zero;
    }

    private void TakeSown(StoryLine line, FieldSown sown, FieldFold? field)
    {
        if (field is null || field.KnewOf(line.Mark)) return;
        var batch = sown.Batch is { } code ? Known(code, line) : Flown(sown.Field) ?? OnlyOneFor(sown.Field, line);
        if (batch is null) return;
        var use = batch.Use(sown.Field);
        // The same sowing told again may say for the first time how much it was.
        if (!field.TookSowing(line.Mark.Id) && (sown.Dry is null || use.Said > DrySeed.Zero)) return;
        if (sown.Dry is { } dry) use.Said += dry;
        else if (field.Land is { } land && (use.ByRate == DrySeed.Zero || sown.Land is not null || sown.Resow)) use.ByRate += field.Wanted(sown.Land ?? land.Net);
    }

    /// <summary>The batch whose trailer gave the loads.</summary>
    private BatchFold? Flown(string field) => order.Find(b => b.Use(field).Loads > DrySeed.Zero);

    private BatchFold? OnlyOneFor(string field, StoryLine line)
    {
        var meant = order.Where(b => !b.Spent && b.MeantFor.Any(f => Same(f, field))).ToList();
        if (meant.Count != 1 || meant[0].MeantFor.Length != 1) return null;
        meant[0].Assumed = true;
        meant[0].Tell(line);
        return meant[0];
    }

    private BatchFold Known(string code, StoryLine line)
    {
        if (!batches.ContainsKey(code))
        {
            var nearest = Nearest.Of(code, order.Select(b => b.Code));
            doubts.Add(new Doubt(SeasonProblems.UnknownBatch.At(string.Empty, ("value", code), ("nearest", nearest is null ? string.Empty : " " + nearest + "?")), [line.Mark.Id]) { Field = line.Mark.Fact.AboutField });
        }

        return Find(code, line);
    }

    private BatchFold Find(string code, StoryLine line)
    {
        var batch = batches.GetValueOrDefault(code) ?? Open(code, null);
        batch.Tell(line);
        return batch;
    }

    private BatchFold Open(string code, SoakBatch? there)
    {
        var batch = new BatchFold(there?.Code ?? code, there);
        if (!batches.TryAdd(code, batch)) return batches[code];
        batch.WetFactor = ground.Lots.FirstOrDefault(l => Same(l.Code, batch.Lot))?.WetFactor ?? ground.WetFactor;
        order.Add(batch);
        return batch;
    }

    private void Ask(ProblemKind kind, BatchFold batch, Mark? mark, params (string, string)[] facts)
    {
        ImmutableArray<MarkId> marks = mark is null ? [.. batch.Book(default).Story.Select(l => l.Mark.Id)] : [mark.Id];
        doubts.Add(new Doubt(kind.At(batch.Code, facts), marks) { Field = mark?.Fact.AboutField });
    }

    private static string Pounds(DrySeed dry) => Say.Number(dry.Pounds) + " lb";

    private static bool Same(string? one, string? other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);
}
